// A field's name, dragged sideways, changes its number.
#pragma once

#include <QLabel>
#include <QObject>

#include "controls/number_field.h"

namespace tenter::desktop::controls {

/// A step of the field for so many px of the pointer; Shift and Alt as with arrow keys. It is one edit to
/// undo. Lives as long as `name`.
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
    double from_ = 0;  // where the pointer was taken hold of, px
    int stepped_ = 0;  // steps since then
};

}  // namespace tenter::desktop::controls
