#include "solve/shared_ramps.h"

#include <algorithm>
#include <cmath>

#include "project/cascade.h"
#include "solve/constraint.h"
#include "solve/registry.h"

namespace tenter::solve {

namespace {

/// A band, its viewport widths, and the number of its group.
struct Extent {
    BandGroup::Member at;
    sweep::Interval widths;
    std::size_t group = 0;
};

/// Every band of every variant with its viewport widths inside the project's range.
std::vector<Extent> extentsOf(const project::Project& project) {
    std::vector<Extent> all;
    for (std::size_t variant = 0; variant < project.row().variants.size(); ++variant) {
        double from = project.leastWidth;
        const std::vector<project::Band>& bands = project.row().variants[variant].bands;
        for (std::size_t band = 0; band < bands.size() && from < project.mostWidth; ++band) {
            const double to = std::min(bands[band].upTo.value_or(project.mostWidth), project.mostWidth);
            if (to <= from) continue;
            all.push_back({{variant, band}, {from, to}, all.size()});
            from = to;
        }
    }
    return all;
}

bool overlapWithin(const Extent& one, const Extent& other, const sweep::Interval& widths) {
    const double from = std::max({one.widths.from, other.widths.from, widths.from});
    const double to = std::min({one.widths.to, other.widths.to, widths.to});
    return to - from > sweep::leastStep;
}

void removeSize(project::Settings& settings, const std::string& role) {
    if (settings.text.find(role) == nullptr) return;
    settings.text.of(role).size.reset();
    std::erase_if(settings.text.roles, [](const auto& one) { return one.second == project::TextStyle(); });
}

}  // namespace

std::vector<BandGroup> bandGroups(const project::Project& project, const std::vector<Wish>& wishes,
                                  const std::string& role) {
    std::vector<Extent> all = extentsOf(project);
    std::vector<bool> tied(all.size(), false);
    for (const Wish& wish : wishes) {
        if (!wish.kind->traits.couplesVariants || wish.role != role) continue;
        for (std::size_t i = 0; i < all.size(); ++i) {
            for (std::size_t j = 0; j < i; ++j) {
                if (all[i].at.variant == all[j].at.variant || !overlapWithin(all[i], all[j], wish.widths))
                    continue;
                tied[i] = tied[j] = true;
                const auto [kept, merged] = std::minmax({all[i].group, all[j].group});
                for (Extent& one : all)
                    if (one.group == merged) one.group = kept;
            }
        }
    }
    std::vector<BandGroup> groups;
    for (std::size_t group = 0; group < all.size(); ++group) {
        BandGroup made;
        for (std::size_t i = 0; i < all.size(); ++i) {
            const Extent& one = all[i];
            if (one.group != group || !tied[i]) continue;
            if (made.members.empty()) made.widths = one.widths;
            made.widths.from = std::min(made.widths.from, one.widths.from);
            made.widths.to = std::max(made.widths.to, one.widths.to);
            for (const BandGroup::Member& known : made.members)
                if (known.variant == one.at.variant) made.breakpointsDiffer = true;
            made.members.push_back(one.at);
        }
        if (!made.members.empty()) groups.push_back(std::move(made));
    }
    return groups;
}

RampSet::Ends groupEnds(const project::Project& project, const std::vector<BandGroup>& groups,
                        std::size_t variant) {
    RampSet::Ends ends(project.row().variants[variant].bands.size());
    // Whole px are easier to read in the stylesheet.
    const auto put = [&](std::size_t band, const sweep::Interval& widths) {
        ends[band] = {std::floor(widths.from), std::ceil(widths.to)};
    };
    for (const Extent& one : extentsOf(project))
        if (one.at.variant == variant) put(one.at.band, one.widths);
    for (const BandGroup& group : groups)
        for (const BandGroup::Member& one : group.members)
            if (one.variant == variant) put(one.band, group.widths);
    return ends;
}

std::vector<std::size_t> variantsToSolve(const project::Project& project,
                                         const project::Wishes& projectWishes,
                                         const std::vector<std::size_t>& variants) {
    for (const project::RoleWishes& entry : projectWishes.roles)
        for (const Constraint* kind : registry())
            if (kind->needsEveryVariant(entry)) return project::everyVariant(project);
    return variants;
}

void moveSizeToStyle(project::Project& project, const std::string& role) {
    const auto sizeIn = [&](std::size_t variant, std::size_t band) {
        const project::Settings settings = project::resolve(project, project.row().variants[variant], band);
        const project::TextStyle& style = *settings.text.find(role);
        return std::pair(style.size.value_or(units::Ramp()), style.follow);
    };
    const auto first = sizeIn(0, 0);
    for (std::size_t variant = 0; variant < project.row().variants.size(); ++variant)
        for (std::size_t band = 0; band < project.row().variants[variant].bands.size(); ++band)
            if (sizeIn(variant, band) != first) return;
    for (project::Variant& variant : project.row().variants) {
        removeSize(variant.set, role);
        for (project::Band& band : variant.bands)
            removeSize(band.set, role);
    }
    project.row().style.text.of(role).size = first.first;
}

}  // namespace tenter::solve
