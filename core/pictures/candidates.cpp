#include "pictures/candidates.h"

#include <algorithm>
#include <deque>
#include <limits>

namespace tenter::pictures {

namespace {

double pixelsOf(int width, double ratio) {
    return static_cast<double>(width) * width / ratio;
}

/// The demand with every width above `mostWidth` replaced by it.
std::vector<Demand> limited(std::span<const Demand> demand, int mostWidth) {
    std::vector<Demand> out;
    out.reserve(demand.size());
    for (const Demand& one : demand) {
        const int width = std::min(one.width, mostWidth);
        if (!out.empty() && out.back().width == width)
            out.back().share += one.share;
        else
            out.push_back({width, one.share});
    }
    return out;
}

/// `cost(i)` plus `weight(i)` times a rising variable: a line, of which the lowest is asked.
struct Line {
    double cost = 0;
    double weight = 0;
    std::size_t index = 0;
    [[nodiscard]] double at(double x) const { return cost + weight * x; }
};

/// True if `middle` is nowhere below both neighbours. Weights fall from `left` to `right`.
bool isNeverLowest(const Line& left, const Line& middle, const Line& right) {
    return (right.cost - left.cost) * (left.weight - middle.weight) <=
           (middle.cost - left.cost) * (left.weight - right.weight);
}

/// The least number of pixels that a visit loads, for every number of files. Row k serves the first j
/// demanded widths with k + 1 files, the last of which has the j-th width:
///     load(k, j) = min over i < j of load(k − 1, i) + pixels(j) · share(i, j)
/// As a function of i these are lines in pixels(j), with slopes that fall in i and are asked at rising
/// pixels(j), so each row takes linear time.
class Program {
public:
    Program(const std::vector<Demand>& demand, double ratio) : pixels_(demand.size()), upTo_(1, 0.0) {
        upTo_.reserve(demand.size() + 1);
        for (std::size_t j = 0; j < demand.size(); ++j) {
            pixels_[j] = pixelsOf(demand[j].width, ratio);
            upTo_.push_back(upTo_.back() + demand[j].share);
        }
    }

    /// The indices of the best widths, rising.
    [[nodiscard]] std::vector<std::size_t> best(int count) const {
        const std::size_t size = pixels_.size();
        const double none = std::numeric_limits<double>::infinity();
        std::vector<double> before(size + 1, none);
        before[0] = 0;
        std::vector<std::vector<std::size_t>> from;
        std::vector<double> loads;
        for (int k = 0; k < count; ++k) {
            std::vector<double> load(size + 1, none);
            from.push_back(next(before, load));
            loads.push_back(load[size]);
            before = std::move(load);
        }
        const auto fewest = std::ranges::min_element(loads);
        std::vector<std::size_t> chosen;
        std::size_t end = size;
        for (auto k = fewest - loads.begin(); k >= 0; --k) {
            chosen.push_back(end - 1);
            end = from[static_cast<std::size_t>(k)][end];
        }
        std::ranges::reverse(chosen);
        return chosen;
    }

private:
    /// One row from the row before it; returns where the last file's demand starts, for each j.
    std::vector<std::size_t> next(const std::vector<double>& before, std::vector<double>& load) const {
        std::vector<std::size_t> from(load.size());
        std::deque<Line> lines;
        for (std::size_t j = 1; j < load.size(); ++j) {
            const Line line{before[j - 1], -upTo_[j - 1], j - 1};
            if (line.cost < std::numeric_limits<double>::infinity()) {
                while (lines.size() > 1 && isNeverLowest(lines[lines.size() - 2], lines.back(), line))
                    lines.pop_back();
                lines.push_back(line);
            }
            const double pixels = pixels_[j - 1];
            while (lines.size() > 1 && lines[1].at(pixels) <= lines[0].at(pixels))
                lines.pop_front();
            if (lines.empty()) continue;
            load[j] = lines.front().at(pixels) + pixels * upTo_[j];
            from[j] = lines.front().index;
        }
        return from;
    }

    std::vector<double> pixels_;  // of a file of the j-th width
    std::vector<double> upTo_;    // share of the first j widths
};

}  // namespace

Candidates evaluated(std::vector<int> widths, std::span<const Demand> demand, double ratio) {
    Candidates out;
    out.widths = std::move(widths);
    double loaded = 0;
    for (const Demand& one : limited(demand, out.widths.back())) {
        const int width = *std::ranges::lower_bound(out.widths, one.width);
        loaded += one.share * pixelsOf(width, ratio);
        out.needed += one.share * pixelsOf(one.width, ratio);
    }
    out.surplus = loaded - out.needed;
    return out;
}

Candidates bestCandidates(std::span<const Demand> demand, int count, double ratio, int mostWidth) {
    const std::vector<Demand> served = limited(demand, mostWidth);
    if (served.empty() || count < 1 || mostWidth < 1 || !(ratio > 0)) return {};
    std::vector<int> widths;
    for (const std::size_t index : Program(served, ratio).best(count))
        widths.push_back(served[index].width);
    return evaluated(std::move(widths), served, ratio);
}

}  // namespace tenter::pictures
