#include "session/edit_scope.h"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <utility>

namespace tenter::desktop {

EditScope::EditScope(Document& document, const ViewState& view, const SelectionModel& selection,
                     QObject* parent)
    : QObject(parent), document_(document), view_(view), selection_(selection), opening_(document.opening()) {
    connect(&document_, &Document::opened, this, &EditScope::announce);
}

project::CascadeLayer EditScope::layer() const {
    if (std::exchange(opening_, document_.opening()) != document_.opening())
        layer_ = project::CascadeLayer::Style;
    return layer_;
}

void EditScope::setLayer(project::CascadeLayer layer) {
    if (layer == this->layer()) return;
    document_.endGesture();
    layer_ = layer;
    announce();
}

void EditScope::announce() {
    if (std::exchange(announced_, layer()) != layer()) Q_EMIT changed();
}

std::pair<std::size_t, std::size_t> EditScope::variantAndBand(const project::Project& project) const {
    const std::size_t variant = std::min(view_.variant(), project.row().variants.size() - 1);
    return {variant, project::bandAt(project.row().variants[variant], view_.width())};
}

project::CascadeLayer EditScope::layerOf(const std::string& path) const {
    using project::CascadeLayer;
    const project::Project& project = document_.project();
    const auto [variant, band] = variantAndBand(project);
    for (const CascadeLayer nearer : {CascadeLayer::Band, CascadeLayer::Variant}) {
        if (nearer <= layer()) break;
        if (!project::settingAt(project::settingsOf(project, nearer, variant, band), path).is_null())
            return nearer;
    }
    return layer();
}

std::vector<std::string> EditScope::pathsOf(const std::string& path) const {
    const std::string start = "text/";
    const std::size_t slash = path.find('/', start.size());
    if (selection_.others().empty() || !path.starts_with(start) || slash == std::string::npos) return {path};
    const std::vector<std::string> roles = selection_.roles();
    if (std::ranges::find(roles, path.substr(start.size(), slash - start.size())) == roles.end())
        return {path};
    std::vector<std::string> paths;
    paths.reserve(roles.size());
    for (const std::string& role : roles)
        paths.push_back(start + role + path.substr(slash));
    return paths;
}

project::Problems EditScope::setSetting(const QString& name, const std::string& path,
                                        const project::Json& value, const QString& gesture) {
    project::Problems problems;
    project::Problems refusal = document_.edit(
        name,
        [&](project::Project& project) {
            const auto [variant, band] = variantAndBand(project);
            for (const std::string& each : pathsOf(path))
                project::setSetting(project::settingsOf(project, layerOf(each), variant, band), each, value,
                                    problems);
        },
        gesture);
    return problems.empty() ? refusal : problems;
}

bool EditScope::edit(const QString& name, const std::function<void(project::Project&)>& change,
                     const QString& gesture) {
    const project::Problems problems = document_.edit(name, change, gesture);
    if (!problems.empty()) Q_EMIT refused(problems);
    return problems.empty();
}

}  // namespace tenter::desktop
