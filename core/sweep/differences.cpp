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
    explicit DifferenceCollector(std::size_t rows) : layouts_(rows), lines_(rows) {}

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
    void compare(std::size_t index, std::size_t card, double width) {
        for (std::size_t i = 0; i < layouts_.size(); ++i)
            lines_[i] = layouts_[i].parts[index].lineCount;
        std::optional<LineDifference>& open = open_[index];
        const bool differs =
            std::any_of(lines_.begin(), lines_.end(), [&](auto count) { return count != lines_.front(); });
        if (differs && open && open->lines == lines_) {
            open->last = width;
            return;
        }
        close(open);
        if (differs) open = LineDifference{width, width, {card, layouts_.front().parts[index].index}, lines_};
    }

    void close(std::optional<LineDifference>& open) {
        if (open) done_.push_back(std::move(*open));
        open.reset();
    }

    std::vector<layout::Layout> layouts_;  // one for each row
    std::vector<std::uint32_t> lines_;
    std::vector<std::optional<LineDifference>> open_;  // one for each part
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
    DifferenceCollector collector(rows.size());
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
