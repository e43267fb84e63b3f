// Base of the tests of the row view: where parts and cards are in it, clicks and drags there.
#pragma once

#include <QScrollBar>

#include "at_the_window.h"
#include "row/lookup.h"
#include "row/row_view.h"

namespace tenter::desktop {

class RowAtHand : public AtTheWindow {
protected:
    void openRow(const QString& sample) {
        open(sample);
        row_ = window_->findChild<row::RowView*>();
        QVERIFY(row_ != nullptr);
        row_->setFocus();
    }
    const layout::Layout& layout() { return session().layouts.layout(); }
    /// The part `part` of the card, as it is laid out.
    const layout::LaidPart& laid(std::size_t card, std::size_t part) {
        return layout().parts[*row::indexOf(layout(), project::PartRef{card, part})];
    }
    /// The index of the part with that role in a card.
    std::size_t indexOf(std::size_t card, const std::string& role) {
        const auto& parts = project().row().cards[card].parts;
        for (std::size_t i = 0; i < parts.size(); ++i) {
            const auto* text = std::get_if<project::TextPart>(&parts[i]);
            if ((text != nullptr ? text->role : "picture") == role) return i;
        }
        return parts.size();
    }
    const project::TextPart& text(std::size_t card, const std::string& role) {
        return std::get<project::TextPart>(project().part({card, indexOf(card, role)}));
    }
    std::string words(std::size_t card, const std::string& role) {
        return project::plainText(text(card, role).copy);
    }
    /// A point of the page, CSS px, in px of the viewport.
    QPoint at(double x, double y) {
        const QPointF origin = row_->pageAt({0, 0});
        return ((QPointF(x, y) - origin) * row_->zoom()).toPoint();
    }
    /// The start of a line of a text, in the middle of its height.
    QPoint lineStart(std::size_t card, const std::string& role, std::uint32_t line = 0) {
        const layout::LaidPart& part = laid(card, indexOf(card, role));
        const layout::LaidLine& on = layout().lines[part.firstLine + line];
        return at(on.x, on.baseline - part.fontSize / 3);
    }
    QPoint middle(const layout::Box& box) { return at(box.x + box.width / 2, box.y + box.height / 2); }
    void reveal(std::size_t card, std::size_t part) {
        row_->ensureVisible(*row::indexOf(layout(), project::PartRef{card, part}));
    }
    void doubleClick(const QPoint& point) {
        QTest::mouseClick(row_->viewport(), Qt::LeftButton, {}, point);
        QTest::mouseDClick(row_->viewport(), Qt::LeftButton, {}, point);
    }
    int steps() { return document().undoStack().index(); }
    QString lastStep() { return document().undoStack().undoText(); }

    row::RowView* row_ = nullptr;
};

}  // namespace tenter::desktop
