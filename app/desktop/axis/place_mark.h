// A place on a plot where a wish decides a size, or cannot be kept: a press goes there.
#pragma once

#include <QAbstractButton>

#include "document/viewing.h"

namespace tenter::desktop::axis {

class PlaceMark : public QAbstractButton {
    Q_OBJECT

public:
    explicit PlaceMark(QWidget* parent);
    /// `chosen`: of the role that is worked on.
    void show(const Viewing::Mark& mark, bool chosen, const QPointF& centre);
    [[nodiscard]] const Viewing::Mark& mark() const { return mark_; }

protected:
    void paintEvent(QPaintEvent* event) override;
    void enterEvent(QEnterEvent* event) override;
    void leaveEvent(QEvent* event) override;

private:
    Viewing::Mark mark_;
    bool chosen_ = false;
};

}  // namespace tenter::desktop::axis
