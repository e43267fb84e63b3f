#include "draw/visual_order.h"

#include <unicode/ubidi.h>

#include <numeric>

namespace tenter::draw {

void visualOrder(const text::Paragraph& paragraph, std::uint32_t first, std::uint32_t end,
                 std::vector<std::uint32_t>& order) {
    const auto count = end - first;
    order.resize(count);
    std::iota(order.begin(), order.end(), first);
    std::vector<UBiDiLevel> levels;
    for (std::uint32_t i = first; i < end; ++i) {
        const std::uint8_t level = paragraph.clusters()[i].level;
        if (level != 0 && levels.empty()) levels.assign(count, 0);
        if (level != 0) levels[i - first] = level;
    }
    if (levels.empty()) return;
    std::vector<std::int32_t> map(count);
    ubidi_reorderVisual(levels.data(), static_cast<std::int32_t>(count), map.data());
    for (std::uint32_t i = 0; i < count; ++i)
        order[i] = first + static_cast<std::uint32_t>(map[i]);
}

}  // namespace tenter::draw
