#include "panels/setting_origin.h"

#include <algorithm>
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

bool differsElsewhere(const Session& session, const std::string& path, const project::Json& value) {
    const auto differs = [&](const project::Settings& settings) {
        const project::Json own = project::settingAt(settings, path);
        return !own.is_null() && own != value;
    };
    const CascadeLayer scope = session.scope.layer();
    const auto& variants = session.shown.project().row().variants;
    for (std::size_t i = 0; i < variants.size(); ++i) {
        if (scope == CascadeLayer::Band || (scope == CascadeLayer::Variant && i != session.view.variant()))
            continue;
        if (scope == CascadeLayer::Style && differs(variants[i].set)) return true;
        if (std::ranges::any_of(variants[i].bands, differs, &project::Band::set)) return true;
    }
    return false;
}

}  // namespace

SettingValue settingValue(const Session& session, const std::string& path) {
    constexpr std::array nearestFirst{CascadeLayer::Band, CascadeLayer::Variant, CascadeLayer::Style};
    const CascadeLayer edited = session.scope.layerOf(path);
    SettingValue result;
    for (const CascadeLayer layer : nearestFirst) {
        if (layer > edited) continue;
        project::Json value = project::settingAt(layerOf(session, layer), path);
        if (value.is_null()) continue;
        result.value = std::move(value);
        result.from = layer;
        result.setHere = layer == edited;
        break;
    }
    if (!result.from) result.value = defaultAt(path);
    result.isNearer = edited > session.scope.layer();
    result.differsElsewhere = differsElsewhere(session, path, result.value);
    return result;
}

QString originTitle(const Session& session, const SettingValue& setting) {
    if (setting.setHere) return QObject::tr("set for %1").arg(scopeTitle(session.layouts, *setting.from));
    if (setting.from) return QObject::tr("inherited from %1").arg(scopeTitle(session.layouts, *setting.from));
    return QObject::tr("default value");
}

}  // namespace tenter::desktop::panels
