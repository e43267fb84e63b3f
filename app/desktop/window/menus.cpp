// The main window's menus.
#include <QClipboard>
#include <QGuiApplication>
#include <QMenu>
#include <QMenuBar>
#include <QShortcut>

#include "document/wording.h"
#include "findings/silencing.h"
#include "session/changes.h"
#include "sheet_compare/sheet_dialog.h"
#include "window/main_window.h"
#include "window/undo_list.h"

namespace tenter::desktop::window {

QAction* MainWindow::needsProject(QAction* action) {
    projectActions_ << action;
    return action;
}

void MainWindow::buildMenus() {
    buildFileMenu();
    buildEditMenu();
    buildViewMenu();
    buildGoMenu();
    buildHelpMenu();
}

void MainWindow::buildFileMenu() {
    QMenu* menu = menus_->addMenu(QObject::tr("&File"));
    menu->addAction(QObject::tr("&New row…"), QKeySequence::New, this, [this] { newRow(); });
    QMenu* samples = menu->addMenu(QObject::tr("New from sa&mple"));
    samples->setToolTipsVisible(true);
    connect(samples, &QMenu::aboutToShow, this, [this, samples] {
        samples->clear();
        for (const Sample& sample : findSamples()) {
            const QString file = QString::fromStdString(sample.file.string());
            samples->addAction(sample.name + "\t" + sample.description, this,
                               [this, file] { files_->openSample(file); });
        }
        if (samples->isEmpty()) samples->addAction(QObject::tr("No samples found"))->setEnabled(false);
    });
    menu->addAction(QObject::tr("&Open…"), QKeySequence::Open, files_, &FileController::openDialog);
    recentMenu_ = menu->addMenu(QObject::tr("Open &recent"));
    connect(recentMenu_, &QMenu::aboutToShow, this, &MainWindow::fillRecent);
    menu->addSeparator();
    needsProject(menu->addAction(QObject::tr("&Save"), QKeySequence::Save, files_, &FileController::save));
    needsProject(menu->addAction(QObject::tr("Save &as…"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_S),
                                 files_, &FileController::saveAs));
    needsProject(menu->addAction(QObject::tr("Re&vert to saved"), this, &MainWindow::revertToSaved));
    menu->addSeparator();
    menu->addAction(QObject::tr("&Import row from page…"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_V),
                    this, [this] { importRow(); });
    menu->addAction(QObject::tr("Import a&udience…"), this, [this] { audience_->choose(this); });
    stopWeighting_ = menu->addAction(QObject::tr("Stop &weighting by audience"), this,
                                     [this] { session_.checks.setAudience({}); });
    stopWeighting_->setEnabled(false);
    onChange(session_.checks, CheckRunner::Change::Audience, stopWeighting_,
             [this] { stopWeighting_->setEnabled(!session_.checks.audience().empty()); });
    menu->addSeparator();
    QMenu* exports = menu->addMenu(QObject::tr("&Export"));
    needsProject(exports->menuAction());
    for (QAction* action : exports_->actions())
        exports->addAction(needsProject(action));
    menu->addSeparator();
    menu->addAction(QObject::tr("&Quit"), QKeySequence(Qt::CTRL | Qt::Key_Q), this, &QWidget::close);
}

void MainWindow::fillRecent() {
    recentMenu_->clear();
    for (const QString& file : files_->recent())
        recentMenu_->addAction(QString(file).replace('&', "&&"), this, [this, file] { files_->open(file); });
    if (recentMenu_->isEmpty()) recentMenu_->addAction(QObject::tr("No recent projects"))->setEnabled(false);
}

void MainWindow::buildEditMenu() {
    QMenu* menu = menus_->addMenu(QObject::tr("&Edit"));
    QAction* undo = session_.document.undoStack().createUndoAction(this, QObject::tr("&Undo"));
    QAction* redo = session_.document.undoStack().createRedoAction(this, QObject::tr("&Redo"));
    undo->setShortcut(QKeySequence::Undo);
    redo->setShortcuts({QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z), QKeySequence(Qt::CTRL | Qt::Key_Y)});
    menu->addActions({undo, redo});
    // The row may show the step at another width only.
    QUndoStack& stack = session_.document.undoStack();
    connect(undo, &QAction::triggered, note_,
            [this, &stack] { note_->showMessage(QObject::tr("Undone: %1").arg(stack.redoText())); });
    connect(redo, &QAction::triggered, note_,
            [this, &stack] { note_->showMessage(QObject::tr("Done again: %1").arg(stack.undoText())); });
    needsProject(menu->addAction(QObject::tr("Undo &list…"), QKeySequence(Qt::CTRL | Qt::ALT | Qt::Key_Z),
                                 this, [this] { showUndoList(session_.document.undoStack(), this); }));
    menu->addSeparator();
    QAction* solve = needsProject(menu->addAction(QObject::tr("&Solve sizes"), QKeySequence(Qt::Key_F9), this,
                                                  [this] { side_->solveSizes(); }));
    row_->menu().setActions({exports_->copySizeAction()}, {solve});
    menu->addSeparator();
    // Enabled only for an imported row: see enableOwnMarkup.
    ownMarkup_ = menu->addAction(QObject::tr("Use Tenter’s &markup"), this, &MainWindow::useOwnMarkup);
    needsProject(menu->addAction(QObject::tr("Compare wit&h stylesheet…"), this, &MainWindow::compareSheet));
    // A stylesheet that is pasted anywhere but into a field.
    connect(new QShortcut(QKeySequence::Paste, this), &QShortcut::activated, this, [this] {
        if (session_.document.hasProject() &&
            sheet_compare::looksLikeCss(QGuiApplication::clipboard()->text()))
            compareSheet();
    });
    QMenu* silencing = menu->addMenu(QObject::tr("Silence &check"));
    needsProject(silencing->menuAction());
    connect(silencing, &QMenu::aboutToShow, this, [this, silencing] {
        findings::fillSilenceMenu(*silencing, session_.document, findings_->currentCheck());
        if (silencing->isEmpty())
            silencing->addAction(QObject::tr("Select a finding in the list first"))->setEnabled(false);
    });
    menu->addSeparator();
    needsProject(menu->addAction(QObject::tr("&Find setting"), QKeySequence::Find, this, [this] {
        strip_->search()->setFocus(Qt::ShortcutFocusReason);
        strip_->search()->selectAll();
    }));
}

