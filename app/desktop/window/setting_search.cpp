#include "window/setting_search.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QKeyEvent>
#include <QStringListModel>
#include <algorithm>

#include "controls/glyphs.h"

namespace tenter::desktop::window {

SettingSearch::SettingSearch(panels::SidePanel& panel, QWidget* parent)
    : QLineEdit(parent), panel_(panel), places_(panel.places()) {
    setPlaceholderText("Find a setting");
    setAccessibleName("Find a setting");
    setToolTip("Find a setting by its words (Ctrl+F)");
    setClearButtonEnabled(false);
    addAction(controls::glyph(controls::Glyph::Search), QLineEdit::LeadingPosition);
    QStringList words;
    for (const auto& place : places_)
        words << place.words;
    auto* completer = new QCompleter(words, this);
    completer->setFilterMode(Qt::MatchContains);
    completer->setCaseSensitivity(Qt::CaseInsensitive);
    completer->setMaxVisibleItems(12);
    setCompleter(completer);
    connect(completer, QOverload<const QString&>::of(&QCompleter::activated), this, &SettingSearch::go,
            Qt::QueuedConnection);
}

bool SettingSearch::event(QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride) {
        auto* key = static_cast<QKeyEvent*>(event);
        if (key->matches(QKeySequence::Undo) || key->matches(QKeySequence::Redo)) return false;
    }
    return QLineEdit::event(event);
}

void SettingSearch::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        clear();
        return;
    }
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        if (!text().isEmpty() && completer()->completionCount() > 0) {
            completer()->setCurrentRow(0);
            go(completer()->currentCompletion());
        }
        return;
    }
    QLineEdit::keyPressEvent(event);
}

void SettingSearch::go(const QString& words) {
    const auto at =
        std::find_if(places_.begin(), places_.end(), [&](const auto& place) { return place.words == words; });
    if (at == places_.end()) return;
    clear();
    panel_.go(*at);
}

}  // namespace tenter::desktop::window
