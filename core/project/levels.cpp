#include "project/levels.h"

#include <algorithm>

namespace tenter::project {

bool standsAtEnd(const Part& part, const Settings& settings) {
    const auto* text = std::get_if<TextPart>(&part);
    const TextStyle* style = text == nullptr ? nullptr : settings.text.find(text->role);
    return style != nullptr && style->margin.top && style->margin.top->isAuto();
}

std::optional<std::size_t> partBeside(const Card& card, const Settings& settings) {
    if (settings.card.direction != Direction::Beside) return std::nullopt;
    for (std::size_t i = 0; i < card.parts.size(); ++i)
        if (std::holds_alternative<PicturePart>(card.parts[i])) return i;
    return std::nullopt;
}

Levels Levels::of(const Project& project, const Settings& settings) {
    Levels levels;
    for (const Card& card : project.row().cards) {
        const std::optional<std::size_t> beside = partBeside(card, settings);
        levels.count = std::max(levels.count, card.parts.size() - (beside ? 1 : 0));
        bool ended = false;
        for (std::size_t i = 0; i < card.parts.size(); ++i) {
            if (i == beside) continue;
            if (ended) levels.endsTakeLast = false;
            ended = ended || standsAtEnd(card.parts[i], settings);
        }
    }
    return levels;
}

std::vector<std::optional<std::size_t>> Levels::in(const Card& card, const Settings& settings) const {
    const std::optional<std::size_t> beside = partBeside(card, settings);
    std::vector<std::optional<std::size_t>> levels;
    std::size_t next = 0;
    for (std::size_t i = 0; i < card.parts.size(); ++i) {
        if (i == beside) {
            levels.emplace_back();
            continue;
        }
        const bool last = endsTakeLast && standsAtEnd(card.parts[i], settings);
        levels.emplace_back(last ? count - 1 : next);
        ++next;
    }
    return levels;
}

}  // namespace tenter::project
