#include "draw/text_line.h"

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

UnderlineRows underlineRows(double size) {
    const double tenth = size / 10;
    return {std::max(1, static_cast<int>(std::ceil(tenth / 2))),
            std::max(1, static_cast<int>(std::floor(tenth)))};
}

}  // namespace tenter::draw
