// Export › Design tokens…
#pragma once

#include "controls/segments.h"
#include "export/export_dialog.h"
#include "export/variant_choice.h"
#include "export/written_file.h"

namespace tenter::desktop::exporting {

/// Writes sizes, spacing and colours as design tokens.
class TokensDialog : public ExportDialog {
    Q_OBJECT

public:
    TokensDialog(Session& session, QWidget* parent);

protected:
    [[nodiscard]] QString usualDestination() const override;
    void restore(const Choices& choices) override;
    void remember(const Choices& choices) const override;
    [[nodiscard]] Planner planner() const override;
    [[nodiscard]] Writer writer() const override;

private:
    [[nodiscard]] ContentMaker content() const;

    VariantChoice* variant_;
    controls::Segments* unit_;
};

}  // namespace tenter::desktop::exporting
