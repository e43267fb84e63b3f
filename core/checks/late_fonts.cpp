// Line counts that differ between a web font and the fallback that is drawn until the font has loaded, so
// that the page jumps. CSS Fonts 4, font-display; CSS Fonts 5, size-adjust.
#include <algorithm>

#include "checks/check.h"
#include "checks/phrases.h"
#include "layout/prepared.h"
#include "text/generic_families.h"
#include "units/number.h"
#include "wording/say.h"

namespace tenter::checks {

namespace {

/// True for a family with a file in the project, which browsers load over the network. An installed family is
/// available at once.
bool loadsLate(const project::Project& project, const std::string& family) {
    return std::ranges::find(project.fonts, family, &project::FontEntry::family) != project.fonts.end();
}

/// Removes the families that load late from `settings`; true if there was one.
bool removeLate(const project::Project& project, project::Settings& settings) {
    bool any = false;
    for (auto& [role, style] : settings.text.roles)
        if (style.family)
            any = std::erase_if(*style.family,
                                [&](const std::string& family) { return loadsLate(project, family); }) > 0 ||
                  any;
    return any;
}

/// The project as browsers draw it until its fonts have loaded; empty if no font loads late.
std::optional<project::Project> untilFontsLoad(const project::Project& project, std::size_t variant) {
    if (project.fonts.empty()) return std::nullopt;
    project::Project before = project;
    bool any = removeLate(project, before.row().style);
    any = removeLate(project, before.row().variants[variant].set) || any;
    for (project::Band& band : before.row().variants[variant].bands)
        any = removeLate(project, band.set) || any;
    return any ? std::optional(std::move(before)) : std::nullopt;
}

const text::Paragraph& paragraphOf(const layout::PreparedRow& row, const CheckedPart& part,
                                   std::size_t band) {
    return *row.band(band).part(part.place).paragraph;
}

std::string familyOf(const text::Paragraph& paragraph) {
    return paragraph.strut() ? paragraph.strut()->family() : wording::say("the default font");
}

/// The factor that makes the fallback as wide as the font, over all text of the role.
double sizeAdjust(const Subject& subject, const layout::PreparedRow& before, const std::string& role,
                  std::size_t band) {
    double late = 0;
    double fallback = 0;
    const auto emsOf = [](const text::Paragraph& paragraph) {
        return paragraph.ems(0, static_cast<std::uint32_t>(paragraph.clusters().size()));
    };
    for (const CheckedPart& part : subject.parts) {
        if (!part.is(role.c_str())) continue;
        late += emsOf(paragraphOf(subject.row, part, band));
        fallback += emsOf(paragraphOf(before, part, band));
    }
    return fallback > 0 ? late / fallback : 1;
}

/// The places at which a role's line counts differ until the font has loaded.
struct LateLines {
    Cause cause;                           ///< worst: the widest range
    std::uint32_t before = 0, loaded = 0;  ///< line counts there
    std::size_t band = 0;                  ///< there
};

LateLines lateLinesOf(const Subject& subject, const layout::PreparedRow& before, const std::string& role) {
    LateLines found;
    for (const CheckedPart& part : subject.parts) {
        if (!part.is(role.c_str())) continue;
        const sweep::PartPieces pieces = sweep::partPieces(before, part.place, subject.least, subject.most);
        whereLineCountsDiffer(part.pieces.pieces, pieces.pieces,
                              [&](const sweep::Interval& span, std::uint32_t loaded, std::uint32_t earlier) {
                                  if (!found.cause.add(part.place, span, span.to - span.from)) return;
                                  found.loaded = loaded;
                                  found.before = earlier;
                                  found.band = subject.row.bandAt(span.to);
                              });
    }
    join(found.cause.widths);
    return found;
}

Statement statementOf(const Subject& subject, const layout::PreparedRow& before, const LateLines& found,
                      double adjust) {
    const Cause& cause = found.cause;
    const CheckedPart& worst = *std::ranges::find_if(
        subject.parts, [&](const CheckedPart& part) { return part.place == cause.place; });
    const std::string font = familyOf(paragraphOf(subject.row, worst, found.band));
    const std::string fallback = familyOf(paragraphOf(before, worst, found.band));
    const std::string local =
        text::isGenericFamily(fallback) ? wording::say("the %1 font", {fallback}) : fallback;
    return {
        wording::say("%1, %2 has %3 until %4 has loaded, then %5",
                     {atWidths(subject, cause.there), worstAndOthers(subject, cause), lineCount(found.before),
                      font, lineCount(found.loaded)}),
        wording::say("The page jumps when the font arrives"),
        wording::say("Add an @font-face for %1 with “size-adjust: %2%”, choose a fallback of similar width, "
                     "or use “font-display: optional”",
                     {local, units::number(adjust * 100, 0)})};
}

void checkLateFonts(const Subject& subject, Findings& out) {
    const std::optional<project::Project> unloaded = untilFontsLoad(subject.project, subject.variantIndex);
    if (!unloaded) return;
    const layout::PreparedRow before(*unloaded, subject.variantIndex, subject.paragraphs,
                                     subject.row.profile());
    for (const CheckedRole& role : subject.roles) {
        const LateLines found = lateLinesOf(subject, before, role.name);
        if (!found.cause.any() || lengthOf(found.cause.widths) < subject.limits().leastRun) continue;
        report(out, found.cause,
               {Severity::Warning, "CSS Fonts 5, size-adjust",
                statementOf(subject, before, found, sizeAdjust(subject, before, role.name, found.band)),
                role.name});
    }
}

}  // namespace

extern const Check lateFontCheck{.name = "late-font", .run = checkLateFonts, .dependsOnBreaks = false};

}  // namespace tenter::checks
