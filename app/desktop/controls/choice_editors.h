// Editors for settings that are one of a few words, or yes or no.
#pragma once

#include <QCheckBox>
#include <QComboBox>
#include <string>
#include <vector>

#include "controls/editor.h"
#include "controls/segments.h"

namespace tenter::desktop::controls {

/// A word of the project file and how the window says it.
struct Choice {
    std::string word;
    QString title;
};

/// Two to four short choices, side by side.
class SegmentEditor : public Editor {
    Q_OBJECT

public:
    explicit SegmentEditor(std::vector<Choice> choices, QWidget* parent = nullptr);
    void setValue(const Json& value) override;
    [[nodiscard]] Json value() const override;
    void setName(const QString& name) override;

private:
    std::vector<Choice> choices_;
    Segments* segments_;
};

/// Choices with longer names, in a list.
class ListEditor : public Editor {
    Q_OBJECT

public:
    explicit ListEditor(std::vector<Choice> choices, QWidget* parent = nullptr);
    /// Replaces the choices; what is chosen is for the next `setValue` to say.
    void setChoices(std::vector<Choice> choices);
    void setValue(const Json& value) override;
    [[nodiscard]] Json value() const override;
    void setName(const QString& name) override;

private:
    std::vector<Choice> choices_;
    QComboBox* list_;
};

/// Yes or no.
class CheckEditor : public Editor {
    Q_OBJECT

public:
    explicit CheckEditor(const QString& text, QWidget* parent = nullptr);
    void setValue(const Json& value) override;
    [[nodiscard]] Json value() const override;
    void setName(const QString& name) override;

private:
    QCheckBox* box_;
};

/// A combo box that leaves the wheel to what it stands in unless it has the focus.
class CalmCombo : public QComboBox {
    Q_OBJECT

public:
    explicit CalmCombo(QWidget* parent = nullptr);

protected:
    void wheelEvent(QWheelEvent* event) override;
};

}  // namespace tenter::desktop::controls
