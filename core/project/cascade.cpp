#include "project/cascade.h"

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
    overlay(result, project.style);
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

}  // namespace tenter::project
