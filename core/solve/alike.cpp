#include "solve/alike.h"

#include <algorithm>
#include <cmath>

#include "project/cascade.h"

namespace tenter::solve {

namespace {

struct Extent {
    AlikeBands::Band at;
    sweep::Interval widths;
    std::size_t group = 0;
};

/// Every band of every variant with the viewport widths of the project's range that fall in it.
std::vector<Extent> extentsOf(const project::Project& project) {
    std::vector<Extent> all;
    for (std::size_t variant = 0; variant < project.variants.size(); ++variant) {
        double from = project.leastWidth;
        const std::vector<project::Band>& bands = project.variants[variant].bands;
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

void unsaySize(project::Settings& settings, const std::string& role) {
    if (settings.text.find(role) == nullptr) return;
    settings.text.of(role).size.reset();
    std::erase_if(settings.text.roles, [](const auto& one) { return one.second == project::TextStyle(); });
}

}  // namespace

std::vector<AlikeBands> alikeBands(const project::Project& project, const std::vector<Demand>& demands,
                                   const std::string& role) {
    std::vector<Extent> all = extentsOf(project);
    std::vector<bool> tied(all.size(), false);
    for (const Demand& demand : demands) {
        if (demand.kind != Kind::SameInVariants || demand.role != role) continue;
        for (std::size_t i = 0; i < all.size(); ++i) {
            for (std::size_t j = 0; j < i; ++j) {
                if (all[i].at.variant == all[j].at.variant || !overlapWithin(all[i], all[j], demand.widths))
                    continue;
                tied[i] = tied[j] = true;
                const auto [kept, gone] = std::minmax(all[i].group, all[j].group);
                for (Extent& one : all)
                    if (one.group == gone) one.group = kept;
            }
        }
    }
    std::vector<AlikeBands> alike;
    for (std::size_t group = 0; group < all.size(); ++group) {
        AlikeBands bands;
        for (std::size_t i = 0; i < all.size(); ++i) {
            const Extent& one = all[i];
            if (one.group != group || !tied[i]) continue;
            if (bands.bands.empty()) bands.widths = one.widths;
            bands.widths.from = std::min(bands.widths.from, one.widths.from);
            bands.widths.to = std::max(bands.widths.to, one.widths.to);
            for (const AlikeBands::Band& known : bands.bands)
                if (known.variant == one.at.variant) bands.unlike = true;
            bands.bands.push_back(one.at);
        }
        if (!bands.bands.empty()) alike.push_back(std::move(bands));
    }
    return alike;
}

RampsSought::Ends alikeEnds(const project::Project& project, const std::vector<AlikeBands>& alike,
                            std::size_t variant) {
    RampsSought::Ends ends(project.variants[variant].bands.size());
    // Whole widths read better.
    const auto put = [&](std::size_t band, const sweep::Interval& widths) {
        ends[band] = {std::floor(widths.from), std::ceil(widths.to)};
    };
    for (const Extent& one : extentsOf(project))
        if (one.at.variant == variant) put(one.at.band, one.widths);
    for (const AlikeBands& bands : alike)
        for (const AlikeBands::Band& one : bands.bands)
            if (one.variant == variant) put(one.band, bands.widths);
    return ends;
}

std::vector<std::size_t> solvedTogether(const project::Project& project, const project::Wishes& wishes,
                                        const std::vector<std::size_t>& variants) {
    if (std::ranges::none_of(wishes.roles, [](const project::RoleWishes& entry) {
            return entry.sameInVariants.value_or(false);
        }))
        return variants;
    return project::everyVariant(project);
}

void sayOnce(project::Project& project, const std::string& role) {
    const auto sizeIn = [&](std::size_t variant, std::size_t band) {
        const project::Settings settings = project::resolve(project, project.variants[variant], band);
        const project::TextStyle& style = *settings.text.find(role);
        return std::pair(style.size.value_or(units::Ramp()), style.follow);
    };
    const auto first = sizeIn(0, 0);
    for (std::size_t variant = 0; variant < project.variants.size(); ++variant)
        for (std::size_t band = 0; band < project.variants[variant].bands.size(); ++band)
            if (sizeIn(variant, band) != first) return;
    for (project::Variant& variant : project.variants) {
        unsaySize(variant.set, role);
        for (project::Band& band : variant.bands)
            unsaySize(band.set, role);
    }
    project.style.text.of(role).size = first.first;
}

}  // namespace tenter::solve
