// A sample of text on its background, with the contrast ratio and what WCAG requires.
#pragma once

#include <QWidget>

#include "units/colour.h"

namespace tenter::desktop::panels {

class ContrastLine : public QWidget {
    Q_OBJECT

public:
    explicit ContrastLine(const QString& title, QWidget* parent = nullptr);
    /// Shows text of colour `ink` on the opaque colour `ground`, at `size` CSS px and font weight `weight`.
    void judge(const units::Colour& ink, const units::Colour& ground, double size, double weight);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QString title_, ratio_, verdict_;
    units::Colour ink_, ground_;
    bool passes_ = true;
};

/// `7.1 : 1`, truncated and not rounded, so that 4.499 is not shown as 4.5.
QString ratioTitle(double ratio);
/// Whether `ratio` passes WCAG 2.2 SC 1.4.3 (and 1.4.6) at this size and weight, as a phrase.
QString contrastVerdict(double ratio, double size, double weight);
/// Large text: 24 px, or 18.66 px bold. WCAG 2.2, "large scale".
bool isLarge(double size, double weight);

}  // namespace tenter::desktop::panels
