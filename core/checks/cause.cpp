#include "checks/cause.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace tenter::checks {

bool Cause::add(project::PartRef part, sweep::Interval span, double badness, std::optional<double> worstAt) {
    const bool first = places.empty();
    widths.push_back(span);
    places.insert(part);
    if (!first && badness <= worst) return false;
    place = part;
    there = span;
    at = worstAt.value_or((span.from + span.to) / 2);
    worst = badness;
    return true;
}

sweep::Interval Cause::runOfWorst() const {
    std::vector<sweep::Interval> runs = widths;
    join(runs);
    const auto run = std::ranges::find_if(runs, [&](const sweep::Interval& one) {
        return one.from <= there.from + sweep::leastStep && one.to >= there.to - sweep::leastStep;
    });
    return run == runs.end() ? there : *run;
}

void report(Findings& out, const Cause& cause, const Description& description) {
    if (!cause.any()) return;
    Finding finding;
    finding.severity = description.severity;
    finding.place = cause.place;
    finding.places.assign(cause.places.begin(), cause.places.end());
    finding.widths = cause.widths;
    finding.at = cause.at;
    finding.statement = description.statement;
    finding.source = description.source;
    join(finding.widths);
    // Nobody can set a window to a range this narrow: beside wider ranges it is noise.
    constexpr double sliver = 0.05;
    const auto isSliver = [](const sweep::Interval& span) {
        return span.to > span.from && span.to - span.from < sliver;
    };
    if (!std::ranges::all_of(finding.widths, isSliver)) std::erase_if(finding.widths, isSliver);
    out.push_back({std::move(finding), std::string(word(description.severity)) + "\n" + description.key});
}

void join(std::vector<sweep::Interval>& spans) {
    std::ranges::sort(spans, [](const auto& a, const auto& b) { return a.from < b.from; });
    std::vector<sweep::Interval> joined;
    for (const sweep::Interval& span : spans) {
        if (!joined.empty() && span.from <= joined.back().to + sweep::leastStep)
            joined.back().to = std::max(joined.back().to, span.to);
        else
            joined.push_back(span);
    }
    spans = std::move(joined);
}

double shownWidth(const sweep::Interval& span, double at, double least) {
    // A breakpoint belongs to the band below it.
    const auto holds = [&](double width) {
        if (width == span.from) return span.from == least || span.from == span.to;
        return width > span.from && width <= span.to;
    };
    double near = holds(at) ? at : (span.from + span.to) / 2;
    double far = std::numeric_limits<double>::infinity();
    for (const double whole : {std::floor(at), std::floor(at) + 1}) {
        if (!holds(whole) || std::abs(whole - at) >= far) continue;
        far = std::abs(whole - at);
        near = whole;
    }
    return near;
}

double lengthOf(const std::vector<sweep::Interval>& spans) {
    double sum = 0;
    for (const sweep::Interval& span : spans)
        sum += span.to - span.from;
    return sum;
}

std::optional<sweep::Interval> whereAbove(const units::Linear& line, double from, double to) {
    // Far below anything visible, and above the rounding error of an exact zero.
    constexpr double nothing = 1e-7;
    const double start = line.value - nothing;
    const double end = line.at(to - from) - nothing;
    if (start <= 0 && end <= 0) return std::nullopt;
    sweep::Interval span{from, to};
    if (start <= 0) span.from = from - start / line.slope;
    if (end <= 0) span.to = from - start / line.slope;
    if (span.from >= span.to) return std::nullopt;
    return span;
}

}  // namespace tenter::checks
