// Lines that fit by a hair: another browser or platform may wrap them otherwise. Told over a long run of
// widths, or where a wish on lines would break. Measured: engines' grids move lines by 0.15 % or less.
#include <cmath>
#include <map>

#include "checks/phrases.h"
#include "checks/registry.h"
#include "layout/across.h"
#include "text/breaker.h"

namespace tenter::checks {

namespace {

/// A part's lines at one width.
struct LaidOut {
    const text::Paragraph* paragraph = nullptr;
    text::LineQuery query;
    std::vector<text::Line> lines;
};

/// At `width` if the column were narrower by this share of it.
LaidOut linesAt(const Subject& subject, const PartSeen& part, double width, double narrower = 0) {
    const layout::BandPlan& band = subject.row.band(subject.row.bandAt(width));
    const layout::PartPlan& plan = band.cards[part.card].parts[part.part];
    LaidOut out;
    out.paragraph = plan.paragraph.get();
    out.query =
        layout::textAcross<double>(band.roles[plan.role], *plan.paragraph, layout::acrossAt(band, width))
            .query;
    out.query.available *= 1 - narrower;
    text::breakLines(*out.paragraph, out.query, subject.row.profile(), out.lines);
    return out;
}

/// How many lines a part has at `width` if each of its words is wider by what a tight fit lacks.
std::uint32_t linesIfWider(const Subject& subject, const PartSeen& part, double width) {
    return static_cast<std::uint32_t>(linesAt(subject, part, width, text::tightSlack).lines.size());
}

/// The lines that a tight fit would take if at most `wished` are, there and just beside it, and it would take
/// more; 0 if not.
std::uint32_t linesTooMany(const Subject& subject, const PartSeen& part, const sweep::Interval& tight,
                           std::size_t wished) {
    for (const sweep::Piece& piece : part.pieces.pieces)
        if (piece.from <= tight.to + sweep::leastStep && piece.to >= tight.from - sweep::leastStep &&
            piece.lines > wished)
            return 0;
    std::uint32_t most = 0;
    // The start itself may be the last width of the band before.
    for (const double width : {(tight.from + tight.to) / 2, tight.to})
        most = std::max(most, linesIfWider(subject, part, width));
    return most > wished ? most : 0;
}

/// The last word of clusters [first, end).
std::string lastWordOf(const text::Paragraph& paragraph, std::uint32_t first, std::uint32_t end) {
    std::uint32_t from = end;
    while (from > first && !paragraph.clusters()[from - 1].space)
        --from;
    return paragraph.utf8(from, end);
}

/// The first word from cluster `first` on.
std::string wordFrom(const text::Paragraph& paragraph, std::uint32_t first) {
    std::uint32_t end = first;
    while (end < paragraph.clusters().size() && !paragraph.clusters()[end].space)
        ++end;
    return paragraph.utf8(first, end);
}

/// What is said of the tightest line, and whether it fits.
std::string says(const Subject& subject, const Cause& cause, const std::string& what) {
    const PartSeen part{cause.card, cause.part, nullptr, nullptr, {}};
    const double near = std::floor(cause.at);
    const double at = near > cause.there.from ? near : wholeIn(cause.there);
    const LaidOut laid = linesAt(subject, part, at);
    const std::string where =
        " where the page is " + px(at) + " wide, and is as close " + atWidths(subject, cause.there);
    const std::string mend = what + ". A slightly smaller or larger size there gives it room.";
    const std::string name = worstAndOthers(subject, cause);
    const auto line = std::ranges::min_element(laid.lines, {}, &text::Line::slack);
    if (line == laid.lines.end())
        return "A line of " + name + " is a tight fit " + atWidths(subject, cause.there) + mend;
    const double room = laid.query.available - line->width;
    const bool fits = room >= -text::hair && room <= line->width * (line->slack + 1e-9);
    if (fits || line->next >= laid.paragraph->clusters().size())
        return "In " + name + " the line that ends in " +
               inQuotation(lastWordOf(*laid.paragraph, line->first, line->end)) + " fits with " +
               about(std::max(room, 0.0), 2) + "\u00A0px to spare" + where +
               ": on some platforms it will wrap otherwise" + mend;
    const double over = laid.query.available / (1 - line->slack);
    return "In " + name + " the word " + inQuotation(wordFrom(*laid.paragraph, line->next)) +
           " misses the line before it by " + about(over - laid.query.available, 2) + "\u00A0px" + where +
           ": on some platforms it will fit, and lines will wrap otherwise" + mend;
}

struct Breaking {
    Cause cause;
    std::uint32_t lines = 0;
    std::size_t wished = 0;
};

}  // namespace

void checkTightFits(const Subject& subject, Findings& out) {
    std::map<std::string, Cause> lasting;
    std::map<std::string, Breaking> breaking;
    for (const PartSeen& part : subject.parts) {
        if (part.text == nullptr) continue;
        const std::string& role = part.text->role;
        const auto wishes = project::held(subject.wishes, role, &project::RoleWishes::lines);
        const std::size_t forced =
            subject.row.band(0).cards[part.card].parts[part.part].paragraph->forcedLines();
        for (const sweep::Interval& tight : part.pieces.tight) {
            if (tight.to - tight.from > subject.limits().tightRun) {
                lasting[role].add(part.card, part.part, tight, tight.to - tight.from);
                continue;
            }
            for (const auto& wish : wishes) {
                const auto span = within(tight, wishedWidths(subject, wish));
                if (!span) continue;
                const std::size_t wished = std::max(static_cast<std::size_t>(wish.value), forced);
                const std::uint32_t lines = linesTooMany(subject, part, *span, wished);
                if (lines == 0) continue;
                Breaking& found = breaking[role];
                if (found.cause.add(part.card, part.part, *span, span->to - span->from)) {
                    found.lines = lines;
                    found.wished = wished;
                }
            }
        }
    }
    const auto tightFit = [](std::string said, const std::string& key) {
        return Saying{"tight-fit", Severity::Warning, "measured in two browser engines", std::move(said),
                      key};
    };
    for (const auto& [role, cause] : lasting)
        tell(out, cause, tightFit(says(subject, cause, ""), role));
    for (const auto& [role, found] : breaking)
        tell(out, found.cause,
             tightFit(
                 says(subject, found.cause,
                      ", to " + std::to_string(found.lines) + " lines where at most " +
                          std::to_string(found.wished) + (found.wished == 1 ? " is" : " are") + " wished"),
                 role + " wish"));
}

}  // namespace tenter::checks
