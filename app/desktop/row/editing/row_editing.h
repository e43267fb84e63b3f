// Everything that edits the project in the row view: texts in place, gaps and paddings, the order of cards.
#pragma once

#include <QContextMenuEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QObject>
#include <QPainter>

#include "row/editing/card_commands.h"
#include "row/editing/card_drag.h"
#include "row/editing/row_menu.h"
#include "row/editing/spacing_drag.h"
#include "row/editing/text_editing.h"

namespace tenter::desktop::row::editing {

class RowEditing : public QObject {
    Q_OBJECT

public:
    RowEditing(Session& session, SheetLayout& sheets, QAbstractScrollArea& area);
    /// True while a text is edited in place.
    [[nodiscard]] bool isTyping() const { return text_.isActive(); }
    /// True while a text is edited or something is dragged.
    [[nodiscard]] bool isBusy() const { return isTyping() || spacing_.isDragging() || cards_.isDragging(); }
    /// Follows the row: its layout or its place in the viewport has changed.
    void follow() { text_.follow(); }
    /// Events of the row view. They return false for what they do not use.
    bool press(const QMouseEvent& event);
    bool move(const QMouseEvent& event);
    bool release(const QMouseEvent& event);
    bool doubleClick(const QMouseEvent& event);
    bool key(const QKeyEvent& event);
    void openMenu(const QContextMenuEvent& event);
    [[nodiscard]] RowMenu& menu() { return menu_; }
    /// The pointer is at a point of the viewport and drags nothing.
    void hover(const QPointF& view);
    void leave() { spacing_.leave(); }
    /// Paints marks and values over the row.
    void paint(QPainter& painter) const;

Q_SIGNALS:
    void message(const QString& text);  ///< for the status line
    void busyChanged();                 ///< `isBusy()` has changed

private:
    /// What was pressed: a part, and where on its page.
    struct Pressed {
        project::PartRef part;
        QPointF page;
    };
    bool altKey(int key);
    void describeSelection();

    Session& session_;
    SheetLayout& sheets_;
    QAbstractScrollArea& area_;
    TextEditing text_;
    SpacingDrag spacing_;
    CardDrag cards_;
    CardCommands commands_;
    RowMenu menu_;
    std::optional<Pressed> pressed_;
};

}  // namespace tenter::desktop::row::editing
