#include "emit/band_tokens.h"

#include "emit/values.h"
#include "units/quantities.h"

namespace tenter::emit {

using project::Json;
using units::Length;
using units::Unit;
using Path = std::vector<std::string>;

namespace {

constexpr units::Colour noColour{0, 0, 0, 0};

/// The font sizes that em refers to, CSS px. Equal if there is no ramp.
struct Ems {
    double narrow = 16;
    double wide = 16;
    [[nodiscard]] bool isFlat() const { return narrow == wide; }
};

class BandTokens {
public:
    explicit BandTokens(const TokenScope& scope) : scope_(scope) {}

    void addRow() {
        const project::RowSettings& row = scope_.settings.row;
        add({"row", "columns"}, token("number", row.columns.value_or(1), "Cards side by side."), false);
        length({"row", "width"}, row.width, "the container's content width", ofRoot());
        length({"row", "max-width"}, row.maxWidth, "the container's content width", ofRoot());
        length({"row", "column-gap"}, row.columnGap, "the row's content width", ofRoot());
        length({"row", "row-gap"}, row.rowGap, "the row's content width", ofRoot());
        sides({"row", "padding"}, row.padding, "the container's content width", ofRoot());
        colour({"row", "background"}, row.background);
    }

    void addCard() {
        const project::CardSettings& card = scope_.settings.card;
        sides({"card", "padding"}, card.padding, "the column", ofRoot());
        colour({"card", "background"}, card.background);
        border({"card", "border"}, card.border, ofRoot());
        length({"card", "border-radius"}, card.radius, "the card", ofRoot());
        shadow(card.shadow);
    }

    void addPicture() {
        const project::PictureSettings& picture = scope_.settings.picture;
        const project::Ratio ratio = picture.ratio.value_or(project::Ratio{});
        if (!ratio.isOwn())
            add({"picture", "aspect-ratio"},
                token("number", tokenNumber(ratio.width / ratio.height), emit::ratio(ratio) + "."), false);
        length({"picture", "border-radius"}, picture.radius, "the picture", ofRoot());
        sides({"picture", "margin"}, picture.margin, "the card's content width", ofRoot());
    }

    void addText(const std::string& role) {
        const project::TextStyle* style = scope_.settings.text.find(role);
        if (style == nullptr) return;
        const units::Ramp ramp = style->size.value_or(units::Ramp::flat(16));
        const Ems ems{ramp.from().size, ramp.to().size};
        const Path at{"text", role};
        const std::string what =
            style->follow == project::Follow::Card ? "the card's content" : "the viewport";
        ends(under(at, "font-size"), ems, [&](double em, const std::string& end) {
            const double width = end == "narrow" ? ramp.from().width : ramp.to().width;
            return token("dimension", scope_.unit.dimension(em),
                         end.empty() ? "" : "Where " + what + " is " + units::px(width) + " wide.");
        });
        if (!ems.isFlat()) {
            rampWidth(under(at, "font-size", "narrow-width"), ramp.from().width, what);
            rampWidth(under(at, "font-size", "wide-width"), ramp.to().width, what);
        }
        ends(under(at, "typography"), ems,
             [&](double em, const std::string&) { return typography(*style, em); });
        colour(under(at, "color"), style->colour);
        sides(under(at, "margin"), style->margin, "the card's content width", ems);
        sides(under(at, "padding"), style->padding, "the card's content width", ems);
        colour(under(at, "background"), style->background);
        border(under(at, "border"), style->border, ems);
        length(under(at, "border-radius"), style->radius, "the box", ems);
        hover(under(at, "hover"), style->hover);
        if (style->focus.colour) {
            colour(under(at, "focus", "outline-color"), style->focus.colour);
            length(under(at, "focus", "outline-width"), style->focus.width, "the box", ems);
            length(under(at, "focus", "outline-offset"), style->focus.offset, "the box", ems);
        }
    }

    [[nodiscard]] TokenEntries take() { return std::move(entries_); }

private:
    static Path under(Path path, const std::string& name) {
        path.push_back(name);
        return path;
    }
    static Path under(const Path& path, const std::string& group, const std::string& name) {
        return under(under(path, group), name);
    }
    void rampWidth(const Path& path, double width, const std::string& what) {
        add(path, token("dimension", scope_.unit.dimension(width), "Width of " + what + " at this end."),
            false);
    }
    [[nodiscard]] Ems ofRoot() const { return {scope_.rem, scope_.rem}; }

    void add(Path path, Json token, bool neutral) {
        entries_.push_back({std::move(path), std::move(token), neutral});
    }

    /// One token where em is the same everywhere; else one at each end of the ramp. `make` gets em in CSS px
    /// and the name of the end; the name is empty for a single token.
    template <class Make>
    void ends(const Path& path, const Ems& ems, const Make& make, bool neutral = false) {
        if (ems.isFlat()) return add(path, make(ems.narrow, ""), neutral);
        add(under(path, "narrow"), make(ems.narrow, "narrow"), neutral);
        add(under(path, "wide"), make(ems.wide, "wide"), neutral);
    }

