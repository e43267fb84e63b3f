#include "sweep/differences.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <tuple>

namespace tenter::sweep {

namespace {

/// Collects the differences of every part, width by width, rising.
class DifferenceCollector {
public:
    explicit DifferenceCollector(const std::vector<const layout::PreparedRow*>& rows)
        : layouts_(rows.size()),
          lines_(rows.size()),
          unlikeProfiles_(std::ranges::any_of(
              rows, [&](const auto* row) { return &row->profile() != &rows.front()->profile(); })) {}

    void lookAt(const std::vector<const layout::PreparedRow*>& rows, double width) {
        for (std::size_t i = 0; i < rows.size(); ++i)
            layout::layOut(*rows[i], width, layouts_[i]);
        const layout::Layout& first = layouts_.front();
        open_.resize(first.parts.size());
        for (std::size_t card = 0; card < first.cards.size(); ++card)
            for (std::size_t i = 0; i < first.cards[card].partCount; ++i)
                compare(first.cards[card].firstPart + i, card, width);
    }

    std::vector<LineDifference> finish() {
        for (auto& difference : open_)
            close(difference);
        std::sort(done_.begin(), done_.end(), [](const LineDifference& a, const LineDifference& b) {
            return std::tie(a.first, a.place) < std::tie(b.first, b.place);
        });
        return std::move(done_);
    }

private:
    struct Open {
        LineDifference difference;
        bool byRule = false;  ///< true if rounding alone does not explain it at some width
    };

    void compare(std::size_t index, std::size_t card, double width) {
        for (std::size_t i = 0; i < layouts_.size(); ++i)
            lines_[i] = layouts_[i].parts[index].lineCount;
        std::optional<Open>& open = open_[index];
        const bool byRule = !unlikeProfiles_ || std::ranges::all_of(layouts_, [&](const auto& layout) {
            return layout.parts[index].slack >= text::roundingSlack;
        });
        const bool differs =
            std::any_of(lines_.begin(), lines_.end(), [&](auto count) { return count != lines_.front(); });
        if (!(differs && open && open->difference.lines == lines_)) {
            close(open);
            if (!differs) return;
            open = Open{{width, width, {card, layouts_.front().parts[index].index}, lines_}};
        }
        open->difference.last = width;
        open->byRule = open->byRule || byRule;
    }

    void close(std::optional<Open>& open) {
        if (open && open->byRule) done_.push_back(std::move(open->difference));
        open.reset();
    }

    std::vector<layout::Layout> layouts_;  // one for each row
    std::vector<std::uint32_t> lines_;
    bool unlikeProfiles_;                    // false if all rows have one profile, which rounds in one way
    std::vector<std::optional<Open>> open_;  // one for each part
    std::vector<LineDifference> done_;
};

}  // namespace

std::vector<double> wholeWidths(double least, double most) {
    std::vector<double> widths;
    if (!(least <= most)) return widths;
    widths.push_back(least);
    const double first = std::floor(least) + 1;
    for (int i = 0; first + i < most; ++i)
        widths.push_back(first + i);
    if (most > least) widths.push_back(most);
    return widths;
}

std::vector<LineDifference> lineDifferences(const std::vector<const layout::PreparedRow*>& rows, double least,
                                            double most, const std::function<bool()>& goOn) {
    if (rows.size() < 2) return {};
    DifferenceCollector collector(rows);
    for (const double width : wholeWidths(least, most)) {
        if (goOn && !goOn()) return {};
        collector.lookAt(rows, width);
    }
    return collector.finish();
}

std::vector<WidthRange> widthRangesOf(const std::vector<LineDifference>& differences) {
    std::vector<WidthRange> spans;
    std::vector<WidthRange> all;
    all.reserve(differences.size());
    for (const LineDifference& difference : differences)
        all.push_back({difference.first, difference.last});
    std::sort(all.begin(), all.end(),
              [](const WidthRange& a, const WidthRange& b) { return a.first < b.first; });
    for (const WidthRange& span : all) {
        // No width between two neighbouring whole widths was laid out.
        if (!spans.empty() && span.first <= spans.back().last + 1)
            spans.back().last = std::max(spans.back().last, span.last);
        else
            spans.push_back(span);
    }
    return spans;
}

}  // namespace tenter::sweep
