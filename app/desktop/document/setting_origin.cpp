#include "document/setting_origin.h"

#include <array>

#include "document/wording.h"
#include "project/cascade.h"

namespace tenter::desktop {

namespace {

using project::CascadeLayer;

const project::Settings& layerOf(const Viewing& viewing, CascadeLayer layer) {
    const project::Project& project = viewing.shown();
    const std::size_t variant = viewing.variant();
    return project::settingsOf(project, layer, variant,
                               project::bandAt(project.row().variants[variant], viewing.width()));
}

project::Json defaultAt(const std::string& path) {
    static const project::Settings common = project::defaultSettings();
    const std::string start = "text/";
    if (path.compare(0, start.size(), start) != 0) return project::settingAt(common, path);
    project::Settings settings;
    const std::string role = path.substr(start.size(), path.find('/', start.size()) - start.size());
    settings.text.of(role) = project::defaultText(role);
    return project::settingAt(settings, path);
}

}  // namespace

SettingValue settingValue(const Viewing& viewing, const std::string& path) {
    constexpr std::array nearestFirst{CascadeLayer::Band, CascadeLayer::Variant, CascadeLayer::Style};
    SettingValue result;
    bool reached = false;
    for (const CascadeLayer scope : nearestFirst) {
        reached = reached || scope == viewing.scope();
        project::Json value = project::settingAt(layerOf(viewing, scope), path);
        if (value.is_null()) continue;
        if (!reached) {
            if (result.overriddenBy) continue;
            result.overriddenBy = scope;
            result.overridingValue = std::move(value);
            continue;
        }
        result.value = std::move(value);
        result.from = scope;
        result.setHere = scope == viewing.scope();
        break;
    }
    if (!result.from) result.value = defaultAt(path);
    if (result.overriddenBy && result.overridingValue == result.value) result.overriddenBy.reset();
    return result;
}

QString originTitle(const Viewing& viewing, const SettingValue& setting) {
    if (setting.setHere) return "set here, for " + scopeTitle(viewing, viewing.scope());
    if (setting.from) return "inherited from " + scopeTitle(viewing, *setting.from);
    return QStringLiteral("default value");
}

}  // namespace tenter::desktop
