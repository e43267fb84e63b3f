// The widths of each finding, as runs between two ticks: the heavier, the more severe.
#pragma once

#include <QWidget>
#include <optional>
#include <vector>

#include "axis/width_scale.h"
#include "document/survey.h"

namespace tenter::desktop::axis {

class FindingsLane : public QWidget {
    Q_OBJECT

public:
    FindingsLane(Survey& survey, const WidthScale& scale, QWidget* parent);
    /// The findings at a point of the lane, as indices into `Survey::findings()`, the nearest first.
    [[nodiscard]] std::vector<std::size_t> at(const QPointF& point) const;
    /// Where a finding's run stands; empty if there is none.
    [[nodiscard]] QRectF place(std::size_t finding, std::size_t run) const;

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    bool event(QEvent* event) override;

private:
    void arrange();
    Survey& survey_;
    const WidthScale& scale_;
    std::vector<int> levels_;  // of each finding, from the top
};

}  // namespace tenter::desktop::axis
