// A pair of colours, seen and judged in words.
#pragma once

#include <QWidget>

#include "units/colour.h"

namespace tenter::desktop::panels {

class ContrastLine : public QWidget {
    Q_OBJECT

public:
    explicit ContrastLine(const QString& title, QWidget* parent = nullptr);
    /// Text in `ink` on opaque `ground`, at `size` CSS px in `weight`.
    void judge(const units::Colour& ink, const units::Colour& ground, double size, double weight);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QString title_, ratio_, verdict_;
    units::Colour ink_, ground_;
    bool passes_ = true;
};

/// `7.1 : 1`, cut and not rounded, so that 4.499 does not read as 4.5.
QString ratioTitle(double ratio);
/// What `ratio` is enough for, by WCAG 2.2 SC 1.4.3, 1.4.6.
QString contrastVerdict(double ratio, double size, double weight);
/// Large text: 24 px, or 18.66 px bold. WCAG 2.2, "large scale".
bool isLarge(double size, double weight);

}  // namespace tenter::desktop::panels
