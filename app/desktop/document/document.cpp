#include "document/document.h"

#include <utility>

#include "checks/registry.h"
#include "document/collect_files.h"
#include "document/edit_command.h"
#include "project/json_text.h"
#include "project/validate.h"

namespace tenter::desktop {

namespace fs = std::filesystem;

namespace {

// Enough to go back through a day's work; a snapshot is some tens of kilobytes.
constexpr int undoSteps = 500;

project::Project blank() {
    project::Project project;
    project::Variant variant;
    variant.className = "cards-one";
    variant.bands.emplace_back();
    project.row().variants.push_back(std::move(variant));
    return project;
}

/// False, with a problem, for a pipe or a device: it may never end, and the window would wait for it.
bool canBeRead(const fs::path& file, project::Problems& problems) {
    std::error_code error;
    if (!fs::is_other(fs::status(file, error))) return true;
    problems.push_back({file.string(), "", QObject::tr("This is not a regular file.").toStdString(),
                        QObject::tr("Choose another file.").toStdString()});
    return false;
}

}  // namespace

Document::Document(QObject* parent)
    : QObject(parent),
      project_(std::make_shared<project::Project>(blank())),
      saved_(project_),
      store_(fonts_) {
    undo_.setUndoLimit(undoSteps);
    connect(&undo_, &QUndoStack::cleanChanged, this, &Document::fileChanged);
}

Document::~Document() {
    undo_.disconnect(this);
}

void Document::begin(project::Project project, const fs::path& folder) {
    folder_ = folder;
    fonts_.use(project.fonts, folder_);
    store_.clear();
    undo_.clear();
    endGesture();
    project_ = std::make_shared<project::Project>(std::move(project));
    saved_ = project_;
    hasProject_ = true;
    isUnsaved_ = false;
    ++opening_;
    ++revision_;
    Q_EMIT opened();
    Q_EMIT changed();
    Q_EMIT fileChanged();
}

bool Document::open(const fs::path& file, project::Problems& problems) {
    if (!canBeRead(file, problems)) return false;
    // Before it is read: a change in between is noticed later.
    const FileStamp stamp = FileStamp::of(file);
    auto project = project::read(file, problems, checks::isCheckName);
    if (!project) return false;
    file_ = file;
    stamp_ = stamp;
    begin(std::move(*project), file.parent_path());
    return true;
}

bool Document::openAsNew(const fs::path& file, project::Problems& problems) {
    if (!canBeRead(file, problems)) return false;
    auto project = project::read(file, problems, checks::isCheckName);
    if (!project) return false;
    file_.clear();
    begin(std::move(*project), file.parent_path());
    return true;
}

void Document::startNew(project::Project project, const fs::path& folder) {
    file_.clear();
    begin(std::move(project), folder);
    isUnsaved_ = true;
    Q_EMIT fileChanged();
}

void Document::restore(project::Project project, const fs::path& file, const fs::path& folder) {
    project::Problems problems;
    if (!file.empty() && open(file, problems) &&
        edit(QObject::tr("Restore unsaved changes"), [&](project::Project& now) { now = project; }).empty()) {
        endGesture();
        return;
    }
    startNew(std::move(project), folder);
}

bool Document::reload(project::Problems& problems) {
    const FileStamp stamp = FileStamp::of(file_);
    const auto project = project::read(file_, problems, checks::isCheckName);
    if (!project) return false;
    endGesture();
    problems = edit(QObject::tr("Load changed file"), [&](project::Project& now) { now = *project; });
    if (!problems.empty()) return false;
    endGesture();
    stamp_ = stamp;
    saved_ = project_;
    isUnsaved_ = false;
    undo_.setClean();
    Q_EMIT fileChanged();
    return true;
}

bool Document::isChangedOnDisk() const {
    return !file_.empty() && FileStamp::of(file_) != stamp_;
}

void Document::acceptChangeOnDisk() {
    stamp_ = FileStamp::of(file_);
}

bool Document::save(project::Problems& problems) {
    return saveAs(file_, problems);
}

bool Document::saveAs(const fs::path& file, project::Problems& problems) {
    const auto carried = collectFiles(*project_, folder_, file.parent_path(), problems);
    if (!carried) return false;
    const std::string text = project::write(*carried);
    if (text.size() > project::largestFile) {
        problems.push_back(
            {file.string(), "", QObject::tr("The project is too large to be opened again.").toStdString(),
             QObject::tr("Shorten its texts or the theme CSS of the imported row. The largest file "
                         "is %1 MB.")
                 .arg(project::largestFile >> 20U)
                 .toStdString()});
        return false;
    }
    if (!project::replaceFile(file, text, problems)) return false;
    file_ = file;
    stamp_ = FileStamp::of(file);
    if (folder_ != file.parent_path()) {
        folder_ = file.parent_path();
        fonts_.use(project_->fonts, folder_);
        store_.clear();
        tellChanged();
    }
    // Names of files alone do not make a project invalid.
    edit(QObject::tr("Copy files into project folder"),
         [&](project::Project& project) { project = *carried; });
    saved_ = project_;
    isUnsaved_ = false;
    endGesture();
    undo_.setClean();
    Q_EMIT fileChanged();
    return true;
}

project::Problems Document::edit(const QString& name, const std::function<void(project::Project&)>& change,
                                 const QString& gesture) {
    auto after = std::make_shared<project::Project>(*project_);
    change(*after);
    if (*after == *project_) return {};
    project::Problems problems = project::validate(*after, project_.get());
    if (problems.empty())
        undo_.push(new EditCommand(*this, name, project_, std::move(after), gesture, gestureSerial_));
    return problems;
}

void Document::endGesture() {
    ++gestureSerial_;
}

void Document::put(Kept project) {
    if (project->fonts != project_->fonts) {
        fonts_.use(project->fonts, folder_);
        store_.clear();
    }
    project_ = std::move(project);
    tellChanged();
}

void Document::tellChanged() {
    ++revision_;
    Q_EMIT changed();
}

}  // namespace tenter::desktop
