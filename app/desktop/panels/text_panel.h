// The Text panel: how a role's text is set.
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
    std::vector<project::FontEntry> fonts_;  ///< those the list of families was made with
    RampEditor* size_;
    SizePaste* paste_;
    std::string pasteFor_;  ///< the role that is being pasted to
    QLabel* clamp_;
    ScaleBox* scale_;
};

}  // namespace tenter::desktop::panels
