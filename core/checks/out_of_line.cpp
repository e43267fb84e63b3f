// Copy that starts at unlike heights across a line of cards, since what stands above it has other numbers of
// lines, is a picture of another height, or is missing. Common practice, no source.
#include <algorithm>
#include <cmath>
#include <map>

#include "checks/phrases.h"
#include "checks/registry.h"
#include "checks/runs.h"
#include "layout/prepared.h"

namespace tenter::checks {

namespace {

/// Two pictures this near in height look alike beside each other, CSS px. Common practice, no source.
constexpr double alike = 2;

struct UnevenLines {
    Cause cause;
    std::uint32_t fewer = 0, more = 0;
};

/// What puts copy out of line.
struct OutOfLine {
    std::map<std::string, UnevenLines> lines;  ///< by role
    Cause pictures;                            ///< as bad as they are unlike in height, CSS px
    Cause missing;                             ///< places of what the neighbour lacks
    std::size_t lacking = 0;                   ///< the card that lacks the worst of it
};

class LinesOfCards {
public:
    LinesOfCards(const Subject& subject, OutOfLine& found) : subject_(subject), found_(found) {
        for (std::size_t i = 0; i < subject.parts.size(); ++i)
            if (subject.parts[i].part == 0) firsts_.push_back(i);
    }

    /// Each card of a line against its neighbour, over the widths of one band.
    void look(const layout::BandPlan& band, const sweep::Interval& widths) {
        for (std::size_t i = 0; i + 1 < firsts_.size(); ++i)
            if (subject_.parts[firsts_[i + 1]].card % static_cast<std::size_t>(band.columns) != 0)
                compare(band, firsts_[i], firsts_[i + 1], widths);
    }

private:
    /// Down two cards for as long as they hold the same parts, and more text follows in both.
    void compare(const layout::BandPlan& band, std::size_t one, std::size_t other,
                 const sweep::Interval& widths) {
        for (; sameThere(one, other) && followedByText(one) && followedByText(other); ++one, ++other) {
            const PartSeen& above = subject_.parts[one];
            const PartSeen& beside = subject_.parts[other];
            if (above.text != nullptr)
                compareLines(band, above, beside, widths);
            else if (band.cards[above.card].beside != static_cast<int>(above.part))
                comparePictures(band, above, beside, widths);
        }
        if (!sameThere(one, other)) findMissing(one, other, widths);
    }

    /// Where room is kept for lines, fewer stand as high as those.
    void compareLines(const layout::BandPlan& band, const PartSeen& above, const PartSeen& beside,
                      const sweep::Interval& widths) {
        const layout::RolePlan& role = band.roles[band.cards[above.card].parts[above.part].role];
        const auto kept = static_cast<std::uint32_t>(std::max(role.keepLines, 0));
        using Lines = std::pair<std::uint32_t, std::uint32_t>;  // above and beside
        Runs runs(1e-3, Lines(), [&](const sweep::Interval& run, const Lines& lines) {
            const auto [fewer, more] = std::minmax(lines.first, lines.second);
            add(lines.first > lines.second ? above : beside, run, widths, fewer, more);
        });
        whereUnlike(above.pieces.pieces, beside.pieces.pieces,
                    [&](const sweep::Interval& span, std::uint32_t lines, std::uint32_t others) {
                        if (std::max(lines, kept) != std::max(others, kept)) runs.add(span, {lines, others});
                    });
        runs.finish();
    }

    /// Columns are equally wide, so heights differ by ratio alone.
    void comparePictures(const layout::BandPlan& band, const PartSeen& above, const PartSeen& beside,
                         const sweep::Interval& widths) {
        const auto tallness = [&](const PartSeen& part) {
            return 1 / band.cards[part.card].parts[part.part].ratio;
        };
        const double more = tallness(above) - tallness(beside);
        const PartSeen& taller = more > 0 ? above : beside;
        for (const sweep::Piece& piece : taller.pieces.pieces) {
            const auto cut = within(piece, widths);
            if (!cut) continue;
            const units::Linear height(piece.width.at(cut->from - piece.from) * std::abs(more) - alike,
                                       piece.width.slope * std::abs(more));
            const auto span = whereAbove(height, cut->from, cut->to);
            if (!span) continue;
            const double at = height.slope > 0 ? span->to : span->from;
            found_.pictures.add(taller.card, taller.part, *span, height.at(at - cut->from) + alike, at);
        }
    }

    /// A part that the neighbour lacks, above copy that both have.
    void findMissing(std::size_t one, std::size_t other, const sweep::Interval& widths) {
        const std::size_t inOther = stepsTo(subject_.parts[one], other);
        const std::size_t inOne = stepsTo(subject_.parts[other], one);
        if (inOther == none && inOne == none) return;
        // What is missing is what must be passed to come to a part that the neighbour starts with.
        const bool otherLacks = inOther == none || (inOne != none && inOne < inOther);
        const PartSeen& had = subject_.parts[otherLacks ? one : other];
        const PartSeen& instead = subject_.parts[otherLacks ? other : one];
        if (instead.text == nullptr || instead.is("button")) return;
        if (found_.missing.add(had.card, had.part, widths, had.picture != nullptr ? 2 : 1))
            found_.lacking = instead.card;
    }

