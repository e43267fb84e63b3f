// The cursor: a hairline across ruler, lanes and plots at the current width, with a flag that shows the
// width.
#pragma once

#include <QWidget>

#include "axis/size_plot.h"
#include "axis/width_scale.h"
#include "session/layout_cache.h"

namespace tenter::desktop::axis {

class Cursor : public QWidget {
    Q_OBJECT

public:
    Cursor(const LayoutCache& layouts, const WidthScale& scale, const SizePlot& sizes, QWidget* parent);
    /// Moves to the current width.
    void follow();
    /// Shows or hides the focus ring.
    void setFocused(bool on);
    /// Text of the flag: `1240 px · 77.5 rem · 3 columns`.
    [[nodiscard]] QString text() const;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] QRect flag() const;
    [[nodiscard]] QRect strip() const;
    const LayoutCache& layouts_;
    const WidthScale& scale_;
    const SizePlot& sizes_;
    bool focused_ = false;
    QRect flagDrawn_, stripDrawn_;
};

}  // namespace tenter::desktop::axis
