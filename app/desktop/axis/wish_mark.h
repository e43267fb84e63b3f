// A mark on the plot of font sizes where a wish limits a size or cannot be satisfied. A click goes there.
#pragma once

#include <QAbstractButton>

#include "session/plot_annotations.h"

namespace tenter::desktop::axis {

class WishMark : public QAbstractButton {
    Q_OBJECT

public:
    explicit WishMark(QWidget* parent);
    /// `chosen`: the mark belongs to the role that is being edited. `centre` is in px of the parent.
    void show(const PlotMark& mark, bool chosen, const QPointF& centre);
    [[nodiscard]] const PlotMark& mark() const { return mark_; }

protected:
    void paintEvent(QPaintEvent* event) override;
    void enterEvent(QEnterEvent* event) override;
    void leaveEvent(QEvent* event) override;

private:
    PlotMark mark_;
    bool chosen_ = false;
};

}  // namespace tenter::desktop::axis
