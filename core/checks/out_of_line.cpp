// Copy that starts at unlike heights across a line of cards, since what stands above it has other numbers of
// lines. Common practice, no source.
#include <algorithm>
#include <map>

#include "checks/phrases.h"
#include "checks/registry.h"
#include "layout/prepared.h"

namespace tenter::checks {

namespace {

struct Uneven {
    Cause cause;
    std::uint32_t fewer = 0, more = 0;
};

class LinesOfCards {
public:
    LinesOfCards(const Subject& subject, std::map<std::string, Uneven>& found)
        : subject_(subject), found_(found) {
        for (std::size_t i = 0; i < subject.parts.size(); ++i)
            if (subject.parts[i].part == 0) firsts_.push_back(i);
    }

    /// Each card of a line against its neighbour, over the widths of one band.
    void look(std::size_t columns, const sweep::Interval& widths) {
        for (std::size_t i = 0; i + 1 < firsts_.size(); ++i)
            if (subject_.parts[firsts_[i + 1]].card % columns != 0)
                compare(firsts_[i], firsts_[i + 1], widths);
    }

private:
    /// Down two cards for as long as they hold the same parts, and more text follows in both.
    void compare(std::size_t one, std::size_t other, const sweep::Interval& widths) {
        for (; sameThere(one, other) && followedByText(one) && followedByText(other); ++one, ++other) {
            const PartSeen& above = subject_.parts[one];
            if (above.text == nullptr) continue;
            whereUnlike(above.pieces.pieces, subject_.parts[other].pieces.pieces,
                        [&](const sweep::Interval& span, std::uint32_t lines, std::uint32_t beside) {
                            add(lines > beside ? above : subject_.parts[other], span, widths,
                                std::min(lines, beside), std::max(lines, beside));
                        });
        }
    }

    void add(const PartSeen& longer, const sweep::Interval& span, const sweep::Interval& widths,
             std::uint32_t fewer, std::uint32_t more) {
        const sweep::Interval both{std::max(span.from, widths.from), std::min(span.to, widths.to)};
        if (!(both.from < both.to)) return;
        Uneven& uneven = found_[longer.text->role];
        if (!uneven.cause.add(longer.card, longer.part, both, more - fewer + (both.to - both.from) / 1e6))
            return;
        uneven.fewer = fewer;
        uneven.more = more;
    }

    [[nodiscard]] bool sameThere(std::size_t one, std::size_t other) const {
        const PartSeen& a = subject_.parts[one];
        const PartSeen& b = subject_.parts[other];
        if (a.text == nullptr || b.text == nullptr) return a.text == b.text;
        return a.text->role == b.text->role;
    }
    /// The next part is copy that stands where what is above it ends: a button stands at the foot.
    [[nodiscard]] bool followedByText(std::size_t i) const {
        if (i + 1 >= subject_.parts.size() || subject_.parts[i + 1].card != subject_.parts[i].card)
            return false;
        return subject_.parts[i + 1].text != nullptr && !subject_.parts[i + 1].is("button");
    }

    const Subject& subject_;
    std::map<std::string, Uneven>& found_;
    std::vector<std::size_t> firsts_;
};

}  // namespace

void checkOutOfLine(const Subject& subject, Findings& out) {
    std::map<std::string, Uneven> found;  // by role
    LinesOfCards lines(subject, found);
    double from = subject.least;
    for (std::size_t i = 0; i < subject.row.bandCount(); ++i) {
        const layout::BandPlan& band = subject.row.band(i);
        const double to = std::min(subject.most, band.upTo.value_or(subject.most));
        if (to > from && band.columns > 1 && !band.levelled)
            lines.look(static_cast<std::size_t>(band.columns), {from, to});
        from = std::max(from, to);
    }
    for (auto& [role, uneven] : found) {
        join(uneven.cause.widths);
        if (lengthOf(uneven.cause.widths) < subject.limits().leastRun) continue;
        tell(
            out, uneven.cause,
            {"out-of-line", Severity::Warning, "common practice, no source",
             sentence(worstAndOthers(subject, uneven.cause)) + " takes " + std::to_string(uneven.more) +
                 " lines where its neighbour takes " + std::to_string(uneven.fewer) + ", " +
                 atWidths(uneven.cause.there) +
                 ", so the copy under them starts out of line. Levelling the parts mends it, or copy of like "
                 "length.",
             role});
    }
}

}  // namespace tenter::checks
