#include "emit/key_figures.h"

#include <algorithm>
#include <vector>

#include "css/breakpoints.h"
#include "project/wording.h"
#include "sweep/differences.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::emit {

RoleFigures figuresOf(const layout::PreparedRow& row, const layout::Layout& laid, const std::string& role) {
    RoleFigures out;
    for (const layout::LaidPart& part : laid.parts) {
        if (part.picture || row.roles()[part.role] != role) continue;
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
    //: No picture
    return widest == nullptr ? wording::say("none")
                             : units::figure(widest->width, 1) + " × " + units::figure(widest->height, 1);
}

std::string engineDifferences(const project::Project& project, std::size_t variant,
                              text::ParagraphStore& store) {
    std::vector<layout::PreparedRow> rows;
    std::vector<std::string> browsers;
    for (const text::BreakProfile* profile : text::profiles()) {
        rows.emplace_back(project, variant, store, *profile);
        browsers.emplace_back(profile->title());
    }
    std::vector<const layout::PreparedRow*> compared;
    compared.reserve(rows.size());
    for (const layout::PreparedRow& row : rows)
        compared.push_back(&row);
    const std::vector<sweep::WidthRange> ranges =
        sweep::widthRangesOf(sweep::lineDifferences(compared, project.leastWidth, project.mostWidth));
    const std::string names = project::listed(browsers);
    if (ranges.empty()) return wording::say("%1 give the same line counts at every whole width.", {names});
    std::vector<std::string> widths;
    widths.reserve(ranges.size());
    for (const sweep::WidthRange& range : ranges)
        widths.push_back(units::pxRange(range.first, range.last));
    return wording::say("%1 give different line counts at %2.", {names, project::listed(widths)});
}

std::string themeBreakpoints(const project::Project& project) {
    if (!project.row().given) return {};
    std::vector<std::string> widths;
    for (const css::Breakpoint& breakpoint : css::breakpointsOf(css::readSheet(project.row().given->theme)))
        widths.push_back(units::px(breakpoint.width));
    return widths.empty()
               ? wording::say("The page’s theme has no breakpoints.")
               : wording::say("The page’s theme has breakpoints at %1.", {project::listed(widths)});
}

}  // namespace tenter::emit
