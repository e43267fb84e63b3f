#include "solve/bindings.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

#include "layout/prepared.h"
#include "solve/constraint.h"

namespace tenter::solve {

namespace {

/// Letters by which the limiting word is shortened for `Binding::sizeWithShorterWord`.
constexpr double lettersFewer = 3;
/// A bound above this, CSS px, is no use to anyone: the longest sizes that a project may hold.
constexpr double largestSize = 400;

double valueOf(const LinearExpression& expression, const std::vector<double>& sizes) {
    double value = 0;
    for (const Term& term : expression)
        value += term.coefficient * sizes[term.variable];
    return value;
}

const VariantGeometry* geometryOf(const Model& model, const Origin& origin) {
    for (const VariantGeometry& geometry : model.geometries())
        if (geometry.variant == origin.variant && &geometry.row->profile() == origin.profile)
            return &geometry;
    return nullptr;
}

/// The upper bound that `wish` sets at `origin` under every engine's rules, CSS px, if a word of the limiting
/// text were shorter.
double upperBoundWith(const ShortenedWord& shortened, const Model& model, const Wish& wish,
                      const Origin& origin) {
    double lowest = infinity;
    for (const VariantGeometry& geometry : model.geometries()) {
        if (geometry.variant != origin.variant) continue;
        const auto role = static_cast<std::uint32_t>(std::ranges::find(geometry.row->roles(), origin.role) -
                                                     geometry.row->roles().begin());
        for (const SizeBound& bound : sizeBounds(model, geometry, role, wish, &shortened, &origin.text)) {
            const LinearRange& range = geometry.roles[role][bound.range];
            if (!bound.upper || range.band != origin.band || origin.width < bound.widths.from - 1e-6 ||
                origin.width > bound.widths.to + 1e-6)
                continue;
            const double share = (origin.width - bound.widths.from) / (bound.widths.to - bound.widths.from);
            lowest = std::min(lowest, bound.start.size + share * (bound.end.size - bound.start.size));
        }
    }
    return lowest;
}

std::string withoutTrailingSpace(std::string word) {
    while (!word.empty() && (word.back() == ' ' || word.back() == '\n'))
        word.pop_back();
    return word;
}

}  // namespace

Binding bindingAt(const Model& model, const Wish& wish, const Origin& origin, double size) {
    Binding binding;
    binding.wish = wish;
    binding.variant = origin.variant;
    binding.band = origin.band;
    binding.width = origin.width;
    binding.size = size;
    binding.profile = origin.profile;
    binding.text = origin.text;
    const bool byWord = wish.kind->traits.isLimitedByWord;
    const VariantGeometry* geometry = geometryOf(model, origin);
    if (!origin.text.exists || !byWord || geometry == nullptr) return binding;
    const text::Paragraph& paragraph =
        *geometry->row->band(origin.band).cards[origin.text.card].parts[origin.text.part].paragraph;
    const LineShape& line = origin.text.line;
    binding.word = withoutTrailingSpace(paragraph.utf8(line.word, line.end));
    const double letters = paragraph.graphemes(line.word, line.end);
    if (letters <= lettersFewer) return binding;
    const double ems = paragraph.ems(line.word, line.end) * lettersFewer / letters;
    const double bound = upperBoundWith({line.word, ems}, model, wish, origin);
    if (bound < largestSize) binding.sizeWithShorterWord = bound;
    return binding;
}

std::vector<Binding> bindingsOf(const Model& model, const std::vector<Wish>& wishes,
                                const Solution& solution) {
    const std::vector<double>& sizes = solution.sizes;
    using Key = std::tuple<std::size_t, std::size_t, std::size_t>;
    struct Tightest {
        double rank = 0;
        const ConstraintRow* constraint = nullptr;
        bool isLower = false;
    };
    std::map<Key, Tightest> tightest;
    for (std::size_t i = 0; i < model.rows().size(); ++i) {
        const ConstraintRow& constraint = model.rows()[i];
        if (!solution.binding[i] || constraint.origin.size.empty()) continue;
        // Auxiliary variables of wishes have no value here.
        const bool hasValue = std::ranges::all_of(
            constraint.expression, [&](const Term& term) { return term.variable < sizes.size(); });
        const double value = hasValue ? valueOf(constraint.expression, sizes) : 0;
        const double slack = hasValue ? std::min(value - constraint.lower, constraint.upper - value) : 0;
        const PlaceScope places = wishes[constraint.wish].kind->traits.places;
        const double rank = places == PlaceScope::Variant ? -valueOf(constraint.origin.size, sizes) : slack;
        const Key key(places == PlaceScope::AllVariants ? 0 : constraint.origin.variant, constraint.wish,
                      places == PlaceScope::Band ? constraint.origin.band : 0);
        const auto known = tightest.find(key);
        if (known == tightest.end() || rank < known->second.rank)
            tightest[key] = {rank, &constraint,
                             hasValue && value - constraint.lower < constraint.upper - value};
    }
    std::vector<Binding> bindings;
    for (const auto& [key, found] : tightest) {
        const ConstraintRow& constraint = *found.constraint;
        Binding binding = bindingAt(model, wishes[constraint.wish], constraint.origin,
                                    valueOf(constraint.origin.size, sizes));
        binding.isLower = found.isLower;
        bindings.push_back(std::move(binding));
    }
    return bindings;
}

}  // namespace tenter::solve
