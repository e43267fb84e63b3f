#include "checks/room_for_copy.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

#include "checks/cause.h"
#include "checks/phrases.h"
#include "layout/inline_sizes.h"
#include "text/linear_lines.h"

namespace tenter::checks {

namespace {

using units::Linear;

/// The average advance of the first characters of a word, including the space before it.
struct Pace {
    double ems = 0;
    double letters = 0;  ///< letter spacings
    double words = 0;    ///< word spacings
    [[nodiscard]] double at(const text::LineQuery& query) const {
        return ems * query.size + letters * query.letterSpacing + words * query.wordSpacing;
    }
};

/// The paces of every beginning of every word. A text of one word has no space; then the space is left out.
std::vector<Pace> pacesOf(const text::Paragraph& paragraph) {
    const std::vector<text::Cluster>& clusters = paragraph.clusters();
    const auto count = static_cast<std::uint32_t>(clusters.size());
    const auto isGap = [&](std::uint32_t at) {
        return clusters[at].space || paragraph.text()[clusters[at].begin] == u'\n';
    };
    const auto space = static_cast<std::uint32_t>(std::ranges::find(clusters, true, &text::Cluster::space) -
                                                  clusters.begin());
    const std::uint32_t pastSpace = std::min(space + 1, count);
    std::vector<Pace> paces;
    paces.reserve(clusters.size());
    std::uint32_t first = 0;
    for (std::uint32_t end = 1; end <= count; ++end) {
        if (isGap(end - 1)) {
            first = end;
            continue;
        }
        const double characters = paragraph.graphemes(space, pastSpace) + paragraph.graphemes(first, end);
        if (characters > 0)
            paces.push_back(
                {(paragraph.ems(space, pastSpace) + paragraph.ems(first, end)) / characters,
                 (paragraph.letters(space, pastSpace) + paragraph.letters(first, end)) / characters,
                 (paragraph.words(space, pastSpace) + paragraph.words(first, end)) / characters});
    }
    return paces;
}

/// A witness of the breaker that also keeps the ends of lines at which the text could continue.
class Endings {
public:
    Endings(const Linear& available, std::size_t wished)
        : follower_(available, text::tightSlack), wished_(wished) {}

    bool fits(const Linear& width) { return follower_.fits(width); }
    void line(const text::LineStart& start, const text::Opportunity& end, const Linear& width,
              const Linear& over) {
        follower_.line(start, end, width, over);
        if (end.kind == text::Opportunity::Kind::Forced) ends_.push_back(width);
        if (follower_.lines() == wished_) wishedEnd_ = std::max(end.lineEnd, start.cluster);
    }

    [[nodiscard]] std::size_t lines() const { return follower_.lines(); }
    [[nodiscard]] bool overflows() const { return follower_.overflows(); }
    [[nodiscard]] double until() const { return follower_.until(); }
    /// The widest line before a forced break or the end of the text, `t` px past the start. CSS px.
    [[nodiscard]] double fullest(double t) const {
        double most = 0;
        for (const Linear& end : ends_)
            most = std::max(most, end.at(t));
        return most;
    }
    /// The cluster after the last line that the wish allows.
    [[nodiscard]] std::uint32_t wishedEnd() const { return wishedEnd_; }

private:
    text::LinearLineCounter follower_;
    std::size_t wished_;
    std::uint32_t wishedEnd_ = 0;
    std::vector<Linear> ends_;
};

text::LineQuery queryAt(const text::LinearLineQuery& query, double t) {
    return {query.size.at(t), query.available.at(t), query.letterSpacing.at(t), query.wordSpacing.at(t)};
}

/// Finds the smallest room of one part.
class RoomFinder {
public:
    RoomFinder(const layout::PreparedRow& row, project::PartRef place, double rangeStart)
        : row_(row), place_(place), rangeStart_(rangeStart) {}

    /// Searches the widths past `least`, up to `most` (CSS px), with a wish for at most `lines` lines.
    void search(double least, double most, int lines) {
        if (!(least < most)) return;
        sweep::Stride stride;
        sweep::walkIntervals(row_, least, most, [&](std::size_t index, double from, double to) {
            const layout::IntervalPlan& interval = row_.interval(index);
            const layout::PartPlan& plan = interval.part(place_);
            const text::Paragraph& paragraph = *plan.paragraph;
            const text::LinearLineQuery query =
                layout::textInlineSizes(interval.roles[plan.role], paragraph,
                                        layout::inlineSizesAt(interval, Linear(from, 1)))
                    .query;
            const std::size_t wished = std::max(static_cast<std::size_t>(lines), paragraph.forcedLines());
            Endings endings(query.available, wished);
            text::Breaker<Linear, Endings>(paragraph, query, endings).run();
            double until = std::min({query.size.until, query.available.until, query.letterSpacing.until,
                                     query.wordSpacing.until, endings.until()});
            std::size_t laid = endings.lines();
            if (query.balance && !endings.overflows() && laid > 0)
                laid = std::max<std::size_t>(
                    laid,
                    row_.profile().balancedLines(paragraph, query, static_cast<std::uint32_t>(laid), until));
            const double end = stride.next(from, until, to);
            judge(paragraph, query, endings, laid, wished, {from, end});
            return end;
        });
    }

