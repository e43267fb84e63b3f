// What to upload for each picture: computed in the background, shown for one picture and as a table of all.
#pragma once

#include <QLabel>
#include <QTreeWidget>
#include <memory>
#include <optional>
#include <vector>

#include "document/background_fonts.h"
#include "document/background_job.h"
#include "pictures/uploads.h"
#include "session/session.h"

namespace tenter::desktop::panels {

/// Computes the uploads of the project that is shown, again after every change of it.
class UploadJob : public QObject {
    Q_OBJECT

public:
    explicit UploadJob(Session& session, QObject* parent = nullptr);
    /// Starts the computation if the project or the break profile has changed since the last one.
    void refresh();
    /// The project of `uploads()`.
    [[nodiscard]] const project::Project& project() const { return *project_; }
    /// Those of the last finished computation.
    [[nodiscard]] const std::vector<pictures::PictureUpload>& uploads() const { return uploads_; }
    /// The upload of one picture, or null.
    [[nodiscard]] const pictures::PictureUpload* find(const std::optional<project::PartRef>& place) const;

Q_SIGNALS:
    void finished();

private:
    Session& session_;
    RowKey started_;
    std::shared_ptr<const project::Project> project_ = std::make_shared<project::Project>();
    std::vector<pictures::PictureUpload> uploads_;
    std::shared_ptr<BackgroundFonts> fonts_ = std::make_shared<BackgroundFonts>();
    BackgroundJob job_{this};
};

/// What to upload for one picture, and whether its present file is too small.
class UploadLine : public QWidget {
    Q_OBJECT

public:
    explicit UploadLine(QWidget* parent = nullptr);
    /// Hidden if `upload` is null or has no slot.
    void showUpload(const project::Project& project, const pictures::PictureUpload* upload);

private:
    QLabel* size_;
    QLabel* why_;
    QLabel* verdict_;
};

/// The pictures with their present and their wanted size. A click or Enter chooses a picture.
class UploadTable : public QTreeWidget {
    Q_OBJECT

public:
    explicit UploadTable(QWidget* parent = nullptr);
    void showUploads(const project::Project& project, const std::vector<pictures::PictureUpload>& uploads,
                     const std::optional<project::PartRef>& current);

Q_SIGNALS:
    void placeChosen(const tenter::project::PartRef& part);

private:
    std::vector<pictures::PictureUpload> uploads_;
    bool isFilling_ = false;  ///< the current line changes because the table is filled
};

}  // namespace tenter::desktop::panels
