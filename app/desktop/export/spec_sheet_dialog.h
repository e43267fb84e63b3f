// Export › Spec sheet…
#pragma once

#include "controls/segments.h"
#include "export/export_dialog.h"
#include "export/variant_choice.h"

namespace tenter::desktop::exporting {

/// Writes the spec sheet as HTML or PDF.
class SpecSheetDialog : public ExportDialog {
    Q_OBJECT

public:
    SpecSheetDialog(Session& session, QWidget* parent);

protected:
    [[nodiscard]] QString usualDestination() const override;
    void restore(const Choices& choices) override;
    void remember(const Choices& choices) const override;
    [[nodiscard]] Planner planner() const override;
    [[nodiscard]] Writer writer() const override;

private:
    [[nodiscard]] bool isPdf() const { return form_->current() > 0; }
    /// Gives the file the ending of the chosen form.
    void setEnding();

    VariantChoice* variant_;
    controls::Segments* form_;
};

}  // namespace tenter::desktop::exporting