void MainWindow::buildViewMenu() {
    QMenu* menu = menus_->addMenu(QObject::tr("&View"));
    for (QAction* action : {row_->actualSizeAction(), row_->fitAction(), row_->allVariantsAction()})
        menu->addAction(needsProject(action));
    menu->addSeparator();
    QMenu* overlays = menu->addMenu(QObject::tr("&Overlays"));
    for (QAction* action : row_->overlayActions())
        overlays->addAction(needsProject(action));
    QMenu* lanes = menu->addMenu(QObject::tr("&Lanes and plots"));
    for (QAction* action : axis_->laneActions())
        lanes->addAction(needsProject(action));
    lanes->addSeparator();
    lanes->addAction(needsProject(axis_->dataAction()));
    QMenu* scale = menu->addMenu(QObject::tr("Axis &scale"));
    for (QAction* action : axis_->scaleActions())
        scale->addAction(needsProject(action));
    QMenu* zooms = menu->addMenu(QObject::tr("Browser &zoom"));
    for (QAction* action : browserZoom_->actions())
        zooms->addAction(needsProject(action));
    menu->addSeparator();
    for (QAction* action : breaks_->actions())
        menu->addAction(needsProject(action));
    needsProject(menu->addAction(QObject::tr("Compare with &browser…"),
                                 QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_B), this,
                                 &MainWindow::compareWithBrowser));
    menu->addSeparator();
    menu->addAction(needsProject(saved_->action()));
    // Enabled while there is a proposal: see showPreviewState.
    preview_ = menu->addAction(QObject::tr("Show previe&w"), QKeySequence(Qt::Key_F4), this,
                               [this](bool on) { session_.shown.hideProposal(!on); });
    preview_->setCheckable(true);
    onChange(session_.shown, ShownProject::Change::Proposal | ShownProject::Change::Content, this,
             &MainWindow::showPreviewState);
    showPreviewState();
    menu->addSeparator();
    QMenu* panels = menu->addMenu(QObject::tr("&Panels"));
    const auto addPanel = [&](const QString& title, Qt::Key key, panels::PanelKind kind) {
        needsProject(panels->addAction(title, QKeySequence(Qt::ALT | key), this,
                                       [this, kind] { side_->goToPanel(kind); }));
    };
    addPanel(QObject::tr("&Row"), Qt::Key_1, panels::PanelKind::Row);
    addPanel(QObject::tr("&Text"), Qt::Key_2, panels::PanelKind::Text);
    addPanel(QObject::tr("&Spacing"), Qt::Key_3, panels::PanelKind::Spacing);
    addPanel(QObject::tr("&Colour"), Qt::Key_4, panels::PanelKind::Colour);
    addPanel(QObject::tr("&Words"), Qt::Key_5, panels::PanelKind::Words);
    addPanel(QObject::tr("&Pictures"), Qt::Key_6, panels::PanelKind::Pictures);
    needsProject(panels->addAction(QObject::tr("&Findings"), QKeySequence(Qt::ALT | Qt::Key_7), this, [this] {
        findings_->setOpen(true);
        findings_->setFocus(Qt::ShortcutFocusReason);
    }));
    panels->addSeparator();
    needsProject(
        panels->addAction(QObject::tr("Reset &layout of the window"), this, [this] { work_->reset(); }));
}

