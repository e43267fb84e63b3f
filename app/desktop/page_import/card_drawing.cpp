#include "page_import/card_drawing.h"

#include <QAbstractButton>
#include <QPainter>
#include <algorithm>

#include "controls/inks.h"
#include "document/wording.h"
#include "page_import/wording.h"

namespace tenter::desktop::page_import {

namespace {

constexpr int leastCard = 152;
constexpr int mostCard = 240;
constexpr int gap = 16;
constexpr int inset = 8;
constexpr std::size_t mostCards = 24;

/// A card or a part of one.
class DrawnBox : public QAbstractButton {
public:
    DrawnBox(QString role, QString words, bool card, bool picture, QWidget* parent)
        : QAbstractButton(parent),
          role_(std::move(role)),
          words_(std::move(words)),
          card_(card),
          picture_(picture) {
        setCheckable(true);
        setFocusPolicy(Qt::StrongFocus);
        setCursor(Qt::PointingHandCursor);
        setAccessibleName(words_.isEmpty() ? role_ : role_ + ": " + words_);
        setToolTip(accessibleName());
    }

    [[nodiscard]] int headHeight() const { return fontMetrics().height() + inset; }

    [[nodiscard]] int heightFor(int width) const {
        const int line = fontMetrics().lineSpacing();
        if (picture_) return 72;
        const QRect text =
            fontMetrics().boundingRect(QRect(0, 0, width - 2 * inset, 3 * line), Qt::TextWordWrap, words_);
        return inset + line + (words_.isEmpty() ? 0 : std::min(text.height(), 3 * line)) + inset;
    }

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        const QColor accent = palette().color(QPalette::Highlight);
        const double weight = isChecked() ? 2 : 1;
        const QRectF box = QRectF(rect()).adjusted(weight / 2, weight / 2, -weight / 2, -weight / 2);
        painter.setBrush(palette().color(card_ ? QPalette::Base : QPalette::Window));
        painter.setPen(QPen(isChecked()             ? accent
                            : underMouse() || card_ ? palette().color(QPalette::Mid)
                                                    : palette().color(QPalette::Midlight),
                            weight));
        painter.drawRect(box);
        if (picture_) {
            painter.setPen(QPen(palette().color(QPalette::Midlight), 1));
            painter.drawLine(box.topLeft(), box.bottomRight());
            painter.drawLine(box.bottomLeft(), box.topRight());
        }
        drawWords(painter);
        if (hasFocus() && window()->testAttribute(Qt::WA_KeyboardFocusChange)) {
            painter.setBrush(Qt::NoBrush);
            painter.setPen(QPen(accent, 1, Qt::DashLine));
            painter.drawRect(box.adjusted(3, 3, -3, -3));
        }
    }

    void enterEvent(QEnterEvent*) override { update(); }
    void leaveEvent(QEvent*) override { update(); }

private:
    void drawWords(QPainter& painter) const {
        const int line = fontMetrics().lineSpacing();
        const int room = width() - 2 * inset;
        QRect at(inset, card_ ? inset / 2 : inset, room, line);
        // Text on the cross of a picture gets an opaque background.
        const auto ground = [&](const QString& text) {
            if (picture_)
                painter.fillRect(QRect(at.topLeft(), QSize(fontMetrics().horizontalAdvance(text) + 4, line)),
                                 palette().color(QPalette::Window));
        };
        const QString role = fontMetrics().elidedText(role_, Qt::ElideRight, room);
        ground(role);
        painter.setPen(controls::quiet(palette()));
        painter.drawText(at, Qt::AlignLeft | Qt::AlignVCenter, role);
        if (card_ || words_.isEmpty()) return;
        at.translate(0, line);
        painter.setPen(palette().color(QPalette::WindowText));
        if (picture_) {
            const QString words = fontMetrics().elidedText(words_, Qt::ElideRight, room);
            ground(words);
            painter.drawText(at, Qt::AlignLeft | Qt::AlignVCenter, words);
            return;
        }
        at.setHeight(height() - inset - at.top());
        painter.drawText(at, Qt::TextWordWrap | Qt::AlignLeft | Qt::AlignTop, words_);
    }

