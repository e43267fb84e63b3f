#include "row/overlays.h"

#include <QPainterPath>
#include <QRegularExpression>
#include <cmath>

#include "document/wording.h"
#include "language/language.h"
#include "row/canvas.h"
#include "row/dimension.h"
#include "row/lookup.h"
#include "row/row_painter.h"

namespace tenter::desktop::row {

namespace {

using OptionalLength = std::optional<units::Length>;

// A length as it is set, such as `1.5 em`; if none is set, the length in the layout in px.
QString valueOf(const OptionalLength& setting, double laid) {
    if (!setting || setting->isKeyword()) return pixels(laid, 1);
    static const QRegularExpression unit("^(-?[0-9.]+)([a-z%]+)$");
    return QString::fromStdString(setting->css())
        .replace(unit, "\\1\u00A0\\2")
        .replace('-', QChar(0x2212))
        .replace('.', language::decimalPoint());
}

QRectF shrunk(const QRectF& rect, const layout::Edges& edges, double zoom) {
    return rect.adjusted(edges.left * zoom, edges.top * zoom, -edges.right * zoom, -edges.bottom * zoom);
}

// The colour of the card's text, because overlays on a card must be visible on it.
QColor inkOf(const OverlayTools& tools, const layout::LaidCard& card) {
    for (std::uint32_t i = 0; i < card.partCount; ++i) {
        const auto* style = styleOf(tools.row, tools.row.layout.parts[card.firstPart + i]);
        if (style != nullptr && style->colour && !(style->background && !style->background->isTransparent()))
            return colourOf(*style->colour);
    }
    const QColor ground = groundOf(tools.row);
    return contrast(ground, Qt::white) > contrast(ground, Qt::black) ? Qt::white : Qt::black;
}

DimensionLook lookOn(const QColor& ink, const QColor& ground) {
    return {mixed(ground, ink, 0.75),
            legible(ink, ground, contrast(ground, Qt::black) > 4.5 ? Qt::black : Qt::white), ground};
}

bool near(const OverlayTools& tools, const QRectF& rect) {
    return rect.adjusted(-64, -64, 64, 64).intersects(tools.view);
}

// The padding of each side, if there is room for the value on the hatching.
void paddingValues(OverlayTools& tools, const QRectF& box, const layout::Edges& edges,
                   const project::Sides& set, const DimensionLook& look) {
    const double zoom = tools.at.zoom;
    const QFontMetricsF metrics(tools.painter.font());
    const double room = metrics.ascent();
    if (edges.top * zoom >= room)
        paintValue(tools.painter, {box.center().x(), box.top() + edges.top * zoom / 2},
                   valueOf(set.top, edges.top), look);
    if (edges.bottom * zoom >= room)
        paintValue(tools.painter, {box.center().x(), box.bottom() - edges.bottom * zoom / 2},
                   valueOf(set.bottom, edges.bottom), look);
    const auto across = [&](const OptionalLength& setting, double laid, double centre) {
        const QString value = valueOf(setting, laid);
        if (laid * zoom < room) return;
        if (laid * zoom >= metrics.horizontalAdvance(value) + 4) {
            paintValue(tools.painter, {centre, box.center().y()}, value, look);
            return;
        }
        tools.painter.save();
        tools.painter.translate(centre, box.center().y());
        tools.painter.rotate(-90);
        if (box.height() > metrics.horizontalAdvance(value) + 8)
            paintValue(tools.painter, {0, 0}, value, look);
        tools.painter.restore();
    };
    across(set.left, edges.left, box.left() + edges.left * zoom / 2);
    across(set.right, edges.right, box.right() - edges.right * zoom / 2);
}

void partBox(OverlayTools& tools, const layout::LaidPart& part, const QColor& ink, const QColor& ground) {
    const project::TextStyle* const style = styleOf(tools.row, part);
    const project::Settings& settings = tools.row.settings();
    const DimensionLook look = lookOn(ink, ground);
    const QRectF box = tools.at.rect(part.box);
    const double zoom = tools.at.zoom;
    const bool filled = style != nullptr && style->background && !style->background->isTransparent();
    const QColor inside =
        filled ? mixed(ground, colourOf(*style->background), colourOf(*style->background).alphaF()) : ground;
    const QColor insideInk = filled && style->colour ? colourOf(*style->colour) : ink;
    const layout::Edges rim{part.border, part.border, part.border, part.border};
    const QRectF paddingBox = shrunk(box, rim, zoom);
    const QRectF content = shrunk(paddingBox, part.padding, zoom);
    paintHatching(tools.painter, paddingBox, content, mixed(inside, insideInk, 0.4));
    tools.painter.setRenderHint(QPainter::Antialiasing, false);
    tools.painter.setBrush(Qt::NoBrush);
    tools.painter.setPen(QPen(look.line, 1));
    tools.painter.drawRect(QRectF(box.toAlignedRect()).adjusted(0, 0, -1, -1));
    if (style != nullptr)
        paddingValues(tools, paddingBox, part.padding, style->padding, lookOn(insideInk, inside));

    const project::Sides& margin = style != nullptr ? style->margin : settings.picture.margin;
    // The top margin of a part touches the bottom margin of the part above it, so their lines have different
    // positions.
    const double at = box.left() + std::min(80.0, box.width() / 2);
    const double under = box.left() + std::min(24.0, box.width() / 4);
    if (part.margin.top > 0)
        paintDimension(tools.painter, {at, box.top() - part.margin.top * zoom}, {at, box.top()},
                       valueOf(margin.top, part.margin.top), look);
    if (part.margin.bottom > 0)
        paintDimension(tools.painter, {under, box.bottom()},
                       {under, box.bottom() + part.margin.bottom * zoom},
                       valueOf(margin.bottom, part.margin.bottom), look);
    const double level = box.center().y();
    if (part.margin.left > 0)
        paintDimension(tools.painter, {box.left() - part.margin.left * zoom, level}, {box.left(), level},
                       valueOf(margin.left, part.margin.left), look);
    if (part.margin.right > 0)
        paintDimension(tools.painter, {box.right(), level}, {box.right() + part.margin.right * zoom, level},
                       valueOf(margin.right, part.margin.right), look);
}

void gaps(OverlayTools& tools) {
    const layout::Layout& layout = tools.row.layout;
    const project::RowSettings& settings = tools.row.settings().row;
    for (std::size_t i = 0; i + 1 < layout.cards.size(); ++i) {
        layout::Box one = layout.cards[i].box;
        layout::Box next = layout.cards[i + 1].box;
        const QColor ground = settings.background && !settings.background->isTransparent()
                                  ? colourOf(*settings.background)
                                  : colourOf(tools.row.page().container.background);
        const QColor ink = contrast(ground, Qt::black) > contrast(ground, Qt::white) ? Qt::black : Qt::white;
        const DimensionLook look = lookOn(ink, ground.alpha() == 255 ? ground : QColor(Qt::white));
        if (one.y == next.y) {
            if (next.x < one.x) std::swap(one, next);
            const double level = tools.at.y(one.y) + 20;
            paintDimension(tools.painter, {tools.at.x(one.right()), level}, {tools.at.x(next.x), level},
                           valueOf(settings.columnGap, next.x - one.right()), look);
        } else if (next.y > one.bottom()) {
            const double across = tools.at.x(next.x) + std::min(96.0, next.width * tools.at.zoom / 2);
            paintDimension(tools.painter, {across, tools.at.y(one.bottom())}, {across, tools.at.y(next.y)},
                           valueOf(settings.rowGap, next.y - one.bottom()), look);
        }
    }
}

struct Comfortable {
    int shortest, longest;
};

// Bringhurst, The Elements of Typographic Style § 2.1.2 (from memory): 45 to 75 characters to a line in a
// single column, 40 to 50 in several.
Comfortable comfortable(int columns) {
    return columns > 1 ? Comfortable{40, 50} : Comfortable{45, 75};
}

/// Draws a bracket beside the lines of part `index`. It continues as a dashed line up to line `most` if
/// another browser has more lines. `label` is drawn at its top.
void bracket(OverlayTools& tools, std::size_t index, std::uint32_t most, const QString& label) {
    const layout::Layout& layout = tools.row.layout;
    const layout::LaidPart& part = layout.parts[index];
    const layout::LaidCard& card = layout.cards[cardOf(layout, index)];
    const DimensionLook look = lookOn(inkOf(tools, card), groundOf(tools.row));
    const QRectF box = tools.at.rect(part.box);
    const bool leftwards = part.paragraph != nullptr && part.paragraph->rightToLeft();
    const double x = std::round(leftwards ? box.right() + 6 : box.left() - 6) + 0.5;
    const double into = leftwards ? -4 : 4;
    const double line = part.lineHeight * tools.at.zoom;
    const double top = std::round(box.top() + (part.border + part.padding.top) * tools.at.zoom) + 0.5;
    const double middle = std::round(top + part.lineCount * line) + 0.5;
    const double bottom = std::round(top + most * line) + 0.5;
    tools.painter.setRenderHint(QPainter::Antialiasing, false);
    tools.painter.setPen(QPen(look.line, 1));
    tools.painter.drawLine(QPointF(x, top), QPointF(x, middle));
    tools.painter.drawLine(QPointF(x, top), QPointF(x + into, top));
    tools.painter.drawLine(QPointF(x, middle), QPointF(x + into, middle));
    if (bottom > middle) {
        tools.painter.setPen(QPen(look.line, 1, Qt::DashLine));
        tools.painter.drawLine(QPointF(x, middle), QPointF(x, bottom));
        tools.painter.setPen(QPen(look.line, 1));
        tools.painter.drawLine(QPointF(x, bottom), QPointF(x + into, bottom));
    }
    const QFontMetricsF metrics(tools.painter.font());
    const double room = metrics.horizontalAdvance(label) / 2 + 2;
    paintValue(tools.painter, {leftwards ? x - room : x + room, top - metrics.ascent() / 2 - 2}, label, look);
}

}  // namespace

void paintBoxes(OverlayTools& tools) {
    const layout::Layout& layout = tools.row.layout;
    const project::Settings& settings = tools.row.settings();
    for (const layout::LaidCard& card : layout.cards) {
        const QRectF box = tools.at.rect(card.box);
        if (!near(tools, box)) continue;
        const QColor ground = groundOf(tools.row);
        const QColor ink = inkOf(tools, card);
        const DimensionLook look = lookOn(ink, ground);
        const layout::Edges rim{card.border, card.border, card.border, card.border};
        const QRectF paddingBox = shrunk(box, rim, tools.at.zoom);
        paintHatching(tools.painter, paddingBox, shrunk(paddingBox, card.padding, tools.at.zoom),
                      mixed(ground, ink, 0.22));
        for (std::uint32_t i = 0; i < card.partCount; ++i) {
            const layout::LaidPart& part = layout.parts[card.firstPart + i];
            if (near(tools, tools.at.rect(part.box))) partBox(tools, part, ink, ground);
        }
        paddingValues(tools, paddingBox, card.padding, settings.card.padding, look);
        tools.painter.setRenderHint(QPainter::Antialiasing, false);
        tools.painter.setBrush(Qt::NoBrush);
        tools.painter.setPen(QPen(look.line, 1));
        tools.painter.drawRect(QRectF(box.toAlignedRect()).adjusted(0, 0, -1, -1));
    }
    gaps(tools);
}

void paintMeasure(OverlayTools& tools) {
    const layout::Layout& layout = tools.row.layout;
    const int columns = tools.row.settings().row.columns.value_or(1);
    const Comfortable range = comfortable(columns);
    const QFontMetricsF metrics(tools.painter.font());
    for (std::size_t i = 0; i < layout.parts.size(); ++i) {
        const layout::LaidPart& part = layout.parts[i];
        const std::string kind = kindOf(tools.row, part);
        const bool running = kind == "body" || (kind != "button" && part.lineCount > 2);
        const QRectF box = tools.at.rect(part.box);
        if (part.picture || !running || part.measure <= 0 || !near(tools, box)) continue;
        const layout::LaidCard& card = layout.cards[cardOf(layout, i)];
        const QColor ground = groundOf(tools.row);
        const project::TextStyle* const style = styleOf(tools.row, part);
        const bool plain = style != nullptr && style->colour && !style->background;
        const DimensionLook look = lookOn(plain ? colourOf(*style->colour) : inkOf(tools, card), ground);
        const bool leftwards = part.paragraph != nullptr && part.paragraph->rightToLeft();
        const double character = part.available / part.measure * tools.at.zoom;
        const double start = leftwards ? box.right() - (part.border + part.padding.right) * tools.at.zoom
                                       : box.left() + (part.border + part.padding.left) * tools.at.zoom;
        const double direction = leftwards ? -1 : 1;
        const double level = std::round(box.top()) - 1.5;
        const double end = start + direction * part.available * tools.at.zoom;
        tools.painter.setRenderHint(QPainter::Antialiasing, false);
        tools.painter.setPen(QPen(look.line, 1));
        tools.painter.drawLine(QPointF(start, level), QPointF(end, level));
        const double room = part.available * tools.at.zoom;
        // `before`: how far the middle of the value is moved back from the tick, px.
        const auto tick = [&](double along, const QString& value, double length, double before) {
            const double x = std::round(start + direction * along) + 0.5;
            tools.painter.setPen(QPen(look.line, 1));
            tools.painter.drawLine(QPointF(x, level - length), QPointF(x, level + length));
            paintValue(tools.painter, {x - direction * before, level - length - 1 - metrics.ascent() / 2},
                       value, look);
        };
        // Ticks beyond the end of the column are left out: the measure at its end is then the limit.
        const QString measure = QObject::tr("%1 characters").arg(figure(part.measure, 1));
        const double length = metrics.horizontalAdvance(measure);
        const double closest = length + metrics.horizontalAdvance(QStringLiteral("000"));
        for (const int count : {range.shortest, range.longest})
            if (count * character < room - closest) tick(count * character, QString::number(count), 4, 0);
        tick(room, measure, 6, length / 2);
    }
}

void paintTightFits(OverlayTools& tools) {
    const layout::Layout& layout = tools.row.layout;
    for (std::size_t i = 0; i < layout.parts.size(); ++i) {
        const layout::LaidPart& part = layout.parts[i];
        const QRectF box = tools.at.rect(part.box);
        if (part.picture || part.slack >= text::tightSlack || !near(tools, box)) continue;
        const QColor ground = groundOf(tools.row);
        const QColor strong =
            contrast(ground, Qt::black) > contrast(ground, Qt::white) ? Qt::black : Qt::white;
        const QColor accent = legible(tools.ink.accent, ground, strong);
        const bool leftwards = part.paragraph != nullptr && part.paragraph->rightToLeft();
        for (std::uint32_t n = 0; n < part.lineCount; ++n) {
            const layout::LaidLine& laid = layout.lines[part.firstLine + n];
            if (laid.line.slack >= text::tightSlack) continue;
            const double x = tools.at.x(leftwards ? laid.x : laid.x + laid.line.width);
            const double y = tools.at.y(laid.baseline - part.glyphSize * 0.35);
            const double out = leftwards ? -1 : 1;
            QPainterPath wedge(QPointF(x + out, y));
            wedge.lineTo(x + out * 8, y - 5);
            wedge.lineTo(x + out * 8, y + 5);
            wedge.closeSubpath();
            tools.painter.setRenderHint(QPainter::Antialiasing, true);
            tools.painter.fillPath(wedge, accent);
            const QString value = QObject::tr("slack %1 of the line").arg(percent(laid.line.slack, 2));
            const double width = QFontMetricsF(tools.painter.font()).horizontalAdvance(value);
            paintValue(tools.painter, {x + out * (12 + width / 2), y}, value, {accent, accent, ground});
        }
    }
}

void paintEngines(OverlayTools& tools) {
    const layout::Layout& layout = tools.row.layout;
    for (std::size_t i = 0; i < layout.parts.size(); ++i) {
        const layout::LaidPart& part = layout.parts[i];
        if (part.picture || !near(tools, tools.at.rect(part.box))) continue;
        QStringList labels;
        std::uint32_t most = part.lineCount;
        for (const text::BreakProfile* profile : text::profiles()) {
            const std::uint32_t lines = tools.layouts.layout(tools.variant, *profile).parts[i].lineCount;
            if (lines == part.lineCount) continue;
            labels << QStringLiteral("%1: %2").arg(engineTitle(*profile), linesTitle(lines));
            most = std::max(most, lines);
        }
        if (!labels.isEmpty()) bracket(tools, i, most, labels.join(QStringLiteral(" · ")));
    }
}

}  // namespace tenter::desktop::row
