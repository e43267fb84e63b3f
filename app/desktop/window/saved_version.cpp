#include "window/saved_version.h"

#include <QApplication>

namespace tenter::desktop::window {

namespace {

constexpr int key = Qt::Key_F2;

}  // namespace

SavedVersion::SavedVersion(const Document& document, ShownProject& shown, StatusNote& note, QObject* parent)
    : QObject(parent),
      document_(document),
      action_(new QAction(QObject::tr("S&how saved version (hold F2)"), this)) {
    action_->setCheckable(true);
    connect(action_, &QAction::toggled, this, [&shown, &note](bool on) {
        shown.showSaved(on);
        if (on)
            note.showMessage(QObject::tr("Saved version"));
        else
            note.clear();
    });
    // The release of the key is not reported to a program that is not active.
    connect(qApp, &QGuiApplication::applicationStateChanged, this, [this](Qt::ApplicationState state) {
        if (state != Qt::ApplicationActive) hide();
    });
    connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) {
        if (awaited_) awaitReleaseIn(now);
    });
    // An edit must be visible.
    connect(&document_, &Document::changed, this, &SavedVersion::hide);
}

bool SavedVersion::handleKey(const QKeyEvent& event) {
    if (event.key() != key || !document_.hasProject()) return false;
    if (event.isAutoRepeat()) return true;
    if (event.type() == QEvent::KeyPress) {
        action_->setChecked(true);
        awaitReleaseIn(QApplication::focusWidget());
    } else {
        hide();
    }
    return true;
}

void SavedVersion::hide() {
    action_->setChecked(false);
    awaitReleaseIn(nullptr);
}

// Text fields do not pass the release of a key on to the window.
void SavedVersion::awaitReleaseIn(QWidget* widget) {
    if (awaited_) awaited_->removeEventFilter(this);
    awaited_ = widget;
    if (awaited_) awaited_->installEventFilter(this);
}

bool SavedVersion::eventFilter(QObject*, QEvent* event) {
    return event->type() == QEvent::KeyRelease && handleKey(*static_cast<QKeyEvent*>(event));
}

}  // namespace tenter::desktop::window
