#include "draw/text_line.h"

#include <hb-ot.h>

#include <algorithm>
#include <cmath>

namespace tenter::draw {

double startCorrection(const text::Paragraph& paragraph, std::uint32_t cluster) {
    const auto at = [cluster](const std::vector<text::Opportunity>& list) {
        const auto found = std::lower_bound(
            list.begin(), list.end(), cluster,
            [](const text::Opportunity& one, std::uint32_t value) { return one.cluster < value; });
        return found != list.end() && found->cluster == cluster ? &*found : nullptr;
    };
    if (const text::Opportunity* regular = at(paragraph.opportunities())) return regular->startCorrection;
    const text::Opportunity* emergency = at(paragraph.overflowOpportunities());
    return emergency != nullptr ? emergency->startCorrection : 0;
}

bool leans(const text::ShapedRun& run, bool italic) {
    return run.face && (italic || run.kind == project::Run::Kind::Emphasis) && !run.face->italic();
}

UnderlineLook underlineOf(const text::Face& face) {
    hb_position_t offset = 0;
    hb_position_t size = 0;
    UnderlineLook look{0.1, 0.05};
    if (hb_ot_metrics_get_position(face.font(), HB_OT_METRICS_TAG_UNDERLINE_OFFSET, &offset) != 0 &&
        offset < 0)
        look.below = -offset / face.scale();
    if (hb_ot_metrics_get_position(face.font(), HB_OT_METRICS_TAG_UNDERLINE_SIZE, &size) != 0 && size > 0)
        look.thickness = size / face.scale();
    return look;
}

UnderlineRows underlineRows(const UnderlineLook& look, double size) {
    return {std::max(1, static_cast<int>(std::lround(look.below * size))),
            std::max(1, static_cast<int>(std::lround(look.thickness * size)))};
}

}  // namespace tenter::draw
