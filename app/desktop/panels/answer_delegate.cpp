#include "panels/answer_delegate.h"

#include <QAbstractItemView>
#include <QGuiApplication>
#include <QPainter>
#include <cmath>

#include "panels/answer_view.h"
#include "row/ink.h"

namespace tenter::desktop::panels {

namespace {

constexpr int padding = 4;       // px above and below the text of a row
constexpr int titlePadding = 8;  // px above a title
constexpr int indent = 14;       // px, of the text of a limit
constexpr double reach = 3.5;    // px from the centre to a corner of the lozenge

QString coloured(const QString& text, const QColor& colour) {
    return "<span style='color: " + colour.name() + "'>" + text + "</span>";
}

/// Spaces inside numbers must not become breaking spaces.
QString escaped(const QString& text) {
    return text.toHtmlEscaped().replace(QChar(QChar::Nbsp), "&nbsp;");
}

QString limitHtml(const QString& text, const QString& place, const row::Ink& ink) {
    const qsizetype at = place.isEmpty() ? -1 : text.indexOf(place);
    if (at < 0) return coloured(escaped(text), ink.text);
    return coloured(escaped(text.left(at)), ink.text) + "<u>" + coloured(escaped(place), ink.accentText) +
           "</u>" + coloured(escaped(text.mid(at + place.size())), ink.text);
}

QString bandHtml(const QString& text, bool changed, const row::Ink& ink) {
    const QStringList lines = text.split('\n');
    return coloured(escaped(lines.value(0)), changed ? ink.text : ink.quiet) + "<br>" +
           coloured(escaped(lines.value(1)), ink.quiet);
}

QString sizeHtml(const QString& text, const row::Ink& ink) {
    const qsizetype arrow = text.indexOf(" → ");
    if (arrow < 0) return coloured(escaped(text), ink.quiet);
    return coloured(escaped(text.left(arrow)) + "&nbsp;→ ", ink.quiet) +
           coloured("<b>" + escaped(text.mid(arrow + 3)) + "</b>", ink.text);
}

}  // namespace

AnswerDelegate::AnswerDelegate(const AnswerModel& model, QObject* parent)
    : QStyledItemDelegate(parent), model_(model) {}

void AnswerDelegate::useFont(const QFont& font) const {
    if (font == font_) return;
    documents_.clear();
    heights_.clear();
    font_ = font;
}

QTextDocument& AnswerDelegate::laidOut(const QString& html, const QFont& font, int width, Qt::Alignment align,
                                       Qt::LayoutDirection direction) const {
    useFont(font);
    const QString key = QString::number(width) + '/' + QString::number(align.toInt()) + '/' +
                        QString::number(direction) + html;
    if (QTextDocument* known = documents_.object(key)) return *known;
    auto* document = new QTextDocument;
    document->setDocumentMargin(0);
    document->setDefaultFont(font);
    QTextOption lines = document->defaultTextOption();
    lines.setTextDirection(direction);
    lines.setAlignment(align);
    document->setDefaultTextOption(lines);
    document->setTextWidth(width);
    // Last: every change of a document that has text lays it out again.
    document->setHtml(html);
    documents_.insert(key, document);
    return *document;
}

int AnswerDelegate::heightOf(const QString& html, const QFont& font, int width) const {
    useFont(font);
    const QString key = QString::number(width) + html;
    if (const int* known = heights_.object(key)) return *known;
    const Qt::LayoutDirection direction = QGuiApplication::layoutDirection();
    const double height = laidOut(html, font, width, Qt::AlignLeft, direction).size().height();
    const int whole = static_cast<int>(std::ceil(height));
    heights_.insert(key, new int(whole));
    return whole;
}

int AnswerDelegate::rowHeight(const QFont& font, int row, int width, int bandWidth) const {
    const QString text = model_.index(row, AnswerModel::Band).data().toString();
    const row::Ink ink = row::Ink::of(QPalette());
    switch (model_.kind(row)) {
        case AnswerModel::RowKind::Title:
            return titlePadding + QFontMetrics(font).height() + padding / 2;
        case AnswerModel::RowKind::Finding:
            return heightOf(coloured(escaped(text), ink.text), font,
                            width - indent - 2 * AnswerView::cellMargin) +
                   padding;
        case AnswerModel::RowKind::Limit:
            return heightOf(limitHtml(text, QString::fromStdString(model_.limit(row).place), ink), font,
                            width - indent - 2 * AnswerView::cellMargin) +
                   padding;
        case AnswerModel::RowKind::Sizes:
            break;
    }
    return heightOf(bandHtml(text, true, ink), font, bandWidth - 2 * AnswerView::cellMargin) + padding;
}

void AnswerDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                           const QModelIndex& index) const {
    const row::Ink ink = row::Ink::of(option.palette);
    const AnswerModel::RowKind kind = model_.kind(index.row());
    const QString text = index.data().toString();
    const QRect box = option.rect;
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing, true);
    QRect room = box.adjusted(AnswerView::cellMargin, padding / 2, -AnswerView::cellMargin, 0);
    const bool mirrored = option.direction == Qt::RightToLeft;
    const double bulletInset = AnswerView::cellMargin + reach + 1;
    const double bullet = mirrored ? box.right() - bulletInset : box.left() + bulletInset;
    const auto indentRoom = [&] { room.adjust(mirrored ? 0 : indent, 0, mirrored ? -indent : 0, 0); };
    QString html;
    Qt::Alignment align = Qt::AlignLeft;
    switch (kind) {
        case AnswerModel::RowKind::Title:
            room.setTop(box.top() + titlePadding);
            html = coloured("<b>" + escaped(text) + "</b>", ink.text);
            break;
        case AnswerModel::RowKind::Limit: {
            indentRoom();
            html = limitHtml(text, QString::fromStdString(model_.limit(index.row()).place), ink);
            const QPointF centre(bullet, room.top() + QFontMetrics(option.font).height() / 2.0);
            painter->setPen(Qt::NoPen);
            painter->setBrush(ink.accent);
            painter->drawPolygon(QPolygonF{centre + QPointF(0, -reach), centre + QPointF(reach, 0),
                                           centre + QPointF(0, reach), centre + QPointF(-reach, 0)});
            break;
        }
        case AnswerModel::RowKind::Finding: {
            indentRoom();
            html = coloured(escaped(text), ink.quiet);
            // A minus for a finding that goes, a plus for one that comes or grows.
            const QPointF centre(bullet, room.top() + QFontMetrics(option.font).height() / 2.0);
            painter->setPen(QPen(ink.text, 1.5));
            painter->drawLine(centre - QPointF(reach, 0), centre + QPointF(reach, 0));
            if (model_.effect(index.row()) != AnswerModel::Effect::Removes)
                painter->drawLine(centre - QPointF(0, reach), centre + QPointF(0, reach));
            break;
        }
        case AnswerModel::RowKind::Sizes:
            if (index.column() == AnswerModel::Band) {
                html = bandHtml(text, model_.sizes(index.row()).isChanged(), ink);
            } else {
                html = sizeHtml(text, ink);
                align = Qt::AlignRight;
            }
            break;
    }
    painter->translate(room.topLeft());
    laidOut(html, option.font, room.width(), align, option.direction).drawContents(painter);
    painter->translate(-room.topLeft());
    if ((option.state & QStyle::State_HasFocus) != 0) {
        painter->setRenderHint(QPainter::Antialiasing, false);
        painter->setPen(QPen(ink.accent, 2));
        painter->setBrush(Qt::NoBrush);
        painter->drawRect(box.adjusted(1, 1, -1, -1));
    }
    painter->restore();
}

}  // namespace tenter::desktop::panels
