// Lines that differ while a font that comes over the network is still on its way: the row jumps when it is
// there. CSS Fonts 4, font-display; CSS Fonts 5, size-adjust.
#include <algorithm>

#include "checks/phrases.h"
#include "checks/registry.h"
#include "layout/prepared.h"
#include "text/generic_families.h"
#include "units/number.h"

namespace tenter::checks {

namespace {

/// True for a family whose file comes with the project, and so over the network; one that readers have
/// installed is there at once.
bool comesLate(const project::Project& project, const std::string& family) {
    return std::ranges::find(project.fonts, family, &project::FontEntry::family) != project.fonts.end();
}

/// Leaves out of `settings` the families that come late; true if there was one.
bool dropLate(const project::Project& project, project::Settings& settings) {
    bool any = false;
    for (auto& [role, style] : settings.text.roles)
        if (style.family)
            any = std::erase_if(*style.family,
                                [&](const std::string& family) { return comesLate(project, family); }) > 0 ||
                  any;
    return any;
}

/// The project as it is drawn until its fonts have come; empty if none comes late.
std::optional<project::Project> untilFontsCome(const project::Project& project, std::size_t variant) {
    if (project.fonts.empty()) return std::nullopt;
    project::Project before = project;
    bool any = dropLate(project, before.style);
    any = dropLate(project, before.variants[variant].set) || any;
    for (project::Band& band : before.variants[variant].bands)
        any = dropLate(project, band.set) || any;
    return any ? std::optional(std::move(before)) : std::nullopt;
}

const text::Paragraph& paragraphOf(const layout::PreparedRow& row, const PartSeen& part, std::size_t band) {
    return *row.band(band).cards[part.card].parts[part.part].paragraph;
}

std::string familyOf(const text::Paragraph& paragraph) {
    return paragraph.strut() ? paragraph.strut()->family() : "the default font";
}

/// By what the fallback's advances are to be multiplied to be as wide as the font's over the role's copy.
double sizeAdjust(const Subject& subject, const layout::PreparedRow& before, const std::string& role,
                  std::size_t band) {
    double late = 0;
    double fallback = 0;
    const auto emsOf = [](const text::Paragraph& paragraph) {
        return paragraph.ems(0, static_cast<std::uint32_t>(paragraph.clusters().size()));
    };
    for (const PartSeen& part : subject.parts) {
        if (!part.is(role.c_str())) continue;
        late += emsOf(paragraphOf(subject.row, part, band));
        fallback += emsOf(paragraphOf(before, part, band));
    }
    return fallback > 0 ? late / fallback : 1;
}

/// Where a role's lines differ meanwhile, and how many they are where that lasts longest.
struct Meanwhile {
    Cause cause;
    std::uint32_t then = 0, before = 0;
    std::size_t band = 0;
};

Meanwhile differencesOf(const Subject& subject, const layout::PreparedRow& before, const std::string& role) {
    Meanwhile found;
    for (const PartSeen& part : subject.parts) {
        if (!part.is(role.c_str())) continue;
        const sweep::PartPieces pieces =
            sweep::follow(before, part.card, part.part, subject.least, subject.most);
        whereUnlike(part.pieces.pieces, pieces.pieces,
                    [&](const sweep::Interval& span, std::uint32_t then, std::uint32_t now) {
                        if (!found.cause.add(part.card, part.part, span, span.to - span.from)) return;
                        found.then = then;
                        found.before = now;
                        found.band = subject.row.bandAt(span.to);
                    });
    }
    join(found.cause.widths);
    return found;
}

std::string says(const Subject& subject, const layout::PreparedRow& before, const Meanwhile& found,
                 double adjust) {
    const Cause& cause = found.cause;
    const PartSeen& worst = *std::ranges::find_if(subject.parts, [&](const PartSeen& part) {
        return part.card == cause.card && part.part == cause.part;
    });
    const std::string fallback = familyOf(paragraphOf(before, worst, found.band));
    std::string said = "Until " + familyOf(paragraphOf(subject.row, worst, found.band));
    said += " has come over the network, " + worstAndOthers(subject, cause) + " takes ";
    said += std::to_string(found.before) + (found.before == 1 ? " line of " : " lines of ") + fallback;
    said += " instead of " + std::to_string(found.then) + " " + atWidths(subject, cause.there);
    said += ": the page jumps when it does. A fallback about as wide mends it, or an @font-face of ";
    said += text::isGenericFamily(fallback) ? "what stands for " + fallback + " here" : fallback;
    said += " with “size-adjust: " + units::number(adjust * 100, 0);
    return said + "%”; “font-display: optional” keeps what comes too late for the next page.";
}

}  // namespace

void checkLateFonts(const Subject& subject, Findings& out) {
    const std::optional<project::Project> meanwhile = untilFontsCome(subject.project, subject.variantIndex);
    if (!meanwhile) return;
    const layout::PreparedRow before(*meanwhile, subject.variantIndex, subject.paragraphs,
                                     subject.row.profile());
    for (const RoleSeen& role : subject.roles) {
        const Meanwhile found = differencesOf(subject, before, role.name);
        if (!found.cause.any() || lengthOf(found.cause.widths) < subject.limits().leastRun) continue;
        tell(out, found.cause,
             {"late-font", Severity::Warning, "CSS Fonts 5, size-adjust",
              says(subject, before, found, sizeAdjust(subject, before, role.name, found.band)), role.name});
    }
}

}  // namespace tenter::checks
