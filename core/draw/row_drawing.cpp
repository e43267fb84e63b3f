#include "draw/row_drawing.h"

#include <algorithm>
#include <cmath>

namespace tenter::draw {

namespace {

constexpr units::Colour white{0xff, 0xff, 0xff};
constexpr units::Colour black{0, 0, 0};
constexpr units::Colour scrollbarGrey{0xec, 0xec, 0xec};
constexpr units::Colour none{0, 0, 0, 0};

units::Colour orNone(const std::optional<units::Colour>& colour) {
    return colour.value_or(none);
}

double cardRadius(const LaidOutRow& row, const layout::LaidCard& card) {
    const auto& radius = row.settings().card.radius;
    return radius ? radius->resolve(basisOf(row, row.rem(), card.box.width)) : 0;
}

Corners pictureCorners(const LaidOutRow& row, const layout::LaidCard& card, const layout::LaidPart& part) {
    const project::Settings& settings = row.settings();
    const double own = settings.picture.radius
                           ? settings.picture.radius->resolve(basisOf(row, row.rem(), part.box.width))
                           : 0;
    if (!settings.card.bleed.value_or(false)) return Corners::all(own);
    // A picture that touches a corner of the card has the shape of that corner.
    const double inner = std::max(0.0, cardRadius(row, card) - card.border);
    const auto meets = [](double a, double b) { return std::abs(a - b) < 0.5; };
    const bool left = meets(part.box.x, card.box.x + card.border);
    const bool right = meets(part.box.right(), card.box.right() - card.border);
    const bool top = meets(part.box.y, card.box.y + card.border);
    const bool bottom = meets(part.box.bottom(), card.box.bottom() - card.border);
    const auto corner = [&](bool touches) { return touches ? inner : own; };
    return {corner(left && top), corner(right && top), corner(right && bottom), corner(left && bottom)};
}

class Writer {
public:
    Writer(const LaidOutRow& row, const Attention& attention, Drawing& out)
        : row_(row), attention_(attention), out_(out) {}

    void page(double height) {
        const layout::Layout& layout = row_.layout;
        const double tall = std::max(layout.pageHeight, height);
        fill({0, 0, layout.width, tall}, {}, white);
        fill(layout.container, {}, row_.page().container.background);
        fill(layout.row, {}, orNone(row_.settings().row.background));
        for (std::size_t i = 0; i < layout.cards.size(); ++i) {
            card_ = i;
            card(layout.cards[i]);
            card_.reset();
        }
        const double scrollbar = row_.project.page.scrollbar.width;
        if (scrollbar > 0) fill({layout.width - scrollbar, 0, scrollbar, tall}, {}, scrollbarGrey);
    }

private:
    template <class What>
    void add(What what) {
        out_.push_back({card_, part_, std::move(what)});
    }

    void fill(const layout::Box& box, const Corners& corners, units::Colour colour) {
        if (!colour.isTransparent()) add(FillBox{box, corners, colour});
    }

    void stroke(const layout::Box& box, const Corners& corners, double width, units::Colour colour) {
        if (!colour.isTransparent() && width > 0) add(StrokeBox{box, corners, width, colour});
    }

    void card(const layout::LaidCard& laid) {
        const project::CardSettings& settings = row_.settings().card;
        const double radius = cardRadius(row_, laid);
        const units::Colour background = orNone(settings.background);
        const units::LengthBasis basis = basisOf(row_, row_.rem());
        const auto length = [&](const std::optional<units::Length>& value) {
            return value ? value->resolve(basis) : 0.0;
        };
        const project::Shadow& shadow = settings.shadow;
        if (!orNone(shadow.colour).isTransparent())
            add(CastShadow{laid.box, radius, length(shadow.x), length(shadow.y), length(shadow.blur),
                           length(shadow.spread), *shadow.colour, background.alpha == 255});
        fill(laid.box, Corners::all(radius), background);
        stroke(laid.box, Corners::all(radius), laid.border, orNone(settings.border.colour));
        for (std::uint32_t i = 0; i < laid.partCount; ++i) {
            part_ = laid.firstPart + i;
            const layout::LaidPart& part = row_.layout.parts[*part_];
            if (part.picture)
                picture(laid, part);
            else
                text(part);
        }
        part_.reset();
    }

    void picture(const layout::LaidCard& card, const layout::LaidPart& part) {
        const project::Part* const source = sourceOf(row_, *card_, part);
        const auto* const described = source != nullptr ? std::get_if<project::PicturePart>(source) : nullptr;
        ShowPicture shown{part.box, pictureCorners(row_, card, part), "", 0.5, 0.5, ""};
        if (described != nullptr) {
            shown.file = described->file;
            shown.focusX = described->focusX;
            shown.focusY = described->focusY;
            shown.alt = described->alt;
        }
        add(std::move(shown));
    }

    void text(const layout::LaidPart& part) {
        const project::TextStyle* const style = styleOf(row_, part);
        if (style == nullptr) return;
        const bool hovered = attention_.hovered == *part_;
        const auto pick = [&](const std::optional<units::Colour>& plain,
                              const std::optional<units::Colour>& hover) {
            return orNone(hovered && hover ? hover : plain);
        };
        const units::LengthBasis basis = basisOf(row_, part.fontSize, part.box.width);
        const auto length = [&](const std::optional<units::Length>& value) {
            return value ? value->resolve(basis) : 0.0;
        };
        const Corners corners = Corners::all(length(style->radius));
        fill(part.box, corners, pick(style->background, style->hover.background));
        stroke(part.box, corners, part.border, pick(style->border.colour, style->hover.borderColour));
        if (attention_.focused == *part_ && !orNone(style->focus.colour).isTransparent())
            add(OutlineBox{part.box, corners, length(style->focus.offset), length(style->focus.width),
                           *style->focus.colour});
        ShowText shown{*part_, pick(style->colour, style->hover.colour),
                       style->slant == project::Slant::Italic, kindOf(row_, part) != "button"};
        if (!style->colour && !(hovered && style->hover.colour)) shown.colour = black;
        if (part.lineCount > 0 && !shown.colour.isTransparent()) add(shown);
    }

    const LaidOutRow& row_;
    const Attention& attention_;
    Drawing& out_;
    std::optional<std::size_t> card_, part_;
};

}  // namespace

double CastShadow::reach() const {
    return std::max(0.0, spread) + 1.5 * blur + std::max(std::abs(x), std::abs(y)) + 1;
}

void drawRow(const LaidOutRow& row, const Attention& attention, double height, Drawing& out) {
    out.clear();
    Writer(row, attention, out).page(height);
}

Drawing drawRow(const LaidOutRow& row) {
    Drawing out;
    drawRow(row, {}, 0, out);
    return out;
}

std::string placeholderText(const std::string& file) {
    return file.empty() ? "No picture chosen" : "Picture not found:\n" + file;
}

}  // namespace tenter::draw
