#include "solve/model.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "checks/options.h"
#include "layout/prepared.h"
#include "solve/cancellation.h"
#include "solve/constraint.h"
#include "solve/row_adder.h"
#include "units/number.h"

namespace tenter::solve {

namespace {

double gridStepOf(const project::Project& project, const project::Wishes& projectWishes) {
    const double finest = 0.01;
    if (!projectWishes.grid) return finest;
    units::LengthBasis basis;
    // A grid in rem refers to the root size of the widest page: the grid has one step.
    basis.rem =
        project.page.at(project.mostWidth).rootSize.resolve(units::usualReaderSize, project.mostWidth);
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
    for (std::size_t card = 0; card < project.row().cards.size(); ++card)
        for (const project::Part& part : project.row().cards[card].parts)
            if (const auto* text = std::get_if<project::TextPart>(&part); text != nullptr && !ignored[card])
                bytes[text->role] += project::plainText(text->copy).size();
    const auto most = std::ranges::max_element(bytes, {}, [](const auto& role) { return role.second; });
    return most == bytes.end() ? std::string() : most->first;
}

/// The size in CSS px of 1rem in the stylesheet; 0 if that has no rem, or if it is not the same everywhere.
double onlyRem(const project::Project& project) {
    const project::Page& page = project.page;
    const bool isOne = page.readerSize == units::usualReaderSize && !page.rootSize.isFluid() &&
                       std::ranges::none_of(page.ranges, [](const project::PageRange& range) {
                           return range.rootSize.has_value();
                       });
    return isOne && project.unit == units::Unit::Rem ? page.rootSize.resolve(units::usualReaderSize, 0.0) : 0;
}

}  // namespace

PreparedVariants::PreparedVariants(const project::Project& source, const std::vector<std::size_t>& chosen,
                                   text::ParagraphStore& store, const text::BreakProfile* profile,
                                   std::stop_token stop, Memory* kept)
    : project(source), variants(chosen), cancellation(std::move(stop)), memory(kept) {
    const auto make = [&] { return prepare(store, profile); };
    rows_ = memory != nullptr ? memory->rows(project, variants, profile, make) : make();
}

std::shared_ptr<const PreparedVariantRows> PreparedVariants::prepare(
    text::ParagraphStore& store, const text::BreakProfile* profile) const {
    auto rows = std::make_shared<PreparedVariantRows>();
    const std::vector<const text::BreakProfile*> profiles =
        profile != nullptr ? std::vector{profile} : text::profiles();
    for (const std::size_t variant : variants)
        for (const text::BreakProfile* each : profiles) {
            throwIfStopped(cancellation);
            rows->push_back({variant, std::make_unique<layout::PreparedRow>(project, variant, store, *each)});
        }
    return rows;
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
      rem_(onlyRem(prepared.project)),
      jumpLimit_(prepared.project.checking.limits.jump),
      cancellation_(prepared.cancellation),
      memory_(prepared.memory),
      variableCount_(ramps.variableCount()) {
    prepareGeometries(prepared, wishes);
    for (std::size_t i = 0; i < wishes.size(); ++i)
        addWish(i, wishes[i]);
    std::vector<std::string> roles;
    for (const RampVariables& ramp : ramps.all())
        if (std::ranges::find(roles, ramp.role) == roles.end()) roles.push_back(ramp.role);
    addBandEnds(roles);
}

double Model::printedSize(double size) const {
    return rem_ > 0 ? units::rounded(size / rem_) * rem_ : size;
}

Model::Model(const Model& other, std::size_t index, const Wish& wish) : Model(other) {
    std::erase_if(rows_, [&](const ConstraintRow& one) { return one.wish == index; });
    rowOf_.clear();
    for (std::size_t row = 0; row < rows_.size(); ++row)
        rowOf_.emplace(std::pair(rows_[row].wish, rows_[row].expressionIndex), row);
    addWish(index, wish);
}

void Model::prepareGeometries(const PreparedVariants& prepared, const std::vector<Wish>& wishes) {
    const std::vector<double> cuts = cutsFor(wishes, leastWidth_);
    // A zoomed page is narrower than the range: a 300 % zoom lays out a third of the viewport width.
    double largestZoom = 1;
    for (const Wish& wish : wishes)
        largestZoom = std::max(largestZoom, wish.kind->zoomFactor(wish));
    for (const PreparedVariant& each : prepared.rows()) {
        VariantGeometry geometry{each.variant, each.row.get(), {}};
        const layout::LinearSizes lines(*each.row);
        geometry.roles.resize(each.row->roles().size());
        for (std::uint32_t role = 0; role < geometry.roles.size(); ++role) {
            const std::string& name = each.row->roles()[role];
            const bool solved = std::ranges::any_of(
                ramps_.all(), [&](const RampVariables& ramp) { return ramp.role == name; });
            if (solved)
                geometry.roles[role] = solve::linearRanges(lines, each.variant, role, ramps_,
                                                           leastWidth_ / largestZoom, mostWidth_, cuts);
        }
        geometries_.push_back(std::move(geometry));
    }
}

std::vector<SizeBound> Model::bounds(const VariantGeometry& geometry, std::uint32_t role,
                                     const Wish& wish) const {
    const auto find = [&] { return sizeBounds(*this, geometry, role, wish); };
    if (memory_ == nullptr) return find();
    return memory_->bounds({geometry.row, role, wish, geometry.roles[role], margins_, ignoredCards_}, find);
}

const std::vector<LinearRange>* Model::rangesOf(const VariantGeometry& geometry, const std::string& role) {
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

void Model::addRow(ConstraintRow row) {
    ExpressionKey key;
    key.reserve(row.expression.size());
    for (const Term& term : row.expression)
        key.emplace_back(term.variable, std::llround(term.coefficient * 1e9));
    row.expressionIndex = expressions_.emplace(std::move(key), expressions_.size()).first->second;
    // Many widths, cards and both engines bound the same expression. Only the tightest bound of a wish is
    // kept.
    const auto [entry, isNew] = rowOf_.emplace(std::pair(row.wish, row.expressionIndex), rows_.size());
    if (isNew) {
        rows_.push_back(std::move(row));
        return;
    }
    ConstraintRow& existing = rows_[entry->second];
    const bool tighter = row.upper < existing.upper || row.lower > existing.lower;
    existing.upper = std::min(existing.upper, row.upper);
    existing.lower = std::max(existing.lower, row.lower);
    if (tighter) existing.origin = std::move(row.origin);
}

void Model::addWish(std::size_t index, const Wish& wish) {
    throwIfStopped(cancellation_);
    RowAdder rows(*this, index, wish);
    wish.kind->addRows(rows);
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
