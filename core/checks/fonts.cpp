// Families, weights, styles and characters that the fonts lack. Common practice, no source.
#include "checks/check.h"
#include "checks/phrases.h"
#include "layout/prepared.h"
#include "units/quantities.h"
#include "wording/say.h"

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
                commonPractice(),
                {wording::say("the font %1, first %2", {note.says, inNamed(subject, cause.place)}),
                 note.changesLines
                     ? wording::say("Readers may see different letters and different line breaks")
                     : wording::say("Browsers slant the upright letters; line breaks stay the same"),
                 wording::say("Add a font file with %1, or choose another font (Text › Family)",
                              {note.missing})},
                note.family + note.says});
    }
}

void remedyFonts(Candidates& out) {
    const Subject& subject = out.subject();
    for (const text::FontNote& note : subject.row.notes()) {
        if (!out.isFor(note.family + note.says)) continue;
        const std::vector<std::string> roles = out.roles();
        std::string drawn;
        std::string weight;
        std::vector<BandChange> families;
        std::vector<BandChange> weights;
        for (const std::size_t band : out.bands()) {
            project::Settings family;
            project::Settings nearest;
            for (const std::string& role : roles) {
                const project::TextStyle& now = *out.settings(band).text.find(role);
                const bool italic = now.slant == project::Slant::Italic;
                const double asked = now.weight.value_or(400);
                const auto faces = subject.paragraphs.fonts().find(*now.family, asked, italic);
                if (faces.empty()) continue;
                std::vector<std::string> others = *now.family;
                std::erase(others, note.family);
                if (others.empty()) others.push_back(faces.front()->family());
                // Another weight or slant is no reason to give the family up.
                if (faces.front()->family() != note.family) {
                    drawn = others.front();
                    family.text.of(role).family = others;
                }
                if (faces.front()->weight() == asked) continue;
                nearest.text.of(role).weight = faces.front()->weight();
                weight = units::figure(faces.front()->weight());
            }
            if (family != project::Settings()) families.emplace_back(band, std::move(family));
            if (nearest != project::Settings()) weights.emplace_back(band, std::move(nearest));
        }
        out.set(wording::say("Use the weight %1 of %2", {weight, note.family}), Candidates::Scope::Look,
                weights);
        out.set(wording::say("Use the font %1 instead of %2", {drawn, note.family}), Candidates::Scope::Look,
                families);
    }
}

}  // namespace

extern const Check fontCheck{
    .name = "font", .run = checkFonts, .dependsOnBreaks = true, .remedies = remedyFonts};

}  // namespace tenter::checks
