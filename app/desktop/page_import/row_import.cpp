#include "page_import/row_import.h"

#include <QObject>
#include <QRegularExpression>
#include <QString>
#include <algorithm>
#include <utility>

#include "markup/choose.h"
#include "pictures/source.h"
#include "start/live_import.h"

namespace tenter::desktop::page_import {

namespace {

markup::PageToAdopt pageOfRequest(const ImportRequest& request, std::vector<markup::RoleChoice> choices) {
    markup::PageToAdopt page;
    page.bytes = {request.bytes.constData(), static_cast<std::size_t>(request.bytes.size())};
    page.file = request.file;
    page.pictureSize = pictures::sizeOfFile;
    page.projectFolder = request.projectFolder;
    page.choices = std::move(choices);
    page.theme = request.theme;
    return page;
}

ImportResult readWith(const ImportRequest& request, const std::vector<markup::RoleChoice>& choices) {
    ImportResult result;
    result.choices = choices;
    markup::PageToAdopt page = pageOfRequest(request, choices);
    page.wantsMeasuringPage = request.measures;
    bool isOther = false;
    if (request.measures && !request.measured.page.empty())
        page.browse = [&](const std::string& html) {
            isOther = html != request.measured.page;
            return isOther ? std::nullopt : std::optional(request.measured.text);
        };
    result.adopted = markup::adopt(*request.project, page, result.problems);
    if (isOther) {
        page.browse = {};
        result.problems.clear();
        result.adopted = markup::adopt(*request.project, page, result.problems);
    }
    if (result.adopted && !page.browse) result.toMeasure = std::move(result.adopted->measuringPage);
    if (result.adopted) result.row = markup::givenRow(result.adopted->project, result.problems);
    if (!result.row) result.adopted.reset();
    return result;
}

tenter::start::LiveSource liveSource(const ImportRequest& request, bool isSheet) {
    return {{{request.bytes.constData(), static_cast<std::size_t>(request.bytes.size())},
             request.file,
             request.projectFolder,
             request.rootSize},
            isSheet};
}

void take(tenter::start::Imported import, ImportResult& result) {
    result.adopted = markup::Adopted{std::move(import.project), std::move(import.report), {}};
    result.found = std::move(import.found);
}

/// A stylesheet becomes a new project: one that Tenter printed as it was, any other by what its rules
/// declare.
ImportResult readSheet(const ImportRequest& request) {
    ImportResult result;
    result.isSheet = true;
    if (request.project != nullptr) {
        result.problems.push_back(
            {request.file.string(), "",
             QObject::tr("A stylesheet has no cards to put into this project.").toStdString(),
             QObject::tr(
                 "Choose “A new project”, or compare it with this project (Edit › Compare with stylesheet…).")
                 .toStdString()});
        return result;
    }
    text::Fonts fonts;
    text::ParagraphStore store(fonts);
    if (auto read = tenter::start::importLive(liveSource(request, true), true, store, result.problems)) {
        result.isOwn = read->isOwn;
        take(std::move(read->import), result);
    }
    return result;
}

/// The page as a new project if Tenter wrote it and the user has changed nothing.
std::optional<ImportResult> readOwnPage(const ImportRequest& request, project::Problems& whyNot) {
    const bool isChanged =
        !request.choices.empty() || request.theme || !std::holds_alternative<std::monostate>(request.change);
    if (isChanged) return std::nullopt;
    text::Fonts fonts;
    text::ParagraphStore store(fonts);
    auto own = tenter::start::importOwn(liveSource(request, false), true, store, whyNot);
    if (!own) return std::nullopt;
    ImportResult result;
    result.isOwn = true;
    take(std::move(*own), result);
    return result;
}

/// The choices with the correction applied; empty, with problems, if that is impossible.
std::optional<std::vector<markup::RoleChoice>> changedChoices(const ImportRequest& request,
                                                              project::Problems& problems) {
    if (const auto* assignRole = std::get_if<RoleAssignment>(&request.change))
        return markup::choose(*request.project, pageOfRequest(request, request.choices), assignRole->node,
                              assignRole->role, problems);
    std::vector<markup::RoleChoice> choices = request.choices;
    const auto& typed = std::get<markup::RoleChoice>(request.change);
    const auto known = std::ranges::find(choices, typed.role, &markup::RoleChoice::role);
    if (known == choices.end())
        choices.push_back(typed);
    else
        known->selector = typed.selector;
    return choices;
}

}  // namespace

bool isStylesheet(const QByteArray& bytes, const std::filesystem::path& file) {
    if (!file.empty()) return file.extension() == ".css";
    static const QRegularExpression tag("<[a-zA-Z!/]");
    return bytes.contains('{') && bytes.contains(':') && !QString::fromUtf8(bytes).contains(tag);
}

ImportResult readRow(const ImportRequest& request) {
    if (isStylesheet(request.bytes, request.file)) return readSheet(request);
    if (request.project == nullptr) {
        project::Problems whyNot;
        if (auto own = readOwnPage(request, whyNot)) return std::move(*own);
        // Name, class and settings of a new project are those of the page.
        text::Fonts fonts;
        text::ParagraphStore store(fonts);
        ImportRequest own = request;
        tenter::start::PageProject made =
            tenter::start::projectForPage(pageOfRequest(request, request.choices), store);
        own.project = std::make_shared<project::Project>(std::move(made.project));
        ImportResult result = readRow(own);
        if (result.adopted) {
            std::vector<std::string> report =
                tenter::start::withLook(std::move(result.adopted->report), made.report());
            const std::vector<std::string> why = intake::whyNotOwn(whyNot);
            report.insert(report.begin(), why.begin(), why.end());
            result.adopted->report = std::move(report);
            result.found = std::move(made.found);
        }
        return result;
    }
    if (std::holds_alternative<std::monostate>(request.change)) return readWith(request, request.choices);
    project::Problems refused;
    if (const auto choices = changedChoices(request, refused)) {
        ImportResult changed = readWith(request, *choices);
        if (changed.adopted && changed.problems.empty()) return changed;
        refused = std::move(changed.problems);
    }
    ImportResult result = readWith(request, request.choices);
    result.refused = std::move(refused);
    return result;
}

}  // namespace tenter::desktop::page_import
