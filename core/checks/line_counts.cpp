// Headings of too many lines, and button labels that wrap. Common practice, no source.
#include <algorithm>

#include "checks/phrases.h"
#include "checks/registry.h"

namespace tenter::checks {

namespace {

std::uint32_t saidLines(const project::Copy& copy) {
    return 1 + static_cast<std::uint32_t>(
                   std::ranges::count(copy, project::Run::Kind::Break, &project::Run::kind));
}

/// Where parts of `role` have more lines than `most` gives them; the worst has most lines, then the longest
/// run of widths.
template <class Most>
Cause linesOver(const Subject& subject, const char* role, Most&& most) {
    Cause cause;
    for (const PartSeen& part : subject.parts) {
        if (!part.is(role)) continue;
        const std::vector<sweep::Piece>& pieces = part.pieces.pieces;
        for (std::size_t i = 0; i < pieces.size();) {
            std::size_t next = i + 1;
            while (next < pieces.size() && pieces[next].lines == pieces[i].lines)
                ++next;
            const sweep::Interval span{pieces[i].from, pieces[next - 1].to};
            if (pieces[i].lines > most(*part.text))
                cause.add(part.card, part.part, span, pieces[i].lines + (span.to - span.from) / 1e6);
            i = next;
        }
    }
    return cause;
}

std::string linesOf(const Cause& cause) {
    return std::to_string(static_cast<int>(cause.worst)) + " lines " + atWidths(cause.there);
}

}  // namespace

void checkHeadingLines(const Subject& subject, Findings& out) {
    const auto most = static_cast<std::uint32_t>(subject.thresholds().headingLines);
    const Cause cause = linesOver(subject, "heading", [&](const project::TextPart&) { return most; });
    if (!cause.any()) return;
    tell(out, cause,
         {"heading-lines", Severity::Warning, "common practice, no source",
          sentence(worstAndOthers(subject, cause)) + " takes up to " + linesOf(cause) +
              " and crowds out the copy: smaller type there, a wider column or shorter copy mends "
              "it.",
          ""});
}

void checkButtonLines(const Subject& subject, Findings& out) {
    const Cause cause =
        linesOver(subject, "button", [](const project::TextPart& part) { return saidLines(part.copy); });
    if (!cause.any()) return;
    tell(
        out, cause,
        {"button-lines", Severity::Warning, "common practice, no source",
         sentence(worstAndOthers(subject, cause)) + " wraps to " + linesOf(cause) +
             " and stops looking like a button: smaller type or padding there, or a shorter label, mends it.",
         ""});
}

}  // namespace tenter::checks
