// Lines that fit by a hair: another browser or platform may wrap them otherwise. Told over a long run of
// widths, or where a wish on lines would break. Measured: engines' grids move lines by 0.15 % or less.
#include <map>

#include "checks/phrases.h"
#include "checks/registry.h"
#include "layout/across.h"

namespace tenter::checks {

namespace {

/// How many lines a part has at `width` if each of its words is wider by what a tight fit lacks.
std::uint32_t linesIfWider(const Subject& subject, const PartSeen& part, double width) {
    const layout::BandPlan& band = subject.row.band(subject.row.bandAt(width));
    const layout::PartPlan& plan = band.cards[part.card].parts[part.part];
    text::LineQuery query =
        layout::textAcross<double>(band.roles[plan.role], *plan.paragraph, layout::acrossAt(band, width))
            .query;
    query.available *= 1 - text::tightSlack;
    std::vector<text::Line> lines;
    text::breakLines(*plan.paragraph, query, subject.row.profile(), lines);
    return static_cast<std::uint32_t>(lines.size());
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

std::string says(const Subject& subject, const Cause& cause, const std::string& what) {
    return "A line of " + worstAndOthers(subject, cause) + " fits by less than 0.25 % " +
           atWidths(cause.there) + ": on some platforms it will wrap otherwise" + what +
           ". A slightly smaller or larger size there gives it room.";
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
