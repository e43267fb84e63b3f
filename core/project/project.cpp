#include "project/project.h"

#include <algorithm>
#include <numeric>

namespace tenter::project {

std::optional<std::size_t> Row::findVariant(const std::string& className) const {
    const auto found = std::find_if(variants.begin(), variants.end(),
                                    [&](const Variant& variant) { return variant.className == className; });
    if (found == variants.end()) return std::nullopt;
    return static_cast<std::size_t>(found - variants.begin());
}

const std::string* Given::find(const std::string& role) const {
    for (const auto& [name, selector] : selectors) {
        if (name == role) return &selector;
    }
    return nullptr;
}

std::vector<std::size_t> everyVariant(const Project& project) {
    std::vector<std::size_t> all(project.row().variants.size());
    std::iota(all.begin(), all.end(), std::size_t{0});
    return all;
}

std::size_t bandAt(const Variant& variant, double w) {
    for (std::size_t i = 0; i + 1 < variant.bands.size(); ++i) {
        if (variant.bands[i].upTo && w <= *variant.bands[i].upTo) return i;
    }
    return variant.bands.empty() ? 0 : variant.bands.size() - 1;
}

std::string plainText(const Copy& copy) {
    std::string text;
    for (const Run& run : copy)
        text += run.kind == Run::Kind::Break ? "\n" : run.text;
    return text;
}

std::vector<std::string> roles(const Project& project) {
    std::vector<std::string> names{"heading", "body", "button"};
    const auto add = [&](const std::string& role) {
        if (std::find(names.begin(), names.end(), role) == names.end()) names.push_back(role);
    };
    const auto addAll = [&](const Settings& settings) {
        for (const auto& entry : settings.text.roles)
            add(entry.first);
    };
    addAll(project.row().style);
    for (const Variant& variant : project.row().variants) {
        addAll(variant.set);
        for (const Band& band : variant.bands)
            addAll(band.set);
    }
    for (const Card& card : project.row().cards) {
        for (const Part& part : card.parts) {
            if (const auto* text = std::get_if<TextPart>(&part)) add(text->role);
        }
    }
    return names;
}

const TextStyle* RoleStyles::find(const std::string& role) const {
    for (const auto& [name, style] : roles) {
        if (name == role) return &style;
    }
    return nullptr;
}

TextStyle& RoleStyles::of(const std::string& role) {
    for (auto& [name, style] : roles) {
        if (name == role) return style;
    }
    return roles.emplace_back(role, TextStyle{}).second;
}

}  // namespace tenter::project
