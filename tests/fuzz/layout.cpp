// Valid projects made from bytes, laid out at any width and swept over all widths.
#include <cmath>

#include "../project/random_project.h"
#include "byte_source.h"
#include "layout/prepared.h"
#include "lines.h"
#include "project/json_text.h"
#include "project/validate.h"
#include "sweep/sweep.h"
#include "text.h"

namespace {

using namespace tenter;

/// Closer to an event than this, layout and sweep may differ, because doubles are rounded. CSS px.
constexpr double nearEvent = 1e-5;

void requireBox(const layout::Box& box, const std::string& name) {
    for (const double number : {box.x, box.y, box.width, box.height})
        fuzz::require(std::isfinite(number), name + " has finite numbers");
    fuzz::require(box.width >= 0 && box.height >= 0, name + " is not negative: " + std::to_string(box.width) +
                                                         " x " + std::to_string(box.height));
}

/// A valid project, its texts replaced by hostile ones; empty if the rules between settings refuse it.
std::optional<project::Project> projectFrom(fuzz::ByteSource& source) {
    project::RandomProjectFrom<fuzz::ByteSource&> random(source);
    const std::string json = project::prettyJson(random.next());
    project::Problems problems;
    auto project = project::parse(json, "made", {}, problems);
    fuzz::require(project.has_value(),
                  problems.empty() ? "a made project is valid" : problems.front().line());
    for (project::Card& card : project->row().cards) {
        for (project::Part& part : card.parts) {
            auto* text = std::get_if<project::TextPart>(&part);
            if (text != nullptr && source() % 2 == 0) text->copy = fuzz::copyFrom(source, 20);
        }
    }
    if (!project::validate(*project).empty()) return std::nullopt;
    return project;
}

void requireLaidOut(const layout::PreparedRow& row, const layout::Layout& laid) {
    const double rounding = 1e-6 * std::max(1.0, std::abs(laid.row.x) + laid.row.width + laid.pageHeight);
    requireBox(laid.container, "the container");
    requireBox(laid.row, "the row");
    fuzz::require(std::isfinite(laid.pageHeight) && laid.pageHeight >= 0, "the page has a height");
    // A card whose padding is wider than its column overflows it, as in browsers.
    const layout::Frame frame = layout::frameAt(row.at(laid.width), laid.width);
    const bool fits = frame.cardWidth() <= frame.columnWidth + rounding && frame.columnWidth >= 0;
    // Firefox may make a row of aligned parts lower than its cards (CardHeights::levelsOfRow).
    const layout::BandPlan& band = *row.at(laid.width).band;
    const bool mayBeLower = band.levelled && band.profile->addsGapToMinHeight();
    for (const layout::LaidCard& card : laid.cards) {
        requireBox(card.box, "a card");
        fuzz::require(card.box.y >= laid.row.y - rounding, "a card is not above the row");
        fuzz::require(mayBeLower || card.box.bottom() <= laid.row.bottom() + rounding,
                      "a card is not below the row");
        if (!fits) continue;
        fuzz::require(card.box.x >= laid.row.x - rounding, "a card is not left of the row");
        fuzz::require(card.box.right() <= laid.row.right() + rounding, "a card is not right of the row");
    }
    std::vector<text::Line> lines;
    for (const layout::LaidPart& part : laid.parts) {
        requireBox(part.box, "a part");
        if (part.picture) continue;
        for (const double number : {part.fontSize, part.lineHeight, part.available, part.measure, part.slack})
            fuzz::require(std::isfinite(number), "a figure of a part is finite");
        fuzz::require(part.fontSize >= 0 && part.lineHeight >= 0 && part.measure >= 0, "it is not negative");
        lines.clear();
        for (std::uint32_t i = 0; i < part.lineCount; ++i) {
            const layout::LaidLine& line = laid.lines.at(part.firstLine + i);
            fuzz::require(std::isfinite(line.x) && std::isfinite(line.baseline), "a line has a place");
            lines.push_back(line.line);
        }
        fuzz::requireCovered(*part.paragraph, lines);
    }
}

bool isNear(const sweep::Curve& curve, double width) {
    return std::any_of(curve.begin(), curve.end(), [&](const sweep::Vertex& vertex) {
        return std::abs(vertex.width - width) < nearEvent;
    });
}

/// Requires that the curves of a part have the values of a layout.
void requireEqual(const sweep::PartCurves& curves, const layout::LaidPart& part, double width,
                  double within) {
    const auto equal = [&](const sweep::Curve& curve, double value, double tolerance,
                           const std::string& what) {
        if (isNear(curve, width)) return;
        const double swept = sweep::valueAt(curve, width);
        fuzz::require(std::abs(swept - value) <= tolerance * std::max(1.0, std::abs(value)),
                      "the sweep has the " + what + " of the layout: " + std::to_string(swept) + " for " +
                          std::to_string(value) + " at " + std::to_string(width));
    };
    if (part.picture) {
        equal(curves.slotWidth, part.box.width, within, "slot");
        return;
    }
    equal(curves.fontSize, part.fontSize, 1e-6, "font size");
    equal(curves.available, part.available, within, "available width");
}

void requireSwept(const project::Project& project, const layout::PreparedRow& row, fuzz::ByteSource& source) {
    const sweep::Sweep all = sweep::sweep(row, project.leastWidth, project.mostWidth);
    double before = all.least;
    for (const sweep::WrapPoint& wrap : all.wraps) {
        fuzz::require(wrap.width >= before && wrap.width < all.most, "wrap points rise inside the widths");
        fuzz::require(wrap.below != wrap.above, "a wrap point changes the line count");
        before = wrap.width;
    }
    for (int i = 0; i < 8; ++i) {
        const double width = std::uniform_real_distribution<double>(all.least, all.most)(source);
        const layout::Layout laid = layout::layOut(row, width);
        requireLaidOut(row, laid);
        fuzz::require(all.curves.parts.size() == laid.parts.size(), "the sweep has the parts of the layout");
        // A root size that follows the viewport is truncated exactly in a layout, by its mean in a sweep.
        const bool fluidRoot = row.interval(laid.interval).page.rootSize.isFluid();
        const double rem = row.rem(width);
        const double share = fluidRoot && rem > 0 ? row.profile().fluidStep() / 2 / rem : 0;
        const double within = 1e-6 + 2 * share * std::max(laid.container.width, laid.row.width);
        for (std::size_t part = 0; part < laid.parts.size(); ++part)
            requireEqual(all.curves.parts[part], laid.parts[part], width, within);
        if (fluidRoot) continue;
        for (std::size_t part = 0; part < laid.parts.size(); ++part) {
            const sweep::Curve& lines = all.curves.parts[part].lines;
            if (laid.parts[part].picture || isNear(lines, width)) continue;
            fuzz::require(sweep::valueAt(lines, width) == laid.parts[part].lineCount,
                          "the sweep has the line count of the layout");
        }
    }
}

}  // namespace

void tenter::fuzz::test(const std::uint8_t* data, std::size_t size) {
    static text::Fonts fonts;
    static text::ParagraphStore store(fonts, std::size_t{4} << 20U);
    fuzz::ByteSource source(data, size);
    const auto project = projectFrom(source);
    if (!project) return;
    const std::size_t variant = source() % project->row().variants.size();
    const text::BreakProfile& profile = *text::profiles()[source() % text::profiles().size()];
    const layout::PreparedRow row(*project, variant, store, profile);
    for (const double width : {project->leastWidth, project->mostWidth, 1.0, 1e6})
        requireLaidOut(row, layout::layOut(row, width));
    requireSwept(*project, row, source);
}
