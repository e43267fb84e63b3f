// Opens and saves the project, and asks before unsaved changes are lost.
#pragma once

#include <QObject>
#include <QStringList>
#include <QWidget>

#include "document/document.h"
#include "recovery/unsaved_work.h"

namespace tenter::desktop::window {

class FileController : public QObject {
    Q_OBJECT

public:
    FileController(Document& document, QWidget* window);

    void openDialog();
    void open(const QString& file);
    void openSample(const QString& file);
    /// Opens a new project that has no file, after asking about unsaved changes. `folder`: where its files
    /// are. False if the person keeps the open project.
    bool startNew(const project::Project& project, const std::filesystem::path& folder,
                  const QString& message);
    /// Opens unsaved changes of a program that did not close by itself. False if the person keeps the open
    /// project.
    bool restore(const recovery::UnsavedWork& work);
    /// Asks what to do if another program has changed the file.
    void checkDisk();
    /// Returns true if the project was saved.
    bool save();
    bool saveAs();
    /// Asks whether to save unsaved changes. Returns true if there are none left, or they may be discarded.
    bool maybeSave();
    [[nodiscard]] QStringList recent() const;
    /// The name of the project's file; if it has none, the name of the project with a note.
    [[nodiscard]] QString title() const;
    /// The folder in which a file dialog starts.
    [[nodiscard]] QString startFolder() const;

Q_SIGNALS:
    void recentChanged();
    /// `headline`: a sentence that says what failed.
    void failed(const QString& headline, const tenter::project::Problems& problems);
    void done(const QString& message);

private:
    /// Asks whether to save over a file that another program has changed. True: go on.
    bool mayReplaceFile();
    void remember(const std::filesystem::path& file);

    Document& document_;
    QWidget* window_;
    bool isAsking_ = false;  ///< a question about the file is open
};

}  // namespace tenter::desktop::window
