#include "findings/delegate.h"

#include <QAbstractItemView>
#include <QPainter>
#include <QStyle>
#include <QTextLayout>
#include <cmath>

#include "controls/text_scale.h"
#include "findings/weight.h"
#include "findings/wording.h"
#include "row/ink.h"

namespace tenter::desktop::findings {

namespace {

constexpr int side = 24;  // px, as in the panels
constexpr int rightSide = 16;
constexpr int above = 8;
constexpr int below = 8;
constexpr int headHeight = 16;
constexpr int gap = 4;
constexpr int wordRoom = 64;
constexpr int closedLines = 6;
constexpr int closedWidthLines = 2;
constexpr int mostLines = 40;
constexpr std::size_t rangesClosed = 2;
constexpr std::size_t rangesOpen = 6;

int widthOf(const QStyleOptionViewItem& option) {
    const auto* view = qobject_cast<const QAbstractItemView*>(option.widget);
    return view != nullptr ? view->viewport()->width() : option.rect.width();
}

/// Breaks `text` into at most `most` lines of `width` px and draws them if `painter` is not null. The last
/// line ends in an ellipsis if there is more text. Returns the height of the lines, px.
int setText(QPainter* painter, const QString& text, const QFont& font, const QPoint& at, int width, int most,
            Qt::LayoutDirection direction = Qt::LayoutDirectionAuto) {
    if (text.isEmpty()) return 0;
    const QFontMetrics metrics(font);
    QTextLayout layout(text, font);
    QTextOption option;
    option.setTextDirection(direction);
    layout.setTextOption(option);
    layout.beginLayout();
    int lines = 0;
    while (lines < most) {
        QTextLine line = layout.createLine();
        if (!line.isValid()) break;
        line.setLineWidth(width);
        const QPointF place(at.x(), at.y() + lines * metrics.lineSpacing());
        const int start = line.textStart();
        const bool cut = lines + 1 == most && start + line.textLength() < text.size();
        if (painter != nullptr && cut)
            painter->drawText(QRectF(place, QSizeF(width, metrics.lineSpacing())),
                              Qt::AlignLeft | Qt::AlignTop,
                              metrics.elidedText(text.mid(start), Qt::ElideRight, width));
        else if (painter != nullptr)
            line.draw(painter, place);
        ++lines;
    }
    layout.endLayout();
    return lines * metrics.lineSpacing();
}

/// A closed finding says what is wrong, an open one also why it matters and what to do.
QString textOf(const checks::Finding& finding, bool open) {
    return open ? QString::fromStdString(finding.says) : whatTitle(finding);
}

/// The width of the longest name of a severity with a gap after it, px.
int severityWidth(const QFontMetrics& metrics) {
    int width = 0;
    for (const checks::Severity severity :
         {checks::Severity::Error, checks::Severity::Warning, checks::Severity::Note})
        width = std::max(width, metrics.horizontalAdvance(severityTitle(severity)) + 2 * gap);
    return width;
}

QString basisTitle(const checks::Finding& finding) {
    return QObject::tr("Basis: %1").arg(QString::fromStdString(finding.source));
}

}  // namespace

Delegate::Delegate(const Model& model, QObject* parent) : QStyledItemDelegate(parent), model_(model) {}

QSize Delegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const checks::Finding& finding = model_.finding(index.row());
    const bool open = index.row() == open_;
    const int width = widthOf(option);
    const int room = width - side - rightSide;
    const QFont small = controls::smallFont(option.font);
    int height = above + controls::scaled(headHeight) + gap;
    height += setText(nullptr, textOf(finding, open), option.font, {}, room, open ? mostLines : closedLines);
    const QString widths =
        otherWidthsTitle(model_.checks().project(), finding, open ? rangesOpen : rangesClosed);
    if (open || !widths.isEmpty()) height += gap;
    height += setText(nullptr, widths, small, {}, room, open ? mostLines : closedWidthLines);
    if (open) height += setText(nullptr, basisTitle(finding), small, {}, room, mostLines);
    if (open && roomBelow_) height += roomBelow_(width);
    return {width, height + below};
}

void Delegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const checks::Finding& finding = model_.finding(index.row());
    const row::Ink ink = row::Ink::of(option.palette);
    const bool open = index.row() == open_;
    // Findings of an earlier state of the row are drawn fainter.
    const bool fresh = !model_.checks().isStale();
    const bool chosen = model_.checks().chosen() == model_.indexOf(index.row());
    const QRect box = option.rect;
    const auto placed = [&](const QRect& rect) { return QStyle::visualRect(option.direction, box, rect); };
    const int left = box.left() + side;
    const int room = box.width() - side - rightSide;
    painter->save();
    painter->setLayoutDirection(option.direction);
    painter->fillRect(box, option.palette.color(QPalette::Window));
    painter->fillRect(QRect(box.left(), box.bottom(), box.width(), 1),
                      option.palette.color(QPalette::Midlight));
    // The chosen finding has a bar on the left; its part is marked in the row view.
    if (chosen)
        painter->fillRect(placed(QRect(box.left() + 8, box.top() + above, 2, box.height() - above - below)),
                          ink.text);

    const QColor strong = fresh ? ink.text : ink.quiet;
    const Weight weight = weightOf(finding.severity);
    QFont head = controls::smallFont(option.font);
    head.setWeight(weight.font);
    painter->setFont(head);
    painter->setPen(strong);
    const QRect line(left, box.top() + above, room, controls::scaled(headHeight));
    const int word = std::max(controls::scaled(wordRoom), severityWidth(painter->fontMetrics()));
    painter->drawText(placed(QRect(left, line.top(), word, controls::scaled(headHeight))),
                      Qt::AlignVCenter | Qt::AlignLeft, severityTitle(finding.severity));
    const QFont small = controls::smallFont(option.font);
    painter->setFont(small);
    painter->setPen(ink.quiet);
    painter->drawText(placed(line), Qt::AlignVCenter | Qt::AlignRight,
                      shareTitle(finding.share, model_.checks().audience()));
    // The length of the thin line represents all widths, or all visits.
    const int from = left + word;
    const int shareRoom =
        QFontMetrics(small).horizontalAdvance(shareTitle(0.001, model_.checks().audience()));
    const int whole = line.right() - shareRoom - 12 - from;
    const int middle = line.center().y();
    painter->fillRect(placed(QRect(from, middle, whole, 1)), ink.faint);
    painter->fillRect(placed(QRect(from, middle - 4, 1, 9)), ink.line);
    painter->fillRect(placed(QRect(from + whole - 1, middle - 4, 1, 9)), ink.line);
    const int length = std::max(2, static_cast<int>(std::lround(finding.share * whole)));
    painter->fillRect(placed(QRect(from, middle - weight.line / 2, length, weight.line)), strong);
    const int textLeft = placed(QRect(left, box.top(), room, 1)).left();

    int y = line.bottom() + 1 + gap;
    painter->setPen(strong);
    painter->setFont(option.font);
    y += setText(painter, textOf(finding, open), option.font, {textLeft, y}, room,
                 open ? mostLines : closedLines, option.direction);
    y += gap;
    painter->setPen(ink.quiet);
    painter->setFont(small);
    y += setText(painter,
                 otherWidthsTitle(model_.checks().project(), finding, open ? rangesOpen : rangesClosed),
                 small, {textLeft, y}, room, open ? mostLines : closedWidthLines, option.direction);
    if (open) setText(painter, basisTitle(finding), small, {textLeft, y}, room, mostLines, option.direction);
    if ((option.state & QStyle::State_HasFocus) != 0) {
        painter->setPen(QPen(ink.accent, 2));
        painter->setBrush(Qt::NoBrush);
        painter->drawRect(box.adjusted(2, 2, -2, -3));
    }
    painter->restore();
}

}  // namespace tenter::desktop::findings
