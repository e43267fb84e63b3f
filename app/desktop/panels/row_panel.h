// The Row panel: the row, its bands and variants, its cards, the page around it, and the project.
#pragma once

#include "controls/text_editor.h"
#include "panels/bands_table.h"
#include "panels/classes_line.h"
#include "panels/dimension_drawing.h"
#include "panels/leeway_box.h"
#include "panels/panel.h"
#include "panels/variants_section.h"

namespace tenter::desktop::panels {

class RowPanel : public Panel {
    Q_OBJECT

public:
    explicit RowPanel(Context& context, QWidget* parent = nullptr);
    void refresh() override;
    void refreshPixels() override;

Q_SIGNALS:
    void copied(const QString& message);  ///< to the clipboard

private:
    void buildRow();
    void buildCard();
    void buildVariant();
    void buildPage();
    void buildProject();

    BandsTable* bands_ = nullptr;
    DimensionDrawing* padding_ = nullptr;
    controls::TextEditor* variantName_ = nullptr;
    VariantButtons* variants_ = nullptr;
    ClassesLine* classes_ = nullptr;
    LeewayBox* leeway_ = nullptr;
};

}  // namespace tenter::desktop::panels
