#include "axis/comparison_lane.h"

#include <QHelpEvent>
#include <QPaintEvent>
#include <QPainter>
#include <QToolTip>
#include <algorithm>
#include <cmath>

#include "compare/wording.h"
#include "document/wording.h"
#include "row/ink.h"

namespace tenter::desktop::axis {

namespace {

constexpr double verdictReach = 2;  // px from the pointer to a width
constexpr double fullPixels = 16;   // CSS px; a difference this large has a bar of full height
constexpr std::size_t mostInTitle = 6;

}  // namespace

double barOf(const judge::Verdict& verdict) {
    if (verdict.agrees()) return 0;
    const bool boxesAlone =
        std::all_of(verdict.differences.begin(), verdict.differences.end(), [](const judge::Difference& one) {
            using What = judge::Difference::What;
            return one.what == What::X || one.what == What::Y || one.what == What::Width ||
                   one.what == What::Height;
        });
    if (!boxesAlone) return 1;
    // Logarithmic, and at least 0.2, so that a difference of half a px is visible too.
    const double share = std::log2(1 + verdict.largestBox) / std::log2(1 + fullPixels);
    return std::clamp(share, 0.2, 1.0);
}

ComparisonLane::ComparisonLane(const compare::Comparison& comparison, const WidthScale& scale,
                               QWidget* parent)
    : QWidget(parent), comparison_(comparison), scale_(scale) {
    setAccessibleName(QObject::tr("Comparison with browser"));
    connect(&comparison_, &compare::Comparison::changed, this, [this] {
        setAccessibleDescription(compare::headline(comparison_));
        update();
    });
}

QString ComparisonLane::toolTipAt(double x) const {
    const auto& verdicts = comparison_.verdicts();
    const judge::Verdict* worst = nullptr;
    const double to = scale_.width(x + verdictReach);
    for (auto it = verdicts.lower_bound(scale_.width(x - verdictReach));
         it != verdicts.end() && it->first <= to; ++it)
        if (worst == nullptr || barOf(it->second) > barOf(*worst)) worst = &it->second;
    return worst == nullptr ? QObject::tr("Not compared at this width")
                            : compare::verdictTitle(comparison_, *worst, mostInTitle);
}

controls::DataTable ComparisonLane::data() const {
    controls::DataTable table{{QObject::tr("Viewport widths"), QObject::tr("Difference")}, {}};
    for (const judge::DifferingRun& run : comparison_.runs())
        table.rows.append(
            {widthsTitle(run.first, run.last), compare::differenceTitle(comparison_, run.worst)});
    return table;
}

bool ComparisonLane::event(QEvent* event) {
    if (event->type() != QEvent::ToolTip) return QWidget::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    QToolTip::showText(help->globalPos(), toolTipAt(help->pos().x()), this);
    return true;
}

void ComparisonLane::paintEvent(QPaintEvent* event) {
    const row::Ink ink = row::Ink::of(palette());
    QPainter painter(this);
    const double floor = height() - 4;
    const double room = floor - 3;
    painter.fillRect(QRectF(scale_.left(), floor, scale_.right() - scale_.left() + 1, 1), ink.faint);
    // Results of an earlier state of the row are drawn fainter.
    const QColor strong = comparison_.isFresh() ? ink.text : ink.line;
    const QColor agrees = comparison_.isFresh() ? ink.quiet : ink.faint;
    const double left = std::max<double>(event->rect().left() - 2, scale_.left());
    const double right = std::min<double>(event->rect().right() + 2, scale_.right());
    if (left > right) return;
    const auto& verdicts = comparison_.verdicts();
    const double last = scale_.width(right);
    for (auto it = verdicts.lower_bound(scale_.width(left)); it != verdicts.end() && it->first <= last;
         ++it) {
        const double x = std::round(scale_.x(it->first));
        const double next = std::round(scale_.x(it->first + 1));
        const double wide = std::max(1.0, next - x);
        if (it->second.agrees())
            painter.fillRect(QRectF(x, floor - 1, wide, 2), agrees);
        else
            painter.fillRect(QRectF(x, floor - std::round(room * barOf(it->second)), std::max(2.0, wide),
                                    std::round(room * barOf(it->second)) + 1),
                             strong);
    }
}

}  // namespace tenter::desktop::axis
