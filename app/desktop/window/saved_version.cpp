#include "window/saved_version.h"

namespace tenter::desktop::window {

namespace {

constexpr int key = Qt::Key_F2;

}  // namespace

SavedVersion::SavedVersion(Viewing& viewing, StatusNote& note, QObject* parent)
    : QObject(parent), viewing_(viewing), action_(new QAction("S&how saved version (hold F2)", this)) {
    action_->setCheckable(true);
    connect(action_, &QAction::toggled, this, [this, &note](bool on) {
        viewing_.showSaved(on);
        if (on)
            note.showMessage("Saved version");
        else
            note.clear();
    });
    // An edit must be visible.
    connect(&viewing_.document(), &Document::changed, this, &SavedVersion::hide);
}

bool SavedVersion::handleKey(const QKeyEvent& event) {
    if (event.key() != key || !viewing_.document().hasProject()) return false;
    if (!event.isAutoRepeat()) action_->setChecked(event.type() == QEvent::KeyPress);
    return true;
}

}  // namespace tenter::desktop::window
