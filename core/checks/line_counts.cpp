// Headings of too many lines, and button labels that wrap. Common practice, no source.
#include <algorithm>

#include "checks/phrases.h"
#include "checks/registry.h"

namespace tenter::checks {

namespace {

/// Where parts of `role` have more lines than are wished of them, or than their copy forces; the worst has
/// most lines, then the longest run of widths.
Cause linesOver(const Subject& subject, const char* role) {
    Cause cause;
    const auto wishes = project::held(subject.wishes, role, &project::RoleWishes::lines);
    for (const PartSeen& part : subject.parts) {
        if (!part.is(role)) continue;
        const std::vector<sweep::Piece>& pieces = part.pieces.pieces;
        const std::size_t forced =
            subject.row.band(0).cards[part.card].parts[part.part].paragraph->forcedLines();
        for (std::size_t i = 0; i < pieces.size();) {
            std::size_t next = i + 1;
            while (next < pieces.size() && pieces[next].lines == pieces[i].lines)
                ++next;
            const sweep::Interval run{pieces[i].from, pieces[next - 1].to};
            for (const auto& wish : wishes) {
                const std::size_t most = std::max(static_cast<std::size_t>(wish.value), forced);
                const auto span = within(run, wishedWidths(subject, wish));
                if (span && pieces[i].lines > most)
                    cause.add(part.card, part.part, *span, pieces[i].lines + (span->to - span->from) / 1e6);
            }
            i = next;
        }
    }
    return cause;
}

std::string linesOf(const Subject& subject, const Cause& cause) {
    return std::to_string(static_cast<int>(cause.worst)) + " lines " + atWidths(subject, cause.there);
}

}  // namespace

void checkHeadingLines(const Subject& subject, Findings& out) {
    const Cause cause = linesOver(subject, "heading");
    if (!cause.any()) return;
    tell(out, cause,
         {"heading-lines", Severity::Warning, "common practice, no source",
          sentence(worstAndOthers(subject, cause)) + " takes up to " + linesOf(subject, cause) +
              " and crowds out the copy: smaller type there, a wider column or shorter copy mends "
              "it.",
          ""});
}

void checkButtonLines(const Subject& subject, Findings& out) {
    const Cause cause = linesOver(subject, "button");
    if (!cause.any()) return;
    tell(
        out, cause,
        {"button-lines", Severity::Warning, "common practice, no source",
         sentence(worstAndOthers(subject, cause)) + " wraps to " + linesOf(subject, cause) +
             " and stops looking like a button: smaller type or padding there, or a shorter label, mends it.",
         ""});
}

}  // namespace tenter::checks
