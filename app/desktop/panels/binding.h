// Connects an editor with a setting: shows its value, and edits, restores and resets it in the edit scope.
#pragma once

#include <QObject>

#include "controls/editor.h"
#include "panels/setting_origin.h"
#include "panels/target.h"

namespace tenter::desktop::panels {

class Binding : public QObject {
    Q_OBJECT

public:
    /// `subject`: `row`, `card` or `picture`; empty: the subject of `context.target`. `setting`: the rest of
    /// the setting's path. `title`: its label in the window.
    Binding(Context& context, controls::Editor& editor, std::string subject, std::string setting,
            QString title);

    void refresh();
    [[nodiscard]] const SettingValue& held() const { return held_; }
    [[nodiscard]] std::string path() const;
    /// `Heading line height`: the accessible name of the field.
    [[nodiscard]] QString name() const;
    [[nodiscard]] QString title() const { return title_; }
    /// The value in CSS px at this viewport width, if it is a length in another unit.
    [[nodiscard]] std::optional<double> pixels() const;
    /// Removes the value from the layer being edited.
    void reset();
    /// Sets the value for the whole edit scope: in its layer, and removes the values of variants and bands
    /// that would override it.
    void useInWholeScope();
    /// True if edits apply to all variants.
    [[nodiscard]] bool isForAllVariants() const {
        return context_.session.scope.layer() == project::CascadeLayer::Style;
    }
    /// Where the value comes from, as a sentence.
    [[nodiscard]] QString description() const;

Q_SIGNALS:
    void refreshed();

private:
    void put(const project::Json& value);

    Context& context_;
    controls::Editor& editor_;
    std::string subject_, setting_;
    QString title_;
    SettingValue held_;
    bool editing_ = false;
    project::Json start_;
};

}  // namespace tenter::desktop::panels
