#include "project/cascade.h"

#include "project/hover.h"
#include "project/layers.h"

namespace tenter::project {

void layOn(RoleStyles& under, const RoleStyles& over) {
    for (const auto& [role, style] : over.roles)
        layOn(under.of(role), style);
}

bool keepDifference(RoleStyles& out, const RoleStyles& under, const RoleStyles& over) {
    bool any = false;
    for (const auto& [role, style] : over.roles) {
        const TextStyle* before = under.find(role);
        TextStyle changed;
        if (!keepDifference(changed, before == nullptr ? TextStyle{} : *before, style)) continue;
        out.of(role) = changed;
        any = true;
    }
    return any;
}

Settings merged(const Settings& under, const Settings& over) {
    Settings result = under;
    layOn(result, over);
    return result;
}

Settings resolve(const Project& project, const Variant& variant, std::size_t band) {
    Settings result = defaultSettings();
    for (const std::string& role : roles(project)) {
        TextStyle& style = result.text.of(role);
        style = defaultText(role);
        style.hover = {};
    }
    layOn(result, project.style);
    layOn(result, variant.set);
    if (band < variant.bands.size()) layOn(result, variant.bands[band].set);
    for (auto& entry : result.text.roles)
        fillHover(entry.second);
    return result;
}

Settings difference(const Settings& under, const Settings& over) {
    Settings result;
    keepDifference(result, under, over);
    return result;
}

}  // namespace tenter::project
