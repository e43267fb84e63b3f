// The plots “Card height” and “Picture size”: curves from the sweep of the row.
#pragma once

#include "axis/plot.h"
#include "session/check_runner.h"

namespace tenter::desktop::axis {

class SweepPlot : public Plot {
    Q_OBJECT

public:
    enum class Quantity { CardHeight, PictureSlot };
    SweepPlot(Quantity quantity, const CheckRunner& checks, const SelectionModel& selection,
              const WidthScale& scale, QWidget* parent);

Q_SIGNALS:
    void rebuilt();  ///< the curves were copied from the sweep again

protected:
    void restyle() override;
    void showEvent(QShowEvent* event) override;

private:
    struct CardCurve {
        std::size_t card = 0;
        bool height = false;  ///< true for heights, false for the width of a picture's slot
        QVector<QPointF> points;
    };
    /// Copies the curves from the sweep again: when it or the selection changes while the plot is visible,
    /// and when the plot is shown.
    void rebuild();
    void readCards();
    void readPictures();
    [[nodiscard]] bool isSelected(std::size_t card) const;

    Quantity quantity_;
    const CheckRunner& checks_;
    const SelectionModel& selection_;
    std::vector<CardCurve> curves_;
};

}  // namespace tenter::desktop::axis
