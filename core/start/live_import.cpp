#include "start/live_import.h"

#include "pictures/source.h"
#include "project/wording.h"
#include "start/sheet_project.h"

namespace tenter::start {

namespace {

std::optional<Imported> importOther(const LiveSource& source, text::ParagraphStore& store,
                                    project::Problems& problems) {
    if (source.isSheet) return importSheet(source.bytes, source.file, source.rootSize, store, problems);
    markup::PageToAdopt page;
    page.bytes = source.bytes;
    page.file = source.file;
    page.pictureSize = pictures::sizeOfFile;
    page.projectFolder = source.projectFolder.empty() ? "." : source.projectFolder;
    return importPage(page, store, problems);
}

}  // namespace

std::optional<Imported> importOwn(const LiveSource& source, bool wantsFound, text::ParagraphStore& store,
                                  project::Problems& problems) {
    auto own =
        source.isSheet ? intake::projectOfSheet(source, problems) : intake::projectOfPage(source, problems);
    if (!own) return std::nullopt;
    Imported import{std::move(own->project), std::move(own->report), {}, {}};
    if (!wantsFound) return import;
    for (const std::string& sentence : import.report)
        if (project::isWarning(sentence)) import.notes.push_back({sentence, std::nullopt});
    project::Problems ignored;
    if (auto declared = importOther(source, store, ignored)) import.found = std::move(declared->found);
    return import;
}

std::optional<LiveImport> importLive(const LiveSource& source, bool wantsFound, text::ParagraphStore& store,
                                     project::Problems& problems) {
    project::Problems ofOwn;
    if (auto own = importOwn(source, wantsFound, store, ofOwn)) {
        problems.insert(problems.end(), ofOwn.begin(), ofOwn.end());
        return LiveImport{std::move(*own), true};
    }
    std::optional<Imported> other = importOther(source, store, problems);
    if (!other) return std::nullopt;
    const std::vector<std::string> why = intake::whyNotOwn(ofOwn);
    other->report.insert(other->report.begin(), why.begin(), why.end());
    return LiveImport{std::move(*other), false};
}

}  // namespace tenter::start
