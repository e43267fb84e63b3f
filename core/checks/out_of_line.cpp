// Text that starts at different heights in neighbouring cards, because a part above it has a different line
// count, is a picture of a different height, or is missing. Common practice, no source.
#include <algorithm>
#include <cmath>
#include <map>

#include "checks/alignable.h"
#include "checks/check.h"
#include "checks/common_remedies.h"
#include "checks/phrases.h"
#include "checks/run_joiner.h"
#include "layout/prepared.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::checks {

namespace {

/// A difference in height between neighbouring pictures that nobody sees, CSS px. Common practice, no source.
constexpr double sameHeight = 2;

/// Parts of one role with different line counts in neighbouring cards, and the counts at the worst place.
struct UnevenLines {
    Cause cause;
    std::uint32_t fewer = 0, more = 0;
};

/// What puts text out of line.
struct OutOfLine {
    std::map<std::string, UnevenLines> lines;  ///< by role
    Cause pictures;                            ///< badness: the difference in height, CSS px
    Cause missing;                             ///< parts that the neighbouring card lacks
    std::size_t lacking = 0;                   ///< the card that lacks the worst of them
};

/// Compares each card of a line of cards with its neighbour.
class LinesOfCards {
public:
    LinesOfCards(const Subject& subject, OutOfLine& found) : subject_(subject), found_(found) {
        for (std::size_t i = 0; i < subject.parts.size(); ++i)
            if (subject.parts[i].place.part == 0) firsts_.push_back(i);
    }

    /// Compares over the widths of one band.
    void compareCards(const layout::BandPlan& band, const sweep::Interval& widths) {
        for (std::size_t i = 0; i + 1 < firsts_.size(); ++i)
            if (subject_.parts[firsts_[i + 1]].place.card % static_cast<std::size_t>(band.columns) != 0)
                compare(band, firsts_[i], firsts_[i + 1], widths);
    }

private:
    /// Compares two cards from the top down, as long as both have the same part and more text below it.
    void compare(const layout::BandPlan& band, std::size_t one, std::size_t other,
                 const sweep::Interval& widths) {
        for (; sameThere(one, other) && followedByText(one) && followedByText(other); ++one, ++other) {
            const CheckedPart& above = subject_.parts[one];
            const CheckedPart& beside = subject_.parts[other];
            if (above.text != nullptr)
                compareLines(band, above, beside, widths);
            else if (band.cards[above.place.card].beside != above.place.part)
                comparePictures(band, above, beside, widths);
        }
        if (!sameThere(one, other)) findMissing(one, other, widths);
    }

    /// Line counts below the role's minimum lines take the same height.
    void compareLines(const layout::BandPlan& band, const CheckedPart& above, const CheckedPart& beside,
                      const sweep::Interval& widths) {
        const project::TextStyle& style = *band.settings.text.find(above.text->role);
        const auto kept = static_cast<std::uint32_t>(std::max(*style.keepLines, 0));
        using Lines = std::pair<std::uint32_t, std::uint32_t>;  // above and beside
        RunJoiner runs(1e-3, Lines(), [&](const sweep::Interval& run, const Lines& lines) {
            const auto [fewer, more] = std::minmax(lines.first, lines.second);
            add(lines.first > lines.second ? above : beside, run, widths, fewer, more);
        });
        whereLineCountsDiffer(above.pieces.pieces, beside.pieces.pieces,
                              [&](const sweep::Interval& span, std::uint32_t lines, std::uint32_t others) {
                                  if (std::max(lines, kept) != std::max(others, kept))
                                      runs.add(span, {lines, others});
                              });
        runs.finish();
    }

