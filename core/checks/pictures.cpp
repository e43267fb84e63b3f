// Pictures of which little is seen, and those with too few pixels for their slots on dense screens: an uncut
// file under cover cropping is drawn max(slot's width, slot's height × the file's ratio) wide. CSS Images 3
// § 5.5; the factors are common practice.
#include <algorithm>
#include <cmath>

#include "checks/phrases.h"
#include "checks/registry.h"

namespace tenter::checks {

namespace {

/// Where `curve` is above `limit`.
void addAbove(const sweep::Curve& curve, double limit, std::vector<sweep::Interval>& spans) {
    for (std::size_t i = 0; i + 1 < curve.size(); ++i) {
        const sweep::Vertex& a = curve[i];
        const sweep::Vertex& b = curve[i + 1];
        if (!(a.width < b.width)) continue;
        const units::Linear more(a.value - limit, (b.value - a.value) / (b.width - a.width));
        if (const auto span = whereAbove(more, a.width, b.width)) spans.push_back(*span);
    }
}

double mostOf(const sweep::Curve& curve, double& at) {
    double most = 0;
    for (const sweep::Vertex& vertex : curve) {
        if (vertex.value <= most) continue;
        most = vertex.value;
        at = vertex.width;
    }
    return most;
}

/// The width an uncut file needs at one pixel to a CSS px, and the viewport width that asks for it.
struct SlotNeed {
    double width = 0;
    double at = 0;
    double slotHeight = 0;  ///< of a slot that is filled by its height; 0 if by its width
};

SlotNeed needOf(const sweep::PartCurves& curves, double ratio) {
    SlotNeed need;
    double tallestAt = 0;
    need.width = mostOf(curves.slotWidth, need.at);
    const double byHeight = mostOf(curves.slotHeight, tallestAt) * ratio;
    if (byHeight > need.width + 0.5) need = {byHeight, tallestAt, byHeight / ratio};
    return need;
}

/// `that needs 500 px of width`, or how large it is where a file of another ratio fills it by its height.
std::string slotWords(const Subject& subject, const Cause& cause, const SlotNeed& need) {
    const std::string width = px(need.width, 0);
    const std::string page = " where the page is " + px(need.at, 0) + " wide, ";
    if (need.slotHeight == 0) return "that needs " + width + " of width" + page;
    const auto part = std::ranges::find_if(
        subject.parts, [&](const PartSeen& one) { return one.card == cause.card && one.part == cause.part; });
    const sweep::Curve& across =
        subject.curves.parts[static_cast<std::size_t>(part - subject.parts.begin())].slotWidth;
    return "of " + about(sweep::valueAt(across, need.at), 0) + " × " + about(need.slotHeight, 0) +
           "\u00A0px" + page + "which takes " + width +
           " of the file’s width, since it fills it by its height: ";
}

/// A whole width of the cause's worst span, next to where it is worst.
double wholeAt(const Cause& cause) {
    const double whole = cause.at == cause.there.from ? std::floor(cause.at) + 1 : std::floor(cause.at);
    return std::min(whole, std::floor(cause.there.to));
}

/// Less than this share of a file to be seen cuts most subjects in two. Common practice, no source.
constexpr double littleSeen = 0.5;

/// Widths at which cover cropping leaves less than that of a file `ratio` wide to its height.
void addCropped(const sweep::PartCurves& curves, double ratio, Cause& cause) {
    for (std::size_t i = 0; i + 1 < curves.slotHeight.size(); ++i) {
        const double from = curves.slotHeight[i].width;
        const double to = curves.slotHeight[i + 1].width;
        if (!(from < to)) continue;
        const auto seen = [&](double at) {
            const double tall = sweep::valueAt(curves.slotHeight, at);
            const double slot = tall > 0 ? sweep::valueAt(curves.slotWidth, at) / tall : ratio;
            return std::min(slot / ratio, ratio / slot);
        };
        // A jump belongs to either side: look within.
        const double a = seen(from + (to - from) / 1e3);
        const double b = seen(to - (to - from) / 1e3);
        if (a >= littleSeen && b >= littleSeen) continue;
        const double cross = a == b ? to : from + (to - from) * (littleSeen - a) / (b - a);
        const sweep::Interval span{a < littleSeen ? from : cross, b < littleSeen ? to : cross};
        if (span.to - span.from > 1e-3)
            cause.add(curves.card, curves.part, span, -std::min(a, b), a < b ? span.from : span.to);
    }
}

}  // namespace

void checkPictures(const Subject& subject, Findings& out) {
    const project::Limits& limits = subject.limits();
    Cause few;
    Cause modest;
    Cause cropped;
    SlotNeed fewNeed;
    SlotNeed modestNeed;
    for (std::size_t i = 0; i < subject.parts.size(); ++i) {
        const PartSeen& part = subject.parts[i];
        const bool known = part.picture != nullptr && part.picture->width > 0 && part.picture->height > 0;
        if (!known) continue;
        // A point that was chosen is what is to be seen.
        if (part.picture->focusX == 0.5 && part.picture->focusY == 0.5)
            addCropped(subject.curves.parts[i], part.picture->width / part.picture->height, cropped);
        const SlotNeed need = needOf(subject.curves.parts[i], part.picture->width / part.picture->height);
        if (!(need.width > 0)) continue;
        const double factor = part.picture->width / need.width;
        if (factor >= limits.pictureComfort) continue;
        const bool isFew = factor < limits.pictureFactor;
        const double asked = isFew ? limits.pictureFactor : limits.pictureComfort;
        std::vector<sweep::Interval> spans;
        addAbove(subject.curves.parts[i].slotWidth, part.picture->width / asked, spans);
        addAbove(subject.curves.parts[i].slotHeight, part.picture->height / asked, spans);
        join(spans);
        for (const sweep::Interval& span : spans)
            if ((isFew ? few : modest).add(part.card, part.part, span, -factor, need.at))
                (isFew ? fewNeed : modestNeed) = need;
    }
    const auto told = [&](const Cause& cause, const SlotNeed& need, Severity severity) {
        if (!cause.any()) return;
        const auto& file =
            std::get<project::PicturePart>(subject.project.cards[cause.card].parts[cause.part]);
        const double wanted = std::ceil(need.width * limits.pictureComfort);
        tell(out, cause,
             {"picture", severity, "CSS Images 3 § 5.5; common practice",
              sentence(worstAndOthers(subject, cause)) + " has too few pixels for dense screens: " +
                  px(file.width, 0) + " for a slot " + slotWords(subject, cause, need) +
                  figure(-cause.worst, 2) + " to one. A file " + px(wanted, 0) + " wide is sharp at 2.",
              severity == Severity::Warning ? "few" : "modest"});
    };
    told(few, fewNeed, Severity::Warning);
    told(modest, modestNeed, Severity::Note);
    join(cropped.widths);
    if (!cropped.any() || lengthOf(cropped.widths) < limits.leastRun) return;
    tell(out, cropped,
         {"picture", Severity::Note, "common practice, no source",
          sentence(worstAndOthers(subject, cropped)) + " shows only " + percent(-cropped.worst) +
              " of its file where the page is " + px(wholeAt(cropped), 0) +
              " wide, and has no focal point, so its middle is what is left. A focal point keeps the subject "
              "in view; a ratio nearer to the file’s cuts less.",
          "cropped"});
}

}  // namespace tenter::checks
