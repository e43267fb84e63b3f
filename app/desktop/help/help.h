// The menu Help: manual, What’s this, keyboard shortcuts, About Tenter.
#pragma once

#include <QAction>
#include <QMenuBar>
#include <QObject>

#include "help/manual_window.h"
#include "panels/side_panel.h"

namespace tenter::desktop::help {

class Help : public QObject {
    Q_OBJECT

public:
    /// `menus` and `side` must outlive it. `window`: the parent of what it opens.
    Help(const QMenuBar& menus, const panels::SidePanel& side, QWidget* window);
    /// The actions, in the order of the menu.
    [[nodiscard]] const QList<QAction*>& actions() const { return actions_; }

private:
    QAction* add(const QString& text, const QKeySequence& keys, void (Help::*run)());
    /// Opens the manual at the part about the setting that has the focus, or at its start.
    void showManual();
    /// Shows the help on what has the focus; if there is none, on what is clicked next.
    void showWhatsThis();
    void showShortcuts();
    void showAbout();

    const QMenuBar& menus_;
    const panels::SidePanel& side_;
    QWidget* window_;
    ManualWindow* manual_ = nullptr;
    QList<QAction*> actions_;
};

}  // namespace tenter::desktop::help
