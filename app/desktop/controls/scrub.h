// Dragging the name of a number field sideways changes its number.
#pragma once

#include <QLabel>
#include <QObject>

#include "controls/number_field.h"

namespace tenter::desktop::controls {

/// One step of the field for every few px of the pointer; Shift and Alt as for arrow keys. A drag is one step
/// of undo. Owned by `name`.
class Scrub : public QObject {
    Q_OBJECT

public:
    Scrub(QLabel* name, NumberField* field);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QLabel* name_;
    NumberField* field_;
    bool pressed_ = false;
    double from_ = 0;  // where the drag started, px
    int stepped_ = 0;  // steps since then
};

}  // namespace tenter::desktop::controls
