#include "help/help.h"

#include <QApplication>
#include <QWhatsThis>

#include "help/about_dialog.h"
#include "help/manual.h"
#include "help/shortcut_dialog.h"
#include "panels/setting_help.h"

namespace tenter::desktop::help {

Help::Help(const QMenuBar& menus, const panels::SidePanel& side, QWidget* window)
    : QObject(window), menus_(menus), side_(side), window_(window) {
    add(QObject::tr("&Manual"), QKeySequence(Qt::Key_F1), &Help::showManual);
    add(QObject::tr("&What’s this?"), QKeySequence(Qt::SHIFT | Qt::Key_F1), &Help::showWhatsThis);
    add(QObject::tr("&Keyboard shortcuts"), QKeySequence(Qt::CTRL | Qt::Key_F1), &Help::showShortcuts);
    add(QObject::tr("&About Tenter"), {}, &Help::showAbout);
}

QAction* Help::add(const QString& text, const QKeySequence& keys, void (Help::*run)()) {
    auto* action = new QAction(text, this);
    action->setShortcut(keys);
    connect(action, &QAction::triggered, this, run);
    actions_ << action;
    return action;
}

void Help::showManual() {
    const QWidget* const focus = QApplication::focusWidget();
    const QString topic = focus != nullptr ? side_.topicOf(focus) : QString();
    if (manual_ == nullptr) {
        manual_ = new ManualWindow(window_);
        manual_->setText(manualText(side_.topics(), shortcutsOf(menus_)));
    }
    manual_->show();
    manual_->raise();
    manual_->activateWindow();
    manual_->showTopic(topic);
}

void Help::showWhatsThis() {
    QWidget* const focus = QApplication::focusWidget();
    const QString text = panels::helpOf(focus);
    if (text.isEmpty())
        QWhatsThis::enterWhatsThisMode();
    else
        QWhatsThis::showText(focus->mapToGlobal(QPoint(0, focus->height())), text, focus);
}

void Help::showShortcuts() {
    ShortcutDialog dialog(shortcutsOf(menus_), window_);
    dialog.exec();
}

void Help::showAbout() {
    AboutDialog dialog(window_);
    dialog.exec();
}

}  // namespace tenter::desktop::help
