#include "panels/contrast_line.h"

#include <QPainter>
#include <QStyle>
#include <cmath>

#include "controls/inks.h"
#include "document/wording.h"
#include "units/contrast.h"

namespace tenter::desktop::panels {

namespace {

QColor toQt(const units::Colour& colour) {
    return {colour.red, colour.green, colour.blue, colour.alpha};
}

constexpr double enoughForAny = 4.5;
constexpr double enoughForLarge = 3;
constexpr double enoughAtAaa = 7;

}  // namespace

QString ratioTitle(double ratio) {
    return figure(std::floor(ratio * 10 + 1e-9) / 10, 1) + ":1";
}

bool isLarge(double size, double weight) {
    return size >= 24 || (size >= 56.0 / 3 - 0.01 && weight >= 700);
}

QString contrastVerdict(double ratio, double size, double weight) {
    if (ratio >= enoughAtAaa)
        return QObject::tr("Passes for text of any size (WCAG 2.2 SC 1.4.3, at AAA 1.4.6)");
    if (ratio >= enoughForAny) return QObject::tr("Passes for text of any size (WCAG 2.2 SC 1.4.3)");
    const QString here = pixels(size, 1);
    if (ratio >= enoughForLarge && isLarge(size, weight))
        return QObject::tr("Passes at %1, which is large text (WCAG 2.2 SC 1.4.3)").arg(here);
    if (ratio >= enoughForLarge)
        return QObject::tr("Too low at %1: needs %2, or text of at least %3 (%4 if bold; WCAG 2.2 SC 1.4.3)")
            .arg(here, ratioTitle(enoughForAny), pixels(24), pixels(18.66));
    return QObject::tr("Too low for text of any size: needs %1 (WCAG 2.2 SC 1.4.3)")
        .arg(ratioTitle(enoughForAny));
}

ContrastLine::ContrastLine(const QString& title, QWidget* parent) : QWidget(parent), title_(title) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

QSize ContrastLine::sizeHint() const {
    return {200, 64};
}

void ContrastLine::judge(const units::Colour& ink, const units::Colour& ground, double size, double weight) {
    ink_ = ink;
    ground_ = ground;
    const double ratio = units::contrast(ink, ground);
    ratio_ = ratioTitle(ratio);
    verdict_ = contrastVerdict(ratio, size, weight);
    passes_ = ratio >= enoughForAny || (ratio >= enoughForLarge && isLarge(size, weight));
    setAccessibleName(title_ + ": " + ratio_ + ". " + verdict_ + '.');
    setToolTip(accessibleName());
    update();
}

void ContrastLine::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const QRect sample = QStyle::visualRect(layoutDirection(), rect(), QRect(12, 4, 40, 40));
    painter.fillRect(sample, toQt(ground_));
    painter.setPen(palette().color(QPalette::Mid));
    painter.drawRect(QRectF(sample).adjusted(0.5, 0.5, -0.5, -0.5));
    QFont large = font();
    large.setPointSizeF(large.pointSizeF() * 1.4);
    painter.setFont(large);
    painter.setPen(toQt(ink_));
    painter.drawText(sample, Qt::AlignCenter, "Aa");
    painter.setFont(font());
    const auto placed = [this](int left, int top) {
        return QStyle::visualRect(layoutDirection(), rect(),
                                  QRect(left, top, width() - left, height() - top));
    };
    painter.setPen(palette().color(QPalette::WindowText));
    QFont strong = font();
    strong.setWeight(QFont::DemiBold);
    painter.setFont(strong);
    painter.drawText(placed(64, 2), Qt::AlignLeft | Qt::AlignTop, ratio_);
    const int after = painter.fontMetrics().horizontalAdvance(ratio_ + "  ");
    painter.setFont(font());
    painter.setPen(controls::quiet(palette()));
    painter.drawText(placed(64 + after, 2), Qt::AlignLeft | Qt::AlignTop, title_);
    painter.setPen(passes_ ? palette().color(QPalette::WindowText) : controls::caution(palette()));
    painter.drawText(placed(64, painter.fontMetrics().height() + 4),
                     Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, verdict_);
}

}  // namespace tenter::desktop::panels
