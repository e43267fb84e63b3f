#include "window/saved_version.h"

#include <QGuiApplication>

namespace tenter::desktop::window {

namespace {

constexpr int key = Qt::Key_F2;

}  // namespace

SavedVersion::SavedVersion(const Document& document, ShownProject& shown, StatusNote& note, QObject* parent)
    : QObject(parent), document_(document), action_(new QAction("S&how saved version (hold F2)", this)) {
    action_->setCheckable(true);
    connect(action_, &QAction::toggled, this, [&shown, &note](bool on) {
        shown.showSaved(on);
        if (on)
            note.showMessage("Saved version");
        else
            note.clear();
    });
    // The release of the key is not reported to a program that is not active.
    connect(qApp, &QGuiApplication::applicationStateChanged, this, [this](Qt::ApplicationState state) {
        if (state != Qt::ApplicationActive) hide();
    });
    // An edit must be visible.
    connect(&document_, &Document::changed, this, &SavedVersion::hide);
}

bool SavedVersion::handleKey(const QKeyEvent& event) {
    if (event.key() != key || !document_.hasProject()) return false;
    if (!event.isAutoRepeat()) action_->setChecked(event.type() == QEvent::KeyPress);
    return true;
}

}  // namespace tenter::desktop::window
