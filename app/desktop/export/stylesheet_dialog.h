// Export › Stylesheet…
#pragma once

#include "export/export_dialog.h"
#include "export/sheet_choices.h"
#include "export/variant_choice.h"
#include "export/written_file.h"

namespace tenter::desktop::exporting {

/// Writes the stylesheet to a file, in the chosen form, or copies it.
class StylesheetDialog : public ExportDialog {
    Q_OBJECT

public:
    StylesheetDialog(Session& session, QWidget* parent);

protected:
    [[nodiscard]] QString usualDestination() const override;
    void restore(const Choices& choices) override;
    void remember(const Choices& choices) const override;
    [[nodiscard]] Planner planner() const override;
    [[nodiscard]] Writer writer() const override;

private:
    [[nodiscard]] ContentMaker content() const;
    void copy();

    VariantChoice* variant_;
    SheetChoices* sheet_;
    QPushButton* copy_;
};

}  // namespace tenter::desktop::exporting
