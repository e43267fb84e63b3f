#include "solve/nearest.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace tenter::solve {

namespace {

/// Share by which type that has to move may step at a breakpoint, and grow over a band, before it looks like
/// another row. No source.
constexpr double mostStep = 0.15;
/// What it costs to change by more, beside what it costs that a role is another size.
constexpr double changeCost = 4;
/// What it costs to begin below the size that is asked for, beside the same.
constexpr double startCost = 2;
/// By how many times a row may have to grow and be a guide still.
constexpr double tooSmall = 1.15;
/// A size that has moved by less than this share has not.
constexpr double unmoved = 0.02;

/// As times what the size is now.
Form timesNow(const Point& point) {
    return scaled(point.size, 1 / point.now);
}

std::map<std::string, double> sharesOf(const std::vector<Point>& points, const std::string& leading) {
    std::map<std::string, double> shares;
    for (const Point& point : points)
        shares[point.role] = 1;
    const double others = static_cast<double>(shares.size()) - 1;
    if (others > 0)
        for (auto& [role, share] : shares)
            share = role == leading ? leadingShare : (1 - leadingShare) / others;
    return shares;
}

/// The average size of each role now, CSS px.
std::map<std::string, double> averagesOf(const std::vector<Point>& points) {
    std::map<std::string, std::pair<double, double>> sums;
    for (const Point& point : points) {
        sums[point.role].first += point.now;
        sums[point.role].second += 1;
    }
    std::map<std::string, double> averages;
    for (const auto& [role, sum] : sums)
        averages[role] = sum.first / sum.second;
    return averages;
}

double valueOf(const Programme& programme, const Form& form) {
    double sum = 0;
    for (const Term& term : form)
        sum += term.times * programme.value(term.column);
    return sum;
}

}  // namespace

Nearness::Nearness(Programme& programme, const Model& model, double weight)
    : shares_(sharesOf(model.points(), model.leading())) {
    addPlaces(programme, model, weight);
    addShapes(programme, model, weight);
    addLargest(programme, model);
}

void Nearness::addPlaces(Programme& programme, const Model& model, double weight) {
    const std::map<std::string, double> averages = averagesOf(model.points());
    std::map<std::tuple<std::size_t, std::size_t, bool>, Place> places;
    for (const Point& point : model.points()) {
        // In px: what is small now does not weigh more for it, or all would shrink to where it is.
        const double own = weight * shares_.at(point.role) * point.now / averages.at(point.role);
        const auto [found, fresh] = places.try_emplace({point.variant, point.band, point.first});
        Place& place = found->second;
        if (fresh) place.column = programme.addColumn(0, unbounded);
        place.weight += own;
        programme.addDistance(difference(timesNow(point), {{place.column, 1}}), 0, own);
        Row& row = rows_[point.variant];
        row.weight += own;
        if (point.role == model.leading()) row.least = std::min(row.least, point.now);
    }
    for (auto& [variant, row] : rows_) {
        row.column = programme.addColumn(0, unbounded);
        row.fromNow = programme.addDistance({{row.column, 1}}, 1, mostOfRow * row.weight);
    }
    for (const auto& [name, place] : places)
        programme.addDistance({{place.column, 1}, {rows_.at(std::get<0>(name)).column, -1}}, 0,
                              mostOfPlace * place.weight);
}

void Nearness::addShapes(Programme& programme, const Model& model, double weight) {
    const std::vector<Point>& points = model.points();
    for (std::size_t i = 0; i + 1 < points.size(); ++i) {
        const Point& below = points[i];
        const Point& above = points[i + 1];
        if (below.variant != above.variant || below.role != above.role) continue;
        const double own = weight * shares_.at(below.role);
        programme.addDistance(difference(timesNow(above), timesNow(below)), 0,
                              own * (below.band == above.band ? bent : stepped));
        if (below.role == model.leading()) beside_.push_back({below, above, own});
    }
}

void Nearness::addLargest(Programme& programme, const Model& model) const {
    for (const auto& [variant, row] : rows_) {
        const std::size_t largest = programme.addColumn(0, unbounded, largestChange * row.weight);
        for (const Point& point : model.points()) {
            if (point.role != model.leading() || point.variant != variant) continue;
            Form change = timesNow(point);
            change.push_back({largest, -1});
            programme.addRow(change, -unbounded, 1);
            change.back().times = 1;
            programme.addRow(change, 1, unbounded);
        }
    }
}

bool Nearness::beginAt(Programme& programme, double size) const {
    std::vector<std::pair<const Row*, double>> small;
    for (const auto& [variant, row] : rows_) {
        const double scale = programme.value(row.column);
        if (scale > tooSmall) small.emplace_back(&row, std::max(scale, size / row.least));
    }
    for (const auto& [row, scale] : small)
        programme.moveDistance(row->fromNow, scale);
    return !small.empty();
}

bool Nearness::soften(Programme& programme, double size) const {
    std::vector<std::pair<Form, double>> over;
    std::vector<Form> under;
    for (const auto& [below, above, weight] : beside_) {
        const double first = valueOf(programme, below.size);
        const double last = valueOf(programme, above.size);
        const double firstMoved = first / below.now - 1;
        const double lastMoved = last / above.now - 1;
        if (std::max(std::abs(firstMoved), std::abs(lastMoved)) <= unmoved) continue;
        const bool isBand = below.band == above.band;
        const bool apart =
            firstMoved * lastMoved < 0 && std::min(std::abs(firstMoved), std::abs(lastMoved)) > unmoved;
        const double calm = 1 / (1 - mostStep);
        const double most =
            isBand && !apart ? std::max({calm, above.now / below.now, below.now / above.now}) : calm;
        const double smaller = std::min(first, last);
        if (std::max(first, last) <= (1 + unmoved) * most * smaller && !(isBand && apart)) continue;
        const bool falls = last < first;
        const Form& small = falls ? above.size : below.size;
        const Form form = difference(falls ? below.size : above.size, small, most);
        over.emplace_back(scaled(form, 1 / smaller), changeCost * weight);
        if (!isBand || !apart) continue;
        const std::size_t missing = programme.addColumn(0, unbounded, startCost * weight);
        under.push_back(scaled(small, 1 / size));
        under.back().push_back({missing, 1});
    }
    // Columns that are added have no value yet: all are looked at first.
    for (auto& [form, cost] : over) {
        form.push_back({programme.addColumn(0, unbounded, cost), -1});
        programme.addRow(form, -unbounded, 0);
    }
    for (const Form& form : under)
        programme.addRow(form, 1, unbounded);
    return !over.empty();
}

}  // namespace tenter::solve
