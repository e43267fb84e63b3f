// An editor for a list of font families.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "controls/choice_editors.h"

namespace tenter::desktop::controls {

/// Families separated by commas, as in CSS. The list offers the available ones.
class FamilyEditor : public Editor {
    Q_OBJECT

public:
    /// `families` is called when the list is first opened, because finding every font takes a moment.
    FamilyEditor(std::function<std::vector<std::string>()> families, QWidget* parent = nullptr);
    void setValue(const Json& value) override;
    [[nodiscard]] Json value() const override;
    [[nodiscard]] QString accepts() const override { return QObject::tr("Separate families by commas."); }
    void setName(const QString& name) override;
    /// Fills the list again when it is next opened.
    void forgetFamilies() { filled_ = false; }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void fillList();
    void choose(const QString& family);
    void commit();

    std::function<std::vector<std::string>()> families_;
    CalmCombo* list_;
    Json value_;
    bool filled_ = false;
};

}  // namespace tenter::desktop::controls
