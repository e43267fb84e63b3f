// The plot “Measure”: characters on a full line of each card's paragraph, at each viewport width.
#pragma once

#include <QTimer>

#include "axis/plot.h"
#include "session/layout_cache.h"
#include "session/selection_model.h"

namespace tenter::desktop::axis {

class MeasurePlot : public Plot {
    Q_OBJECT

public:
    MeasurePlot(const LayoutCache& layouts, const SelectionModel& selection, const WidthScale& scale,
                QWidget* parent);
    /// Computes the curves again: with few points now, and with more when nothing has changed for a moment.
    void rebuild();

protected:
    void restyle() override;
    void drawOver(QPainter& painter) override;

private:
    void read(std::size_t samples);
    const LayoutCache& layouts_;
    const SelectionModel& selection_;
    std::vector<MeasureCurve> curves_;
    QTimer refine_;
};

}  // namespace tenter::desktop::axis
