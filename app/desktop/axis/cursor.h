// One hairline through ruler, lanes and plots at the width in view, ending in a flag that says it.
#pragma once

#include <QWidget>

#include "axis/size_plot.h"
#include "axis/width_scale.h"
#include "document/viewing.h"

namespace tenter::desktop::axis {

class Cursor : public QWidget {
    Q_OBJECT

public:
    Cursor(Viewing& viewing, const WidthScale& scale, const SizePlot& sizes, QWidget* parent);
    /// Moves to where the width now is.
    void follow();
    /// True while the keyboard is on the axis.
    void setFocused(bool on);
    /// `1 240 px · 77.5 rem · 3 columns`
    [[nodiscard]] QString says() const;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] QRect flag() const;
    [[nodiscard]] QRect strip() const;
    Viewing& viewing_;
    const WidthScale& scale_;
    const SizePlot& sizes_;
    bool focused_ = false;
    QRect flagDrawn_, stripDrawn_;
};

}  // namespace tenter::desktop::axis
