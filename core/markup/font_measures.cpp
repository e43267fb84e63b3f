#include "markup/font_measures.h"

#include <hb-ot.h>

#include <cstdlib>
#include <map>
#include <memory>
#include <tuple>

#include "css/ascii.h"
#include "css/token_cursor.h"
#include "text/fonts.h"

namespace tenter::markup {

namespace {

/// The families of a list, without quotation marks.
std::vector<std::string> familiesIn(const std::string& list) {
    std::vector<std::string> families;
    std::string family;
    for (css::TokenCursor cursor(list);; cursor.step()) {
        const css::Token& token = cursor.token();
        if (token.is(css::TokenKind::Comma) || token.is(css::TokenKind::End)) {
            if (!family.empty()) families.push_back(std::move(family));
            family.clear();
            if (token.is(css::TokenKind::End)) return families;
        } else if (!token.is(css::TokenKind::Whitespace)) {
            family.append(family.empty() ? "" : " ").append(token.text);
        }
    }
}

double weightIn(const std::string& text) {
    if (text == "bold" || text == "bolder") return 700;
    const double number = std::strtod(text.c_str(), nullptr);
    return number >= 1 && number <= 1000 ? number : 400;
}

/// The advance of a character in em; `otherwise` if the font has no glyph for it.
double advanceOf(const text::Face& face, hb_codepoint_t character, double otherwise) {
    hb_codepoint_t glyph = 0;
    if (hb_font_get_nominal_glyph(face.font(), character, &glyph) == 0) return otherwise;
    return hb_font_get_glyph_h_advance(face.font(), glyph) / face.scale();
}

double metricOf(const text::Face& face, hb_ot_metrics_tag_t metric, double otherwise) {
    hb_position_t position = 0;
    const bool has = hb_ot_metrics_get_position(face.font(), metric, &position) != 0 && position > 0;
    return has ? position / face.scale() : otherwise;
}

bool isGeneric(std::string_view family) {
    return css::sameIgnoringCase(family, "serif") || css::sameIgnoringCase(family, "sans-serif") ||
           css::sameIgnoringCase(family, "monospace") || css::sameIgnoringCase(family, "system-ui");
}

bool isOfOneSystem(std::string_view family) {
    return css::sameIgnoringCase(family, "-apple-system") ||
           css::sameIgnoringCase(family, "BlinkMacSystemFont") || css::lowered(family).starts_with("ui-");
}

class Lookup {
public:
    std::optional<css::FontMeasures> find(const std::string& families, const std::string& weight,
                                          const std::string& style) {
        const auto [known, isNew] = known_.try_emplace({families, weight, style});
        if (!isNew) return known->second;
        if (!fonts_) fonts_ = std::make_unique<text::Fonts>();
        std::vector<std::string> list = familiesIn(families);
        // Names of the system's own family, which other systems do not know.
        while (list.size() > 1 && isOfOneSystem(list.front()))
            list.erase(list.begin());
        // Each browser has a default family of its own, and substitutes of its own for families that it
        // lacks.
        if (list.empty()) return std::nullopt;
        const auto faces = fonts_->find(list, weightIn(weight), style == "italic" || style == "oblique");
        if (faces.empty() || faces.front() == nullptr) return std::nullopt;
        const text::Face& face = *faces.front();
        if (!isGeneric(list.front()) && !css::sameIgnoringCase(face.family(), list.front()))
            return std::nullopt;
        known->second.emplace();
        css::FontMeasures& measures = *known->second;
        measures.zero = advanceOf(face, U'0', 0.5);
        measures.xHeight = metricOf(face, HB_OT_METRICS_TAG_X_HEIGHT, 0.5);
        measures.capHeight = metricOf(face, HB_OT_METRICS_TAG_CAP_HEIGHT, face.ascent());
        measures.ideograph = advanceOf(face, U'\u6C34', 1);
        measures.space = advanceOf(face, U' ', 0.25);
        return measures;
    }

private:
    std::unique_ptr<text::Fonts> fonts_;
    std::map<std::tuple<std::string, std::string, std::string>, std::optional<css::FontMeasures>> known_;
};

}  // namespace

css::FontLookup fontLookup() {
    return [lookup = std::make_shared<Lookup>()](const std::string& families, const std::string& weight,
                                                 const std::string& style) {
        return lookup->find(families, weight, style);
    };
}

}  // namespace tenter::markup
