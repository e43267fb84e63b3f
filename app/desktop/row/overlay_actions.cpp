#include "row/overlay_actions.h"

#include <algorithm>

#include "controls/glossary.h"

namespace tenter::desktop::row {

OverlayActions::OverlayActions(QObject* parent)
    : QObject(parent),
      boxes_(addToggle(QObject::tr("&Boxes and spacing"),
                       QObject::tr("Show boxes with their padding, margins and gaps"), Qt::CTRL | Qt::Key_1)),
      measure_(addToggle(
          QObject::tr("&Measure"),
          QObject::tr("Show the measure, and where the shortest and the longest comfortable line end"),
          Qt::CTRL | Qt::Key_2)),
      tight_(addToggle(QObject::tr("&Tight fits"), QObject::tr(glossary::tightFit), Qt::CTRL | Qt::Key_3)),
      engines_(
          addToggle(QObject::tr("Chromium/Firefox &differences"),
                    QObject::tr("Mark text that has a different number of lines in Chromium and Firefox"),
                    Qt::CTRL | Qt::Key_4)) {
    engines_->setChecked(true);
}

QAction* OverlayActions::addToggle(const QString& text, const QString& description,
                                   const QKeySequence& shortcut) {
    auto* action = new QAction(text, this);
    action->setCheckable(true);
    action->setShortcut(shortcut);
    action->setToolTip(description);
    action->setStatusTip(description);
    connect(action, &QAction::toggled, this, &OverlayActions::changed);
    return action;
}

bool OverlayActions::anyIsOn() const {
    return std::ranges::any_of(all(), [](const QAction* one) { return one->isChecked(); });
}

void OverlayActions::paint(OverlayTools& tools) const {
    if (boxes_->isChecked()) paintBoxes(tools);
    if (measure_->isChecked()) paintMeasure(tools);
    if (tight_->isChecked()) paintTightFits(tools);
    if (engines_->isChecked()) paintEngines(tools);
}

}  // namespace tenter::desktop::row
