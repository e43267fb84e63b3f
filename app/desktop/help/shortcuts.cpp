#include "help/shortcuts.h"

#include <QAction>
#include <QMenu>

namespace tenter::desktop::help {

namespace {

/// `Undo` for an action with the text `&Undo\tCtrl+Z`.
QString titleOf(const QAction& action) {
    QString title = action.text().section('\t', 0, 0).remove('&');
    if (title.endsWith(QChar(0x2026))) title.chop(1);
    return title;
}

/// The keys of an action, or those that its text names because a part of the window handles them.
QString keysOf(const QAction& action) {
    const QString keys = QKeySequence::listToString(action.shortcuts(), QKeySequence::NativeText);
    return keys.isEmpty() ? action.text().section('\t', 1) : QString(keys).replace("; ", ", ");
}

void addActions(const QMenu& menu, std::vector<Shortcut>& shortcuts) {
    for (const QAction* action : menu.actions()) {
        // Menus of files are filled when they open; their entries have no keys.
        if (action->menu() != nullptr)
            addActions(*action->menu(), shortcuts);
        else if (const QString keys = keysOf(*action); !keys.isEmpty())
            shortcuts.push_back({keys, titleOf(*action)});
    }
}

/// Keys that are no shortcuts of actions, because they belong to what has the focus.
std::vector<ShortcutGroup> keysOfParts() {
    return {
        {QObject::tr("In a field"),
         {{QObject::tr("Up, Down"), QObject::tr("One step; with Shift 10 steps, with Alt a tenth")},
          {QObject::tr("Escape"), QObject::tr("Restore the value from before typing")},
          {QObject::tr("Delete the whole text"), QObject::tr("Reset to inherited value")}}},
        {QObject::tr("In the row"),
         {{QObject::tr("Tab, Shift+Tab"), QObject::tr("Next, previous card")},
          {QObject::tr("Up, Down"), QObject::tr("Previous, next part")},
          {QObject::tr("Enter on a text"), QObject::tr("Edit it there, as a double click does")},
          {QObject::tr("Alt+Left, Alt+Right"), QObject::tr("Move the selected card")},
          {QObject::tr("Alt+Up, Alt+Down"), QObject::tr("Move the selected part")},
          {QObject::tr("Ctrl+D"), QObject::tr("Duplicate the card")},
          {QObject::tr("Delete"), QObject::tr("Remove the selected part or card")},
          {QObject::tr("Ctrl+click, Shift+click"), QObject::tr("Select several parts")},
          {QObject::tr("Menu"), QObject::tr("Show what can be done with the selected part")},
          {QObject::tr("Escape"), QObject::tr("Restore what a drag has changed, or end the selection")}}},
        {QObject::tr("In a text"),
         {{QObject::tr("Ctrl+B, Ctrl+I, Ctrl+K"), QObject::tr("Strong, emphasis, link")},
          {QObject::tr("Tab"), QObject::tr("Next text")},
          {QObject::tr("Ctrl+Enter"), QObject::tr("Done")},
          {QObject::tr("Escape"), QObject::tr("Restore the text from before")},
          {QObject::tr("Alt+Up, Alt+Down"), QObject::tr("Move its part up, down")},
          {QObject::tr("Ctrl+Shift+Delete"), QObject::tr("Remove its part")}}},
        {QObject::tr("On the width axis"),
         {{QObject::tr("Up, Down"), QObject::tr("Wider, narrower by 1\u00A0px; with Shift by 10\u00A0px")},
          {QObject::tr("Page Up, Page Down"), QObject::tr("Previous, next band end")},
          {QObject::tr("Home, End"), QObject::tr("Smallest, largest width")}}},
        {QObject::tr("In the findings"),
         {{QObject::tr("Enter"),
           QObject::tr("Go to the width where the finding is worst, and mark its part")},
          {QObject::tr("Tab"), QObject::tr("Go to the remedies of the finding")},
          {QObject::tr("Escape"), QObject::tr("Go to the row")}}}};
}

}  // namespace

std::vector<ShortcutGroup> shortcutsOf(const QMenuBar& menus) {
    std::vector<ShortcutGroup> groups;
    for (const QAction* action : menus.actions()) {
        ShortcutGroup group{titleOf(*action), {}};
        if (action->menu() != nullptr) addActions(*action->menu(), group.shortcuts);
        if (!group.shortcuts.empty()) groups.push_back(std::move(group));
    }
    for (ShortcutGroup& group : keysOfParts())
        groups.push_back(std::move(group));
    return groups;
}

}  // namespace tenter::desktop::help
