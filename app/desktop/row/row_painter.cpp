#include "row/row_painter.h"

#include <QFileInfo>
#include <cmath>

#include "row/boxes.h"
#include "row/ink.h"
#include "row/lookup.h"

namespace tenter::desktop::row {

namespace {

QColor over(const QColor& under, const QColor& colour) {
    return mixed(under, colour, colour.alphaF());
}

// A placeholder for a missing picture: the slot with a diagonal cross, and the file name.
void missingPicture(QPainter& painter, const QRect& rect, const QString& file, double scale) {
    const QColor ground(0xe6, 0xe6, 0xe4);
    const QColor line(0x9a, 0x9a, 0x98);
    const QColor text(0x33, 0x33, 0x33);
    painter.save();
    painter.setClipRect(rect, Qt::IntersectClip);
    painter.fillRect(rect, ground);
    painter.setRenderHint(QPainter::Antialiasing, true);
    painter.setPen(QPen(line, scale));
    painter.drawLine(rect.topLeft(), rect.bottomRight());
    painter.drawLine(rect.topRight(), rect.bottomLeft());
    QFont font = painter.font();
    font.setPixelSize(std::max(1, static_cast<int>(std::lround(13 * scale))));
    painter.setFont(font);
    const QString label =
        file.isEmpty() ? QObject::tr("No picture chosen") : QObject::tr("Picture not found:\n%1").arg(file);
    const QRect place =
        painter.fontMetrics().boundingRect(rect, Qt::AlignCenter | Qt::TextWrapAnywhere, label);
    painter.fillRect(place.adjusted(-8, -4, 8, 4), ground);
    painter.setPen(text);
    painter.drawText(rect, Qt::AlignCenter | Qt::TextWrapAnywhere, label);
    painter.restore();
}

double cardRadius(const LaidOutRow& row, const layout::LaidCard& card) {
    const auto& radius = row.settings().card.radius;
    return radius ? radius->resolve(basisOf(row, row.rem(), card.box.width)) : 0;
}

Corners pictureCorners(const LaidOutRow& row, const layout::LaidCard& card, const layout::LaidPart& part,
                       double scale) {
    const project::Settings& settings = row.settings();
    const double own = settings.picture.radius
                           ? settings.picture.radius->resolve(basisOf(row, row.rem(), part.box.width))
                           : 0;
    if (!settings.card.bleed.value_or(false)) return Corners::all(own * scale);
    // A picture that touches a corner of the card has the shape of that corner.
    const double inner = std::max(0.0, cardRadius(row, card) - card.border);
    const auto meets = [](double a, double b) { return std::abs(a - b) < 0.5; };
    const bool left = meets(part.box.x, card.box.x + card.border);
    const bool right = meets(part.box.right(), card.box.right() - card.border);
    const bool top = meets(part.box.y, card.box.y + card.border);
    const bool bottom = meets(part.box.bottom(), card.box.bottom() - card.border);
    const auto corner = [&](bool touches) { return (touches ? inner : own) * scale; };
    return {corner(left && top), corner(right && top), corner(right && bottom), corner(left && bottom)};
}

}  // namespace

std::optional<std::size_t> hoverTarget(const LaidOutRow& row, const QPointF& page) {
    const layout::Layout& layout = row.layout;
    const bool linked = row.settings().card.linked.value_or(false);
    if (linked) {
        if (const auto card = cardAt(layout, page)) {
            const layout::LaidCard& laid = layout.cards[*card];
            for (std::uint32_t i = 0; i < laid.partCount; ++i)
                if (kindOf(row, layout.parts[laid.firstPart + i]) == "button") return laid.firstPart + i;
        }
    }
    return partAt(layout, page);
}

QColor groundOf(const LaidOutRow& row) {
    const project::Settings& settings = row.settings();
    QColor ground = over(Qt::white, colourOf(row.page().container.background));
    if (settings.row.background) ground = over(ground, colourOf(*settings.row.background));
    if (settings.card.background) ground = over(ground, colourOf(*settings.card.background));
    return ground;
}

void RowPainter::paint(Canvas& canvas, const LaidOutRow& row, const Attention& attention,
                       const QColor& desk) {
    const layout::Layout& layout = row.layout;
    const project::Settings& settings = row.settings();
    const project::Page& page = row.project.page;
    QPainter painter(&canvas.image);
    painter.fillRect(canvas.image.rect(), desk);
    const QRect sheet = canvas.snapped(
        {0, 0, layout.width,
         std::max(layout.pageHeight, (canvas.image.height() - canvas.top) / canvas.scale + 1)});
    painter.fillRect(sheet, Qt::white);
    painter.setClipRect(sheet);
    painter.fillRect(canvas.snapped(layout.container), colourOf(row.page().container.background));
    if (settings.row.background)
        painter.fillRect(canvas.snapped(layout.row), colourOf(*settings.row.background));
    for (std::size_t i = 0; i < layout.cards.size(); ++i)
        card(painter, canvas, row, i, attention);
    if (page.scrollbar.width > 0) {
        const double left = layout.width - page.scrollbar.width;
        painter.fillRect(canvas.snapped({left, 0, page.scrollbar.width, sheet.height() / canvas.scale}),
                         QColor(0xec, 0xec, 0xec));
    }
    text_.trim();
}

void RowPainter::card(QPainter& painter, Canvas& canvas, const LaidOutRow& row, std::size_t index,
                      const Attention& attention) {
    const layout::Layout& layout = row.layout;
    const project::CardSettings& settings = row.settings().card;
    const layout::LaidCard& card = layout.cards[index];
    const QRect box = canvas.snapped(card.box);
    const double radius = cardRadius(row, card) * canvas.scale;
    const Corners corners = Corners::all(radius);
    const QColor background = settings.background ? colourOf(*settings.background) : QColor(Qt::transparent);

    const units::LengthBasis basis = basisOf(row, row.rem());
    const auto length = [&](const std::optional<units::Length>& value) {
        return value ? value->resolve(basis) * canvas.scale : 0.0;
    };
    ShadowLook shadow;
    if (settings.shadow.colour) {
        shadow = {length(settings.shadow.x), length(settings.shadow.y), length(settings.shadow.blur),
                  length(settings.shadow.spread), colourOf(*settings.shadow.colour)};
        const double reach = Shadows::reach(shadow);
        if (canvas.shows(QRectF(box).adjusted(-reach, -reach, reach, reach)))
            shadows_.paint(painter, box, radius, shadow, background.alpha() == 255);
    }
    if (canvas.shows(box)) {
        fillBox(painter, box, corners, background);
        if (settings.border.colour)
            strokeBox(painter, box, corners, canvas.borderWidth(card.border),
                      colourOf(*settings.border.colour));
    }
    for (std::uint32_t i = 0; i < card.partCount; ++i) {
        const std::size_t at = card.firstPart + i;
        const layout::LaidPart& part = layout.parts[at];
        // Text can extend beyond its box, and a focus ring does, so the visible area is enlarged.
        const double beyond = 48 * canvas.scale;
        if (!canvas.shows(
                QRectF(canvas.snapped(part.box)).adjusted(-box.width(), -beyond, box.width(), beyond)))
            continue;
        if (part.picture)
            picture(painter, canvas, row, index, part);
        else
            text(painter, canvas, row, part, attention.hovered == at, attention.focused == at);
    }
}

void RowPainter::picture(QPainter& painter, Canvas& canvas, const LaidOutRow& row, std::size_t card,
                         const layout::LaidPart& part) {
    const QRect rect = canvas.snapped(part.box);
    if (rect.isEmpty()) return;
    const project::Part* const source = sourceOf(row, card, part);
    const auto* const described = source != nullptr ? std::get_if<project::PicturePart>(source) : nullptr;
    if (described == nullptr || described->file.empty()) {
        missingPicture(painter, rect, {}, canvas.scale);
        return;
    }
    const QString name = QString::fromStdString(described->file);
    const QString file = QString::fromStdString((document_.folder() / described->file).string());
    const Pictures::Found found = pictures_.find(file, {rect.size(), described->focusX, described->focusY});
    if (found.state == Pictures::State::Missing) {
        missingPicture(painter, rect, name, canvas.scale);
        return;
    }
    const Corners corners = pictureCorners(row, row.layout.cards[card], part, canvas.scale);
    if (found.state == Pictures::State::Loading) {
        fillBox(painter, rect, corners, QColor(0x80, 0x80, 0x80, 0x30));
        return;
    }
    fillBox(painter, rect, corners, found.image);
}

void RowPainter::text(QPainter& painter, Canvas& canvas, const LaidOutRow& row, const layout::LaidPart& part,
                      bool hovered, bool focused) {
    const project::TextStyle* const style = styleOf(row, part);
    if (style == nullptr) return;
    const auto pick = [&](const std::optional<units::Colour>& plain,
                          const std::optional<units::Colour>& hover) {
        const std::optional<units::Colour>& chosen = hovered && hover ? hover : plain;
        return chosen ? colourOf(*chosen) : QColor(Qt::transparent);
    };
    const QRect box = canvas.snapped(part.box);
    const units::LengthBasis basis = basisOf(row, part.fontSize, part.box.width);
    const auto length = [&](const std::optional<units::Length>& value) {
        return value ? value->resolve(basis) * canvas.scale : 0.0;
    };
    const Corners corners = Corners::all(length(style->radius));
    fillBox(painter, box, corners, pick(style->background, style->hover.background));
    strokeBox(painter, box, corners, canvas.borderWidth(part.border),
              pick(style->border.colour, style->hover.borderColour));
    if (focused && style->focus.colour) {
        const int offset = static_cast<int>(std::lround(length(style->focus.offset)));
        const int width = canvas.borderWidth(style->focus.width ? style->focus.width->resolve(basis) : 0);
        const int out = offset + width;
        const double radius = corners.topLeft > 0 ? corners.topLeft + out : 0;
        strokeBox(painter, box.adjusted(-out, -out, out, out), Corners::all(radius), width,
                  colourOf(*style->focus.colour));
    }
    TextLook look;
    look.colour = pick(style->colour, style->hover.colour);
    if (!style->colour && !(hovered && style->hover.colour)) look.colour = Qt::black;
    look.italic = style->slant == project::Slant::Italic;
    look.underlineLinks = kindOf(row, part) != "button";
    text_.paint(canvas, row.layout, part, look);
}

}  // namespace tenter::desktop::row
