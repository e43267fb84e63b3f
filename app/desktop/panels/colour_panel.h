// The Colour panel: colours, borders, shadows, hover and focus, and their contrast.
#pragma once

#include "panels/contrast_line.h"
#include "panels/panel.h"

namespace tenter::desktop::panels {

class ColourPanel : public Panel {
    Q_OBJECT

public:
    explicit ColourPanel(Context& context, QWidget* parent = nullptr);
    void refresh() override;
    void refreshPixels() override;
    [[nodiscard]] std::vector<std::string> subjects() const override { return {"card", "picture", "row"}; }
    [[nodiscard]] bool takesRoles() const override { return true; }

private:
    /// Which text roles a section or a row is for.
    enum class For { All, Links, Buttons };
    struct Row {
        SettingRow* widget;
        For roles;
    };
    /// A section whose rows belong to one kind of subject.
    struct Part {
        QWidget* widget;
        QString title;
        std::string subject;  ///< empty: text roles
        For roles;
        std::vector<Row> rows;
    };
    void begin(const QString& title, const std::string& subject, For roles = For::All);
    void add(const QString& title, controls::Editor* editor, const std::string& setting,
             For roles = For::All);
    /// True if the role being edited is one of `roles`.
    [[nodiscard]] bool isFor(For roles) const;
    void buildText();
    void buildCard();
    void showContrast();

    std::vector<Part> parts_;
    ContrastLine* plain_ = nullptr;
    ContrastLine* hover_ = nullptr;
};

}  // namespace tenter::desktop::panels
