#include "solve/nearest.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace tenter::solve {

namespace {

/// Share by which type that has to move may step at a breakpoint: more looks like another row. No source.
constexpr double mostStep = 0.2;
/// What it costs to step by more, beside what it costs that a role is another size.
constexpr double stepCost = 4;
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
    : shares_(sharesOf(model.points(), model.leading())), scale_(programme.addColumn(0, unbounded)) {
    addPlaces(programme, model, weight);
    addShapes(programme, model, weight);
    addLargest(programme, model);
    fromAim_ = programme.addDistance({{scale_, 1}}, 1, mostOfRow * whole_);
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
        whole_ += own;
        programme.addDistance(difference(timesNow(point), {{place.column, 1}}), 0, own);
    }
    for (const auto& [name, place] : places)
        programme.addDistance({{place.column, 1}, {scale_, -1}}, 0, mostOfPlace * place.weight);
}

void Nearness::addShapes(Programme& programme, const Model& model, double weight) {
    const std::vector<Point>& points = model.points();
    for (std::size_t i = 0; i + 1 < points.size(); ++i) {
        const Point& below = points[i];
        const Point& above = points[i + 1];
        if (below.variant != above.variant || below.role != above.role) continue;
        const bool isStep = below.band != above.band;
        const double own = weight * shares_.at(below.role);
        programme.addDistance(difference(timesNow(above), timesNow(below)), 0,
                              own * (isStep ? stepped : bent));
        if (isStep && below.role == model.leading()) steps_.push_back({below, above, own});
    }
}

void Nearness::addLargest(Programme& programme, const Model& model) const {
    const std::size_t largest = programme.addColumn(0, unbounded, largestChange * whole_);
    for (const Point& point : model.points()) {
        if (point.role != model.leading()) continue;
        Form change = timesNow(point);
        change.push_back({largest, -1});
        programme.addRow(change, -unbounded, 1);
        change.back().times = 1;
        programme.addRow(change, 1, unbounded);
    }
}

void Nearness::aimAt(Programme& programme, double scale) const {
    programme.moveDistance(fromAim_, scale);
}

bool Nearness::softenSteps(Programme& programme) const {
    std::vector<std::pair<Form, double>> over;
    for (const Step& step : steps_) {
        const double below = valueOf(programme, step.below.size);
        const double above = valueOf(programme, step.above.size);
        const bool moved =
            std::abs(below / step.below.now - 1) > unmoved || std::abs(above / step.above.now - 1) > unmoved;
        const double smaller = std::min(below, above);
        const double larger = std::max(below, above);
        if (!moved || smaller >= (1 - mostStep) * larger) continue;
        const bool falls = above < below;
        const Form form = difference(falls ? step.below.size : step.above.size,
                                     falls ? step.above.size : step.below.size, 1 / (1 - mostStep));
        over.emplace_back(scaled(form, 1 / smaller), stepCost * step.weight);
    }
    // Columns that are added have no value yet: all are looked at first.
    for (auto& [form, cost] : over) {
        form.push_back({programme.addColumn(0, unbounded, cost), -1});
        programme.addRow(form, -unbounded, 0);
    }
    return !over.empty();
}

}  // namespace tenter::solve
