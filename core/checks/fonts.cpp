// Families, weights, styles and characters that the fonts lack. Common practice, no source.
#include "checks/check.h"
#include "checks/phrases.h"
#include "layout/prepared.h"

namespace tenter::checks {

namespace {

/// The places whose paragraph has this note.
Cause whereMissing(const Subject& subject, const text::FontNote& note) {
    Cause cause;
    for (const CheckedPart& part : subject.parts) {
        if (part.text == nullptr) continue;
        for (const sweep::Piece& piece : part.pieces.pieces) {
            const auto& paragraph = subject.row.band(piece.band).part(part.place).paragraph;
            const auto& notes = paragraph->notes();
            if (std::find(notes.begin(), notes.end(), note) != notes.end())
                cause.add(part.place, {piece.from, piece.to}, 0);
        }
    }
    return cause;
}

void checkFonts(const Subject& subject, Findings& out) {
    for (const text::FontNote& note : subject.row.notes()) {
        const Cause cause = whereMissing(subject, note);
        if (!cause.any()) continue;
        report(out, cause,
               {Severity::Warning,
                "common practice, no source",
                {"the font " + note.family + " " + note.says + ", first in " + named(subject, cause.place),
                 note.changesLines ? "Readers may see different letters and different line breaks"
                                   : "Browsers slant the upright letters; line breaks stay the same",
                 "Add a font file with " + note.missing + ", or choose another font (Text › Family)"},
                note.family + note.says});
    }
}

}  // namespace

extern const Check fontCheck{.name = "font", .run = checkFonts, .dependsOnBreaks = true};

}  // namespace tenter::checks
