// A tick at every width at which some text takes a line more or less; those of the selected part stand out.
#pragma once

#include <QWidget>
#include <optional>

#include "axis/width_scale.h"
#include "document/survey.h"

namespace tenter::desktop::axis {

class WrapsLane : public QWidget {
    Q_OBJECT

public:
    WrapsLane(Viewing& viewing, const Survey& survey, const WidthScale& scale, QWidget* parent);
    /// A whole width from which a wrap point has just been passed, and what it changed.
    struct Stop {
        double width = 0;
        QString says;
    };
    /// Past the next wrap point, widening (+1) or narrowing (−1).
    [[nodiscard]] std::optional<Stop> next(int direction) const;
    /// The wrap points about a position, a line for each.
    [[nodiscard]] QString says(double x) const;

protected:
    void paintEvent(QPaintEvent* event) override;
    bool event(QEvent* event) override;

private:
    [[nodiscard]] QString said(const sweep::WrapPoint& wrap, int direction) const;
    Viewing& viewing_;
    const Survey& survey_;
    const WidthScale& scale_;
};

}  // namespace tenter::desktop::axis
