#include "project/conflicts.h"

#include <algorithm>

#include "project/card_scale.h"
#include "project/cascade.h"
#include "project/file.h"
#include "project/json_text.h"
#include "project/wording.h"

namespace tenter::project {

namespace {

/// One band of one variant, with the layers that its settings come from.
class BandLayers {
public:
    BandLayers(const Project& project, std::size_t variant, std::size_t band)
        : project_(project),
          variant_(variant),
          band_(band),
          resolved_(resolve(project, project.row().variants[variant], band)) {}

    [[nodiscard]] const Settings& resolved() const { return resolved_; }

    /// JSON pointer to the setting that holds in this band: in the innermost layer that sets it.
    [[nodiscard]] std::string pointerTo(const std::string& path) const {
        const Variant& variant = project_.row().variants[variant_];
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

bool isPercentage(const std::optional<Length>& length) {
    return length && length->unit() == units::Unit::Percent && !length->isZero();
}

/// The path and the value of the card's top and bottom padding, each only if it is a percentage.
std::vector<std::pair<std::string, Length>> percentageBlockPadding(const CardSettings& card) {
    std::vector<std::pair<std::string, Length>> found;
    if (isPercentage(card.padding.top)) found.emplace_back("card/padding/top", *card.padding.top);
    if (isPercentage(card.padding.bottom)) found.emplace_back("card/padding/bottom", *card.padding.bottom);
    return found;
}

void addOnce(Problems& problems, Problem problem) {
    const bool known = std::any_of(problems.begin(), problems.end(), [&](const Problem& other) {
        return other.place == problem.place && other.what == problem.what;
    });
    if (!known) problems.push_back(std::move(problem));
}

/// Settings that prevent cards from being subgrids. The used value of `subgrid` is `none` outside a grid and
/// on a size container, which establishes an independent formatting context. CSS Grid 2 § 7.2, CSS
/// Conditional 5 § 5.1. Percentages in the block padding of a subgrid: Chromium 156 sizes its tracks without
/// them, Firefox 153 with them.
void checkLevels(const BandLayers& band, const std::vector<std::string>& roles, Problems& problems) {
    if (band.resolved().row.level != Level::Subgrid) return;
    const std::string place = band.pointerTo("row/level");
    const auto add = [&](const std::string& reason, const std::string& other, const std::string& change) {
        addOnce(problems, {"", place, "\"level\" cannot be \"subgrid\" because " + reason + ".",
                           "Change " + other + " to " + change + R"(, or set "level" to "none".)"});
    };
    for (const auto& [path, length] : percentageBlockPadding(band.resolved().card))
        add("the top or bottom padding of the cards is a percentage", band.pointerTo(path),
            "px, rem, em or vw");
    if (const std::optional<std::string> path = cardScaleAt(band.resolved(), roles))
        add("a size in the cards follows the width of the card", band.pointerTo(*path),
            path->ends_with("follow") ? R"("viewport")" : "a unit other than cqi");
    if (band.resolved().row.lastLine == LastLine::Center)
        add("the last line of cards is centred", band.pointerTo("row/lastLine"), R"("start")");
}

/// Block padding that a picture beside the text cannot have. Such a picture is absolutely positioned: a
/// percentage for it refers to the height of the card, a percentage of padding to a width. CSS Positioned
/// Layout 3 § 3.1, CSS Box 4 § 4.
void checkBeside(const BandLayers& band, Problems& problems) {
    const CardSettings& card = band.resolved().card;
    if (card.direction != Direction::Beside || card.bleed.value_or(false)) return;
    for (const auto& [path, length] : percentageBlockPadding(card))
        addOnce(problems, {"", band.pointerTo(path),
                           "The padding cannot be a percentage where the picture is beside the text (" +
                               band.pointerTo("card/direction") + "); it is " + inQuotes(length.css()) + ".",
                           R"(Use px, rem, em or vw, or set "bleed" to true.)"});
}

}  // namespace

Problems conflicts(const Project& project) {
    Problems problems;
    const std::vector<std::string> roles = usedRoles(project);
    for (std::size_t variant = 0; variant < project.row().variants.size(); ++variant) {
        for (std::size_t band = 0; band < project.row().variants[variant].bands.size(); ++band) {
            // Most bands have neither, and resolving all settings takes long.
            const Variant& held = project.row().variants[variant];
            const bool levels = memberHeld(project, held, band,
                                           [](const Settings& s) { return s.row.level; }) == Level::Subgrid;
            const bool beside = memberHeld(project, held, band, [](const Settings& s) {
                                    return s.card.direction;
                                }) == Direction::Beside;
            if (!levels && !beside) continue;
            const BandLayers layers(project, variant, band);
            checkLevels(layers, roles, problems);
            checkBeside(layers, problems);
        }
    }
    return problems;
}

}  // namespace tenter::project
