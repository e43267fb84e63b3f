// Export › Page folder…
#pragma once

#include <QCheckBox>
#include <QComboBox>

#include "export/export_dialog.h"
#include "export/sheet_choices.h"
#include "export/variant_choice.h"

namespace tenter::desktop::exporting {

/// Writes a folder with page, stylesheets, pictures and fonts.
class PageFolderDialog : public ExportDialog {
    Q_OBJECT

public:
    PageFolderDialog(Session& session, QWidget* parent);

protected:
    [[nodiscard]] QString usualDestination() const override;
    void restore(const Choices& choices) override;
    void remember(const Choices& choices) const override;
    [[nodiscard]] Planner planner() const override;
    [[nodiscard]] Writer writer() const override;

private:
    [[nodiscard]] bool cutsPictures() const;

    VariantChoice* variant_;
    QComboBox* pictures_;
    QCheckBox* fonts_;
    SheetChoices* sheet_;
};

}  // namespace tenter::desktop::exporting