    QString role_, words_;
    bool card_, picture_;
};

DrawnBox* drawn(QAbstractButton* button) {
    return static_cast<DrawnBox*>(button);
}

}  // namespace

CardDrawing::CardDrawing(QWidget* parent)
    : QScrollArea(parent), sheet_(new QWidget), more_(new QLabel(sheet_)) {
    setAccessibleName(QObject::tr("Cards of the row and their parts"));
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFocusPolicy(Qt::NoFocus);
    setWidget(sheet_);
    more_->setForegroundRole(QPalette::PlaceholderText);
    group_.setExclusive(true);
    connect(&group_, &QButtonGroup::idClicked, this,
            [this](int node) { Q_EMIT chosen(static_cast<quint32>(node)); });
}

QAbstractButton* CardDrawing::addBox(markup::NodeId node, const QString& role, const QString& words,
                                     bool card) {
    auto* box = new DrawnBox(role, words, card, !card && role == roleTitle("picture"), sheet_);
    group_.addButton(box, static_cast<int>(node));
    box->show();
    return box;
}

void CardDrawing::setRow(const markup::GivenRow* row) {
    for (QAbstractButton* box : group_.buttons()) {
        group_.removeButton(box);
        box->hide();
        box->deleteLater();
    }
    cards_.clear();
    const std::size_t count = row == nullptr ? 0 : row->cards.size();
    for (std::size_t c = 0; c < std::min(count, mostCards); ++c) {
        const markup::GivenCard& card = row->cards[c];
        CardBoxes boxes{addBox(card.node, QObject::tr("Card %1").arg(c + 1), {}, true)};
        for (const markup::GivenPart& part : card.parts)
            boxes.push_back(addBox(part.node, roleTitle(part.role), firstWords(row->tree, part.node), false));
        cards_.push_back(std::move(boxes));
    }
    more_->setText(count > mostCards
                       ? QObject::tr("and %n more card(s)", nullptr, static_cast<int>(count - mostCards))
                       : QString());
    more_->setVisible(count > mostCards);
    arrange();
}

QAbstractButton* CardDrawing::boxOf(markup::NodeId node) const {
    return group_.button(static_cast<int>(node));
}

void CardDrawing::setCurrent(markup::NodeId node) {
    if (QAbstractButton* box = boxOf(node)) {
        box->setChecked(true);
        ensureWidgetVisible(box, 0, gap);
    } else if (QAbstractButton* old = group_.checkedButton()) {
        group_.setExclusive(false);
        old->setChecked(false);
        group_.setExclusive(true);
    }
}

void CardDrawing::resizeEvent(QResizeEvent* event) {
    QScrollArea::resizeEvent(event);
    arrange();
}

void CardDrawing::arrange() {
    const int room = viewport()->width();
    const int count = static_cast<int>(cards_.size());
    const int across = std::clamp((room + gap) / (leastCard + gap), 1, std::max(1, count));
    const int width = std::clamp((room - (across - 1) * gap) / across, 1, mostCard);
    int y = 0;
    int tallest = 0;
    for (int i = 0; i < count; ++i) {
        if (i > 0 && i % across == 0) {
            y += tallest + gap;
            tallest = 0;
        }
        const CardBoxes& boxes = cards_[static_cast<std::size_t>(i)];
        const int x = i % across * (width + gap);
        int bottom = y + drawn(boxes.front())->headHeight();
        for (std::size_t p = 1; p < boxes.size(); ++p) {
            const int height = drawn(boxes[p])->heightFor(width - 2 * inset);
            boxes[p]->setGeometry(x + inset, bottom, width - 2 * inset, height);
            boxes[p]->raise();
            bottom += height + inset;
        }
        boxes.front()->setGeometry(x, y, width, bottom - y);
        tallest = std::max(tallest, bottom - y);
    }
    int height = y + tallest;
    if (!more_->isHidden()) {
        more_->setGeometry(0, height + inset, room, more_->sizeHint().height());
        height += inset + more_->sizeHint().height();
    }
    sheet_->resize(room, height);
}

}  // namespace tenter::desktop::page_import
