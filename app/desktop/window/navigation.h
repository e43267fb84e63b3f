// Moves the current width: to places on the axis, to findings, and by steps; says in the status bar what is
// there.
#pragma once

#include <QKeyEvent>

#include "axis/axis_pane.h"
#include "findings/panel.h"
#include "session/check_runner.h"
#include "window/status_note.h"

namespace tenter::desktop::window {

/// In each function `direction` is +1 for the next place and −1 for the previous one.
class Navigation {
public:
    Navigation(ViewState& view, const CheckRunner& checks, axis::AxisPane& axis, findings::Panel& findings,
               StatusNote& note)
        : view_(view), checks_(checks), axis_(axis), findings_(findings), note_(note) {}
    void goToBandEdge(int direction) { axis_.goToBandEdge(direction); }
    void goToDifference(int direction);
    void goToWrap(int direction);
    void goToFinding(int direction);
    /// Changes the width by `by` CSS px, to a whole width.
    void stepWidth(double by);
    /// Handles Left and Right: 1 px, 10 px with Shift, to a band end with Ctrl. Returns false for other keys.
    bool handleWidthKey(const QKeyEvent& event);

private:
    ViewState& view_;
    const CheckRunner& checks_;
    axis::AxisPane& axis_;
    findings::Panel& findings_;
    StatusNote& note_;
};

}  // namespace tenter::desktop::window
