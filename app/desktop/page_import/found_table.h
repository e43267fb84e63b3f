// What was read of a page or a stylesheet: for each role the declarations, with their rules.
#pragma once

#include <QTreeWidget>
#include <vector>

#include "start/page_findings.h"

namespace tenter::desktop::page_import {

class FoundTable : public QTreeWidget {
    Q_OBJECT

public:
    enum Column { Property, Value, Rule, Widths, columns };
    explicit FoundTable(QWidget* parent = nullptr);
    /// Shows these elements, each with its declarations below it. `least` and `most`: the viewport widths of
    /// the project in CSS px; a declaration that applies at all of them has no widths.
    void setFound(const std::vector<start::FoundElement>& found, double least, double most);
};

}  // namespace tenter::desktop::page_import
