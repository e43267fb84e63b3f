#include "solve/ramps.h"

#include <algorithm>

#include "project/cascade.h"

namespace tenter::solve {

namespace {

bool setsSize(const project::Settings& settings, const std::string& role) {
    const project::TextStyle* style = settings.text.find(role);
    return style != nullptr && style->size.has_value();
}

RampPlace placeOf(const project::Project& project, std::size_t variant, std::size_t band,
                  const std::string& role, bool allVariants) {
    const project::Variant& there = project.row().variants[variant];
    if (setsSize(there.bands[band].set, role)) return {project::CascadeLayer::Band, variant, band};
    if (setsSize(there.set, role) || !allVariants) return {project::CascadeLayer::Variant, variant, 0};
    return {};
}

}  // namespace

RampSet::RampSet(const project::Project& project, const std::vector<std::size_t>& variants,
                 const std::vector<std::string>& roles) {
    const bool allVariants = variants.size() == project.row().variants.size();
    for (const std::size_t variant : variants) {
        for (std::size_t band = 0; band < project.row().variants[variant].bands.size(); ++band) {
            const project::Settings settings =
                project::resolve(project, project.row().variants[variant], band);
            for (const std::string& role : roles) {
                const units::Ramp ramp = settings.text.find(role)->size.value_or(units::Ramp());
                const RampVariables found{role, placeOf(project, variant, band, role, allVariants),
                                          ramp.from(), ramp.to()};
                const auto same = std::ranges::find_if(all_, [&](const RampVariables& one) {
                    return one.role == role && one.place == found.place;
                });
                const auto index = static_cast<std::size_t>(same - all_.begin());
                uses_.push_back({variant, band, role, same == all_.end() ? add(found) : index, ramp});
            }
        }
    }
}

std::size_t RampSet::add(RampVariables ramp) {
    ramp.fromVariable = variableCount_++;
    ramp.toVariable = ramp.from.width < ramp.to.width ? variableCount_++ : ramp.fromVariable;
    all_.push_back(std::move(ramp));
    return all_.size() - 1;
}

double RampSet::currentSize(std::size_t variable) const {
    for (const RampVariables& ramp : all_) {
        if (ramp.fromVariable == variable) return ramp.from.size;
        if (ramp.toVariable == variable) return ramp.to.size;
    }
    return 0;
}

const RampSet::Use& RampSet::use(std::size_t variant, std::size_t band, const std::string& role) const {
    return *std::ranges::find_if(uses_, [&](const Use& one) {
        return one.variant == variant && one.band == band && one.role == role;
    });
}

const RampVariables& RampSet::in(std::size_t variant, std::size_t band, const std::string& role) const {
    return all_[use(variant, band, role).ramp];
}

double RampSet::currentSizeAt(std::size_t variant, std::size_t band, const std::string& role,
                              double width) const {
    return use(variant, band, role).current.sizeAt(width);
}

LinearExpression RampSet::sizeExpression(const RampVariables& ramp, double width) {
    if (ramp.fromVariable == ramp.toVariable) return {{ramp.fromVariable, 1}};
    const double share = std::clamp((width - ramp.from.width) / (ramp.to.width - ramp.from.width), 0.0, 1.0);
    return {{ramp.fromVariable, 1 - share}, {ramp.toVariable, share}};
}

double RampSet::currentSize(const RampVariables& ramp, double width) {
    if (ramp.fromVariable == ramp.toVariable) return ramp.from.size;
    const double share = std::clamp((width - ramp.from.width) / (ramp.to.width - ramp.from.width), 0.0, 1.0);
    return ramp.from.size + share * (ramp.to.size - ramp.from.size);
}

bool RampSet::canSplit(const std::string& role) const {
    return std::ranges::any_of(all_,
                               [&](const RampVariables& ramp) { return ramp.role == role && !ramp.ownBand; });
}

void RampSet::split(std::size_t variant, const std::string& role, const Ends& ends) {
    for (Use& use : uses_) {
        if (use.variant != variant || use.role != role) continue;
        const RampVariables before = all_[use.ramp];
        RampVariables own{role, {project::CascadeLayer::Band, variant, use.band}, before.from, before.to};
        own.ownBand = true;
        if (const auto& widths = ends[use.band]) {
            own.from = {widths->first, currentSize(before, widths->first)};
            own.to = {widths->second, currentSize(before, widths->second)};
        }
        use.ramp = add(own);
    }
    // Drops ramps that no band uses any more, and numbers the variables again.
    variableCount_ = 0;
    std::vector<RampVariables> old = std::move(all_);
    all_.clear();
    std::vector<std::size_t> newIndex(old.size(), old.size());
    for (Use& use : uses_) {
        if (newIndex[use.ramp] == old.size()) newIndex[use.ramp] = add(old[use.ramp]);
        use.ramp = newIndex[use.ramp];
    }
}

project::Project RampSet::applied(const project::Project& project, const std::vector<double>& sizes) const {
    project::Project solved = project;
    for (const RampVariables& ramp : all_) {
        const double from = sizes[ramp.fromVariable];
        const double to = sizes[ramp.toVariable];
        if (!ramp.ownBand && from == ramp.from.size && to == ramp.to.size) continue;
        const auto made = units::Ramp::between({ramp.from.width, from}, {ramp.to.width, to});
        project::settingsOf(solved, ramp.place.layer, ramp.place.variant, ramp.place.band)
            .text.of(ramp.role)
            .size = made.value_or(units::Ramp::flat(from));
    }
    return solved;
}

}  // namespace tenter::solve
