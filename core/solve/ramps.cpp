#include "solve/ramps.h"

#include <algorithm>

#include "project/cascade.h"

namespace tenter::solve {

namespace {

bool says(const project::Settings& settings, const std::string& role) {
    const project::TextStyle* style = settings.text.find(role);
    return style != nullptr && style->size.has_value();
}

Place placeOf(const project::Project& project, std::size_t variant, std::size_t band, const std::string& role,
              bool allVariants) {
    const project::Variant& there = project.variants[variant];
    if (says(there.bands[band].set, role)) return {Place::Layer::Band, variant, band};
    if (says(there.set, role) || !allVariants) return {Place::Layer::Variant, variant, 0};
    return {};
}

project::Settings& settingsAt(project::Project& project, const Place& place) {
    if (place.layer == Place::Layer::Style) return project.style;
    project::Variant& variant = project.variants[place.variant];
    return place.layer == Place::Layer::Variant ? variant.set : variant.bands[place.band].set;
}

}  // namespace

RampsSought::RampsSought(const project::Project& project, const std::vector<std::size_t>& variants,
                         const std::vector<std::string>& roles) {
    const bool allVariants = variants.size() == project.variants.size();
    for (const std::size_t variant : variants) {
        for (std::size_t band = 0; band < project.variants[variant].bands.size(); ++band) {
            const project::Settings settings = project::resolve(project, project.variants[variant], band);
            for (const std::string& role : roles) {
                const units::Ramp ramp = settings.text.find(role)->size.value_or(units::Ramp());
                const RampSought sought{role, placeOf(project, variant, band, role, allVariants), ramp.from(),
                                        ramp.to()};
                const auto known = std::ranges::find_if(all_, [&](const RampSought& one) {
                    return one.role == role && one.place == sought.place;
                });
                const auto index = static_cast<std::size_t>(known - all_.begin());
                uses_.push_back({variant, band, role, known == all_.end() ? add(sought) : index, ramp});
            }
        }
    }
}

std::size_t RampsSought::add(RampSought ramp) {
    ramp.first = columns_++;
    ramp.last = ramp.from.width < ramp.to.width ? columns_++ : ramp.first;
    all_.push_back(std::move(ramp));
    return all_.size() - 1;
}

double RampsSought::now(std::size_t column) const {
    for (const RampSought& ramp : all_) {
        if (ramp.first == column) return ramp.from.size;
        if (ramp.last == column) return ramp.to.size;
    }
    return 0;
}

const RampsSought::Use& RampsSought::use(std::size_t variant, std::size_t band,
                                         const std::string& role) const {
    return *std::ranges::find_if(uses_, [&](const Use& one) {
        return one.variant == variant && one.band == band && one.role == role;
    });
}

const RampSought& RampsSought::in(std::size_t variant, std::size_t band, const std::string& role) const {
    return all_[use(variant, band, role).ramp];
}

double RampsSought::nowIn(std::size_t variant, std::size_t band, const std::string& role,
                          double width) const {
    return use(variant, band, role).now.sizeAt(width);
}

Form RampsSought::sizeAt(const RampSought& ramp, double width) {
    if (ramp.first == ramp.last) return {{ramp.first, 1}};
    const double along = std::clamp((width - ramp.from.width) / (ramp.to.width - ramp.from.width), 0.0, 1.0);
    return {{ramp.first, 1 - along}, {ramp.last, along}};
}

double RampsSought::sizeNow(const RampSought& ramp, double width) {
    if (ramp.first == ramp.last) return ramp.from.size;
    const double along = std::clamp((width - ramp.from.width) / (ramp.to.width - ramp.from.width), 0.0, 1.0);
    return ramp.from.size + along * (ramp.to.size - ramp.from.size);
}

bool RampsSought::canSplit(const std::string& role) const {
    return std::ranges::any_of(all_,
                               [&](const RampSought& ramp) { return ramp.role == role && !ramp.ownBand; });
}

void RampsSought::split(std::size_t variant, const std::string& role, const Ends& ends) {
    for (Use& use : uses_) {
        if (use.variant != variant || use.role != role) continue;
        const RampSought before = all_[use.ramp];
        RampSought own{role, {Place::Layer::Band, variant, use.band}, before.from, before.to};
        own.ownBand = true;
        if (const auto& widths = ends[use.band]) {
            own.from = {widths->first, sizeNow(before, widths->first)};
            own.to = {widths->second, sizeNow(before, widths->second)};
        }
        use.ramp = add(own);
    }
    // What no band uses any more goes; columns are counted anew.
    std::vector<RampSought> left;
    columns_ = 0;
    std::vector<RampSought> old = std::move(all_);
    all_.clear();
    std::vector<std::size_t> moved(old.size(), old.size());
    for (Use& use : uses_) {
        if (moved[use.ramp] == old.size()) moved[use.ramp] = add(old[use.ramp]);
        use.ramp = moved[use.ramp];
    }
}

project::Project RampsSought::applied(const project::Project& project,
                                      const std::vector<double>& sizes) const {
    project::Project solved = project;
    for (const RampSought& ramp : all_) {
        const double from = sizes[ramp.first];
        const double to = sizes[ramp.last];
        if (!ramp.ownBand && from == ramp.from.size && to == ramp.to.size) continue;
        const auto made = units::Ramp::between({ramp.from.width, from}, {ramp.to.width, to});
        settingsAt(solved, ramp.place).text.of(ramp.role).size = made.value_or(units::Ramp::flat(from));
    }
    return solved;
}

}  // namespace tenter::solve