    /// `length` in CSS px, where em is `em` CSS px.
    [[nodiscard]] double pixels(const Length& length, double em) const {
        return length.resolve(units::LengthBasis{.em = em, .rem = scope_.rem});
    }

    /// A length; `whole` names what its percentages refer to. Keywords have no token.
    void length(const Path& path, const std::optional<Length>& set, const std::string& whole,
                const Ems& ems) {
        const Length length = set.value_or(Length());
        if (length.isKeyword()) return;
        const bool share =
            length.unit() == Unit::Percent || length.unit() == Unit::Vw || length.unit() == Unit::Cqi;
        if (share) {
            const std::string of = length.unit() == Unit::Vw    ? "the viewport"
                                   : length.unit() == Unit::Cqi ? "the card's content width"
                                                                : whole;
            return add(path,
                       token("number", tokenNumber(length.value() / 100),
                             "Share of " + of + "; " + length.css() + " in the stylesheet."),
                       false);
        }
        const bool follows = length.unit() == Unit::Em;
        const std::string said =
            follows ? length.css() + " in the stylesheet: a multiple of the font size." : std::string();
        ends(
            path, follows ? ems : Ems{scope_.rem, scope_.rem},
            [&](double em, const std::string&) {
                return token("dimension", scope_.unit.dimension(pixels(length, em)), said);
            },
            length.isZero());
    }

    void sides(const Path& path, const project::Sides& sides, const std::string& whole, const Ems& ems) {
        length(under(path, "top"), sides.top, whole, ems);
        length(under(path, "right"), sides.right, whole, ems);
        length(under(path, "bottom"), sides.bottom, whole, ems);
        length(under(path, "left"), sides.left, whole, ems);
    }

    void colour(const Path& path, const std::optional<units::Colour>& set) {
        const units::Colour colour = set.value_or(noColour);
        add(path, token("color", tokenColour(colour)), colour.isTransparent());
    }

    void border(const Path& path, const project::Border& border, const Ems& ems) {
        const Length width = border.width.value_or(Length());
        ends(
            path, width.unit() == Unit::Em ? ems : ofRoot(),
            [&](double em, const std::string&) {
                return token("border", Json{{"color", tokenColour(border.colour.value_or(noColour))},
                                            {"width", scope_.unit.dimension(pixels(width, em))},
                                            {"style", "solid"}});
            },
            width.isZero());
    }

    void shadow(const project::Shadow& shadow) {
        const auto dimension = [&](const std::optional<Length>& length) {
            return scope_.unit.dimension(pixels(length.value_or(Length()), scope_.rem));
        };
        add({"card", "box-shadow"},
            token("shadow", Json{{"color", tokenColour(shadow.colour.value_or(noColour))},
                                 {"offsetX", dimension(shadow.x)},
                                 {"offsetY", dimension(shadow.y)},
                                 {"blur", dimension(shadow.blur)},
                                 {"spread", dimension(shadow.spread)}}),
            emit::shadow(shadow) == "none");
    }

    void hover(const Path& path, const project::Hover& hover) {
        if (hover.colour) colour(under(path, "color"), hover.colour);
        if (hover.background) colour(under(path, "background"), hover.background);
        if (hover.borderColour) colour(under(path, "border-color"), hover.borderColour);
    }

    [[nodiscard]] Json typography(const project::TextStyle& style, double em) const {
        const units::LineHeight height = style.lineHeight.value_or(units::LineHeight::times(1.4));
        const double lines = height.isNumber() ? height.number() : pixels(height.length(), em) / em;
        Json value{
            {"fontFamily", style.family.value_or(Path{"sans-serif"})},
            {"fontSize", scope_.unit.dimension(em)},
            {"fontWeight", tokenNumber(style.weight.value_or(400))},
            {"letterSpacing", scope_.unit.dimension(pixels(style.letterSpacing.value_or(Length()), em))},
            {"lineHeight", tokenNumber(lines)}};
        if (value["fontFamily"].empty()) value["fontFamily"] = Json::array({"sans-serif"});
        // The format has no member for these.
        std::string said;
        if (style.slant == project::Slant::Italic) said += "Italic. ";
        if (style.letterCase == project::LetterCase::Uppercase) said += "Uppercase. ";
        if (style.letterCase == project::LetterCase::Capitalize) said += "Words start with a capital. ";
        if (!said.empty()) said.pop_back();
        return token("typography", std::move(value), said);
    }

    const TokenScope& scope_;
    TokenEntries entries_;
};

}  // namespace

TokenEntries bandTokens(const TokenScope& scope) {
    BandTokens collector(scope);
    collector.addRow();
    collector.addCard();
    collector.addPicture();
    for (const RoleUse& use : scope.uses)
        collector.addText(use.role);
    return collector.take();
}

}  // namespace tenter::emit
