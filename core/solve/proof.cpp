#include "solve/proof.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

#include "layout/prepared.h"

namespace tenter::solve {

namespace {

/// How many letters fewer a proof speaks of.
constexpr double lettersLess = 3;

double valueOf(const Form& form, const std::vector<double>& sizes) {
    double value = 0;
    for (const Term& term : form)
        value += term.times * sizes[term.column];
    return value;
}

const Sight* sightOf(const Model& model, const Spot& spot) {
    for (const Sight& sight : model.sights())
        if (sight.variant == spot.variant && &sight.row->profile() == spot.profile) return &sight;
    return nullptr;
}

/// The lowest cap of `demand` at the spot over all break profiles, with a word in the deciding copy
/// shortened.
double capAt(const Model& model, const Demand& demand, const Spot& spot, const Shortened& shortened) {
    double cap = unbounded;
    for (const Sight& sight : model.sights()) {
        if (sight.variant != spot.variant) continue;
        const auto role = static_cast<std::uint32_t>(std::ranges::find(sight.row->roles(), spot.role) -
                                                     sight.row->roles().begin());
        for (const Limit& limit :
             limitsOf(sight, role, demand, model.margins(), model.without(), &shortened, &spot.by)) {
            const Stretch& stretch = sight.roles[role][limit.stretch];
            if (!limit.cap || stretch.band != spot.band || spot.width < limit.widths.from - 1e-6 ||
                spot.width > limit.widths.to + 1e-6)
                continue;
            const double along = (spot.width - limit.widths.from) / (limit.widths.to - limit.widths.from);
            cap = std::min(cap, limit.start.size + along * (limit.end.size - limit.start.size));
        }
    }
    return cap;
}

std::string trimmed(std::string word) {
    while (!word.empty() && (word.back() == ' ' || word.back() == '\n'))
        word.pop_back();
    return word;
}

}  // namespace

Binding placeOf(const Model& model, const Demand& demand, const Spot& spot, double size) {
    Binding binding{demand, spot.variant, spot.band, spot.width, size, spot.profile, spot.by, {}, {}};
    const bool byWord = demand.kind == Kind::Lines || demand.kind == Kind::Words;
    const Sight* sight = sightOf(model, spot);
    if (!spot.by.copy || !byWord || sight == nullptr) return binding;
    const text::Paragraph& paragraph =
        *sight->row->band(spot.band).cards[spot.by.card].parts[spot.by.part].paragraph;
    const LineShape& line = spot.by.line;
    binding.word = trimmed(paragraph.utf8(line.word, line.end));
    const double letters = paragraph.graphemes(line.word, line.end);
    if (letters <= lettersLess) return binding;
    const double ems = paragraph.ems(line.word, line.end) * lettersLess / letters;
    const double cap = capAt(model, demand, spot, {line.word, ems});
    if (cap < 400) binding.withShorter = cap;
    return binding;
}

std::vector<Binding> bindingsOf(const Model& model, const std::vector<Demand>& demands, const Best& best) {
    const std::vector<double>& sizes = best.sizes;
    std::map<std::tuple<std::size_t, std::size_t, std::size_t>, std::pair<double, const WishRow*>> nearest;
    for (std::size_t i = 0; i < model.rows().size(); ++i) {
        const WishRow& row = model.rows()[i];
        if (!best.deciding[i] || row.spot.size.empty()) continue;
        const bool plain =
            std::ranges::all_of(row.form, [&](const Term& term) { return term.column < sizes.size(); });
        // Of a zoomed role's own least and greatest size no number is kept.
        const double value = plain ? valueOf(row.form, sizes) : 0;
        const double free = plain ? std::min(value - row.least, row.most - value) : 0;
        // Zoom is about a role's least and greatest size: it is told at the greatest.
        const bool zoom = demands[row.demand].kind == Kind::Zoom;
        const double rank = zoom ? -valueOf(row.spot.size, sizes) : free;
        // Of type that is to be the same everywhere once is enough.
        const bool same = demands[row.demand].kind == Kind::SameInVariants;
        const auto key =
            std::tuple(same ? 0 : row.spot.variant, row.demand, zoom || same ? 0 : row.spot.band);
        const auto known = nearest.find(key);
        if (known == nearest.end() || rank < known->second.first) nearest[key] = {rank, &row};
    }
    std::vector<Binding> bindings;
    for (const auto& [key, found] : nearest) {
        const WishRow& row = *found.second;
        bindings.push_back(placeOf(model, demands[row.demand], row.spot, valueOf(row.spot.size, sizes)));
    }
    return bindings;
}

}  // namespace tenter::solve
