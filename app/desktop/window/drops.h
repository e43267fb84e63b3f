// Files dropped on the window: projects, audiences, fonts and pictures.
#pragma once

#include <QPoint>
#include <QStringList>
#include <functional>

#include "row/row_view.h"
#include "window/audience_import.h"
#include "window/file_controller.h"
#include "window/status_note.h"

namespace tenter::desktop::window {

class Drops {
public:
    Drops(Document& document, const SelectionModel& selection, const row::RowView& row, FileController& files,
          AudienceImport& audience, StatusNote& note)
        : document_(document),
          selection_(selection),
          row_(row),
          files_(files),
          audience_(audience),
          note_(note) {}
    /// Does what the first file asks for: opens a project, imports a page, reads an audience, or sets the
    /// font of the selected text. Pictures are placed from the card under the point of the screen on.
    void drop(const QStringList& files, const QPoint& global);
    /// Called with pictures that are dropped while no project is open.
    std::function<void(const QStringList&)> startNewRow;
    /// Called with an HTML page that is dropped.
    std::function<void(const QString&)> startImport;

private:
    /// The card and part under a point of the screen; the selection if there is none.
    [[nodiscard]] std::optional<Place> placeUnder(const QPoint& global) const;
    void dropPictures(const QStringList& files, const QPoint& global);

    Document& document_;
    const SelectionModel& selection_;
    const row::RowView& row_;
    FileController& files_;
    AudienceImport& audience_;
    StatusNote& note_;
};

}  // namespace tenter::desktop::window
