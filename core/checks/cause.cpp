#include "checks/cause.h"

#include <algorithm>
#include <array>

namespace tenter::checks {

namespace {

constexpr std::array<std::pair<std::string_view, Severity>, 3> severities{
    {{"note", Severity::Note}, {"warning", Severity::Warning}, {"error", Severity::Error}}};

}  // namespace

std::string_view word(Severity severity) {
    for (const auto& [name, each] : severities)
        if (each == severity) return name;
    return {};
}

std::optional<Severity> severityOf(std::string_view word) {
    for (const auto& [name, each] : severities)
        if (name == word) return each;
    return std::nullopt;
}

bool Cause::add(std::size_t atCard, std::size_t atPart, sweep::Interval span, double badness,
                std::optional<double> worstAt) {
    const bool first = places.empty();
    widths.push_back(span);
    places.emplace(atCard, atPart);
    if (!first && badness <= worst) return false;
    card = atCard;
    part = atPart;
    there = span;
    at = worstAt.value_or((span.from + span.to) / 2);
    worst = badness;
    return true;
}

void tell(Findings& out, const Cause& cause, const Saying& saying) {
    if (!cause.any()) return;
    Told told;
    told.key = saying.check + "\n" + std::string(word(saying.severity)) + "\n" + saying.key;
    told.finding = {saying.check, saying.severity, cause.card, cause.part, cause.widths, cause.at, 0,
                    saying.says,  saying.source};
    join(told.finding.widths);
    // What is narrower than anyone can set a window says nothing beside wider spans.
    constexpr double sliver = 0.05;
    const auto isSliver = [](const sweep::Interval& span) {
        return span.to > span.from && span.to - span.from < sliver;
    };
    if (!std::ranges::all_of(told.finding.widths, isSliver)) std::erase_if(told.finding.widths, isSliver);
    out.push_back(std::move(told));
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

double lengthOf(const std::vector<sweep::Interval>& spans) {
    double sum = 0;
    for (const sweep::Interval& span : spans)
        sum += span.to - span.from;
    return sum;
}

std::optional<sweep::Interval> whereAbove(const units::Linear& line, double from, double to) {
    // Far below what anyone sees, and above what doubles leave of an exact zero.
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
