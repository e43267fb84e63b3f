#include "emit/report.h"

#include <algorithm>
#include <string_view>
#include <vector>

#include "checks/checks.h"
#include "checks/telling_widths.h"
#include "css/breakpoints.h"
#include "emit/findings.h"
#include "emit/room_for_copy.h"
#include "emit/sentences.h"
#include "emit/table.h"
#include "emit/usage.h"
#include "layout/layout.h"
#include "sweep/differences.h"
#include "units/number.h"

namespace tenter::emit {

namespace {

/// What a role comes to over all cards of a layout.
struct RoleFigures {
    bool there = false;
    double size = 0;
    std::uint32_t lines = 0;
    double slack = 1;
};

RoleFigures figures(const layout::PreparedRow& row, const layout::Layout& laid, const std::string& role) {
    RoleFigures out;
    for (const layout::LaidPart& part : laid.parts) {
        if (part.picture || row.roles()[part.style] != role) continue;
        out.there = true;
        out.size = part.fontSize;
        out.lines = std::max(out.lines, part.lineCount);
        out.slack = std::min(out.slack, part.slack);
    }
    return out;
}

std::string widestPicture(const layout::Layout& laid) {
    const layout::Box* widest = nullptr;
    for (const layout::LaidPart& part : laid.parts)
        if (part.picture && (widest == nullptr || part.box.width > widest->width)) widest = &part.box;
    return widest == nullptr ? "none"
                             : units::number(widest->width, 1) + " x " + units::number(widest->height, 1);
}

Cells head(const std::vector<RoleUse>& uses) {
    Cells cells{"page", "columns", "card's text", "picture"};
    for (const RoleUse& use : uses) {
        cells.push_back(use.role);
        cells.push_back("lines");
    }
    cells.emplace_back("tightest");
    cells.emplace_back("because");
    return cells;
}

Cells line(const layout::PreparedRow& row, const std::vector<RoleUse>& uses, const layout::Layout& laid,
           const std::string& why) {
    const project::RowSettings& settings = row.settings(laid.band).row;
    Cells cells{units::number(laid.width), std::to_string(settings.columns.value_or(1)),
                units::number(row.cardWidth(laid.width), 1), widestPicture(laid)};
    double slack = 1;
    for (const RoleUse& use : uses) {
        const RoleFigures role = figures(row, laid, use.role);
        cells.push_back(role.there ? units::number(role.size, 2) : "");
        cells.push_back(role.there ? std::to_string(role.lines) : "");
        slack = std::min(slack, role.slack);
    }
    cells.push_back(units::number(slack * 100, 2) + " %");
    cells.push_back(why);
    return cells;
}

/// Where break profiles give other numbers of lines, over the whole range.
std::string engineDifferences(const project::Project& project, std::size_t variant,
                              text::ParagraphStore& store) {
    std::vector<layout::PreparedRow> rows;
    std::string names;
    for (const text::BreakProfile* profile : text::profiles()) {
        rows.emplace_back(project, variant, store, *profile);
        names += (names.empty() ? "" : " and ") + std::string(profile->name());
    }
    std::vector<const layout::PreparedRow*> compared;
    compared.reserve(rows.size());
    for (const layout::PreparedRow& row : rows)
        compared.push_back(&row);
    const std::vector<sweep::Span> spans =
        sweep::spansOf(sweep::lineDifferences(compared, project.leastWidth, project.mostWidth));
    if (spans.empty()) return "  " + names + " break alike at every whole width.\n";
    std::string widths;
    for (const sweep::Span& span : spans) {
        widths += (widths.empty() ? "" : ", ") + units::number(span.first);
        if (span.last > span.first) widths += " to " + units::number(span.last);
    }
    return "  " + names + " differ in numbers of lines at " + widths + " px.\n";
}

/// How much longer copy may get; empty if no lines of any are wished.
std::string roomForCopy(const project::Project& project, std::size_t variant, text::ParagraphStore& store) {
    const std::vector<checks::RoomForCopy> rooms = checks::roomForCopy(project, variant, store);
    return rooms.empty() ? "" : "\n  " + roomSentence() + "\n" + roomTable(project, rooms);
}

/// Where the theme that the row's markup comes with changes what it says; empty without one.
std::string themeBreakpoints(const project::Project& project) {
    if (!project.given) return {};
    std::string widths;
    for (const css::Breakpoint& breakpoint : css::breakpointsOf(css::readSheet(project.given->theme)))
        widths += (widths.empty() ? "" : ", ") + units::number(breakpoint.width);
    return widths.empty() ? "\nThe page's theme changes at no width.\n"
                          : "\nThe page's theme changes at " + widths + " px.\n";
}

}  // namespace

std::string report(const project::Project& project, text::ParagraphStore& store,
                   const text::BreakProfile& profile) {
    const std::vector<RoleUse> uses = roleUses(project);
    std::string out = oneLine(project.name.empty() ? "A row of cards" : project.name) + ": " +
                      std::to_string(project.cards.size()) + " cards, pages " +
                      units::number(project.leastWidth) + " to " + units::number(project.mostWidth) +
                      " px wide, lines as " + std::string(profile.name()) +
                      " breaks them. Sizes in CSS px; lines are the most of any card;\n"
                      "tightest is how little keeps some line from breaking otherwise.\n";
    std::vector<text::FontNote> notes;
    for (std::size_t i = 0; i < project.variants.size(); ++i) {
        const project::Variant& variant = project.variants[i];
        const layout::PreparedRow row(project, i, store, profile);
        std::vector<Cells> lines{head(uses)};
        const std::vector<checks::Finding> findings = checks::check(project, i, store);
        for (const checks::TellingWidth& told : checks::tellingWidths(project, i, findings))
            lines.push_back(line(row, uses, layout::layOut(row, told.width), told.why));
        out += "\n." + oneLine(variant.className) + "\n" + table(lines) +
               engineDifferences(project, i, store) + "  Found: " + findingCounts(findings) +
               "; tenter-cli check tells them.\n" + roomForCopy(project, i, store);
        for (const text::FontNote& note : row.notes())
            if (std::ranges::find(notes, note) == notes.end()) notes.push_back(note);
    }
    out += themeBreakpoints(project);
    if (!notes.empty()) out += "\nFonts\n";
    for (const text::FontNote& note : notes)
        out += "  " + oneLine(note.family) + " " + oneLine(note.says) + "\n";
    out += "\n" + std::string(checks::caution) + "\n";
    return out;
}

}  // namespace tenter::emit
