// The main window's menus.
#include <QActionGroup>
#include <QMenu>
#include <QMenuBar>

#include "document/wording.h"
#include "findings/silencing.h"
#include "window/about.h"
#include "window/main_window.h"

namespace tenter::desktop::window {

namespace {

/// `title` with & before its first letter that is not in `taken`; adds that letter to `taken`.
QString withMnemonic(QString title, QString& taken) {
    for (qsizetype i = 0; i < title.size(); ++i) {
        const QChar letter = title[i].toLower();
        if (!letter.isLetter() || taken.contains(letter)) continue;
        taken += letter;
        return title.insert(i, '&');
    }
    return title;
}

}  // namespace

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
    QMenu* menu = menuBar()->addMenu("&File");
    QMenu* samples = menu->addMenu("&New from sample");
    samples->setToolTipsVisible(true);
    connect(samples, &QMenu::aboutToShow, this, [this, samples] {
        samples->clear();
        for (const Sample& sample : findSamples()) {
            const QString file = QString::fromStdString(sample.file.string());
            samples->addAction(sample.name + "\t" + sample.description, this,
                               [this, file] { files_->openSample(file); });
        }
        if (samples->isEmpty()) samples->addAction("No samples found")->setEnabled(false);
    });
    menu->addAction("&Open…", QKeySequence::Open, files_, &FileController::openDialog);
    recentMenu_ = menu->addMenu("Open &recent");
    connect(recentMenu_, &QMenu::aboutToShow, this, &MainWindow::fillRecent);
    menu->addSeparator();
    needsProject(menu->addAction("&Save", QKeySequence::Save, files_, &FileController::save));
    needsProject(menu->addAction("Save &as…", QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_S), files_,
                                 &FileController::saveAs));
    menu->addSeparator();
    needsProject(menu->addAction("&Import row from page…", QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_V),
                                 this, &MainWindow::importRow));
    menu->addAction("Import a&udience…", this, &MainWindow::importAudience);
    stopWeighting_ =
        menu->addAction("Stop &weighting by audience", this, [this] { survey_.setAudience({}); });
    stopWeighting_->setEnabled(false);
    connect(&survey_, &Survey::audienceChanged, stopWeighting_,
            [this] { stopWeighting_->setEnabled(!survey_.audience().empty()); });
    menu->addSeparator();
    QMenu* exports = menu->addMenu("&Export");
    needsProject(exports->menuAction());
    needsProject(exports->addAction("Copy &stylesheet", QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_C), this,
                                    [this] { copyStylesheetOf({viewing_.variant()}); }));
    needsProject(exports->addAction(
        "Copy stylesheets of &all variants", QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::ALT | Qt::Key_C), this,
        [this] { copyStylesheetOf(project::everyVariant(document_.project())); }));
    needsProject(exports->addAction("Copy &font size of selected text",
                                    QKeySequence(Qt::CTRL | Qt::ALT | Qt::Key_C), this,
                                    &MainWindow::copySize));
    menu->addSeparator();
    menu->addAction("&Quit", QKeySequence(Qt::CTRL | Qt::Key_Q), this, &QWidget::close);
}

void MainWindow::fillRecent() {
    recentMenu_->clear();
    for (const QString& file : files_->recent())
        recentMenu_->addAction(QString(file).replace('&', "&&"), this, [this, file] { files_->open(file); });
    if (recentMenu_->isEmpty()) recentMenu_->addAction("No recent projects")->setEnabled(false);
}

void MainWindow::buildEditMenu() {
    QMenu* menu = menuBar()->addMenu("&Edit");
    QAction* undo = document_.undoStack().createUndoAction(this, "&Undo");
    QAction* redo = document_.undoStack().createRedoAction(this, "&Redo");
    undo->setShortcut(QKeySequence::Undo);
    redo->setShortcuts({QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z), QKeySequence(Qt::CTRL | Qt::Key_Y)});
    menu->addActions({undo, redo});
    menu->addSeparator();
    needsProject(
        menu->addAction("&Solve sizes", QKeySequence(Qt::Key_F9), this, [this] { side_->solveSizes(); }));
    menu->addSeparator();
    // Enabled only for an imported row: see showGiven.
    ownMarkup_ = menu->addAction("Use Tenter’s &markup", this, &MainWindow::useOwnMarkup);
    QMenu* silencing = menu->addMenu("Silence &check");
    needsProject(silencing->menuAction());
    connect(silencing, &QMenu::aboutToShow, this, [this, silencing] {
        findings::fillSilenceMenu(*silencing, document_, findings_->currentCheck());
        if (silencing->isEmpty())
            silencing->addAction("Select a finding in the list first")->setEnabled(false);
    });
    menu->addSeparator();
    needsProject(menu->addAction("&Find setting", QKeySequence::Find, this, [this] {
        search_->setFocus(Qt::ShortcutFocusReason);
        search_->selectAll();
    }));
}

