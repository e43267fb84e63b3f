#include "window/file_desk.h"

#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QPushButton>
#include <QSettings>
#include <QStandardPaths>

namespace tenter::desktop::window {

namespace {

const QString filter = "Tenter projects (*.tenter.json)";
const QString recentKey = "recent";
constexpr int mostRecent = 8;

std::filesystem::path toPath(const QString& file) {
    return file.toStdString();
}

QString fromPath(const std::filesystem::path& path) {
    return QString::fromStdString(path.string());
}

}  // namespace

FileDesk::FileDesk(Document& document, QWidget* window)
    : QObject(window), document_(document), window_(window) {}

QString FileDesk::startFolder() const {
    if (!document_.file().empty()) return fromPath(document_.file().parent_path());
    if (const QStringList files = recent(); !files.isEmpty()) return QFileInfo(files.first()).path();
    return QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
}

void FileDesk::openAsked() {
    const QString file = QFileDialog::getOpenFileName(window_, "Open a project", startFolder(), filter);
    if (!file.isEmpty()) open(file);
}

void FileDesk::open(const QString& file) {
    if (!mayLeave()) return;
    project::Problems problems;
    const QString absolute = QFileInfo(file).absoluteFilePath();
    if (!document_.open(toPath(absolute), problems)) {
        emit failed(QFileInfo(file).fileName() + " could not be opened" +
                        (document_.hasProject() ? "; what was open still is." : "."),
                    problems);
        return;
    }
    remember(document_.file());
    emit done("Opened " + QFileInfo(file).fileName());
}

void FileDesk::openSample(const QString& file) {
    if (!mayLeave()) return;
    project::Problems problems;
    if (!document_.openAsNew(toPath(file), problems))
        emit failed("The sample " + QFileInfo(file).fileName() + " could not be opened.", problems);
    else
        emit done("A copy of the sample; save it to keep it");
}

bool FileDesk::save() {
    if (document_.file().empty()) return saveAs();
    project::Problems problems;
    if (!document_.save(problems)) {
        emit failed("The project could not be saved; the file is as it was.", problems);
        return false;
    }
    emit done("Saved " + title());
    return true;
}

bool FileDesk::saveAs() {
    const QString name = fromPath(document_.file().filename());
    const QString proposed =
        QDir(startFolder())
            .filePath(name.isEmpty() ? QString::fromStdString(document_.project().row) + project::fileEnding
                                     : name);
    QFileDialog dialog(window_, "Save the project as", startFolder(), filter);
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setDefaultSuffix("tenter.json");
    dialog.selectFile(proposed);
    if (dialog.exec() != QDialog::Accepted || dialog.selectedFiles().isEmpty()) return false;
    project::Problems problems;
    if (!document_.saveAs(toPath(dialog.selectedFiles().first()), problems)) {
        emit failed("The project could not be saved there; nothing was overwritten.", problems);
        return false;
    }
    remember(document_.file());
    emit done("Saved " + title());
    return true;
}

bool FileDesk::mayLeave() {
    if (!document_.isModified()) return true;
    QMessageBox box(QMessageBox::NoIcon, "Unsaved changes", title() + " has changes that are not saved.",
                    QMessageBox::NoButton, window_);
    box.setInformativeText("The last one: " + document_.undoStack().undoText() + '.');
    auto* save = box.addButton("Save", QMessageBox::AcceptRole);
    auto* leave = box.addButton("Let them go", QMessageBox::DestructiveRole);
    auto* stay = box.addButton("Stay", QMessageBox::RejectRole);
    box.setDefaultButton(save);
    box.setEscapeButton(stay);
    box.exec();
    if (box.clickedButton() == save) return this->save();
    return box.clickedButton() == leave;
}

QStringList FileDesk::recent() const {
    QStringList files;
    for (const QString& file : QSettings().value(recentKey).toStringList())
        if (QFileInfo::exists(file)) files << file;
    return files;
}

void FileDesk::remember(const std::filesystem::path& file) {
    QStringList files = QSettings().value(recentKey).toStringList();
    files.removeAll(fromPath(file));
    files.prepend(fromPath(file));
    QSettings().setValue(recentKey, files.mid(0, mostRecent));
    emit recentChanged();
}

QString FileDesk::title() const {
    if (!document_.hasProject()) return {};
    if (!document_.file().empty()) return fromPath(document_.file().filename());
    return QString::fromStdString(document_.project().name) + " (no file yet)";
}

}  // namespace tenter::desktop::window
