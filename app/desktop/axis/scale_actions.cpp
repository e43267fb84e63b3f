#include "axis/scale_actions.h"

#include <algorithm>

namespace tenter::desktop::axis {

template <class Does>
QAction* ScaleActions::add(const QString& text, const QKeySequence& shortcut, Does does) {
    auto* action = new QAction(text, this);
    action->setShortcut(shortcut);
    connect(action, &QAction::triggered, this, does);
    all_.append(action);
    return action;
}

ScaleActions::ScaleActions(const ViewState& view, WidthScale& scale, QObject* parent)
    : QObject(parent), view_(view), scale_(scale) {
    add(QObject::tr("Zoom &in"), Qt::CTRL | Qt::ALT | Qt::Key_Plus,
        [this] { zoomAbout(scale_.x(view_.width()), zoomStep); });
    add(QObject::tr("Zoom &out"), Qt::CTRL | Qt::ALT | Qt::Key_Minus,
        [this] { zoomAbout(scale_.x(view_.width()), 1 / zoomStep); });
    add(QObject::tr("&Whole range"), Qt::CTRL | Qt::ALT | Qt::Key_0, [this] {
        scale_.showWhole();
        Q_EMIT changed();
    });
    QAction* const equal = add(QObject::tr("&Equal room for each band"), {}, [] {});
    equal->setCheckable(true);
    connect(equal, &QAction::toggled, this, [this](bool on) {
        scale_.setEqualRoom(on);
        scale_.showWhole();
        Q_EMIT changed();
    });
}

void ScaleActions::zoomAbout(double x, double factor) {
    scale_.zoomAbout(std::clamp(x, scale_.left(), scale_.right()), factor);
    Q_EMIT changed();
}

}  // namespace tenter::desktop::axis
