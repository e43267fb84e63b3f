#include "emit/needed_fonts.h"

#include <algorithm>

#include "project/cascade.h"
#include "project/wording.h"
#include "text/font_weight.h"
#include "text/generic_families.h"
#include "units/number.h"
#include "wording/language.h"

namespace tenter::emit {

namespace {

using project::Run;

void addOnce(std::vector<double>& weights, double weight) {
    const auto at = std::ranges::lower_bound(weights, weight);
    if (at == weights.end() || *at != weight) weights.insert(at, weight);
}

void addTexts(std::vector<NeededFont>& fonts, const project::TextPart& part,
              const project::TextStyle& style) {
    if (!style.family || style.family->empty() || text::isGenericFamily(style.family->front())) return;
    const std::string& family = style.family->front();
    auto font = std::ranges::find(fonts, family, &NeededFont::family);
    if (font == fonts.end()) font = fonts.insert(fonts.end(), NeededFont{family, {}, {}});
    const bool isItalic = style.slant == project::Slant::Italic;
    const double weight = style.weight.value_or(400);
    for (const Run& run : part.copy) {
        const bool slanted = isItalic || run.kind == Run::Kind::Emphasis;
        addOnce(slanted ? font->italic : font->upright,
                run.kind == Run::Kind::Strong ? text::bolder(weight) : weight);
    }
}

std::vector<std::string> words(const std::vector<double>& weights, const std::string& after) {
    std::vector<std::string> all;
    all.reserve(weights.size());
    for (const double weight : weights)
        all.push_back(units::number(weight) + after);
    return all;
}

}  // namespace

std::string NeededFont::title() const {
    std::vector<std::string> faces = words(upright, "");
    std::ranges::copy(words(italic, " italic"), std::back_inserter(faces));
    return family + " " + project::listed(faces);
}

std::vector<NeededFont> neededFonts(const project::Project& project,
                                    const std::vector<std::size_t>& variants) {
    std::vector<NeededFont> fonts;
    for (const std::size_t index : variants) {
        const project::Variant& variant = project.row().variants.at(index);
        for (std::size_t band = 0; band < variant.bands.size(); ++band) {
            const project::Settings settings = project::resolve(project, variant, band);
            for (const project::Card& card : project.row().cards)
                for (const project::Part& part : card.parts)
                    if (const auto* text = std::get_if<project::TextPart>(&part))
                        if (const auto* style = settings.text.find(text->role))
                            addTexts(fonts, *text, *style);
        }
    }
    return fonts;
}

std::string fontSentence(const project::Project& project, const std::vector<std::size_t>& variants) {
    const wording::InEnglish english;
    std::string names;
    for (const NeededFont& font : neededFonts(project, variants))
        names += (names.empty() ? "" : "; ") + font.title();
    if (names.empty()) return {};
    return "The page must load these fonts: " + names + ". In other fonts the lines break at other places.";
}

}  // namespace tenter::emit
