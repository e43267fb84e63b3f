#include "pictures/uploads.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "layout/prepared.h"
#include "project/titles.h"
#include "sweep/sweep.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::pictures {

namespace {

/// A value that is larger by less than this is the same: the excess is rounding, CSS px.
constexpr double sameSize = 0.01;

/// The slots of one picture in every variant that has them.
struct InVariant {
    std::size_t variant = 0;
    Slot slot;
};

/// A viewport width so little above a breakpoint that it shows the value just above it, CSS px.
constexpr double justAbove = 1e-6;

/// The vertex with the largest value, the first of several. That of a value just above a jump is above it.
SlotPoint highestOf(const sweep::Curve& curve) {
    SlotPoint largest;
    for (std::size_t i = 0; i < curve.size(); ++i) {
        if (curve[i].value <= largest.value + sameSize) continue;
        largest = curve[i];
        if (i > 0 && curve[i - 1].width == curve[i].width) largest.width += justAbove;
    }
    return largest;
}

/// Where a file with `ratio` (width over height) is drawn widest: max(slot width, slot height × ratio). CSS
/// Images 3 § 5.5 (`object-fit: cover`).
SlotPoint widestDrawn(const Slot& slot, double ratio) {
    const SlotPoint byWidth = highestOf(slot.width);
    SlotPoint byHeight = highestOf(slot.height);
    byHeight.value *= ratio;
    return byHeight.value > byWidth.value + sameSize ? byHeight : byWidth;
}

PictureUpload uploadOfAll(const std::vector<InVariant>& all, double pixelRatio) {
    PictureUpload upload;
    upload.place = all.front().slot.place;
    upload.pixelRatio = pixelRatio;
    upload.file = all.front().slot.file;
    double least = std::numeric_limits<double>::infinity();
    double most = 0;
    for (const InVariant& one : all) {
        if (!(one.slot.mostRatio > 0)) continue;
        least = std::min(least, one.slot.leastRatio);
        most = std::max(most, one.slot.mostRatio);
    }
    if (!(most > 0)) return upload;
    // Cut only as far as no slot of any variant shows what is cut off.
    const std::optional<double> own = all.front().slot.fileRatio();
    const double cut = std::clamp(own.value_or(most), least, most);
    double drawn = 0;
    double drawnUncut = 0;
    for (const InVariant& one : all) {
        const SlotPoint here = widestDrawn(one.slot, cut);
        if (own) drawnUncut = std::max(drawnUncut, widestDrawn(one.slot, *own).value);
        if (here.value <= drawn + sameSize) continue;
        drawn = here.value;
        upload.variant = one.variant;
        upload.width = here.width;
        upload.slotWidth = sweep::valueAt(one.slot.width, here.width);
        upload.slotHeight = sweep::valueAt(one.slot.height, here.width);
    }
    const double wanted = std::ceil(drawn * pixelRatio - sameSize);
    upload.size = {static_cast<int>(wanted), static_cast<int>(std::max(1L, std::lround(wanted / cut)))};
    upload.isTooSmall = own && upload.file.width < drawnUncut * pixelRatio - sameSize;
    return upload;
}

}  // namespace

std::vector<PictureUpload> uploadsOf(const project::Project& project, text::ParagraphStore& store,
                                     const text::BreakProfile& profile, double pixelRatio) {
    std::vector<std::vector<InVariant>> pictures;
    for (std::size_t variant = 0; variant < project.row().variants.size(); ++variant) {
        const layout::PreparedRow row(project, variant, store, profile);
        const sweep::Sweep swept = sweep::sweep(row, project.leastWidth, project.mostWidth);
        std::vector<Slot> slots = slotsOf(project, row, swept.curves);
        pictures.resize(slots.size());
        for (std::size_t i = 0; i < slots.size(); ++i)
            pictures[i].push_back({variant, std::move(slots[i])});
    }
    std::vector<PictureUpload> uploads;
    uploads.reserve(pictures.size());
    for (const std::vector<InVariant>& one : pictures)
        uploads.push_back(uploadOfAll(one, pixelRatio));
    return uploads;
}

double wholeWidthOf(const PictureUpload& upload) {
    return std::ceil(upload.width - justAbove / 2);
}

std::string sizeLabel(const PixelSize& size) {
    return units::figure(size.width) + " × " + units::px(size.height);
}

std::string largestSlotSentence(const project::Project& project, const PictureUpload& upload) {
    const std::string slotWidth = units::figure(upload.slotWidth, 0);
    const std::string slotHeight = units::px(upload.slotHeight, 0);
    const std::string width = units::px(wholeWidthOf(upload), 0);
    return project.row().variants.size() > 1
               ? wording::say("The largest slot is %1 × %2, at %3 viewport width in the variant %4.",
                              {slotWidth, slotHeight, width, project::quotedTitle(project, upload.variant)})
               : wording::say("The largest slot is %1 × %2, at %3 viewport width.",
                              {slotWidth, slotHeight, width});
}

std::string otherSlotsSentence(const PictureUpload& upload) {
    // A file can be a pixel larger by rounding.
    const auto exceeds = [&](int pixels, double slot) { return pixels > slot * upload.pixelRatio + 2; };
    if (exceeds(upload.size.height, upload.slotHeight))
        return wording::say("At other widths the slot is taller for its width, so the file is taller.");
    if (exceeds(upload.size.width, upload.slotWidth))
        return wording::say("At other widths the slot is wider for its height, so the file is wider.");
    return {};
}

}  // namespace tenter::pictures