void MainWindow::buildViewMenu() {
    QMenu* menu = menuBar()->addMenu("&View");
    for (QAction* action : {row_->actualSizeAction(), row_->fitAction(), row_->allVariantsAction()})
        menu->addAction(needsProject(action));
    menu->addSeparator();
    QMenu* overlays = menu->addMenu("&Overlays");
    for (QAction* action : row_->overlayActions())
        overlays->addAction(needsProject(action));
    QMenu* lanes = menu->addMenu("&Lanes and plots");
    for (QAction* action : axis_->laneActions())
        lanes->addAction(needsProject(action));
    QMenu* scale = menu->addMenu("Axis &scale");
    for (QAction* action : axis_->scaleActions())
        scale->addAction(needsProject(action));
    QMenu* zooms = menu->addMenu("Browser &zoom");
    browserZooms_ = new QActionGroup(this);
    for (const double zoom : {1.0, 1.5, 2.0, 3.0, 4.0, 5.0}) {
        QAction* action =
            needsProject(zooms->addAction(percent(zoom), this, [this, zoom] { setBrowserZoom(zoom); }));
        action->setCheckable(true);
        action->setData(zoom);
        action->setChecked(zoom == 1);
        browserZooms_->addAction(action);
    }
    connect(row_, &row::RowView::zoomChanged, this, &MainWindow::onRowZoom);
    menu->addSeparator();
    auto* engines = new QActionGroup(this);
    QString letters = "afvolszbhp";  // mnemonics of the other entries
    for (const text::BreakProfile* profile : text::profiles()) {
        QAction* action =
            needsProject(menu->addAction("Line breaks as in " + withMnemonic(engineTitle(*profile), letters),
                                         this, [this, profile] { chooseEngine(*profile); }));
        action->setCheckable(true);
        engines->addAction(action);
        engineActions_ << action;
    }
    needsProject(menu->addAction("Compare with &browser…", QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_B),
                                 this, &MainWindow::compareWithBrowser));
    menu->addSeparator();
    showSaved_ = needsProject(menu->addAction("S&how saved version (hold F2)"));
    showSaved_->setCheckable(true);
    connect(showSaved_, &QAction::toggled, this, [this](bool on) {
        viewing_.showSaved(on);
        if (on)
            note_->showMessage("Saved version");
        else
            note_->clear();
    });
    menu->addSeparator();
    QMenu* panels = menu->addMenu("&Panels");
    const QStringList titles{"&Row", "&Text", "&Spacing", "&Colour", "&Words", "&Pictures"};
    for (int i = 0; i < titles.size(); ++i)
        needsProject(panels->addAction(titles[i], QKeySequence(Qt::ALT | static_cast<Qt::Key>(Qt::Key_1 + i)),
                                       this, [this, i] { side_->openPanel(i); }));
    needsProject(panels->addAction("&Findings", QKeySequence(Qt::ALT | Qt::Key_7), this,
                                   [this] { findings_->setFocus(Qt::ShortcutFocusReason); }));
}

void MainWindow::buildGoMenu() {
    QMenu* menu = menuBar()->addMenu("&Go");
    // These keys are handled in keyPressEvent, after the fields. As shortcuts they would not reach the
    // fields.
    const auto add = [&](const QString& text, const QString& key, auto&& go) {
        needsProject(menu->addAction(text + '\t' + key, this, go));
    };
    add("&Next band end", "Ctrl+Right", [this] { axis_->goToBandEdge(1); });
    add("&Previous band end", "Ctrl+Left", [this] { axis_->goToBandEdge(-1); });
    menu->addSeparator();
    const auto toDifference = [this](int direction) {
        if (!axis_->goToDifference(direction))
            note_->showMessage(direction > 0 ? "No Chromium/Firefox difference at a wider viewport"
                                             : "No Chromium/Firefox difference at a narrower viewport");
    };
    needsProject(menu->addAction("Next Chromium/Firefox &difference", QKeySequence(Qt::CTRL | Qt::Key_E),
                                 this, [toDifference] { toDifference(1); }));
    needsProject(menu->addAction("Previous Chromium/Firefox d&ifference",
                                 QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_E), this,
                                 [toDifference] { toDifference(-1); }));
    needsProject(
        menu->addAction("Next &wrap point", QKeySequence(Qt::Key_F7), this, [this] { goToWrap(1); }));
    needsProject(menu->addAction("Previous wrap p&oint", QKeySequence(Qt::SHIFT | Qt::Key_F7), this,
                                 [this] { goToWrap(-1); }));
    needsProject(
        menu->addAction("Next &finding", QKeySequence(Qt::Key_F8), this, [this] { goToFinding(1); }));
    needsProject(menu->addAction("Previous findin&g", QKeySequence(Qt::SHIFT | Qt::Key_F8), this,
                                 [this] { goToFinding(-1); }));
    menu->addSeparator();
    add("Wid&er by 1\u00A0px", "Right", [this] { stepWidth(1); });
    add("Narrowe&r by 1\u00A0px", "Left", [this] { stepWidth(-1); });
    add("Wider &by 10\u00A0px", "Shift+Right", [this] { stepWidth(10); });
    add("N&arrower by 10\u00A0px", "Shift+Left", [this] { stepWidth(-10); });
}

void MainWindow::buildHelpMenu() {
    QMenu* menu = menuBar()->addMenu("&Help");
    menu->addAction("&Keyboard shortcuts", QKeySequence(Qt::Key_F1), this, [this] { showShortcuts(this); });
    menu->addAction("&About Tenter", this, [this] { showAbout(this); });
}

}  // namespace tenter::desktop::window
