// The switch in the import dialog that measures the page in a browser.
#pragma once

#include <QCheckBox>
#include <QLabel>
#include <QPushButton>
#include <vector>

#include "compare/browser.h"

namespace tenter::desktop::page_import {

class RowReader;

class MeasureSwitch : public QWidget {
    Q_OBJECT

public:
    explicit MeasureSwitch(RowReader& reader, QWidget* parent = nullptr);
    /// Measures in the first of these browsers. Without any the switch is disabled.
    void setBrowsers(std::vector<compare::Browser> browsers);

private:
    void updateState();

    RowReader& reader_;
    std::vector<compare::Browser> browsers_;
    QCheckBox* box_;
    QPushButton* stop_;
    QLabel* state_;
    QString failure_;  ///< message if the last measuring failed; otherwise empty
};

}  // namespace tenter::desktop::page_import
