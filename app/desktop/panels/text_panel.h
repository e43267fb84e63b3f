// The Text panel: font, size, wishes and lines of a text role.
#pragma once

#include "controls/family_editor.h"
#include "panels/panel.h"
#include "panels/ramp_editor.h"
#include "panels/scale_box.h"
#include "panels/size_paste.h"
#include "panels/wishes_panel.h"

namespace tenter::desktop::panels {

class TextPanel : public Panel {
    Q_OBJECT

public:
    explicit TextPanel(Context& context, QWidget* parent = nullptr);
    void refresh() override;
    void refreshPixels() override;
    [[nodiscard]] bool takesRoles() const override { return true; }

private:
    void showSize();

    controls::FamilyEditor* family_;
    std::vector<project::FontEntry> fonts_;  ///< those that the list of families was filled from
    RampEditor* size_;
    SizePaste* paste_;
    std::string pasteFor_;  ///< the role that the pasted size is for
    QLabel* clamp_;
    ScaleBox* scale_;
};

}  // namespace tenter::desktop::panels