    static constexpr std::size_t none = static_cast<std::size_t>(-1);
    /// How far down from part `from` on its card has a part like `part`.
    [[nodiscard]] std::size_t stepsTo(const PartSeen& part, std::size_t from) const {
        for (std::size_t i = from;
             i < subject_.parts.size() && subject_.parts[i].card == subject_.parts[from].card; ++i)
            if (alikeParts(part, subject_.parts[i])) return i - from;
        return none;
    }

    void add(const PartSeen& longer, const sweep::Interval& span, const sweep::Interval& widths,
             std::uint32_t fewer, std::uint32_t more) {
        const sweep::Interval both{std::max(span.from, widths.from), std::min(span.to, widths.to)};
        if (!(both.from < both.to)) return;
        UnevenLines& uneven = found_.lines[longer.text->role];
        if (!uneven.cause.add(longer.card, longer.part, both, more - fewer + (both.to - both.from) / 1e6))
            return;
        uneven.fewer = fewer;
        uneven.more = more;
    }

    static bool alikeParts(const PartSeen& a, const PartSeen& b) {
        if (a.text == nullptr || b.text == nullptr) return a.text == b.text;
        return a.text->role == b.text->role;
    }
    [[nodiscard]] bool sameThere(std::size_t one, std::size_t other) const {
        return alikeParts(subject_.parts[one], subject_.parts[other]);
    }
    /// The next part is copy that stands where what is above it ends: a button stands at the foot.
    [[nodiscard]] bool followedByText(std::size_t i) const {
        if (i + 1 >= subject_.parts.size() || subject_.parts[i + 1].card != subject_.parts[i].card)
            return false;
        return subject_.parts[i + 1].text != nullptr && !subject_.parts[i + 1].is("button");
    }

    const Subject& subject_;
    OutOfLine& found_;
    std::vector<std::size_t> firsts_;
};

bool lasts(Cause& cause, const Subject& subject) {
    join(cause.widths);
    return lengthOf(cause.widths) >= subject.limits().leastRun;
}

constexpr const char* practice = "common practice, no source";

void tellLines(Findings& out, const Subject& subject, const std::string& role, const UnevenLines& uneven) {
    tell(out, uneven.cause,
         {"out-of-line", Severity::Warning, practice,
          sentence(worstAndOthers(subject, uneven.cause)) + " takes " + std::to_string(uneven.more) +
              " lines where its neighbour takes " + std::to_string(uneven.fewer) + ", " +
              atWidths(subject, uneven.cause.there) +
              ", so the copy under them starts out of line. Levelling the parts mends it, or copy of like "
              "length.",
          role});
}

void tellPictures(Findings& out, const Subject& subject, const Cause& pictures) {
    tell(out, pictures,
         {"out-of-line", Severity::Warning, practice,
          sentence(worstAndOthers(subject, pictures)) + " is " + px(pictures.worst, 0) +
              " taller than the one beside it where the page is " + px(pictures.at, 0) +
              " wide, so the copy under them starts out of line. One ratio for all pictures mends it, each "
              "cut about its focal point, or levelling the parts.",
          "picture"});
}

void tellMissing(Findings& out, const Subject& subject, const OutOfLine& found) {
    const Cause& had = found.missing;
    const project::Part& part = subject.project.cards[had.card].parts[had.part];
    const auto* text = std::get_if<project::TextPart>(&part);
    tell(out, had,
         {"out-of-line", Severity::Warning, practice,
          "Card " + std::to_string(found.lacking + 1) + " has no " +
              (text == nullptr        ? "picture"
               : text->role == "body" ? "paragraph"
                                      : text->role) +
              " where its neighbour has " + named(subject, had.card, had.part) +
              ", so their copy starts out of line. The same parts in every card mend it.",
          "missing"});
}

}  // namespace

void checkOutOfLine(const Subject& subject, Findings& out) {
    OutOfLine found;
    LinesOfCards lines(subject, found);
    sweep::overBands(subject.row, subject.least, subject.most, [&](std::size_t at, double from, double to) {
        const layout::BandPlan& band = subject.row.band(at);
        if (band.columns > 1 && !band.levelled) lines.look(band, {from, to});
        return to;
    });
    for (auto& [role, uneven] : found.lines)
        if (lasts(uneven.cause, subject)) tellLines(out, subject, role, uneven);
    if (lasts(found.pictures, subject)) tellPictures(out, subject, found.pictures);
    if (lasts(found.missing, subject)) tellMissing(out, subject, found);
}

}  // namespace tenter::checks
