// Drags cards to another place in the row.
#pragma once

#include <QObject>
#include <QPainter>
#include <optional>
#include <vector>

#include "row/sheet_layout.h"
#include "session/session.h"

namespace tenter::desktop::row::editing {

/// A place between cards, and the line that shows it, CSS px on the page.
struct DropPlace {
    std::size_t before = 0;  ///< index of the card in front of which cards are dropped; their number: the end
    layout::Box line;
};

/// The place between cards that is nearest to a point of the page (CSS px). Cards follow each other from
/// right to left if `rightToLeft`. The row must have cards.
DropPlace dropPlaceAt(const layout::Layout& layout, const QPointF& page, bool rightToLeft);

class CardDrag : public QObject {
    Q_OBJECT

public:
    CardDrag(Session& session, SheetLayout& sheets, QAbstractScrollArea& area)
        : session_(session), sheets_(sheets), area_(area) {}
    /// A press that may begin a drag of the card at the point, or of the selected cards if it is one of them.
    void press(const QPointF& view);
    /// True if cards are dragged.
    bool move(const QPointF& view);
    [[nodiscard]] bool isDragging() const { return drag_ && drag_->started; }
    /// Drops the cards. True if cards were dragged.
    bool release();
    void cancel();
    void paint(QPainter& painter) const;

Q_SIGNALS:
    void dropped(const std::vector<std::size_t>& cards, std::size_t before);
    void message(const QString& text);

private:
    struct Drag {
        std::vector<std::size_t> cards;
        std::size_t sheet = 0;
        QPointF from;
        bool started = false;
        DropPlace to;
    };
    Session& session_;
    SheetLayout& sheets_;
    QAbstractScrollArea& area_;
    std::optional<Drag> drag_;
};

}  // namespace tenter::desktop::row::editing
