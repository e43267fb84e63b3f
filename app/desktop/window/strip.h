// The strip beside the menus: the variant, the search for a setting, and what leaves the program.
#pragma once

#include <QToolButton>
#include <QWidget>

#include "controls/segments.h"
#include "panels/side_panel.h"
#include "row/row_view.h"
#include "session/layout_cache.h"
#include "window/exports.h"
#include "window/setting_search.h"

namespace tenter::desktop::window {

class Strip : public QWidget {
    Q_OBJECT

public:
    Strip(ViewState& view, const LayoutCache& layouts, const row::RowView& row, panels::SidePanel& side,
          QWidget* parent);
    [[nodiscard]] SettingSearch* search() const { return search_; }
    /// Adds the button that copies the stylesheet, and a menu of everything that can be copied.
    void addExports(Exports& exports);

private:
    void showVariants();
    const LayoutCache& layouts_;
    controls::Segments* variants_;
    QToolButton* all_;
    SettingSearch* search_;
};

}  // namespace tenter::desktop::window
