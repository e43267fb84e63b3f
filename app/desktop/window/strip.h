// The strip above the row: the variant, the line-breaking rules, and the search for a setting.
#pragma once

#include <QToolButton>
#include <QWidget>

#include "controls/segments.h"
#include "document/viewing.h"
#include "panels/side_panel.h"
#include "row/row_view.h"
#include "window/break_choice.h"
#include "window/setting_search.h"

namespace tenter::desktop::window {

class Strip : public QWidget {
    Q_OBJECT

public:
    Strip(Viewing& viewing, const row::RowView& row, BreakChoice& breaks, panels::SidePanel& side,
          QWidget* parent);
    /// Shows the variants of the project.
    void showVariants();
    [[nodiscard]] SettingSearch* search() const { return search_; }

private:
    Viewing& viewing_;
    controls::Segments* variants_;
    QToolButton* all_;
    controls::Segments* engines_;
    SettingSearch* search_;
};

}  // namespace tenter::desktop::window
