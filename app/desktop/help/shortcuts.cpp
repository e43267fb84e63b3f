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
        {"In a field",
         {{"Up, Down", "One step; with Shift 10 steps, with Alt a tenth"},
          {"Escape", "Restore the value from before typing"},
          {"Delete the whole text", "Reset to inherited value"}}},
        {"In the row",
         {{"Tab, Shift+Tab", "Next, previous card"},
          {"Up, Down", "Previous, next part"},
          {"Enter on a text", "Edit it there, as a double click does"},
          {"Alt+Left, Alt+Right", "Move the selected card"},
          {"Alt+Up, Alt+Down", "Move the selected part"},
          {"Ctrl+D", "Duplicate the card"},
          {"Delete", "Remove the selected part or card"},
          {"Ctrl+click, Shift+click", "Select several parts"},
          {"Menu", "Show what can be done with the selected part"},
          {"Escape", "Restore what a drag has changed, or end the selection"}}},
        {"In a text",
         {{"Ctrl+B, Ctrl+I, Ctrl+K", "Strong, emphasis, link"},
          {"Tab", "Next text"},
          {"Ctrl+Enter", "Done"},
          {"Escape", "Restore the text from before"},
          {"Alt+Up, Alt+Down", "Move its part up, down"},
          {"Ctrl+Shift+Delete", "Remove its part"}}},
        {"On the width axis",
         {{"Up, Down", "Wider, narrower by 1\u00A0px; with Shift by 10\u00A0px"},
          {"Page Up, Page Down", "Previous, next band end"},
          {"Home, End", "Smallest, largest width"}}},
        {"In the findings", {{"Enter", "Go to the width where the finding is worst, and mark its part"}}}};
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
