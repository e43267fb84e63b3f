// Export › Picture of this view…
#pragma once

#include "controls/segments.h"
#include "export/export_dialog.h"
#include "export/written_file.h"

namespace tenter::desktop::exporting {

/// Writes the row at the current width as a picture.
class PictureDialog : public ExportDialog {
    Q_OBJECT

public:
    PictureDialog(Session& session, QWidget* parent);

protected:
    [[nodiscard]] QString usualDestination() const override;
    [[nodiscard]] QString destinationAfter(const QString& last) const override;
    void restore(const Choices& choices) override;
    void remember(const Choices& choices) const override;
    [[nodiscard]] Planner planner() const override;
    [[nodiscard]] Writer writer() const override;

private:
    [[nodiscard]] bool isSvg() const;
    [[nodiscard]] ContentMaker content() const;
    /// Gives the file the ending of the chosen form.
    void setEnding();

    controls::Segments* form_;
};

}  // namespace tenter::desktop::exporting