    /// All columns have the same width, so only the ratio makes heights differ.
    void comparePictures(const layout::BandPlan& band, const CheckedPart& above, const CheckedPart& beside,
                         const sweep::Interval& widths) {
        const auto tallness = [&](const CheckedPart& part) { return 1 / band.part(part.place).ratio; };
        const double more = tallness(above) - tallness(beside);
        const CheckedPart& taller = more > 0 ? above : beside;
        for (const sweep::Piece& piece : taller.pieces.pieces) {
            const auto cut = within(piece, widths);
            if (!cut) continue;
            const units::Linear height(piece.width.at(cut->from - piece.from) * std::abs(more) - sameHeight,
                                       piece.width.slope * std::abs(more));
            const auto span = whereAbove(height, cut->from, cut->to);
            if (!span) continue;
            const double at = height.slope > 0 ? span->to : span->from;
            found_.pictures.add(taller.place, *span, height.at(at - cut->from) + sameHeight, at);
        }
    }

    /// Finds a part that one card lacks above a text that both have.
    void findMissing(std::size_t one, std::size_t other, const sweep::Interval& widths) {
        const std::size_t inOther = stepsTo(subject_.parts[one], other);
        const std::size_t inOne = stepsTo(subject_.parts[other], one);
        if (inOther == none && inOne == none) return;
        // The parts skipped to reach the neighbour's next part are the missing ones.
        const bool otherLacks = inOther == none || (inOne != none && inOne < inOther);
        const CheckedPart& had = subject_.parts[otherLacks ? one : other];
        const CheckedPart& instead = subject_.parts[otherLacks ? other : one];
        if (instead.text == nullptr || instead.is("button")) return;
        if (found_.missing.add(had.place, widths, had.picture != nullptr ? 2 : 1))
            found_.lacking = instead.place.card;
    }

    static constexpr std::size_t none = static_cast<std::size_t>(-1);
    /// The number of parts from part `from` down to one like `part` in the same card; `none` if there is
    /// none.
    [[nodiscard]] std::size_t stepsTo(const CheckedPart& part, std::size_t from) const {
        for (std::size_t i = from;
             i < subject_.parts.size() && subject_.parts[i].place.card == subject_.parts[from].place.card;
             ++i)
            if (sameKind(part, subject_.parts[i])) return i - from;
        return none;
    }

    void add(const CheckedPart& longer, const sweep::Interval& span, const sweep::Interval& widths,
             std::uint32_t fewer, std::uint32_t more) {
        const sweep::Interval both{std::max(span.from, widths.from), std::min(span.to, widths.to)};
        if (!(both.from < both.to)) return;
        UnevenLines& uneven = found_.lines[longer.text->role];
        if (!uneven.cause.add(longer.place, both, more - fewer + (both.to - both.from) / 1e6)) return;
        uneven.fewer = fewer;
        uneven.more = more;
    }

    static bool sameKind(const CheckedPart& a, const CheckedPart& b) {
        if (a.text == nullptr || b.text == nullptr) return a.text == b.text;
        return a.text->role == b.text->role;
    }
    [[nodiscard]] bool sameThere(std::size_t one, std::size_t other) const {
        return sameKind(subject_.parts[one], subject_.parts[other]);
    }
    /// True if the next part is a text directly below. A button is at the foot of the card instead.
    [[nodiscard]] bool followedByText(std::size_t i) const {
        if (i + 1 >= subject_.parts.size() ||
            subject_.parts[i + 1].place.card != subject_.parts[i].place.card)
            return false;
        return subject_.parts[i + 1].text != nullptr && !subject_.parts[i + 1].is("button");
    }

