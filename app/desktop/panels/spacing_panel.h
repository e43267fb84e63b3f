// The Spacing panel: margin, padding, and the alignment of a part in its card.
#pragma once

#include "panels/dimension_drawing.h"
#include "panels/panel.h"

namespace tenter::desktop::panels {

class SpacingPanel : public Panel {
    Q_OBJECT

public:
    explicit SpacingPanel(Context& context, QWidget* parent = nullptr);
    void refresh() override;
    void refreshPixels() override;
    [[nodiscard]] std::vector<std::string> subjects() const override { return {"card", "picture"}; }
    [[nodiscard]] bool takesRoles() const override { return true; }

private:
    DimensionDrawing* drawing_;
    QLabel* note_;
    QWidget* box_;
};

}  // namespace tenter::desktop::panels
