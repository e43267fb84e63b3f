#include "project/conflicts.h"

#include <algorithm>

#include "project/card_scale.h"
#include "project/cascade.h"
#include "project/file.h"
#include "project/json_text.h"
#include "project/wording.h"

namespace tenter::project {

namespace {

/// One band of one variant, and the layers that its settings come from.
class BandLayers {
public:
    BandLayers(const Project& project, std::size_t variant, std::size_t band)
        : project_(project),
          variant_(variant),
          band_(band),
          resolved_(resolve(project, project.variants[variant], band)) {}

    [[nodiscard]] const Settings& resolved() const { return resolved_; }

    /// JSON pointer to the setting that holds here: the innermost layer's that says it.
    [[nodiscard]] std::string pointerTo(const std::string& path) const {
        const Variant& variant = project_.variants[variant_];
        const std::string place = "/variants/" + std::to_string(variant_);
        if (!settingAt(variant.bands[band_].set, path).is_null())
            return place + "/bands/" + std::to_string(band_) + "/set/" + path;
        return (settingAt(variant.set, path).is_null() ? "/style/" : place + "/set/") + path;
    }

private:
    const Project& project_;
    std::size_t variant_;
    std::size_t band_;
    Settings resolved_;
};

bool isShare(const std::optional<Length>& length) {
    return length && length->unit() == units::Unit::Percent && !length->isZero();
}

/// The card's padding at top and bottom where it is a percentage, as path and value.
std::vector<std::pair<std::string, Length>> sharesOfHeight(const CardSettings& card) {
    std::vector<std::pair<std::string, Length>> found;
    if (isShare(card.padding.top)) found.emplace_back("card/padding/top", *card.padding.top);
    if (isShare(card.padding.bottom)) found.emplace_back("card/padding/bottom", *card.padding.bottom);
    return found;
}

void addOnce(Problems& problems, Problem problem) {
    const bool told = std::any_of(problems.begin(), problems.end(), [&](const Problem& other) {
        return other.place == problem.place && other.what == problem.what;
    });
    if (!told) problems.push_back(std::move(problem));
}

/// A card is a subgrid only in a grid and only if it is no container: else the used value of `subgrid` is
/// `none`. CSS Grid 2 § 7.2 (subgrid), CSS Conditional 5 § 5.1: a size container establishes an independent
/// formatting context. And Chromium 156 sizes the levels without a percentage of the card's padding, Firefox
/// 153 with it.
void checkLevels(const BandLayers& band, const std::vector<std::string>& roles, Problems& problems) {
    if (band.resolved().row.level != Level::Subgrid) return;
    const std::string place = band.pointerTo("row/level");
    const auto tell = [&](const std::string& what, const std::string& other, const std::string& mend) {
        addOnce(problems, {"", place, "\"subgrid\" cannot level " + what + " (" + other + ")", mend});
    };
    for (const auto& [path, length] : sharesOfHeight(band.resolved().card))
        tell("cards whose padding at top or bottom is a percentage", band.pointerTo(path),
             R"(write that in px, rem, em or vw, or this as "none")");
    if (const std::optional<std::string> path = cardScaleAt(band.resolved(), roles))
        tell("cards by whose width something in them is sized", band.pointerTo(*path),
             path->ends_with("follow") ? R"(let that follow the "viewport", or write this as "none")"
                                       : R"(write that without cqi, or this as "none")");
    if (band.resolved().row.lastLine == LastLine::Center)
        tell("a row whose last line is centred", band.pointerTo("row/lastLine"),
             R"(write that as "start", or this as "none")");
}

/// A picture beside the text is placed within the card, where a percentage is of the card's height; the
/// padding it stands in is of a width. CSS Positioned Layout 3 § 3.1, CSS Box 4 § 4.
void checkBeside(const BandLayers& band, Problems& problems) {
    const CardSettings& card = band.resolved().card;
    if (card.direction != Direction::Beside || card.bleed.value_or(false)) return;
    for (const auto& [path, length] : sharesOfHeight(card))
        addOnce(problems,
                {"", band.pointerTo(path),
                 inQuotes(length.css()) + " cannot be kept above and below a picture beside the text (" +
                     band.pointerTo("card/direction") + ")",
                 R"(use px, rem, em or vw, or let the picture run to the card's edges by "bleed")"});
}

}  // namespace

Problems conflicts(const Project& project) {
    Problems problems;
    const std::vector<std::string> roles = usedRoles(project);
    for (std::size_t variant = 0; variant < project.variants.size(); ++variant) {
        for (std::size_t band = 0; band < project.variants[variant].bands.size(); ++band) {
            const BandLayers layers(project, variant, band);
            checkLevels(layers, roles, problems);
            checkBeside(layers, problems);
        }
    }
    return problems;
}

}  // namespace tenter::project
