#include "solve/model.h"

#include <algorithm>
#include <cmath>

#include "checks/options.h"
#include "layout/prepared.h"

namespace tenter::solve {

namespace {

/// Largest change of a size by rounding to the emitted numbers, CSS px.
constexpr double emitRounding = 0.01;
/// A change of the column by less than this share at a breakpoint does not count.
constexpr double columnTolerance = 0.01;
/// A column that narrows by less than this share over a range of widths does not count as narrowing.
constexpr double narrowingTolerance = 0.05;

double gridStepOf(const project::Project& project, const project::Wishes& projectWishes) {
    const double finest = 0.01;
    if (!projectWishes.grid) return finest;
    units::LengthBasis basis;
    basis.rem = project.page.rootSize;
    return std::max(finest, projectWishes.grid->resolve(basis));
}

/// Viewport widths at which linear ranges are cut, CSS px.
std::vector<double> cutsFor(const std::vector<Wish>& wishes, double leastWidth) {
    std::vector<double> cuts{leastWidth, narrowWidths};
    for (const Wish& wish : wishes) {
        cuts.push_back(wish.widths.from);
        cuts.push_back(wish.widths.to);
    }
    return cuts;
}

std::string mainRoleOf(const project::Project& project, const std::vector<bool>& ignored) {
    std::map<std::string, std::size_t> bytes;
    for (std::size_t card = 0; card < project.cards.size(); ++card)
        for (const project::Part& part : project.cards[card].parts)
            if (const auto* text = std::get_if<project::TextPart>(&part); text != nullptr && !ignored[card])
                bytes[text->role] += project::plainText(text->copy).size();
    const auto most = std::ranges::max_element(bytes, {}, [](const auto& role) { return role.second; });
    return most == bytes.end() ? std::string() : most->first;
}

bool isWithin(const LinearRange& range, const Wish& wish) {
    return range.from >= wish.widths.from - sweep::leastStep && range.to <= wish.widths.to + sweep::leastStep;
}

}  // namespace

PreparedVariants::PreparedVariants(const project::Project& source, const std::vector<std::size_t>& chosen,
                                   text::ParagraphStore& store, const text::BreakProfile* profile)
    : project(source), variants(chosen) {
    const std::vector<const text::BreakProfile*> profiles =
        profile != nullptr ? std::vector{profile} : text::profiles();
    for (const std::size_t variant : variants)
        for (const text::BreakProfile* each : profiles)
            rows.push_back({variant, std::make_unique<layout::PreparedRow>(source, variant, store, *each)});
}

Model::Model(const PreparedVariants& prepared, const RampSet& ramps, const project::Wishes& projectWishes,
             const std::vector<Wish>& wishes)
    : ramps_(ramps),
      margins_{*projectWishes.slack, *projectWishes.narrowSlack, *projectWishes.reserve},
      ignoredCards_(solve::ignoredCards(prepared.project, projectWishes)),
      mainRole_(mainRoleOf(prepared.project, ignoredCards_)),
      leastWidth_(prepared.project.leastWidth),
      mostWidth_(prepared.project.mostWidth),
      gridStep_(gridStepOf(prepared.project, projectWishes)),
      jumpLimit_(prepared.project.checking.limits.jump),
      variableCount_(ramps.variableCount()) {
    prepareGeometries(prepared, wishes);
    for (std::size_t i = 0; i < wishes.size(); ++i)
        addWish(i, wishes[i]);
    std::vector<std::string> roles;
    for (const RampVariables& ramp : ramps.all())
        if (std::ranges::find(roles, ramp.role) == roles.end()) roles.push_back(ramp.role);
    addBandEnds(roles);
}

Model::Model(const Model& other, std::size_t index, const Wish& wish) : Model(other) {
    std::erase_if(constraints_, [&](const WishConstraint& one) { return one.wish == index; });
    indexByExpression_.clear();
    addWish(index, wish);
}

void Model::prepareGeometries(const PreparedVariants& prepared, const std::vector<Wish>& wishes) {
    const std::vector<double> cuts = cutsFor(wishes, leastWidth_);
    // A zoomed page is narrower than the range: a 300 % zoom lays out a third of the viewport width.
    double largestZoom = 1;
    for (const Wish& wish : wishes)
        if (wish.kind == WishKind::Zoom) largestZoom = std::max(largestZoom, wish.value);
    for (const PreparedVariants::Row& each : prepared.rows) {
        VariantGeometry geometry{each.variant, each.row.get(), {}};
        geometry.roles.resize(each.row->roles().size());
        for (std::uint32_t role = 0; role < geometry.roles.size(); ++role) {
            const std::string& name = each.row->roles()[role];
            const bool solved = std::ranges::any_of(
                ramps_.all(), [&](const RampVariables& ramp) { return ramp.role == name; });
            if (solved)
                geometry.roles[role] = solve::linearRanges(*each.row, each.variant, role, ramps_,
                                                           leastWidth_ / largestZoom, mostWidth_, cuts);
        }
        geometries_.push_back(std::move(geometry));
    }
}

const std::vector<LinearRange>* Model::rangesOf(const VariantGeometry& geometry,
                                                const std::string& role) const {
    const auto found = std::ranges::find(geometry.row->roles(), role);
    if (found == geometry.row->roles().end()) return nullptr;
    return &geometry.roles[static_cast<std::size_t>(found - geometry.row->roles().begin())];
}

LinearExpression Model::sizeAt(const VariantGeometry& geometry, const LinearRange& range,
                               const std::string& role, double width) const {
    return RampSet::sizeExpression(ramps_.in(geometry.variant, range.band, role),
                                   range.at(range.followed, width));
}

std::vector<const VariantGeometry*> Model::onePerVariant() const {
    std::vector<const VariantGeometry*> first;
    for (const VariantGeometry& geometry : geometries_)
        if (first.empty() || first.back()->variant != geometry.variant) first.push_back(&geometry);
    return first;
}

void Model::addConstraint(WishConstraint constraint) {
    // Many widths, cards and both engines bound the same expression. Only the tightest bound is kept.
    std::string key = std::to_string(constraint.wish);
    for (const Term& term : constraint.expression)
        key +=
            ' ' + std::to_string(term.variable) + ':' + std::to_string(std::llround(term.coefficient * 1e9));
    const auto [entry, isNew] = indexByExpression_.emplace(std::move(key), constraints_.size());
    if (isNew) {
        constraints_.push_back(std::move(constraint));
        return;
    }
    WishConstraint& existing = constraints_[entry->second];
    const bool tighter = constraint.upper < existing.upper || constraint.lower > existing.lower;
    existing.upper = std::min(existing.upper, constraint.upper);
    existing.lower = std::max(existing.lower, constraint.lower);
    if (tighter) existing.origin = std::move(constraint.origin);
}

void Model::addWish(std::size_t index, const Wish& wish) {
    switch (wish.kind) {
        case WishKind::Lines:
        case WishKind::LeastMeasure:
        case WishKind::MostMeasure:
        case WishKind::LeastSize:
        case WishKind::MostSize:
        case WishKind::Words:
            return addBounds(index, wish);
        case WishKind::Locked:
            return addLocked(index, wish);
        case WishKind::Ratio:
        case WishKind::LeastRatio:
            return addRatio(index, wish);
        case WishKind::Growth:
            return addGrowth(index, wish);
        case WishKind::WithColumn:
            return addWithColumn(index, wish);
        case WishKind::SameAtBreakpoints:
        case WishKind::ProportionalAtBreakpoints:
            return addAtBreakpoints(index, wish);
        case WishKind::SameInVariants:
            return addSameInVariants(index, wish);
        case WishKind::Zoom:
            return addZoom(index, wish);
    }
}

void Model::addBounds(std::size_t index, const Wish& wish) {
    for (const VariantGeometry& geometry : geometries_) {
        const std::vector<LinearRange>* ranges = rangesOf(geometry, wish.role);
        if (ranges == nullptr) continue;
        const auto role = static_cast<std::uint32_t>(std::ranges::find(geometry.row->roles(), wish.role) -
                                                     geometry.row->roles().begin());
        for (const SizeBound& found : sizeBounds(geometry, role, wish, margins_, ignoredCards_)) {
            const LinearRange& range = (*ranges)[found.range];
            for (const auto& [width, bound] :
                 {std::pair(found.widths.from, &found.start), std::pair(found.widths.to, &found.end)}) {
                // Layout uses the emitted, rounded sizes, so bounds by text need room for the rounding.
                const double rounding = bound->text.exists ? emitRounding : 0;
                WishConstraint constraint;
                constraint.expression = sizeAt(geometry, range, wish.role, width);
                (found.upper ? constraint.upper : constraint.lower) =
                    bound->size + (found.upper ? -rounding : rounding);
                constraint.wish = index;
                constraint.origin = {geometry.variant,
                                     range.band,
                                     width,
                                     wish.role,
                                     &geometry.row->profile(),
                                     bound->text,
                                     constraint.expression,
                                     bound->size};
                addConstraint(std::move(constraint));
            }
        }
    }
}

void Model::addLocked(std::size_t index, const Wish& wish) {
    for (const RampVariables& ramp : ramps_.all()) {
        if (ramp.role != wish.role) continue;
        for (const auto& [variable, size] :
             {std::pair(ramp.fromVariable, ramp.from.size), std::pair(ramp.toVariable, ramp.to.size)}) {
            WishConstraint constraint;
            constraint.expression = {{variable, 1}};
            constraint.lower = constraint.upper = size;
            constraint.wish = index;
            constraint.origin.role = wish.role;
            constraint.origin.variant = ramp.place.variant;
            constraint.origin.band = ramp.place.band;
            constraint.origin.size = constraint.expression;
            addConstraint(std::move(constraint));
        }
    }
}

void Model::addRatio(std::size_t index, const Wish& wish) {
    // Sizes on a grid can meet an exact ratio only to within the grid's step.
    const double gridTolerance = wish.kind == WishKind::Ratio ? gridStep_ * (1 + wish.value) / 2 : 0;
    for (const VariantGeometry& geometry : geometries_) {
        const std::vector<LinearRange>* one = rangesOf(geometry, wish.role);
        const std::vector<LinearRange>* other = rangesOf(geometry, wish.other);
        if (one == nullptr || other == nullptr) continue;
        for (const LinearRange& range : *one) {
            for (const LinearRange& beside : *other) {
                const double from = std::max(range.from, beside.from);
                const double to = std::min(range.to, beside.to);
                if (to - from <= sweep::leastStep || !isWithin(range, wish)) continue;
                for (const double width : {from, to}) {
                    const LinearExpression size = sizeAt(geometry, range, wish.role, width);
                    WishConstraint constraint;
                    constraint.expression =
                        difference(size, sizeAt(geometry, beside, wish.other, width), wish.value);
                    constraint.lower = wish.tolerance - gridTolerance;
                    if (wish.kind == WishKind::Ratio) constraint.upper = gridTolerance - wish.tolerance;
                    constraint.wish = index;
                    constraint.origin = {geometry.variant,         range.band, width, wish.role,
                                         &geometry.row->profile(), {},         size};
                    addConstraint(std::move(constraint));
                }
            }
        }
    }
}

void Model::addGrowth(std::size_t index, const Wish& wish) {
    for (const VariantGeometry& geometry : geometries_) {
        const std::vector<LinearRange>* ranges = rangesOf(geometry, wish.role);
        if (ranges == nullptr) continue;
        for (const LinearRange& range : *ranges) {
            if (!isWithin(range, wish)) continue;
            const LinearExpression size = sizeAt(geometry, range, wish.role, range.to);
            WishConstraint constraint;
            constraint.expression = difference(size, sizeAt(geometry, range, wish.role, range.from));
            constraint.upper = wish.value * (range.to - range.from) / 100;
            constraint.wish = index;
            constraint.origin = {geometry.variant,         range.band, range.to, wish.role,
                                 &geometry.row->profile(), {},         size};
            addConstraint(std::move(constraint));
        }
    }
}

void Model::addWithColumn(std::size_t index, const Wish& wish) {
    const double jump = jumpLimit_ - 2 * emitRounding;
    for (const VariantGeometry& geometry : geometries_) {
        const std::vector<LinearRange>* ranges = rangesOf(geometry, wish.role);
        if (ranges == nullptr) continue;
        const LinearRange* before = nullptr;
        for (const LinearRange& range : *ranges) {
            if (!isWithin(range, wish)) continue;
            const LinearExpression end = sizeAt(geometry, range, wish.role, range.to);
            const LinearExpression start = sizeAt(geometry, range, wish.role, range.from);
            WishConstraint constraint;
            constraint.wish = index;
            constraint.origin = {geometry.variant,         range.band, range.to, wish.role,
                                 &geometry.row->profile(), {},         end};
            constraint.expression = difference(end, start);
            const double change = range.column.slope * (range.to - range.from);
            if (change > 0) constraint.lower = 0;
            if (change < -narrowingTolerance * range.column.value) constraint.upper = 0;
            if (change > 0 || change < -narrowingTolerance * range.column.value) addConstraint(constraint);
            if (before != nullptr && before->band != range.band) {
                const double column = before->at(before->column, before->to);
                const double wider = range.column.value - column;
                const bool same = std::abs(wider) <= columnTolerance * column;
                constraint.expression = difference(start, sizeAt(geometry, *before, wish.role, before->to));
                constraint.lower = same || wider > 0 ? -jump : -infinity;
                constraint.upper = same || wider < 0 ? jump : infinity;
                constraint.origin.width = range.from;
                constraint.origin.size = start;
                addConstraint(constraint);
            }
            before = &range;
        }
    }
}

void Model::addAtBreakpoints(std::size_t index, const Wish& wish) {
    for (const VariantGeometry& geometry : geometries_) {
        const std::vector<LinearRange>* ranges = rangesOf(geometry, wish.role);
        if (ranges == nullptr) continue;
        const LinearRange* before = nullptr;
        for (const LinearRange& range : *ranges) {
            if (!isWithin(range, wish)) continue;
            if (before != nullptr && before->band != range.band) {
                const double column = before->at(before->column, before->to);
                const bool same = wish.kind == WishKind::SameAtBreakpoints || column <= 0;
                const double factor = same ? 1 : range.column.value / column;
                WishConstraint constraint;
                constraint.wish = index;
                const LinearExpression after = sizeAt(geometry, range, wish.role, range.from);
                constraint.expression =
                    difference(after, sizeAt(geometry, *before, wish.role, before->to), factor);
                constraint.upper = gridStep_ * (1 + factor) / 2;
                constraint.lower = -constraint.upper;
                constraint.origin = {geometry.variant,         range.band, range.from, wish.role,
                                     &geometry.row->profile(), {},         after};
                addConstraint(std::move(constraint));
            }
            before = &range;
        }
    }
}

void Model::addSameInVariants(std::size_t index, const Wish& wish) {
    // Each variant equals the next, so all are equal.
    const std::vector<const VariantGeometry*> variants = onePerVariant();
    for (std::size_t i = 0; i + 1 < variants.size(); ++i) {
        const std::vector<LinearRange>* one = rangesOf(*variants[i], wish.role);
        const std::vector<LinearRange>* other = rangesOf(*variants[i + 1], wish.role);
        if (one == nullptr || other == nullptr) continue;
        for (const LinearRange& range : *one) {
            if (!isWithin(range, wish)) continue;
            for (const LinearRange& beside : *other) {
                const double from = std::max(range.from, beside.from);
                const double to = std::min(range.to, beside.to);
                if (to - from <= sweep::leastStep) continue;
                // Both sizes are linear here: equal at both ends means equal between.
                for (const double width : {from, to}) {
                    const LinearExpression size = sizeAt(*variants[i], range, wish.role, width);
                    WishConstraint constraint;
                    constraint.expression =
                        difference(size, sizeAt(*variants[i + 1], beside, wish.role, width));
                    std::erase_if(constraint.expression,
                                  [](const Term& term) { return std::abs(term.coefficient) < 1e-12; });
                    if (constraint.expression.empty()) continue;
                    constraint.lower = constraint.upper = 0;
                    constraint.wish = index;
                    constraint.origin = {variants[i]->variant,         range.band, width, wish.role,
                                         &variants[i]->row->profile(), {},         size};
                    addConstraint(std::move(constraint));
                }
            }
        }
    }
}

void Model::addZoom(std::size_t index, const Wish& wish) {
    // At zoom z the page is laid out at width W / z, where its size may be smaller. Text is at least twice as
    // large at zoom `value` if no size exceeds `value / 2` times any other one: a sufficient, linear
    // condition.
    const double ratio = wish.value / 2 * (1 - wish.tolerance);
    for (const VariantGeometry* each : onePerVariant()) {
        const VariantGeometry& geometry = *each;
        const std::vector<LinearRange>* ranges = rangesOf(geometry, wish.role);
        if (ranges == nullptr) continue;
        const std::size_t smallest = variableCount_++;
        const std::size_t largest = variableCount_++;
        WishConstraint constraint;
        constraint.wish = index;
        constraint.origin = {geometry.variant, 0, mostWidth_, wish.role, &geometry.row->profile(), {}, {}};
        constraint.expression = {{largest, 1}, {smallest, -ratio}};
        constraint.upper = -emitRounding * (1 + ratio);
        addConstraint(constraint);
        for (const LinearRange& range : *ranges) {
            for (const double width : {range.from, range.to}) {
                const LinearExpression size = sizeAt(geometry, range, wish.role, width);
                constraint.origin.band = range.band;
                constraint.origin.width = width;
                constraint.origin.size = size;
                constraint.lower = 0;
                constraint.upper = infinity;
                constraint.expression = difference(size, {{smallest, 1}});
                addConstraint(constraint);
                constraint.expression = difference({{largest, 1}}, size);
                addConstraint(constraint);
            }
        }
    }
}

void Model::addBandEnds(const std::vector<std::string>& roles) {
    for (const VariantGeometry* each : onePerVariant()) {
        const VariantGeometry& geometry = *each;
        for (const std::string& role : roles) {
            const std::vector<LinearRange>& ranges = *rangesOf(geometry, role);
            for (std::size_t k = 0; k < ranges.size(); ++k) {
                const LinearRange& range = ranges[k];
                if (range.to <= leastWidth_) continue;
                const bool first =
                    k == 0 || ranges[k - 1].band != range.band || ranges[k - 1].to <= leastWidth_;
                const bool last = k + 1 == ranges.size() || ranges[k + 1].band != range.band;
                const auto add = [&](double width, bool narrow) {
                    const double followed = range.at(range.followed, width);
                    bandEnds_.push_back(
                        {geometry.variant, range.band, role, sizeAt(geometry, range, role, width),
                         ramps_.currentSizeAt(geometry.variant, range.band, role, followed), narrow});
                };
                if (first) add(range.from, true);
                if (last) add(range.to, false);
            }
        }
    }
}

RampSet::Ends Model::bandWidths(std::size_t variant, const std::string& role) const {
    RampSet::Ends ends;
    for (const VariantGeometry& geometry : geometries_) {
        if (geometry.variant != variant) continue;
        ends.assign(geometry.row->bandCount(), std::nullopt);
        for (const LinearRange& range : *rangesOf(geometry, role)) {
            if (range.to <= leastWidth_) continue;
            // Whole px are easier to read in the stylesheet; a ramp may extend slightly beyond its band.
            const double from = std::floor(range.at(range.followed, range.from));
            const double to = std::ceil(range.at(range.followed, range.to));
            auto& pair = ends[range.band];
            if (!pair) pair = {from, to};
            pair = {std::min({pair->first, from, to}), std::max({pair->second, from, to})};
        }
        break;
    }
    return ends;
}

}  // namespace tenter::solve
