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
        for (const sweep::Piece& piece : part.pieces.pieces)
            if (piece.lines > most(*part.text))
                cause.add(part.card, part.part, {piece.from, piece.to},
                          piece.lines + (piece.to - piece.from) / 1e6);
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
              " and pushes the copy out of sight: smaller type there, a wider column or shorter copy mends "
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
