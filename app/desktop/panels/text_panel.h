// The Text panel: how a role's text is set.
#pragma once

#include "controls/family_editor.h"
#include "panels/panel.h"
#include "panels/ramp_editor.h"
#include "panels/size_paste.h"
#include "panels/solve_box.h"

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
    void addWishes();
    /// A wish on the role at all widths; `words` are what it asks.
    template <class T>
    void wish(const QString& title, const QString& words, std::optional<T> project::RoleWishes::*member,
              controls::Editor* editor);

    controls::FamilyEditor* family_;
    std::vector<project::FontEntry> fonts_;  ///< those the list of families was made with
    RampEditor* size_;
    SizePaste* paste_;
    std::string pasteFor_;  ///< the role that is being pasted to
    QLabel* clamp_;
    SolveBox* solve_;
};

}  // namespace tenter::desktop::panels