    const Subject& subject_;
    OutOfLine& found_;
    std::vector<std::size_t> firsts_;
};

/// True if the cause covers enough widths to be reported.
bool isWideEnough(Cause& cause, const Subject& subject) {
    join(cause.widths);
    return lengthOf(cause.widths) >= subject.limits().leastRun;
}

void reportOutOfLine(Findings& out, const Cause& cause, const std::string& what, const std::string& fix,
                     const std::string& key) {
    report(out, cause,
           {Severity::Warning,
            commonPractice(),
            {what, wording::say("The texts below do not start at the same height"), fix},
            key});
}

void reportLines(Findings& out, const Subject& subject, const std::string& role, const UnevenLines& uneven) {
    reportOutOfLine(
        out, uneven.cause,
        wording::say("%1, %2 has %3; its neighbour has %4",
                     {atWidths(subject, uneven.cause.there), worstAndOthers(subject, uneven.cause),
                      lineCount(uneven.more), lineCount(uneven.fewer)}),
        canAlignParts(subject)
            ? wording::say("Align the parts of neighbouring cards (Row › Align parts), or %1",
                           {shortening(role)})
            : wording::say("Reserve space for as many lines (Text › Minimum lines), or %1",
                           {shortening(role)}),
        role);
}

void reportPictures(Findings& out, const Subject& subject, const Cause& pictures) {
    reportOutOfLine(out, pictures,
                    wording::say("%1, %2 is up to %3 taller than its neighbour",
                                 {atWidths(subject, pictures.runOfWorst()), worstAndOthers(subject, pictures),
                                  units::px(pictures.worst, 0)}),
                    canAlignParts(subject)
                        ? wording::say("Use one aspect ratio for all pictures (Pictures › Aspect ratio), or "
                                       "align the parts (Row › Align parts)")
                        : wording::say("Use one aspect ratio for all pictures (Pictures › Aspect ratio)"),
                    "picture");
}

void reportMissing(Findings& out, const Subject& subject, const OutOfLine& found) {
    const Cause& missing = found.missing;
    const project::Part& part = subject.project.part(missing.place);
    const auto* text = std::get_if<project::TextPart>(&part);
    reportOutOfLine(out, missing,
                    wording::say("%1, card %2 has no %3, but its neighbour has %4",
                                 {atWidths(subject, missing.runOfWorst()), std::to_string(found.lacking + 1),
                                  text == nullptr ? wording::say("picture") : partKind(text->role),
                                  named(subject, missing.place)}),
                    wording::say("Use the same parts in every card"), "missing");
}

void checkOutOfLine(const Subject& subject, Findings& out) {
    OutOfLine found;
    LinesOfCards lines(subject, found);
    sweep::walkBands(subject.row, subject.least, subject.most, [&](std::size_t at, double from, double to) {
        const layout::BandPlan& band = subject.row.band(at);
        if (band.columns > 1 && !band.levelled) lines.compareCards(band, {from, to});
        return to;
    });
    for (auto& [role, uneven] : found.lines)
        if (isWideEnough(uneven.cause, subject)) reportLines(out, subject, role, uneven);
    if (isWideEnough(found.pictures, subject)) reportPictures(out, subject, found.pictures);
    if (isWideEnough(found.missing, subject)) reportMissing(out, subject, found);
}

void remedyOutOfLine(Candidates& out) {
    proposeAlignedParts(out);
    if (out.isFor("picture")) proposeOneRatio(out);
    for (const std::string& role : out.roles()) {
        if (!out.isFor(role)) continue;
        // Space for as many lines as the longest text has.
        std::map<std::size_t, std::uint32_t> most;  // by band
        for (const CheckedPart& part : out.subject().parts)
            if (part.is(role.c_str()))
                for (const sweep::Piece& piece : part.pieces.pieces)
                    most[piece.band] = std::max(most[piece.band], piece.lines);
        out.set(wording::say("Reserve space for the longest %1 in every card", {partKind(role)}),
                Candidates::Scope::Layout, [&](project::Settings& settings, std::size_t band) {
                    const int columns = out.settings(band).row.columns.value_or(1);
                    if (columns > 1) settings.text.of(role).keepLines = static_cast<int>(most[band]);
                });
    }
}

}  // namespace

extern const Check outOfLineCheck{
    .name = "out-of-line", .run = checkOutOfLine, .dependsOnBreaks = true, .remedies = remedyOutOfLine};

}  // namespace tenter::checks
