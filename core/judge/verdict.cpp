#include "judge/verdict.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <utility>

namespace tenter::judge {

namespace {

using What = Difference::What;
using Name = std::pair<std::size_t, std::size_t>;  // card, part

/// A computed part and the browser's; `read` is null if the browser does not have it.
struct Pair {
    Name name;
    const layout::LaidPart* computed;
    const BrowserPart* read;
};

bool linesDiffer(const Pair& pair) {
    return pair.read != nullptr && !pair.computed->picture &&
           pair.read->lines.value_or(0) != pair.computed->lineCount;
}

class Judge {
public:
    Judge(const layout::PreparedRow& row, const layout::Layout& computed, const BrowserLayout& read)
        : profile_(row.profile()), computed_(computed), read_(read) {}

    Verdict run() {
        verdict_.width = computed_.width;
        const std::vector<Pair> pairs = pairParts();
        inlineOnly_ = std::any_of(pairs.begin(), pairs.end(), [&](const Pair& pair) {
            return differsInTightFit(pair) || (linesDiffer(pair) && isExcluded(pair));
        });
        compareBox({}, {}, read_.row, computed_.row);
        if (read_.cards.size() != computed_.cards.size())
            differ({}, {}, What::Cards, static_cast<double>(read_.cards.size()),
                   static_cast<double>(computed_.cards.size()));
        for (std::size_t c = 0; c < std::min(read_.cards.size(), computed_.cards.size()); ++c)
            compareBox(c, {}, read_.cards[c], computed_.cards[c].box);
        for (const Pair& pair : pairs)
            comparePart(pair);
        return std::move(verdict_);
    }

private:
    std::vector<Pair> pairParts() {
        std::map<Name, const BrowserPart*> read;
        for (const BrowserPart& part : read_.parts)
            read[{part.card, part.part}] = &part;
        std::vector<Pair> pairs;
        for (std::size_t c = 0; c < computed_.cards.size(); ++c) {
            const layout::LaidCard& card = computed_.cards[c];
            for (std::uint32_t i = 0; i < card.partCount; ++i) {
                const layout::LaidPart& part = computed_.parts[card.firstPart + i];
                const Name name{c, part.index};
                const auto found = read.find(name);
                pairs.push_back({name, &part, found == read.end() ? nullptr : found->second});
                if (found != read.end()) read.erase(found);
            }
        }
        for (const auto& [name, part] : read)
            differ(name.first, name.second, What::Unexpected, 1, 0);
        return pairs;
    }

    [[nodiscard]] bool differsInTightFit(const Pair& pair) const {
        return linesDiffer(pair) && pair.computed->slack < text::tightSlack;
    }

    [[nodiscard]] bool isExcluded(const Pair& pair) const {
        const text::Paragraph* paragraph = pair.computed->paragraph;
        return paragraph != nullptr && profile_.usesEngineData(paragraph->text());
    }

    void differ(std::optional<std::size_t> card, std::optional<std::size_t> part, What what, double read,
                double computed) {
        verdict_.differences.push_back({card, part, what, read, computed, 1});
    }

    void compareSide(std::optional<std::size_t> card, std::optional<std::size_t> part, What what, double read,
                     double computed) {
        const double off = std::abs(read - computed);
        if (off > verdict_.largestBox) verdict_.largestBox = off;
        // Written so that NaN counts as a difference.
        if (!(off <= boxTolerance)) differ(card, part, what, read, computed);
    }

    void compareBox(std::optional<std::size_t> card, std::optional<std::size_t> part, const layout::Box& read,
                    const layout::Box& computed) {
        compareSide(card, part, What::X, read.x, computed.x);
        compareSide(card, part, What::Width, read.width, computed.width);
        if (inlineOnly_) return;
        compareSide(card, part, What::Y, read.y, computed.y);
        compareSide(card, part, What::Height, read.height, computed.height);
    }

    void comparePart(const Pair& pair) {
        const auto [card, part] = pair.name;
        if (pair.read == nullptr) {
            differ(card, part, What::Missing, 0, 1);
            return;
        }
        if (isExcluded(pair)) {
            ++verdict_.excluded;
            return;
        }
        ++verdict_.parts;
        compareBox(card, part, pair.read->box, pair.computed->box);
        if (pair.computed->picture) return;
        const double size = pair.read->fontSize.value_or(0);
        const double off = std::abs(size - pair.computed->fontSize);
        if (off > verdict_.largestSize) verdict_.largestSize = off;
        if (!(off <= profile_.sizeTolerance()))
            differ(card, part, What::FontSize, size, pair.computed->fontSize);
        if (differsInTightFit(pair))
            ++verdict_.tightFits;
        else if (linesDiffer(pair))
            verdict_.differences.push_back(
                {card, part, What::Lines, static_cast<double>(pair.read->lines.value_or(0)),
                 static_cast<double>(pair.computed->lineCount), pair.computed->slack});
    }

    const text::BreakProfile& profile_;
    const layout::Layout& computed_;
    const BrowserLayout& read_;
    Verdict verdict_;
    bool inlineOnly_ = false;
};

}  // namespace

Verdict judge(const layout::PreparedRow& row, const layout::Layout& computed, const BrowserLayout& read) {
    return Judge(row, computed, read).run();
}

std::size_t Verdict::differingParts() const {
    std::set<Name> names;
    for (const Difference& difference : differences)
        if (difference.card && difference.part) names.emplace(*difference.card, *difference.part);
    return names.size();
}

void Summary::add(const Verdict& verdict) {
    ++widths;
    if (!verdict.agrees()) ++differingWidths;
    parts += verdict.parts;
    differingParts += verdict.differingParts();
    tightFits += verdict.tightFits;
    excluded += verdict.excluded;
    if (verdict.largestBox > largestBox) {
        largestBox = verdict.largestBox;
        largestBoxAt = verdict.width;
    }
    largestSize = std::max(largestSize, verdict.largestSize);
}

}  // namespace tenter::judge
