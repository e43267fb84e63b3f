// How many visits come at which width, as bars.
#pragma once

#include <QWidget>

#include "axis/width_scale.h"
#include "document/survey.h"

namespace tenter::desktop::axis {

class AudienceLane : public QWidget {
    Q_OBJECT

public:
    AudienceLane(const Survey& survey, const WidthScale& scale, QWidget* parent);
    /// The visits about a position: `360 to 393 px: 4 120 visits, 31 %`.
    [[nodiscard]] QString says(double x) const;

protected:
    void paintEvent(QPaintEvent* event) override;
    bool event(QEvent* event) override;

private:
    const Survey& survey_;
    const WidthScale& scale_;
};

}  // namespace tenter::desktop::axis
