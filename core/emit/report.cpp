#include "emit/report.h"

#include <algorithm>
#include <vector>

#include "checks/checks.h"
#include "checks/key_widths.h"
#include "emit/findings.h"
#include "emit/key_figures.h"
#include "emit/room_for_copy.h"
#include "emit/sentences.h"
#include "emit/table.h"
#include "emit/usage.h"
#include "layout/layout.h"
#include "pictures/uploads.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::emit {

namespace {

Cells headOf(const std::vector<RoleUse>& uses) {
    Cells cells{"viewport", "columns", "content width", "widest picture"};
    for (const RoleUse& use : uses) {
        cells.push_back(use.role + " size");
        cells.push_back(use.role + " lines");
    }
    cells.emplace_back("smallest slack");
    cells.emplace_back("why this width");
    return cells;
}

Cells lineOf(const layout::PreparedRow& row, const std::vector<RoleUse>& uses, const layout::Layout& laid,
             const std::string& why) {
    const project::RowSettings& settings = row.settings(laid.band).row;
    Cells cells{units::figure(laid.width), std::to_string(settings.columns.value_or(1)),
                units::figure(row.cardWidth(laid.width), 1), widestPicture(laid)};
    double slack = 1;
    for (const RoleUse& use : uses) {
        const RoleFigures role = figuresOf(row, laid, use.role);
        cells.push_back(role.there ? units::figure(role.size) : "");
        cells.push_back(role.there ? std::to_string(role.lines) : "");
        slack = std::min(slack, role.slack);
    }
    cells.push_back(units::percent(slack, 2));
    cells.push_back(why);
    return cells;
}

/// The room for text as a table; empty if no wish limits a line count.
std::string roomForCopy(const project::Project& project, std::size_t variant, text::ParagraphStore& store) {
    const std::vector<checks::RoomForCopy> rooms = checks::roomForCopy(project, variant, store);
    return rooms.empty() ? "" : roomSentence() + "\n" + roomTable(project, rooms) + "\n";
}

/// The file to upload for each picture as a table; empty for a row without pictures.
std::string pictureUploads(const project::Project& project, text::ParagraphStore& store,
                           const text::BreakProfile& profile) {
    const std::vector<pictures::PictureUpload> uploads = pictures::uploadsOf(project, store, profile);
    if (uploads.empty()) return {};
    std::vector<Cells> lines{{"card", "upload", "now", "", "largest slot", "viewport", "variant", "picture"}};
    for (const pictures::PictureUpload& one : uploads) {
        const auto& picture = std::get<project::PicturePart>(project.part(one.place));
        const bool hasSlot = one.size.width > 0;
        lines.push_back(
            {std::to_string(one.place.card + 1), hasSlot ? pictures::sizeLabel(one.size) : "no slot",
             one.file.width > 0 ? pictures::sizeLabel(one.file) : "not known",
             one.isTooSmall ? "too small" : "",
             units::figure(one.slotWidth, 0) + " × " + units::px(one.slotHeight, 0),
             units::px(pictures::wholeWidthOf(one), 0),
             "." + oneLine(project.row().variants[one.variant].className), oneLine(picture.file)});
    }
    return "Pictures: the file to upload so that it fills its largest slot, over all widths and variants, on "
           "screens with\n2 device pixels per CSS px.\n" +
           table(lines) + "\n";
}

/// The headline and the explanation of the tables.
std::string introduction(const project::Project& project, const text::BreakProfile& profile) {
    return oneLine(project.name.empty() ? "A row of cards" : project.name) + ": " +
           std::to_string(project.row().cards.size()) +
           (project.row().cards.size() == 1 ? " card" : " cards") + ", viewport widths " +
           units::pxRange(project.leastWidth, project.mostWidth) + ", line breaks as in " +
           std::string(profile.title()) +
           ".\n"
           "Widths and font sizes are in CSS px. Lines: the highest line count of any card. Slack: the "
           "smallest change of the text\nwidth, as a share of that width, that moves a line break; below "
           "0.25\u00A0% another browser may break the line\ndifferently. The table shows the smallest slack "
           "of all lines.\n\n";
}

}  // namespace

std::string report(const project::Project& project, text::ParagraphStore& store,
                   const text::BreakProfile& profile) {
    const std::vector<RoleUse> uses = roleUses(project);
    std::string out = introduction(project, profile);
    std::vector<text::FontNote> notes;
    for (std::size_t i = 0; i < project.row().variants.size(); ++i) {
        const project::Variant& variant = project.row().variants[i];
        const layout::PreparedRow row(project, i, store, profile);
        std::vector<Cells> lines{headOf(uses)};
        const std::vector<checks::Finding> findings = checks::check(project, i, store);
        for (const checks::KeyWidth& key : checks::keyWidths(project, i, findings))
            lines.push_back(lineOf(row, uses, layout::layOut(row, key.width), key.why));
        out += "." + oneLine(variant.className) + "\n" + table(lines) + "\n" +
               engineDifferences(project, i, store) + "\n\n" + roomForCopy(project, i, store) +
               "Findings: " + findingCounts(findings) + ".\n\n" +
               findingParagraphs(project, findings, "widths", 2);
        for (const text::FontNote& note : row.notes())
            if (std::ranges::find(notes, note) == notes.end()) notes.push_back(note);
    }
    out += pictureUploads(project, store, profile);
    const std::string theme = themeBreakpoints(project);
    if (!theme.empty()) out += theme + "\n\n";
    if (!notes.empty()) out += "Fonts\n";
    for (const text::FontNote& note : notes)
        out += "  " + oneLine(note.says) + ".\n";
    return out + (notes.empty() ? "" : "\n") + wording::say(checks::caution) + "\n";
}

}  // namespace tenter::emit
