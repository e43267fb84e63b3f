#include "project/cascade.h"

#include <utility>

#include "project/hover.h"
#include "project/overlay.h"

namespace tenter::project {

void overlay(RoleStyles& under, const RoleStyles& over) {
    for (const auto& [role, style] : over.roles)
        overlay(under.of(role), style);
}

bool addDifferences(RoleStyles& out, const RoleStyles& under, const RoleStyles& over) {
    bool any = false;
    for (const auto& [role, style] : over.roles) {
        const TextStyle* before = under.find(role);
        TextStyle changed;
        if (!addDifferences(changed, before == nullptr ? TextStyle{} : *before, style)) continue;
        out.of(role) = changed;
        any = true;
    }
    return any;
}

Settings merged(const Settings& under, const Settings& over) {
    Settings result = under;
    overlay(result, over);
    return result;
}

Settings resolve(const Project& project, const Variant& variant, std::size_t band) {
    Settings result = defaultSettings();
    for (const std::string& role : roles(project)) {
        TextStyle& style = result.text.of(role);
        style = defaultText(role);
        style.hover = {};
    }
    overlay(result, project.row().style);
    overlay(result, variant.set);
    if (band < variant.bands.size()) overlay(result, variant.bands[band].set);
    for (auto& entry : result.text.roles)
        fillHover(entry.second);
    return result;
}

Settings difference(const Settings& under, const Settings& over) {
    Settings result;
    addDifferences(result, under, over);
    return result;
}

const Settings& settingsOf(const Project& project, CascadeLayer layer, std::size_t variant,
                           std::size_t band) {
    if (layer == CascadeLayer::Style) return project.row().style;
    const Variant& there = project.row().variants[variant];
    return layer == CascadeLayer::Variant ? there.set : there.bands[band].set;
}

Settings& settingsOf(Project& project, CascadeLayer layer, std::size_t variant, std::size_t band) {
    return const_cast<Settings&>(settingsOf(std::as_const(project), layer, variant, band));
}

}  // namespace tenter::project