    [[nodiscard]] const std::optional<RoomForCopy>& found() const { return found_; }

private:
    void judge(const text::Paragraph& paragraph, const text::LinearLineQuery& query, const Endings& endings,
               std::size_t laid, std::size_t wished, const sweep::Interval& widths) {
        const auto last = static_cast<std::uint32_t>(paragraph.clusters().size());
        if (laid > wished) {
            note(paragraph, wished, -static_cast<int>(paragraph.graphemes(endings.wishedEnd(), last)),
                 widths.to, widths);
            return;
        }
        // The free space and the advance of a character are straight there, or bend so that the smallest
        // quotient is at an end.
        for (const double at : {widths.from, widths.to})
            note(paragraph, wished,
                 spareAt(paragraph, queryAt(query, at - widths.from), endings.fullest(at - widths.from),
                         wished - laid),
                 at, widths);
    }

    int spareAt(const text::Paragraph& paragraph, const text::LineQuery& query, double fullest,
                std::size_t more) {
        const double line = query.available * (1 - text::tightSlack);
        const double widest = text::minContent(paragraph, query);
        const double room = line - fullest + static_cast<double>(more) * std::max(0.0, line - widest);
        double character = 0;
        for (const Pace& pace : pacesOfBand(paragraph))
            character = std::max(character, pace.at(query));
        if (!(room > 0)) return 0;
        constexpr double most = std::numeric_limits<int>::max();
        return static_cast<int>(std::min(most, std::floor(room / character)));
    }

    const std::vector<Pace>& pacesOfBand(const text::Paragraph& paragraph) {
        if (&paragraph != measured_) {
            measured_ = &paragraph;
            paces_ = pacesOf(paragraph);
        }
        return paces_;
    }

    void note(const text::Paragraph& paragraph, std::size_t wished, int spare, double at,
              const sweep::Interval& widths) {
        if (found_ && found_->spare <= spare) return;
        const auto last = static_cast<std::uint32_t>(paragraph.clusters().size());
        RoomForCopy room;
        room.place = place_;
        room.lines = static_cast<int>(wished);
        room.characters = static_cast<int>(paragraph.graphemes(0, last));
        room.spare = spare;
        const double past = at == rangeStart_ ? at : std::min(std::floor(at) + 1, widths.to);
        room.width = at == widths.from ? past : widestWholeWidth(widths);
        found_ = room;
    }

    const layout::PreparedRow& row_;
    project::PartRef place_;
    double rangeStart_;  // the only width at which a range includes its start, CSS px
    const text::Paragraph* measured_ = nullptr;
    std::vector<Pace> paces_;
    std::optional<RoomForCopy> found_;
};

}  // namespace

std::vector<RoomForCopy> roomForCopy(const project::Project& project, std::size_t variant,
                                     text::ParagraphStore& store, const Options& options) {
    const project::Wishes wishes = project::effectiveWishes(project);
    std::vector<layout::PreparedRow> rows;
    rows.reserve(text::profiles().size());
    for (const text::BreakProfile* profile : text::profiles())
        if (options.profile == nullptr || options.profile == profile)
            rows.emplace_back(project, variant, store, *profile);
    std::vector<RoomForCopy> rooms;
    for (std::size_t card = 0; card < project.row().cards.size(); ++card) {
        for (std::size_t part = 0; part < project.row().cards[card].parts.size(); ++part) {
            const project::PartRef place{card, part};
            const auto* text = std::get_if<project::TextPart>(&project.part(place));
            if (text == nullptr) continue;
            std::optional<RoomForCopy> least;
            for (const layout::PreparedRow& row : rows) {
                if (row.band(0).part(place).paragraph->empty()) continue;
                RoomFinder finder(row, place, project.leastWidth);
                for (const auto& wish : project::wishRanges(wishes, text->role, &project::RoleWishes::lines))
                    finder.search(std::max(project.leastWidth, wish.from),
                                  std::min(project.mostWidth, wish.to), wish.value);
                if (finder.found() && (!least || finder.found()->spare < least->spare))
                    least = finder.found();
            }
            if (least) rooms.push_back(*least);
        }
    }
    return rooms;
}

}  // namespace tenter::checks
