#include "window/work_area.h"

#include <QSettings>
#include <algorithm>

namespace tenter::desktop::window {

namespace {

constexpr double findingsShare = 0.6;  // of the height beside the row, for the drawer when it opens
constexpr double findingsShareBelowAnswer = 0.4;

const QString acrossKey = "arrangement/across";
const QString axisKey = "arrangement/axisHeight";
const QString lanesKey = "arrangement/lanes";
const QString findingsKey = "arrangement/findingsHeight";
const QString findingsOpenKey = "arrangement/findingsOpen";
const QString fitKey = "arrangement/fitsRow";

}  // namespace

WorkArea::WorkArea(row::RowView& row, axis::AxisPane& axis, panels::SidePanel& side,
                   findings::Panel& findings, QWidget* parent)
    : QSplitter(Qt::Horizontal, parent),
      row_(row),
      axis_(axis),
      side_(side),
      findings_(findings),
      left_(new QSplitter(Qt::Vertical, this)),
      right_(new QSplitter(Qt::Vertical, this)) {
    left_->addWidget(&row_);
    left_->addWidget(&axis_);
    right_->addWidget(&side_);
    right_->addWidget(&findings_);
    for (QSplitter* splitter : {static_cast<QSplitter*>(this), left_, right_}) {
        splitter->setChildrenCollapsible(false);
        if (splitter == this) continue;
        splitter->setStretchFactor(0, 1);
        splitter->setStretchFactor(1, 0);
    }
    addWidget(left_);
    addWidget(right_);
    setStretchFactor(0, 1);
    setStretchFactor(1, 0);
    connect(&axis_, &axis::AxisPane::lanesChanged, this, &WorkArea::fitAxis);
    connect(&findings_, &findings::Panel::opened, this, &WorkArea::fitFindings);
    // A short window has room for the settings or the findings, a taller one for both.
    connect(&side_, &panels::SidePanel::roomNeeded, this, [this] {
        if (window()->height() < axis::LaneStack::tallWindow) return findings_.setOpen(false);
        const int most = static_cast<int>(right_->height() * findingsShareBelowAnswer);
        if (findings_.isOpen() && findings_.height() > most)
            right_->setSizes({right_->height() - most, most});
    });
}

void WorkArea::showEvent(QShowEvent* event) {
    QSplitter::showEvent(event);
    if (restored_) return;
    restored_ = true;
    restore();
}

void WorkArea::arrangeFirst() {
    setSizes({width() - side_.sizeHint().width(), side_.sizeHint().width()});
    axisHint_ = axis_.sizeHint().height();
    left_->setSizes({left_->height() - axisHint_, axisHint_});
    findings_.setOpen(window()->height() >= axis::LaneStack::tallWindow);
    fitFindings(findings_.isOpen());
}

void WorkArea::restore() {
    const QSettings kept;
    if (kept.contains(lanesKey)) axis_.chooseLanes(kept.value(lanesKey).toStringList());
    row_.fitAction()->setChecked(kept.value(fitKey).toBool());
    arrangeFirst();
    if (!kept.contains(axisKey)) return;
    restoreState(kept.value(acrossKey).toByteArray());
    const int axis = kept.value(axisKey).toInt();
    left_->setSizes({left_->height() - axis, axis});
    findingsHeight_ = kept.value(findingsKey).toInt();
    findings_.setOpen(kept.value(findingsOpenKey).toBool());
    fitFindings(findings_.isOpen());
}

void WorkArea::save() const {
    if (!restored_) return;
    QSettings kept;
    kept.setValue(acrossKey, saveState());
    kept.setValue(axisKey, axis_.height());
    if (const auto lanes = axis_.chosenLanes())
        kept.setValue(lanesKey, *lanes);
    else
        kept.remove(lanesKey);
    kept.setValue(findingsKey, findings_.isOpen() ? findings_.height() : findingsHeight_);
    kept.setValue(findingsOpenKey, findings_.isOpen());
    kept.setValue(fitKey, row_.fit());
}

void WorkArea::reset() {
    findingsHeight_ = 0;
    axis_.chooseLanes({});
    row_.fitAction()->setChecked(false);
    arrangeFirst();
}

// The axis grows and shrinks by what was opened or closed; what the user added by the splitter stays.
void WorkArea::fitAxis() {
    const int before = axisHint_;
    axisHint_ = axis_.sizeHint().height();
    if (!restored_) return;
    const int height = std::max(axis_.minimumSizeHint().height(), axis_.height() + axisHint_ - before);
    left_->setSizes({left_->height() - height, height});
}

void WorkArea::fitFindings(bool open) {
    if (!open && findings_.height() > findings_.minimumSizeHint().height())
        findingsHeight_ = findings_.height();
    const int usual =
        std::max(findings_.minimumSizeHint().height(), static_cast<int>(right_->height() * findingsShare));
    const int height = !open ? findings_.sizeHint().height() : findingsHeight_ > 0 ? findingsHeight_ : usual;
    right_->setSizes({right_->height() - height, height});
}

}  // namespace tenter::desktop::window
