// Joins an editor to a setting: shows what holds, edits the layer in scope, takes back, resets.
#pragma once

#include <QObject>

#include "controls/editor.h"
#include "document/origin.h"
#include "panels/target.h"

namespace tenter::desktop::panels {

class Binding : public QObject {
    Q_OBJECT

public:
    /// `subject`: `row`, `card` or `picture`; empty: whatever the target is. `setting` is the rest of the
    /// path, `title` what the window calls it.
    Binding(Context& context, controls::Editor& editor, std::string subject, std::string setting,
            QString title);

    void refresh();
    [[nodiscard]] const Held& held() const { return held_; }
    [[nodiscard]] std::string path() const;
    /// `Heading line height`: as the undo menu names an edit.
    [[nodiscard]] QString name() const;
    [[nodiscard]] QString title() const { return title_; }
    /// CSS px at this width, if it is a length whose unit is not px already.
    [[nodiscard]] std::optional<double> pixels() const;
    /// Unsets it in this layer.
    void reset();
    /// Makes the layer that hides the value the one that is edited.
    void reachHiding();
    /// What the setting holds and why, in a line.
    [[nodiscard]] QString story() const;

signals:
    void refreshed();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void put(const project::Json& value);

    Context& context_;
    controls::Editor& editor_;
    std::string subject_, setting_;
    QString title_;
    Held held_;
    bool editing_ = false;
    project::Json start_;
};

}  // namespace tenter::desktop::panels
