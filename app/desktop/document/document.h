// The open project, its file, and everything that can be undone.
#pragma once

#include <QObject>
#include <QUndoStack>
#include <filesystem>
#include <functional>
#include <memory>

#include "document/file_stamp.h"
#include "project/file.h"
#include "project/project.h"
#include "text/paragraph_store.h"

namespace tenter::desktop {

class Document : public QObject {
    Q_OBJECT

public:
    explicit Document(QObject* parent = nullptr);
    ~Document() override;

    /// Before anything is opened: a blank project of one variant and no cards.
    [[nodiscard]] const project::Project& project() const { return *project_; }
    /// The same, for other threads: it never changes.
    [[nodiscard]] std::shared_ptr<const project::Project> snapshot() const { return project_; }
    /// The project as it was last saved or opened.
    [[nodiscard]] const project::Project& savedProject() const { return *saved_; }
    /// Another number after every change of the content: for those who look before `changed` reaches them.
    [[nodiscard]] int revision() const { return revision_; }
    /// Another number for each project that is opened, 0 before the first.
    [[nodiscard]] int opening() const { return opening_; }
    /// False until something is opened.
    [[nodiscard]] bool hasProject() const { return hasProject_; }
    /// Empty for a project that has no file yet.
    [[nodiscard]] const std::filesystem::path& file() const { return file_; }
    /// Where pictures and fonts are looked for.
    [[nodiscard]] std::filesystem::path folder() const { return folder_; }
    [[nodiscard]] text::ParagraphStore& store() { return store_; }
    [[nodiscard]] QUndoStack& undoStack() { return undo_; }
    [[nodiscard]] bool isModified() const { return isUnsaved_ || !undo_.isClean(); }
    /// True for a project that was made here and has never been saved.
    [[nodiscard]] bool isUnsaved() const { return isUnsaved_; }

    /// Opens a project file; on failure nothing changes and `problems` says why.
    bool open(const std::filesystem::path& file, project::Problems& problems);
    /// A project from a sample: a copy that has no file of its own; its pictures stay where they are until it
    /// is saved.
    bool openAsNew(const std::filesystem::path& file, project::Problems& problems);
    /// A new project, which must be valid and counts as changed until it is saved. `folder`: where its files
    /// are.
    void startNew(project::Project project, const std::filesystem::path& folder);
    /// Opens `project`, unsaved changes of the project in `file`: as one undoable step after the content of
    /// the file, or as a new project if there is no file or it cannot be opened. `folder`: where its files
    /// are.
    void restore(project::Project project, const std::filesystem::path& file,
                 const std::filesystem::path& folder);
    /// Loads the file again, after another program has changed it, as one undoable step. On failure nothing
    /// changes and `problems` says why.
    bool reload(project::Problems& problems);
    /// True if another program has changed or removed the file since it was opened or saved.
    [[nodiscard]] bool isChangedOnDisk() const;
    /// The change on the disk is known: `isChangedOnDisk` is false until the next one.
    void acceptChangeOnDisk();
    bool save(project::Problems& problems);
    /// Saves to another file. Pictures and fonts go along into its folder (see collectFiles).
    bool saveAs(const std::filesystem::path& file, project::Problems& problems);

    /// One undoable step named `name` (as the menu shows it). Steps with the same non-empty `gesture` that
    /// follow each other without `endGesture` between them become one. A step that changes nothing is
    /// dropped. A step that would make the project invalid is refused: nothing changes, and the problems say
    /// why.
    project::Problems edit(const QString& name, const std::function<void(project::Project&)>& change,
                           const QString& gesture = {});
    /// The drag, or the typing, is over.
    void endGesture();

Q_SIGNALS:
    void opened();       ///< another project stands here; `changed` follows
    void changed();      ///< the project's content
    void fileChanged();  ///< its file, or whether it is saved

private:
    friend class EditCommand;
    using Kept = std::shared_ptr<const project::Project>;
    void put(Kept project);
    void tellChanged();
    void begin(project::Project project, const std::filesystem::path& folder);

    Kept project_, saved_;
    int revision_ = 0;
    int opening_ = 0;
    bool hasProject_ = false;
    bool isUnsaved_ = false;
    std::filesystem::path file_, folder_;
    FileStamp stamp_;  ///< of the file as it was opened or saved
    QUndoStack undo_;
    int gestureSerial_ = 0;
    text::Fonts fonts_;
    text::ParagraphStore store_;
};

}  // namespace tenter::desktop
