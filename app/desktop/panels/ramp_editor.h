// An editor for a font size: fixed, or a ramp between two widths.
#pragma once

#include <QLabel>
#include <QPushButton>

#include "controls/number_editors.h"
#include "controls/segments.h"

namespace tenter::desktop::panels {

class RampEditor : public controls::Editor {
    Q_OBJECT

public:
    explicit RampEditor(QWidget* parent = nullptr);
    void setValue(const project::Json& value) override;
    [[nodiscard]] project::Json value() const override;
    [[nodiscard]] QString accepts() const override;
    void setName(const QString& name) override;
    void setMarked(bool marked) override;
    void setResettable(bool resettable) override;
    /// Sets the widths at which a new ramp starts and ends, CSS px.
    void setEnds(double from, double to);
    /// Sets the tooltip of the width fields: `Viewport width`, `Width of the card’s content`.
    void setWidthTitle(const QString& title);
    /// The button that emits `pasteRequested`.
    [[nodiscard]] QPushButton* pasteButton() const { return paste_; }

Q_SIGNALS:
    void pasteRequested();

private:
    void choose(int kind);
    void showKind(bool fluid);
    /// Lets neither width pass the other, so that no end of the ramp changes places while it is typed.
    void keepWidthsInOrder();
    [[nodiscard]] double number(int field) const;

    controls::Segments* kind_;
    QWidget* lower_;
    QLabel *from_, *to_;
    QPushButton* paste_ = nullptr;
    controls::NumberEditor* fields_[4];  // width, size; width, size
    bool fluid_ = false;
    double leastWidth_ = 320, mostWidth_ = 1920;
};

}  // namespace tenter::desktop::panels
