// Editors for a choice between a few values, and for on or off.
#pragma once

#include <QCheckBox>
#include <QComboBox>
#include <string>
#include <vector>

#include "controls/editor.h"
#include "controls/segments.h"

namespace tenter::desktop::controls {

/// A value in the project file, and its label in the window.
struct Choice {
    std::string word;
    QString title;
};

/// Two to four short choices, as buttons side by side.
class SegmentEditor : public Editor {
    Q_OBJECT

public:
    explicit SegmentEditor(std::vector<Choice> choices, QWidget* parent = nullptr);
    void setValue(const Json& value) override;
    [[nodiscard]] Json value() const override;
    [[nodiscard]] QString textOf(const Json& value) const override;
    [[nodiscard]] QString accepts() const override;
    void setName(const QString& name) override;

private:
    std::vector<Choice> choices_;
    Segments* segments_;
};

/// Choices with longer labels, as a drop-down list.
class ListEditor : public Editor {
    Q_OBJECT

public:
    explicit ListEditor(std::vector<Choice> choices, QWidget* parent = nullptr);
    /// Replaces the choices. The next `setValue` chooses one.
    void setChoices(std::vector<Choice> choices);
    void setValue(const Json& value) override;
    [[nodiscard]] Json value() const override;
    [[nodiscard]] QString textOf(const Json& value) const override;
    [[nodiscard]] QString accepts() const override;
    void setName(const QString& name) override;

private:
    std::vector<Choice> choices_;
    QComboBox* list_;
};

/// On or off.
class CheckEditor : public Editor {
    Q_OBJECT

public:
    /// `text` is the label of the check box.
    explicit CheckEditor(const QString& text, QWidget* parent = nullptr);
    void setValue(const Json& value) override;
    [[nodiscard]] Json value() const override;
    [[nodiscard]] QString accepts() const override { return QObject::tr("On or off."); }
    void setName(const QString& name) override;

private:
    QCheckBox* box_;
};

/// A combo box that ignores the wheel unless it has the focus, so that a panel scrolls past it.
class CalmCombo : public QComboBox {
    Q_OBJECT

public:
    explicit CalmCombo(QWidget* parent = nullptr);

protected:
    void wheelEvent(QWheelEvent* event) override;
};

}  // namespace tenter::desktop::controls