void MainWindow::buildGoMenu() {
    QMenu* menu = menus_->addMenu(QObject::tr("&Go"));
    // These keys are handled in keyPressEvent, after the fields. As shortcuts they would not reach the
    // fields.
    const auto add = [&](const QString& text, const QString& keys, auto&& go) {
        needsProject(menu->addAction(text + '\t' + keysTitle(keys), this, go));
    };
    add(QObject::tr("&Next band end"), "Ctrl+Right", [this] { navigation_->goToBandEdge(1); });
    add(QObject::tr("&Previous band end"), "Ctrl+Left", [this] { navigation_->goToBandEdge(-1); });
    menu->addSeparator();
    needsProject(menu->addAction(QObject::tr("Next Chromium/Firefox &difference"),
                                 QKeySequence(Qt::CTRL | Qt::Key_E), this,
                                 [this] { navigation_->goToDifference(1); }));
    needsProject(menu->addAction(QObject::tr("Previous Chromium/Firefox d&ifference"),
                                 QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_E), this,
                                 [this] { navigation_->goToDifference(-1); }));
    needsProject(menu->addAction(QObject::tr("Next &wrap point"), QKeySequence(Qt::Key_F7), this,
                                 [this] { navigation_->goToWrap(1); }));
    needsProject(menu->addAction(QObject::tr("Previous wrap p&oint"), QKeySequence(Qt::SHIFT | Qt::Key_F7),
                                 this, [this] { navigation_->goToWrap(-1); }));
    needsProject(menu->addAction(QObject::tr("Next &finding"), QKeySequence(Qt::Key_F8), this,
                                 [this] { navigation_->goToFinding(1); }));
    needsProject(menu->addAction(QObject::tr("Previous findin&g"), QKeySequence(Qt::SHIFT | Qt::Key_F8), this,
                                 [this] { navigation_->goToFinding(-1); }));
    menu->addSeparator();
    add(QObject::tr("Wid&er by 1\u00A0px"), "Right", [this] { navigation_->stepWidth(1); });
    add(QObject::tr("Narrowe&r by 1\u00A0px"), "Left", [this] { navigation_->stepWidth(-1); });
    add(QObject::tr("Wider &by 10\u00A0px"), "Shift+Right", [this] { navigation_->stepWidth(10); });
    add(QObject::tr("N&arrower by 10\u00A0px"), "Shift+Left", [this] { navigation_->stepWidth(-10); });
}

void MainWindow::buildHelpMenu() {
    QMenu* menu = menus_->addMenu(QObject::tr("&Help"));
    menu->addActions(help_->actions());
}

}  // namespace tenter::desktop::window
