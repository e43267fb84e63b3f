// The lane “Findings”: the widths of each finding as lines between two ticks. A thicker line is more severe.
#pragma once

#include <QWidget>
#include <optional>
#include <vector>

#include "axis/width_scale.h"
#include "controls/data_table.h"
#include "session/check_runner.h"

namespace tenter::desktop::axis {

class FindingsLane : public QWidget, public controls::HasData {
    Q_OBJECT

public:
    FindingsLane(CheckRunner& checks, const WidthScale& scale, QWidget* parent);
    /// The findings near a point of the lane (px), as indices into `CheckRunner::findings()`, nearest first.
    [[nodiscard]] std::vector<std::size_t> at(const QPointF& point) const;
    /// The rectangle of one width range of a finding, px of the lane; empty if the indices are out of range.
    [[nodiscard]] QRectF place(std::size_t finding, std::size_t run) const;
    [[nodiscard]] controls::DataTable data() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    bool event(QEvent* event) override;

private:
    void arrange();
    CheckRunner& checks_;
    const WidthScale& scale_;
    std::vector<int> levels_;  // by finding: the level it is drawn on, 0 is the top
};

}  // namespace tenter::desktop::axis
