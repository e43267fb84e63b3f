#include "emit/follow.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "emit/usage.h"
#include "project/cascade.h"
#include "units/number.h"
#include "units/quantities.h"

namespace tenter::emit {

using project::Follow;
using units::Ramp;

namespace {

/// Number of widths in each band at which the sizes before and after are compared.
constexpr int samplesPerBand = 64;
/// Smallest difference of size that is reported, CSS px.
constexpr double noticeable = 0.05;

class BandFollow {
public:
    BandFollow(const layout::PreparedRow& row, const project::Project& project,
               const project::Variant& variant, std::size_t band)
        : row_(row) {
        const double below = band == 0 ? 0 : variant.bands[band - 1].upTo.value_or(0);
        least_ = std::max(project.leastWidth, below);
        // A band starts just above the breakpoint below it.
        inside_ = below >= project.leastWidth ? std::nextafter(below, std::numeric_limits<double>::infinity())
                                              : least_;
        most_ = std::max(variant.bands[band].upTo.value_or(std::max(project.mostWidth, least_ + 1)), inside_);
        if (variant.bands[band].upTo) most_ = std::max(std::min(most_, project.mostWidth), inside_);
    }

    [[nodiscard]] double cardAt(double viewport) const { return row_.cardWidth(std::max(viewport, inside_)); }

    /// The ramp over the other kind of width; empty if the card width does not change while the size does.
    [[nodiscard]] std::optional<Ramp> converted(const Ramp& ramp, Follow target) const {
        if (ramp.isFlat()) return Ramp::flat(ramp.from().size);
        // Only the part of the ramp inside the band matters.
        const double from = target == Follow::Card ? ramp.from().width : viewportAt(ramp.from().width);
        const double to = target == Follow::Card ? ramp.to().width : viewportAt(ramp.to().width);
        const double first = std::clamp(from, least_, most_);
        const double last = std::clamp(to, least_, most_);
        const double firstSize = sizeAt(ramp, target, first);
        const double lastSize = sizeAt(ramp, target, last);
        if (last <= first || std::abs(lastSize - firstSize) < 1e-9) return Ramp::flat(firstSize);
        if (target == Follow::Viewport)
            return Ramp::between({round(first), firstSize}, {round(last), lastSize});
        const double low = round(cardAt(first));
        const double high = round(cardAt(last));
        if (high <= low) return std::nullopt;
        return Ramp::between({low, firstSize}, {high, lastSize});
    }

    /// The largest difference of size within the band, CSS px.
    [[nodiscard]] double largestDifference(const Ramp& before, const Ramp& after, Follow target) const {
        double most = 0;
        for (int i = 0; i <= samplesPerBand; ++i) {
            const double width = inside_ + (most_ - inside_) * i / samplesPerBand;
            const double now = after.sizeAt(target == Follow::Card ? cardAt(width) : width);
            most = std::max(most, std::abs(now - sizeAt(before, target, width)));
        }
        return most;
    }

private:
    /// The size before the conversion, at a viewport width, CSS px.
    [[nodiscard]] double sizeAt(const Ramp& before, Follow target, double viewport) const {
        return before.sizeAt(target == Follow::Card ? viewport : cardAt(viewport));
    }
    static double round(double width) { return units::rounded(width, 2); }

    /// The smallest viewport width in the band at which the card width is `card`, or nearest to it.
    [[nodiscard]] double viewportAt(double card) const {
        const double wanted = std::min(card, cardAt(most_)) - 1e-6;
        double low = inside_;
        double high = most_;
        for (int i = 0; i < 60; ++i) {
            const double middle = (low + high) / 2;
            (cardAt(middle) < wanted ? low : high) = middle;
        }
        return high;
    }

    const layout::PreparedRow& row_;
    double least_ = 0;
    double inside_ = 0;
    double most_ = 0;
};

std::string bandWords(const project::Variant& variant, std::size_t band) {
    if (variant.bands[band].upTo) return "up to " + units::px(*variant.bands[band].upTo);
    return band == 0 ? "at every width" : "above " + units::px(*variant.bands[band - 1].upTo);
}

}  // namespace

project::Project following(const project::Project& project, Follow target,
                           const std::vector<std::size_t>& variants, text::ParagraphStore& store,
                           const text::BreakProfile& profile, project::Problems& problems) {
    project::Project out = project;
    for (const std::size_t index : variants) {
        const project::Variant& variant = project.row().variants[index];
        const layout::PreparedRow row(project, index, store, profile);
        for (std::size_t band = 0; band < variant.bands.size(); ++band) {
            const BandFollow follow(row, project, variant, band);
            const project::Settings& settings = row.settings(band);
            for (const RoleUse& use : roleUses(project)) {
                const project::TextStyle* style = settings.text.find(use.role);
                if (style == nullptr || !style->size || style->follow == target) continue;
                project::TextStyle& set = out.row().variants[index].bands[band].set.text.of(use.role);
                const std::string place =
                    "." + variant.className + ", " + bandWords(variant, band) + ", " + use.role;
                if (target == Follow::Card && settings.row.level == project::Level::Subgrid) {
                    set.size = style->size;
                    set.follow = style->follow;
                    problems.push_back(
                        {"", place,
                         "Align parts is on, and such cards cannot be size containers, so this "
                         "size still follows the viewport width",
                         R"(Set "level" to "none" (Row › Align parts: Off))"});
                    continue;
                }
                const std::optional<Ramp> converted = follow.converted(*style->size, target);
                if (!converted) {
                    set.size = style->size;
                    set.follow = style->follow;
                    problems.push_back({"", place,
                                        "The font size grows at widths at which the card keeps its width. It "
                                        "still follows the viewport width",
                                        "Set the row width in\u00A0%, or use a fixed font size"});
                    continue;
                }
                set.size = converted;
                set.follow = target;
                const double largestDifference = follow.largestDifference(*style->size, *converted, target);
                if (largestDifference < noticeable) continue;
                problems.push_back({"", place,
                                    "Between the ends of the band the size changes by up to " +
                                        units::px(largestDifference) +
                                        ", because the card width does not grow in a straight line with the "
                                        "viewport width",
                                    "Check the sizes in this band"});
            }
        }
    }
    return out;
}

}  // namespace tenter::emit
