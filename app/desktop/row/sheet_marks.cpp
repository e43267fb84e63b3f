#include "row/sheet_marks.h"

#include <algorithm>
#include <cmath>

#include "document/wording.h"
#include "row/ink.h"
#include "row/lookup.h"

namespace tenter::desktop::row {

QString captionOf(const LaidOutRow& row, const std::string& role) {
    QStringList facts{
        QObject::tr("%1 at this width").arg(columnsTitle(row.settings().row.columns.value_or(1)))};
    if (const auto size = fontSizeHere(row, role)) facts << roleName(role) + ' ' + pixels(*size);
    return facts.join(", ");
}

void SheetMarks::paintCaption(QPainter& painter, std::size_t sheet) const {
    const QRectF caption = sheets_.inView()[sheet].caption;
    if (!caption.intersects(view())) return;
    const LaidOutRow row = sheets_.rowOn(sheet);
    const Ink ink = Ink::of(area_.palette());
    const QColor quiet = legible(ink.quiet, ink.desk, ink.text);
    QFont strong = area_.font();
    strong.setWeight(QFont::DemiBold);
    const QFontMetricsF metrics(strong);
    const double baseline = std::round(caption.bottom() - 8);
    const bool active = sheet == sheets_.active();
    const QString title = variantTitle(row.project.row().variants[sheet]);
    painter.setFont(strong);
    painter.setPen(active ? legible(ink.accentText, ink.desk, ink.text) : ink.text);
    painter.drawText(QPointF(caption.left(), baseline), title);
    if (active)
        painter.fillRect(QRectF(caption.left(), caption.bottom() - 3, metrics.horizontalAdvance(title), 2),
                         ink.accent);
    const double left = caption.left() + metrics.horizontalAdvance(title) + 12;
    const double room = caption.right() - left;
    painter.setFont(area_.font());
    painter.setPen(quiet);
    const QString shownText =
        QFontMetricsF(area_.font()).elidedText(captionOf(row, selection_.role()), Qt::ElideRight, room);
    painter.drawText(QPointF(left, baseline), shownText);
}

// Marks at the corners do not hide the part. They are fainter in variants that are not the current one.
void SheetMarks::paintSelection(QPainter& painter, std::size_t sheet, const layout::Box& selected,
                                const QColor& ground) const {
    const QColor strong = contrast(ground, Qt::black) > contrast(ground, Qt::white) ? Qt::black : Qt::white;
    const QColor accent = sheet == sheets_.active()
                              ? legible(Ink::of(area_.palette()).accent, ground, strong, 3)
                              : mixed(ground, strong, 0.6);
    const QRectF box =
        QRectF(sheets_.projection(sheet).rect(selected).toAlignedRect()).adjusted(-4, -4, 4, 4);
    const double arm = std::min({12.0, box.width() / 3, box.height() / 3});
    painter.setRenderHint(QPainter::Antialiasing, false);
    for (const QPointF& corner : {box.topLeft(), box.topRight(), box.bottomLeft(), box.bottomRight()}) {
        const double dx = corner.x() == box.left() ? 1 : -1;
        const double dy = corner.y() == box.top() ? 1 : -1;
        painter.fillRect(QRectF(corner, QSizeF(dx * arm, dy * 2)).normalized(), accent);
        painter.fillRect(QRectF(corner, QSizeF(dx * 2, dy * arm)).normalized(), accent);
    }
}

void SheetMarks::paintEdge(QPainter& painter, std::size_t sheet, bool hot) const {
    QRectF along = view();
    if (sheets_.showsAll()) {
        const QRectF page = sheets_.inView()[sheet].page;
        along.setTop(std::max(along.top(), std::round(page.top())));
        along.setBottom(std::min(along.bottom(), std::round(page.bottom())));
        if (along.height() <= 0) return;
    }
    const Ink ink = Ink::of(area_.palette());
    const double x = sheets_.edgeX(sheet);
    const QColor colour = hot ? ink.accent : mixed(ink.desk, ink.text, 0.5);
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.fillRect(QRectF(x, along.top(), hot ? 2 : 1, along.height()), colour);
    const double tall = std::min(40.0, along.height());
    const QRectF grip(x + 4, std::round(along.center().y() - tall / 2), 5, tall);
    painter.fillRect(QRectF(grip.left(), grip.top(), 1, grip.height()), colour);
    painter.fillRect(QRectF(grip.left() + 3, grip.top(), 1, grip.height()), colour);
}

void SheetMarks::paintEmpty(QPainter& painter) const {
    painter.setPen(QColor(0x44, 0x44, 0x44));
    const QRectF page(sheets_.projection().left, 0, sheets_.rowOn(0).layout.width * sheets_.zoom(),
                      view().height());
    painter.drawText(page.intersected(view()), Qt::AlignCenter | Qt::TextWordWrap,
                     QObject::tr("No cards yet. Add a card in the Words panel, or drop pictures here."));
}

void SheetMarks::paintFocus(QPainter& painter) const {
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setPen(QPen(Ink::of(area_.palette()).accent, 2));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(area_.viewport()->rect().adjusted(1, 1, -1, -1));
}

}  // namespace tenter::desktop::row
