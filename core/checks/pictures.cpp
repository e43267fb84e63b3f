// Pictures with too few pixels for their slots on dense screens: an uncut file under cover cropping is drawn
// max(slot's width, slot's height × the file's ratio) wide. CSS Images 3 § 5.5; the factors are common
// practice.
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
};

SlotNeed needOf(const sweep::PartCurves& curves, double ratio) {
    SlotNeed need;
    double tallestAt = 0;
    need.width = mostOf(curves.slotWidth, need.at);
    const double byHeight = mostOf(curves.slotHeight, tallestAt) * ratio;
    if (byHeight > need.width + 0.5) need = {byHeight, tallestAt};
    return need;
}

}  // namespace

void checkPictures(const Subject& subject, Findings& out) {
    const project::Limits& limits = subject.limits();
    Cause few;
    Cause modest;
    SlotNeed fewNeed;
    SlotNeed modestNeed;
    for (std::size_t i = 0; i < subject.parts.size(); ++i) {
        const PartSeen& part = subject.parts[i];
        const bool known = part.picture != nullptr && part.picture->width > 0 && part.picture->height > 0;
        if (!known) continue;
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
              sentence(worstAndOthers(subject, cause)) +
                  " has too few pixels for dense screens: " + px(file.width, 0) + " for a slot that needs " +
                  px(need.width, 0) + " of width where the page is " + px(need.at, 0) + " wide, " +
                  figure(-cause.worst, 2) + " to one. A file " + px(wanted, 0) + " wide is sharp at 2.",
              severity == Severity::Warning ? "few" : "modest"});
    };
    told(few, fewNeed, Severity::Warning);
    told(modest, modestNeed, Severity::Note);
}

}  // namespace tenter::checks
