#include "panels/setting_origin.h"

#include <array>

#include "document/wording.h"
#include "project/cascade.h"

namespace tenter::desktop::panels {

namespace {

using project::CascadeLayer;

const project::Settings& layerOf(const Session& session, CascadeLayer layer) {
    const project::Project& project = session.shown.project();
    const std::size_t variant = session.view.variant();
    return project::settingsOf(project, layer, variant,
                               project::bandAt(project.row().variants[variant], session.view.width()));
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

SettingValue settingValue(const Session& session, const std::string& path) {
    constexpr std::array nearestFirst{CascadeLayer::Band, CascadeLayer::Variant, CascadeLayer::Style};
    SettingValue result;
    bool reached = false;
    for (const CascadeLayer layer : nearestFirst) {
        reached = reached || layer == session.scope.layer();
        project::Json value = project::settingAt(layerOf(session, layer), path);
        if (value.is_null()) continue;
        if (!reached) {
            if (result.overriddenBy) continue;
            result.overriddenBy = layer;
            result.overridingValue = std::move(value);
            continue;
        }
        result.value = std::move(value);
        result.from = layer;
        result.setHere = layer == session.scope.layer();
        break;
    }
    if (!result.from) result.value = defaultAt(path);
    if (result.overriddenBy && result.overridingValue == result.value) result.overriddenBy.reset();
    return result;
}

QString originTitle(const Session& session, const SettingValue& setting) {
    if (setting.setHere) return "set here, for " + scopeTitle(session.layouts, session.scope.layer());
    if (setting.from) return "inherited from " + scopeTitle(session.layouts, *setting.from);
    return QStringLiteral("default value");
}

}  // namespace tenter::desktop::panels
