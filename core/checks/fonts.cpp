// What fonts lack: families, weights, styles, characters.
#include "checks/phrases.h"
#include "checks/registry.h"
#include "layout/prepared.h"

namespace tenter::checks {

namespace {

/// Where a note is first met; widths are those of all bands that have it.
Cause whereMissing(const Subject& subject, const text::FontNote& note) {
    Cause cause;
    for (const PartSeen& part : subject.parts) {
        if (part.text == nullptr) continue;
        for (const sweep::Piece& piece : part.pieces.pieces) {
            const auto& paragraph = subject.row.band(piece.band).cards[part.card].parts[part.part].paragraph;
            const auto& notes = paragraph->notes();
            if (std::find(notes.begin(), notes.end(), note) != notes.end())
                cause.add(part.card, part.part, {piece.from, piece.to}, 0);
        }
    }
    return cause;
}

}  // namespace

void checkFonts(const Subject& subject, Findings& out) {
    for (const text::FontNote& note : subject.row.notes()) {
        const Cause cause = whereMissing(subject, note);
        if (!cause.any()) continue;
        tell(out, cause,
             {"font", Severity::Warning, "common practice, no source",
              note.family + " " + note.says + ", first in " + named(subject, cause.card, cause.part) +
                  (note.moves
                       ? ". What visitors see may look and break otherwise: bring"
                       : ". Browsers lean the upright letters, which moves no line but is no italic: bring") +
                  " a font file that has it, name a family that has it next in the list, or ask for what "
                  "there is.",
              note.family + note.says});
    }
}

}  // namespace tenter::checks
