#include "project/differences/align.h"

#include <algorithm>

namespace tenter::project {

namespace {

struct Candidate {
    std::size_t before = 0;
    std::size_t after = 0;
    double likeness = 0;
    [[nodiscard]] std::size_t distance() const { return before > after ? before - after : after - before; }
};

/// Marks the pairs outside of the longest run in which the old indices rise.
void markMoved(std::vector<Alignment::Pair>& pairs) {
    const std::size_t count = pairs.size();
    std::vector<std::size_t> length(count, 1);
    std::vector<std::size_t> previous(count, count);
    std::size_t last = count;
    for (std::size_t i = 0; i < count; ++i) {
        for (std::size_t j = 0; j < i; ++j) {
            if (pairs[j].before < pairs[i].before && length[j] + 1 > length[i]) {
                length[i] = length[j] + 1;
                previous[i] = j;
            }
        }
        if (last == count || length[i] > length[last]) last = i;
    }
    for (Alignment::Pair& pair : pairs)
        pair.moved = true;
    for (; last != count; last = previous[last])
        pairs[last].moved = false;
}

}  // namespace

Alignment align(std::size_t before, std::size_t after,
                const std::function<double(std::size_t, std::size_t)>& likeness, bool samePlace) {
    std::vector<Candidate> candidates;
    for (std::size_t i = 0; i < before; ++i)
        for (std::size_t j = 0; j < after; ++j)
            if (const double alike = likeness(i, j); alike > 0) candidates.push_back({i, j, alike});
    if (samePlace)
        for (std::size_t i = 0; i < std::min(before, after); ++i)
            candidates.push_back({i, i, 0});
    std::ranges::stable_sort(candidates, [](const Candidate& a, const Candidate& b) {
        return a.likeness != b.likeness ? a.likeness > b.likeness : a.distance() < b.distance();
    });
    std::vector<bool> usedBefore(before, false);
    std::vector<bool> usedAfter(after, false);
    Alignment out;
    for (const Candidate& candidate : candidates) {
        if (usedBefore[candidate.before] || usedAfter[candidate.after]) continue;
        usedBefore[candidate.before] = usedAfter[candidate.after] = true;
        out.pairs.push_back({candidate.before, candidate.after});
    }
    std::ranges::sort(out.pairs, {}, &Alignment::Pair::after);
    markMoved(out.pairs);
    for (std::size_t i = 0; i < before; ++i)
        if (!usedBefore[i]) out.removed.push_back(i);
    for (std::size_t j = 0; j < after; ++j)
        if (!usedAfter[j]) out.added.push_back(j);
    return out;
}

}  // namespace tenter::project
