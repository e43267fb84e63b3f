// Pictures that cropping hides most of, and pictures with too few pixels for their slots on dense screens. A
// file under `object-fit: cover` is drawn max(slot's width, slot's height × file's ratio) wide. CSS Images 3
// § 5.5; the factors are common practice.
#include <algorithm>
#include <cmath>

#include "checks/check.h"
#include "checks/common_remedies.h"
#include "checks/phrases.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::checks {

namespace {

/// Adds the widths at which `curve` is above `limit`.
void addAbove(const sweep::Curve& curve, double limit, std::vector<sweep::Interval>& spans) {
    for (std::size_t i = 0; i + 1 < curve.size(); ++i) {
        const sweep::Vertex& a = curve[i];
        const sweep::Vertex& b = curve[i + 1];
        if (!(a.width < b.width)) continue;
        const units::Linear more(a.value - limit, (b.value - a.value) / (b.width - a.width));
        if (const auto span = whereAbove(more, a.width, b.width)) spans.push_back(*span);
    }
}

/// The greatest value of `curve`; sets `at` to the width that has it.
double mostOf(const sweep::Curve& curve, double& at) {
    double most = 0;
    for (const sweep::Vertex& vertex : curve) {
        if (vertex.value <= most) continue;
        most = vertex.value;
        at = vertex.width;
    }
    return most;
}

/// The file width that the largest slot needs at one pixel per CSS px.
struct SlotNeed {
    double width = 0;       ///< of the file, px
    double at = 0;          ///< viewport width of the largest slot, CSS px
    double slotWidth = 0;   ///< there, CSS px
    double slotHeight = 0;  ///< there, CSS px
};

SlotNeed needOf(const sweep::PartCurves& curves, double ratio) {
    SlotNeed need;
    double tallestAt = 0;
    need.width = mostOf(curves.slotWidth, need.at);
    const double byHeight = mostOf(curves.slotHeight, tallestAt) * ratio;
    if (byHeight > need.width + 0.5) {
        need.width = byHeight;
        need.at = tallestAt;
    }
    need.slotWidth = sweep::valueAt(curves.slotWidth, need.at);
    need.slotHeight = sweep::valueAt(curves.slotHeight, need.at);
    return need;
}

/// Pictures with too few pixels, and what the worst of them needs.
struct FewPixels {
    Cause cause;  ///< badness: minus the pixels per CSS px
    SlotNeed need;
};

/// A smaller visible share of a file cuts most subjects in two. Common practice, no source.
constexpr double leastVisible = 0.5;

/// Adds the widths at which less than that share of a file with `ratio` (width to height) is visible.
void addCropped(const sweep::PartCurves& curves, double ratio, Cause& cause) {
    for (std::size_t i = 0; i + 1 < curves.slotHeight.size(); ++i) {
        const double from = curves.slotHeight[i].width;
        const double to = curves.slotHeight[i + 1].width;
        if (!(from < to)) continue;
        const auto visible = [&](double at) {
            const double tall = sweep::valueAt(curves.slotHeight, at);
            const double slot = tall > 0 ? sweep::valueAt(curves.slotWidth, at) / tall : ratio;
            return std::min(slot / ratio, ratio / slot);
        };
        // At a jump a curve has two values: use those inside the piece.
        const double a = visible(from + (to - from) / 1e3);
        const double b = visible(to - (to - from) / 1e3);
        if (a >= leastVisible && b >= leastVisible) continue;
        const double cross = a == b ? to : from + (to - from) * (leastVisible - a) / (b - a);
        const sweep::Interval span{a < leastVisible ? from : cross, b < leastVisible ? to : cross};
        if (span.to - span.from > 1e-3)
            cause.add(curves.place, span, -std::min(a, b), a < b ? span.from : span.to);
    }
}

void reportFewPixels(const Subject& subject, const FewPixels& found, Severity severity, Findings& out) {
    if (!found.cause.any()) return;
    const SlotNeed& need = found.need;
    const double wanted = std::ceil(need.width * subject.limits().pictureComfort);
    report(out, found.cause,
           {severity,
            wording::say("CSS Images 3 § 5.5; common practice"),
            {wording::say("at %1 viewport width, %2 has %3 image pixels per CSS px (slot: %4 × %5)",
                          {units::px(need.at, 0), worstAndOthers(subject, found.cause),
                           units::figure(-found.cause.worst, 2, units::Rounding::Down),
                           units::figure(need.slotWidth, 0), units::px(need.slotHeight, 0)}),
             wording::say(
                 "High-density screens have 2 or more device pixels per CSS px, so it looks soft there"),
             wording::say("Use a file at least %1 wide", {units::px(wanted, 0)})},
            severity == Severity::Warning ? "few" : "modest"});
}

void reportCropped(const Subject& subject, Cause& cropped, Findings& out) {
    join(cropped.widths);
    if (!cropped.any() || lengthOf(cropped.widths) < subject.limits().leastRun) return;
    report(
        out, cropped,
        {Severity::Note,
         commonPractice(),
         {wording::say("%1, %2 shows less than %3 of its image, at worst %4",
                       {atWidths(subject, cropped.runOfWorst()), worstAndOthers(subject, cropped),
                        units::percent(leastVisible), units::percent(-cropped.worst)}),
          wording::say("Without a focal point, only the centre is visible"),
          wording::say("Set a focal point (Pictures › Focal point), or choose an aspect ratio closer to that "
                       "of the image (Pictures › Aspect ratio)")},
         "cropped"});
}

void checkPictures(const Subject& subject, Findings& out) {
    const project::Limits& limits = subject.limits();
    FewPixels few;
    FewPixels modest;
    Cause cropped;
    for (std::size_t i = 0; i < subject.parts.size(); ++i) {
        const CheckedPart& part = subject.parts[i];
        const sweep::PartCurves& curves = subject.curves.parts[i];
        const bool known = part.picture != nullptr && part.picture->width > 0 && part.picture->height > 0;
        if (!known) continue;
        const double ratio = part.picture->width / part.picture->height;
        // A focal point off the middle was chosen on purpose.
        if (part.picture->focusX == 0.5 && part.picture->focusY == 0.5) addCropped(curves, ratio, cropped);
        const SlotNeed need = needOf(curves, ratio);
        if (!(need.width > 0)) continue;
        const double factor = part.picture->width / need.width;
        if (factor >= limits.pictureComfort) continue;
        const bool isFew = factor < limits.pictureFactor;
        const double asked = isFew ? limits.pictureFactor : limits.pictureComfort;
        std::vector<sweep::Interval> spans;
        addAbove(curves.slotWidth, part.picture->width / asked, spans);
        addAbove(curves.slotHeight, part.picture->height / asked, spans);
        join(spans);
        FewPixels& found = isFew ? few : modest;
        for (const sweep::Interval& span : spans)
            if (found.cause.add(part.place, span, -factor, need.at)) found.need = need;
    }
    reportFewPixels(subject, few, Severity::Warning, out);
    reportFewPixels(subject, modest, Severity::Note, out);
    reportCropped(subject, cropped, out);
}

void remedyPictures(Candidates& out) {
    if (!out.isFor("cropped")) {
        // A narrower row needs fewer pixels. Narrower than this it is another design.
        for (const double share : {0.95, 0.9, 0.85, 0.8})
            proposeRowWidth(out, share);
        proposeBreakpoints(out);
        return;
    }
    const auto& picture = std::get<project::PicturePart>(out.subject().project.part(*out.finding().place));
    const double ratio = picture.width / picture.height;
    std::vector<std::pair<double, double>> common{{1, 1}, {4, 3}, {3, 2}, {16, 9}, {3, 4}, {2, 3}};
    std::ranges::sort(common, {},
                      [&](const auto& one) { return std::abs(std::log(one.first / one.second / ratio)); });
    for (std::size_t i = 0; i < 2; ++i)
        out.set(useRatio(common[i].first, common[i].second), Candidates::Scope::Layout,
                [&](project::Settings& settings, std::size_t) {
                    settings.picture.ratio = project::Ratio{common[i].first, common[i].second};
                });
    out.set(wording::say("Use each picture’s own aspect ratio"), Candidates::Scope::Layout,
            [](project::Settings& settings, std::size_t) { settings.picture.ratio = project::Ratio{}; });
    proposeOneRatio(out);
}

}  // namespace

extern const Check pictureCheck{
    .name = "picture", .run = checkPictures, .dependsOnBreaks = true, .remedies = remedyPictures};

}  // namespace tenter::checks
