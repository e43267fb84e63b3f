#include "solve/model.h"

#include <algorithm>
#include <cmath>

#include "checks/options.h"
#include "layout/prepared.h"

namespace tenter::solve {

namespace {

/// What rounding to emitted numbers may move a size by, CSS px.
constexpr double emitted = 0.01;
/// A column that changes by less than this share at a breakpoint stays as it is.
constexpr double sameColumn = 0.01;
/// Where a column narrows by less than this share over a band, type may grow a little.
constexpr double unseenColumn = 0.05;

double stepOf(const project::Project& project, const project::Wishes& wishes) {
    const double least = 0.01;
    if (!wishes.grid) return least;
    units::LengthBasis basis;
    basis.rem = project.page.rootSize;
    return std::max(least, wishes.grid->resolve(basis));
}

std::vector<double> cutsOf(const std::vector<Demand>& demands, double least) {
    std::vector<double> cuts{least, narrowWidths};
    for (const Demand& demand : demands) {
        cuts.push_back(demand.widths.from);
        cuts.push_back(demand.widths.to);
    }
    return cuts;
}

std::string leadingOf(const project::Project& project, const std::vector<bool>& without) {
    std::map<std::string, std::size_t> copy;
    for (std::size_t card = 0; card < project.cards.size(); ++card)
        for (const project::Part& part : project.cards[card].parts)
            if (const auto* text = std::get_if<project::TextPart>(&part); text != nullptr && !without[card])
                copy[text->role] += project::plainText(text->copy).size();
    const auto most = std::ranges::max_element(copy, {}, [](const auto& role) { return role.second; });
    return most == copy.end() ? std::string() : most->first;
}

bool isWithin(const Stretch& stretch, const Demand& demand) {
    return stretch.from >= demand.widths.from - sweep::leastStep &&
           stretch.to <= demand.widths.to + sweep::leastStep;
}

}  // namespace

Setting::Setting(const project::Project& whole, const std::vector<std::size_t>& sought,
                 text::ParagraphStore& store, const text::BreakProfile* profile)
    : project(whole), variants(sought) {
    const std::vector<const text::BreakProfile*> profiles =
        profile != nullptr ? std::vector{profile} : text::profiles();
    for (const std::size_t variant : variants)
        for (const text::BreakProfile* each : profiles)
            rows.push_back({variant, std::make_unique<layout::PreparedRow>(whole, variant, store, *each)});
}

Model::Model(const Setting& setting, const RampsSought& ramps, const project::Wishes& wishes,
             const std::vector<Demand>& demands)
    : ramps_(ramps),
      margins_{*wishes.slack, *wishes.narrowSlack, *wishes.reserve},
      without_(withoutOf(setting.project, wishes)),
      leading_(leadingOf(setting.project, without_)),
      least_(setting.project.leastWidth),
      most_(setting.project.mostWidth),
      step_(stepOf(setting.project, wishes)),
      jump_(setting.project.checking.limits.jump),
      columns_(ramps.columns()) {
    look(setting, demands);
    for (std::size_t i = 0; i < demands.size(); ++i)
        addDemand(i, demands[i]);
    std::vector<std::string> roles;
    for (const RampSought& ramp : ramps.all())
        if (std::ranges::find(roles, ramp.role) == roles.end()) roles.push_back(ramp.role);
    addPoints(roles);
}

Model::Model(const Model& other, std::size_t index, const Demand& demand) : Model(other) {
    std::erase_if(rows_, [&](const WishRow& row) { return row.demand == index; });
    known_.clear();
    addDemand(index, demand);
}

void Model::look(const Setting& setting, const std::vector<Demand>& demands) {
    const std::vector<double> cuts = cutsOf(demands, least_);
    // Zoomed pages are laid out narrower than the range.
    double widestZoom = 1;
    for (const Demand& demand : demands)
        if (demand.kind == Kind::Zoom) widestZoom = std::max(widestZoom, demand.value);
    for (const Setting::Row& each : setting.rows) {
        Sight sight{each.variant, each.row.get(), {}};
        sight.roles.resize(each.row->roles().size());
        for (std::uint32_t role = 0; role < sight.roles.size(); ++role) {
            const std::string& name = each.row->roles()[role];
            const bool sought =
                std::ranges::any_of(ramps_.all(), [&](const RampSought& ramp) { return ramp.role == name; });
            if (sought)
                sight.roles[role] = solve::stretchesOf(*each.row, each.variant, role, ramps_,
                                                       least_ / widestZoom, most_, cuts);
        }
        sights_.push_back(std::move(sight));
    }
}

const std::vector<Stretch>* Model::stretchesOf(const Sight& sight, const std::string& role) const {
    const auto found = std::ranges::find(sight.row->roles(), role);
    if (found == sight.row->roles().end()) return nullptr;
    return &sight.roles[static_cast<std::size_t>(found - sight.row->roles().begin())];
}

Form Model::sizeAt(const Sight& sight, const Stretch& stretch, const std::string& role, double width) const {
    return RampsSought::sizeAt(ramps_.in(sight.variant, stretch.band, role),
                               stretch.at(stretch.follows, width));
}

std::vector<const Sight*> Model::variantsSeen() const {
    std::vector<const Sight*> seen;
    for (const Sight& sight : sights_)
        if (seen.empty() || seen.back()->variant != sight.variant) seen.push_back(&sight);
    return seen;
}

void Model::put(WishRow row) {
    // Many widths and cards bound the same sum, both break profiles nearly always: the tightest is kept.
    std::string key = std::to_string(row.demand);
    for (const Term& term : row.form)
        key += ' ' + std::to_string(term.column) + ':' + std::to_string(std::llround(term.times * 1e9));
    const auto [known, fresh] = known_.emplace(std::move(key), rows_.size());
    if (fresh) {
        rows_.push_back(std::move(row));
        return;
    }
    WishRow& held = rows_[known->second];
    const bool tighter = row.most < held.most || row.least > held.least;
    held.most = std::min(held.most, row.most);
    held.least = std::max(held.least, row.least);
    if (tighter) held.spot = std::move(row.spot);
}

void Model::addDemand(std::size_t index, const Demand& demand) {
    switch (demand.kind) {
        case Kind::Lines:
        case Kind::LeastMeasure:
        case Kind::MostMeasure:
        case Kind::LeastSize:
        case Kind::MostSize:
        case Kind::Words:
            return addLimits(index, demand);
        case Kind::Locked:
            return addLocked(index, demand);
        case Kind::Ratio:
        case Kind::LeastRatio:
            return addRatio(index, demand);
        case Kind::Growth:
            return addGrowth(index, demand);
        case Kind::WithColumn:
            return addWithColumn(index, demand);
        case Kind::SameAtBreakpoints:
        case Kind::ProportionalAtBreakpoints:
            return addAtBreakpoints(index, demand);
        case Kind::SameInVariants:
            return addSameInVariants(index, demand);
        case Kind::Zoom:
            return addZoom(index, demand);
    }
}

void Model::addLimits(std::size_t index, const Demand& demand) {
    for (const Sight& sight : sights_) {
        const std::vector<Stretch>* stretches = stretchesOf(sight, demand.role);
        if (stretches == nullptr) continue;
        const auto role = static_cast<std::uint32_t>(std::ranges::find(sight.row->roles(), demand.role) -
                                                     sight.row->roles().begin());
        for (const Limit& limit : limitsOf(sight, role, demand, margins_, without_)) {
            const Stretch& stretch = (*stretches)[limit.stretch];
            for (const auto& [width, bound] :
                 {std::pair(limit.widths.from, &limit.start), std::pair(limit.widths.to, &limit.end)}) {
                // What copy allows is judged by the emitted numbers; a figure that is wished is met as it is.
                const double kept = bound->by.copy ? emitted : 0;
                WishRow row;
                row.form = sizeAt(sight, stretch, demand.role, width);
                (limit.cap ? row.most : row.least) = bound->size + (limit.cap ? -kept : kept);
                row.demand = index;
                row.spot = {sight.variant,         stretch.band, width,    demand.role,
                            &sight.row->profile(), bound->by,    row.form, bound->size};
                put(std::move(row));
            }
        }
    }
}

void Model::addLocked(std::size_t index, const Demand& demand) {
    for (const RampSought& ramp : ramps_.all()) {
        if (ramp.role != demand.role) continue;
        for (const auto& [column, size] :
             {std::pair(ramp.first, ramp.from.size), std::pair(ramp.last, ramp.to.size)}) {
            WishRow row;
            row.form = {{column, 1}};
            row.least = row.most = size;
            row.demand = index;
            row.spot.role = demand.role;
            row.spot.variant = ramp.place.variant;
            row.spot.size = row.form;
            put(std::move(row));
        }
    }
}

void Model::addRatio(std::size_t index, const Demand& demand) {
    // On a grid a ratio is met as near as the grid's lines are.
    const double near = demand.kind == Kind::Ratio ? step_ * (1 + demand.value) / 2 : 0;
    for (const Sight& sight : sights_) {
        const std::vector<Stretch>* one = stretchesOf(sight, demand.role);
        const std::vector<Stretch>* other = stretchesOf(sight, demand.other);
        if (one == nullptr || other == nullptr) continue;
        for (const Stretch& stretch : *one) {
            for (const Stretch& beside : *other) {
                const double from = std::max(stretch.from, beside.from);
                const double to = std::min(stretch.to, beside.to);
                if (to - from <= sweep::leastStep || !isWithin(stretch, demand)) continue;
                for (const double width : {from, to}) {
                    const Form size = sizeAt(sight, stretch, demand.role, width);
                    WishRow row;
                    row.form = difference(size, sizeAt(sight, beside, demand.other, width), demand.value);
                    row.least = demand.spare - near;
                    if (demand.kind == Kind::Ratio) row.most = near - demand.spare;
                    row.demand = index;
                    row.spot = {sight.variant,         stretch.band, width, demand.role,
                                &sight.row->profile(), {},           size};
                    put(std::move(row));
                }
            }
        }
    }
}

void Model::addGrowth(std::size_t index, const Demand& demand) {
    for (const Sight& sight : sights_) {
        const std::vector<Stretch>* stretches = stretchesOf(sight, demand.role);
        if (stretches == nullptr) continue;
        for (const Stretch& stretch : *stretches) {
            if (!isWithin(stretch, demand)) continue;
            const Form size = sizeAt(sight, stretch, demand.role, stretch.to);
            WishRow row;
            row.form = difference(size, sizeAt(sight, stretch, demand.role, stretch.from));
            row.most = demand.value * (stretch.to - stretch.from) / 100;
            row.demand = index;
            row.spot = {sight.variant,         stretch.band, stretch.to, demand.role,
                        &sight.row->profile(), {},           size};
            put(std::move(row));
        }
    }
}

void Model::addWithColumn(std::size_t index, const Demand& demand) {
    const double step = jump_ - 2 * emitted;
    for (const Sight& sight : sights_) {
        const std::vector<Stretch>* stretches = stretchesOf(sight, demand.role);
        if (stretches == nullptr) continue;
        const Stretch* before = nullptr;
        for (const Stretch& stretch : *stretches) {
            if (!isWithin(stretch, demand)) continue;
            const Form end = sizeAt(sight, stretch, demand.role, stretch.to);
            const Form start = sizeAt(sight, stretch, demand.role, stretch.from);
            WishRow row;
            row.demand = index;
            row.spot = {sight.variant, stretch.band, stretch.to, demand.role, &sight.row->profile(), {}, end};
            row.form = difference(end, start);
            const double change = stretch.column.slope * (stretch.to - stretch.from);
            if (change > 0) row.least = 0;
            if (change < -unseenColumn * stretch.column.value) row.most = 0;
            if (change > 0 || change < -unseenColumn * stretch.column.value) put(row);
            if (before != nullptr && before->band != stretch.band) {
                const double column = before->at(before->column, before->to);
                const double wider = stretch.column.value - column;
                const bool same = std::abs(wider) <= sameColumn * column;
                row.form = difference(start, sizeAt(sight, *before, demand.role, before->to));
                row.least = same || wider > 0 ? -step : -unbounded;
                row.most = same || wider < 0 ? step : unbounded;
                row.spot.width = stretch.from;
                put(row);
            }
            before = &stretch;
        }
    }
}

void Model::addAtBreakpoints(std::size_t index, const Demand& demand) {
    for (const Sight& sight : sights_) {
        const std::vector<Stretch>* stretches = stretchesOf(sight, demand.role);
        if (stretches == nullptr) continue;
        const Stretch* before = nullptr;
        for (const Stretch& stretch : *stretches) {
            if (!isWithin(stretch, demand)) continue;
            if (before != nullptr && before->band != stretch.band) {
                const double column = before->at(before->column, before->to);
                const bool same = demand.kind == Kind::SameAtBreakpoints || column <= 0;
                const double times = same ? 1 : stretch.column.value / column;
                WishRow row;
                row.demand = index;
                const Form after = sizeAt(sight, stretch, demand.role, stretch.from);
                row.form = difference(after, sizeAt(sight, *before, demand.role, before->to), times);
                row.most = step_ * (1 + times) / 2;
                row.least = -row.most;
                row.spot = {sight.variant,         stretch.band, stretch.from, demand.role,
                            &sight.row->profile(), {},           after};
                put(std::move(row));
            }
            before = &stretch;
        }
    }
}

void Model::addSameInVariants(std::size_t index, const Demand& demand) {
    // Equal to the next one each, all are.
    const std::vector<const Sight*> seen = variantsSeen();
    for (std::size_t i = 0; i + 1 < seen.size(); ++i) {
        const std::vector<Stretch>* one = stretchesOf(*seen[i], demand.role);
        const std::vector<Stretch>* other = stretchesOf(*seen[i + 1], demand.role);
        if (one == nullptr || other == nullptr) continue;
        for (const Stretch& stretch : *one) {
            if (!isWithin(stretch, demand)) continue;
            for (const Stretch& beside : *other) {
                const double from = std::max(stretch.from, beside.from);
                const double to = std::min(stretch.to, beside.to);
                if (to - from <= sweep::leastStep) continue;
                // Both are straight there: equal at both ends, they are equal between.
                for (const double width : {from, to}) {
                    const Form size = sizeAt(*seen[i], stretch, demand.role, width);
                    WishRow row;
                    row.form = difference(size, sizeAt(*seen[i + 1], beside, demand.role, width));
                    std::erase_if(row.form, [](const Term& term) { return std::abs(term.times) < 1e-12; });
                    if (row.form.empty()) continue;
                    row.least = row.most = 0;
                    row.demand = index;
                    row.spot = {seen[i]->variant,         stretch.band, width, demand.role,
                                &seen[i]->row->profile(), {},           size};
                    put(std::move(row));
                }
            }
        }
    }
}

void Model::addZoom(std::size_t index, const Demand& demand) {
    // Twice the size is had by zooming to `value`, wherever the page then is, if no size is more than half as
    // many times any other: sufficient, and linear.
    const double ratio = demand.value / 2 * (1 - demand.spare);
    for (const Sight* each : variantsSeen()) {
        const Sight& sight = *each;
        const std::vector<Stretch>* stretches = stretchesOf(sight, demand.role);
        if (stretches == nullptr) continue;
        const std::size_t least = columns_++;
        const std::size_t greatest = columns_++;
        WishRow row;
        row.demand = index;
        row.spot = {sight.variant, 0, most_, demand.role, &sight.row->profile(), {}, {}};
        row.form = {{greatest, 1}, {least, -ratio}};
        row.most = -emitted * (1 + ratio);
        put(row);
        for (const Stretch& stretch : *stretches) {
            for (const double width : {stretch.from, stretch.to}) {
                const Form size = sizeAt(sight, stretch, demand.role, width);
                row.spot.band = stretch.band;
                row.spot.width = width;
                row.spot.size = size;
                row.least = 0;
                row.most = unbounded;
                row.form = difference(size, {{least, 1}});
                put(row);
                row.form = difference({{greatest, 1}}, size);
                put(row);
            }
        }
    }
}

void Model::addPoints(const std::vector<std::string>& roles) {
    for (const Sight* each : variantsSeen()) {
        const Sight& sight = *each;
        for (const std::string& role : roles) {
            const std::vector<Stretch>& stretches = *stretchesOf(sight, role);
            for (std::size_t k = 0; k < stretches.size(); ++k) {
                const Stretch& stretch = stretches[k];
                if (stretch.to <= least_) continue;
                const bool first =
                    k == 0 || stretches[k - 1].band != stretch.band || stretches[k - 1].to <= least_;
                const bool last = k + 1 == stretches.size() || stretches[k + 1].band != stretch.band;
                const auto add = [&](double width, bool narrow) {
                    const double follows = stretch.at(stretch.follows, width);
                    points_.push_back({sight.variant, stretch.band, role, sizeAt(sight, stretch, role, width),
                                       ramps_.nowIn(sight.variant, stretch.band, role, follows), narrow});
                };
                if (first) add(stretch.from, true);
                if (last) add(stretch.to, false);
            }
        }
    }
}

RampsSought::Ends Model::endsOf(std::size_t variant, const std::string& role) const {
    RampsSought::Ends ends;
    for (const Sight& sight : sights_) {
        if (sight.variant != variant) continue;
        ends.assign(sight.row->bandCount(), std::nullopt);
        for (const Stretch& stretch : *stretchesOf(sight, role)) {
            if (stretch.to <= least_) continue;
            // Whole widths read better, and a ramp may run a little beyond its band.
            const double from = std::floor(stretch.at(stretch.follows, stretch.from));
            const double to = std::ceil(stretch.at(stretch.follows, stretch.to));
            auto& pair = ends[stretch.band];
            if (!pair) pair = {from, to};
            pair = {std::min({pair->first, from, to}), std::max({pair->second, from, to})};
        }
        break;
    }
    return ends;
}

}  // namespace tenter::solve
