#include "controls/scrub.h"

#include <QMouseEvent>
#include <cmath>

namespace tenter::desktop::controls {

namespace {

constexpr double pxToAStep = 4;

}  // namespace

Scrub::Scrub(QLabel* name, NumberField* field) : QObject(name), name_(name), field_(field) {
    name_->setCursor(Qt::SizeHorCursor);
    name_->installEventFilter(this);
}

bool Scrub::eventFilter(QObject* watched, QEvent* event) {
    switch (event->type()) {
        case QEvent::MouseButtonPress: {
            const auto* press = static_cast<QMouseEvent*>(event);
            if (press->button() != Qt::LeftButton || !field_->isEnabled()) break;
            pressed_ = true;
            from_ = press->globalPosition().x();
            stepped_ = 0;
            field_->setFocus(Qt::MouseFocusReason);
            return true;
        }
        case QEvent::MouseMove: {
            if (!pressed_) break;
            const auto* move = static_cast<QMouseEvent*>(event);
            const int steps = static_cast<int>(std::trunc((move->globalPosition().x() - from_) / pxToAStep));
            if (steps != stepped_)
                field_->stepBy((steps - stepped_) * NumberField::stepsFor(move->modifiers()));
            stepped_ = steps;
            return true;
        }
        case QEvent::MouseButtonRelease:
            if (!pressed_) break;
            pressed_ = false;
            field_->finish();
            return true;
        default:
            break;
    }
    return QObject::eventFilter(watched, event);
}

}  // namespace tenter::desktop::controls
