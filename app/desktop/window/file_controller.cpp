#include "window/file_controller.h"

#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QScopedValueRollback>
#include <QSettings>
#include <QStandardPaths>
#include <cstdlib>

#include "controls/question.h"
#include "units/ascii.h"

namespace tenter::desktop::window {

namespace {

const QString recentKey = "recent";
constexpr int mostRecent = 8;

QString filter() {
    return QObject::tr("Tenter projects (*.tenter.json)");
}

std::filesystem::path toPath(const QString& file) {
    return file.toStdString();
}

QString fromPath(const std::filesystem::path& path) {
    return QString::fromStdString(path.string());
}

/// `shore-walks.tenter.json` for a project with the name “Shore walks”. A name without ASCII letters gives
/// the name of the row.
QString firstFileName(const project::Project& project) {
    const std::string name = units::hyphenated(units::lowered(project.name), units::isWordCharacter);
    return QString::fromStdString(name.empty() ? project.row().name : name) + project::fileEnding;
}

/// What is lost without saving: `If you discard them, you lose 3 changes. The last one is “Move breakpoint”.`
QString lossTitle(const QUndoStack& undo) {
    const int saved = undo.cleanIndex();
    // Steps that were undone after saving are changes too, but not the last step on the stack.
    const QString last = saved < undo.index() ? undo.undoText() : QString();
    const QString lastOne = last.isEmpty() ? QString() : ' ' + QObject::tr("The last one is “%1”.").arg(last);
    // Where the saved state cannot be reached any more, the steps since then cannot be counted.
    if (saved < 0)
        return QObject::tr("If you discard them, you lose all changes since the last save.") + lastOne;
    const int count = std::abs(undo.index() - saved);
    if (count > 1)
        return QObject::tr("If you discard them, you lose %n change(s).", nullptr, count) + lastOne;
    return last.isEmpty() ? QObject::tr("If you discard them, you lose 1 change.")
                          : QObject::tr("If you discard them, you lose 1 change: “%1”.").arg(last);
}

}  // namespace

FileController::FileController(Document& document, QWidget* window)
    : QObject(window), document_(document), window_(window) {}

QString FileController::startFolder() const {
    if (!document_.file().empty()) return fromPath(document_.file().parent_path());
    if (const QStringList files = recent(); !files.isEmpty()) return QFileInfo(files.first()).path();
    // A new account may have no folder for documents yet.
    const QString documents = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    return QFileInfo(documents).isDir() ? documents : QDir::homePath();
}

void FileController::openDialog() {
    const QString file =
        QFileDialog::getOpenFileName(window_, QObject::tr("Open project"), startFolder(), filter());
    if (!file.isEmpty()) open(file);
}

void FileController::open(const QString& file) {
    if (!maybeSave()) return;
    project::Problems problems;
    const QString absolute = QFileInfo(file).absoluteFilePath();
    if (!document_.open(toPath(absolute), problems)) {
        Q_EMIT failed(
            (document_.hasProject() ? QObject::tr("%1 could not be opened. The current project stays open.")
                                    : QObject::tr("%1 could not be opened."))
                .arg(QFileInfo(file).fileName()),
            problems);
        return;
    }
    remember(document_.file());
    Q_EMIT done(QObject::tr("Opened %1").arg(QFileInfo(file).fileName()));
}

void FileController::openSample(const QString& file) {
    if (!maybeSave()) return;
    project::Problems problems;
    if (!document_.openAsNew(toPath(file), problems))
        Q_EMIT failed(QObject::tr("The sample %1 could not be opened.").arg(QFileInfo(file).fileName()),
                      problems);
    else
        Q_EMIT done(QObject::tr("This is a copy of the sample. Save it to keep your changes."));
}

bool FileController::startNew(const project::Project& project, const std::filesystem::path& folder,
                              const QString& message) {
    if (!maybeSave()) return false;
    document_.startNew(project, folder);
    Q_EMIT done(message);
    return true;
}

bool FileController::save() {
    if (document_.file().empty()) return saveAs();
    if (!mayReplaceFile()) return false;
    project::Problems problems;
    if (!document_.save(problems)) {
        Q_EMIT failed(QObject::tr("The project could not be saved. The file is unchanged."), problems);
        return false;
    }
    Q_EMIT done(QObject::tr("Saved %1").arg(title()));
    return true;
}

bool FileController::restore(const recovery::UnsavedWork& work) {
    if (!maybeSave()) return false;
    document_.restore(work.project, work.file, work.folder);
    Q_EMIT done(QObject::tr("Restored the unsaved changes. Save the project to keep them."));
    return true;
}

bool FileController::mayReplaceFile() {
    const bool exists = QFileInfo::exists(fromPath(document_.file()));
    if (!exists || !document_.isChangedOnDisk()) return true;
    // The box itself deactivates and activates the window, which asks, too (checkDisk).
    const QScopedValueRollback<bool> asking(isAsking_, true);
    enum { SaveAs, Replace };
    const int answer = controls::ask(
        window_, QObject::tr("File changed"),
        QObject::tr("Another program has changed “%1” since you opened or saved it.").arg(title()),
        QObject::tr("If you save over it, the changes of the other program are lost."),
        {{QObject::tr("Save &as…")},
         {QObject::tr("Save &over it"), QMessageBox::DestructiveRole},
         {QObject::tr("Cancel"), QMessageBox::RejectRole}});
    if (answer == SaveAs) saveAs();
    return answer == Replace;
}

void FileController::checkDisk() {
    if (isAsking_ || !document_.isChangedOnDisk()) return;
    const QScopedValueRollback<bool> asking(isAsking_, true);
    if (!QFileInfo::exists(fromPath(document_.file()))) {
        document_.acceptChangeOnDisk();
        Q_EMIT done(QObject::tr("The file %1 was removed or renamed. Saving writes it again.").arg(title()));
        return;
    }
    enum { Load, SaveAs };
    const int answer = controls::ask(
        window_, QObject::tr("File changed"), QObject::tr("Another program has changed “%1”.").arg(title()),
        document_.isModified()
            ? QObject::tr("If you load it, Undo restores your version with its unsaved changes.")
            : QObject::tr("If you load it, Undo restores the version from before."),
        {{QObject::tr("&Load it")},
         {QObject::tr("Save mine &as…"), QMessageBox::ActionRole},
         {QObject::tr("&Keep mine"), QMessageBox::RejectRole}});
    if (answer == Load) {
        project::Problems problems;
        if (document_.reload(problems))
            Q_EMIT done(QObject::tr("Loaded the changed file. Undo restores the version from before."));
        else
            Q_EMIT failed(QObject::tr("%1 could not be loaded. Your version stays open.").arg(title()),
                          problems);
    } else if (answer == SaveAs) {
        saveAs();
    }
    // Asked once for each change.
    if (!document_.file().empty()) document_.acceptChangeOnDisk();
}

bool FileController::saveAs() {
    const QString name = fromPath(document_.file().filename());
    const QString suggested =
        QDir(startFolder()).filePath(name.isEmpty() ? firstFileName(document_.project()) : name);
    QFileDialog dialog(window_, QObject::tr("Save project as"), startFolder(), filter());
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setDefaultSuffix("tenter.json");
    dialog.selectFile(suggested);
    if (dialog.exec() != QDialog::Accepted || dialog.selectedFiles().isEmpty()) return false;
    project::Problems problems;
    if (!document_.saveAs(toPath(dialog.selectedFiles().first()), problems)) {
        Q_EMIT failed(QObject::tr("The project could not be saved there. No file was overwritten."),
                      problems);
        return false;
    }
    remember(document_.file());
    Q_EMIT done(QObject::tr("Saved %1").arg(title()));
    return true;
}

bool FileController::maybeSave() {
    if (!document_.isModified()) return true;
    const QString name = document_.file().empty() ? QString::fromStdString(document_.project().name)
                                                  : fromPath(document_.file().filename());
    enum { Save, DiscardChanges };
    const int answer = controls::ask(
        window_, QObject::tr("Unsaved changes"), QObject::tr("Save the changes to “%1”?").arg(name),
        document_.isUnsaved()
            ? QObject::tr("This project has never been saved. If you discard it, you lose it.")
            : lossTitle(document_.undoStack()),
        {{QObject::tr("&Save")},
         {QObject::tr("&Discard changes"), QMessageBox::DestructiveRole},
         {QObject::tr("Cancel"), QMessageBox::RejectRole}});
    return answer == Save ? save() : answer == DiscardChanges;
}

QStringList FileController::recent() const {
    QStringList files;
    for (const QString& file : QSettings().value(recentKey).toStringList())
        if (QFileInfo::exists(file)) files << file;
    return files;
}

void FileController::remember(const std::filesystem::path& file) {
    QStringList files = QSettings().value(recentKey).toStringList();
    files.removeAll(fromPath(file));
    files.prepend(fromPath(file));
    QSettings().setValue(recentKey, files.mid(0, mostRecent));
    Q_EMIT recentChanged();
}

QString FileController::title() const {
    if (!document_.hasProject()) return {};
    if (!document_.file().empty()) return fromPath(document_.file().filename());
    return QObject::tr("%1 (not saved yet)").arg(QString::fromStdString(document_.project().name));
}

}  // namespace tenter::desktop::window
