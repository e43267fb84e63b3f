// The main window's menus.
#include <QActionGroup>
#include <QMenu>
#include <QMenuBar>

#include "document/engines.h"
#include "findings/silencing.h"
#include "window/about.h"
#include "window/main_window.h"

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
        if (samples->isEmpty()) samples->addAction("No samples were found")->setEnabled(false);
    });
    menu->addAction("&Open…", QKeySequence::Open, files_, &FileDesk::openAsked);
    recentMenu_ = menu->addMenu("Open &recent");
    connect(recentMenu_, &QMenu::aboutToShow, this, &MainWindow::fillRecent);
    menu->addSeparator();
    needsProject(menu->addAction("&Save", QKeySequence::Save, files_, &FileDesk::save));
    needsProject(menu->addAction("Save &as…", QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_S), files_,
                                 &FileDesk::saveAs));
    menu->addSeparator();
    needsProject(menu->addAction("Take a &page’s row…", QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_V), this,
                                 &MainWindow::takePagesRow));
    menu->addSeparator();
    menu->addAction("Open an a&udience…", this, &MainWindow::openAudience);
    byWidths_ = menu->addAction("&Weigh findings by widths again", this, [this] { survey_.setAudience({}); });
    byWidths_->setEnabled(false);
    connect(&survey_, &Survey::audienceChanged, byWidths_,
            [this] { byWidths_->setEnabled(!survey_.audience().empty()); });
    menu->addSeparator();
    menu->addAction("&Quit", QKeySequence(Qt::CTRL | Qt::Key_Q), this, &QWidget::close);
}

void MainWindow::fillRecent() {
    recentMenu_->clear();
    for (const QString& file : files_->recent())
        recentMenu_->addAction(file, this, [this, file] { files_->open(file); });
    if (recentMenu_->isEmpty()) recentMenu_->addAction("Nothing yet")->setEnabled(false);
}

void MainWindow::buildEditMenu() {
    QMenu* menu = menuBar()->addMenu("&Edit");
    QAction* undo = document_.undoStack().createUndoAction(this, "&Undo");
    QAction* redo = document_.undoStack().createRedoAction(this, "&Redo");
    undo->setShortcut(QKeySequence::Undo);
    redo->setShortcuts({QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z), QKeySequence(Qt::CTRL | Qt::Key_Y)});
    menu->addActions({undo, redo});
    menu->addSeparator();
    needsProject(menu->addAction("Copy the &stylesheet", QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_C), this,
                                 [this] { copyStylesheetOf({viewing_.variant()}); }));
    needsProject(menu->addAction("Copy &every variant’s stylesheet",
                                 QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::ALT | Qt::Key_C), this,
                                 [this] { copyStylesheetOf(project::everyVariant(document_.project())); }));
    needsProject(menu->addAction("Copy the selected text’s si&ze",
                                 QKeySequence(Qt::CTRL | Qt::ALT | Qt::Key_C), this, &MainWindow::copySize));
    menu->addSeparator();
    needsProject(
        menu->addAction("Sol&ve sizes", QKeySequence(Qt::Key_F9), this, [this] { side_->solveSizes(); }));
    menu->addSeparator();
    // Enabled by what the project has: see showGiven.
    ownMarkup_ = menu->addAction("Use our own &markup", this, &MainWindow::useOwnMarkup);
    menu->addSeparator();
    QMenu* silencing = menu->addMenu("Sile&nce findings");
    needsProject(silencing->menuAction());
    connect(silencing, &QMenu::aboutToShow, this, [this, silencing] {
        findings::fillSilencing(*silencing, document_, findings_->currentCheck());
        if (silencing->isEmpty())
            silencing->addAction("Choose a finding in the list first")->setEnabled(false);
    });
    menu->addSeparator();
    needsProject(menu->addAction("&Find a setting", QKeySequence::Find, this, [this] {
        search_->setFocus(Qt::ShortcutFocusReason);
        search_->selectAll();
    }));
}

void MainWindow::buildViewMenu() {
    QMenu* menu = menuBar()->addMenu("&View");
    for (QAction* action : {row_->actualSizeAction(), row_->fitAction(), row_->allVariantsAction()})
        menu->addAction(needsProject(action));
    menu->addSeparator();
    QMenu* overlays = menu->addMenu("&Over the row");
    for (QAction* action : row_->overlayActions())
        overlays->addAction(needsProject(action));
    QMenu* lanes = menu->addMenu("&Along the widths");
    for (QAction* action : axis_->laneActions())
        lanes->addAction(needsProject(action));
    QMenu* scale = menu->addMenu("Sca&le of the widths");
    for (QAction* action : axis_->scaleActions())
        scale->addAction(needsProject(action));
    QMenu* zooms = menu->addMenu("As a reader &zooms in");
    readerZooms_ = new QActionGroup(this);
    for (const int percent : {100, 150, 200, 300, 400, 500}) {
        QAction* action = needsProject(zooms->addAction(QString("%1 %").arg(percent), this,
                                                        [this, percent] { zoomAsReader(percent / 100.0); }));
        action->setCheckable(true);
        action->setData(percent / 100.0);
        action->setChecked(percent == 100);
        readerZooms_->addAction(action);
    }
    connect(row_, &row::RowView::zoomChanged, this, &MainWindow::followZoom);
    menu->addSeparator();
    auto* engines = new QActionGroup(this);
    for (const text::BreakProfile* profile : text::profiles()) {
        QAction* action = needsProject(menu->addAction("Breaks as " + engineTitle(*profile), this,
                                                       [this, profile] { chooseEngine(*profile); }));
        action->setCheckable(true);
        engines->addAction(action);
        engineActions_ << action;
    }
    needsProject(menu->addAction("&Compare with a browser…", QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_B),
                                 this, &MainWindow::compareWithBrowser));
    menu->addSeparator();
    asSaved_ = needsProject(menu->addAction("As it was saved\tHold F2"));
    asSaved_->setCheckable(true);
    connect(asSaved_, &QAction::toggled, this, [this](bool on) {
        viewing_.showSaved(on);
        if (on)
            note_->say("As it was saved");
        else
            note_->clear();
    });
    menu->addSeparator();
    const QStringList panels{"&Row", "&Text", "&Spacing", "&Colour", "&Words", "&Pictures"};
    for (int i = 0; i < panels.size(); ++i)
        needsProject(menu->addAction(panels[i], QKeySequence(Qt::ALT | static_cast<Qt::Key>(Qt::Key_1 + i)),
                                     this, [this, i] { side_->openPanel(i); }));
    needsProject(menu->addAction("F&indings", QKeySequence(Qt::ALT | Qt::Key_7), this,
                                 [this] { findings_->setFocus(Qt::ShortcutFocusReason); }));
}

void MainWindow::buildGoMenu() {
    QMenu* menu = menuBar()->addMenu("&Go");
    // The keys are those that no field took; as shortcuts they would be taken from every field.
    const auto add = [&](const QString& text, const QString& key, auto&& go) {
        needsProject(menu->addAction(text + '\t' + key, this, go));
    };
    add("&Next band edge", "Ctrl+Right", [this] { axis_->goToBandEdge(1); });
    add("&Previous band edge", "Ctrl+Left", [this] { axis_->goToBandEdge(-1); });
    menu->addSeparator();
    const auto toDifference = [this](int direction) {
        if (!axis_->goToDifference(direction))
            note_->say(direction > 0 ? "Engines differ at no wider page"
                                     : "Engines differ at no narrower page");
    };
    needsProject(menu->addAction("Next width where &engines differ", QKeySequence(Qt::CTRL | Qt::Key_E), this,
                                 [toDifference] { toDifference(1); }));
    needsProject(menu->addAction("Previous width where e&ngines differ",
                                 QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_E), this,
                                 [toDifference] { toDifference(-1); }));
    needsProject(
        menu->addAction("Next &wrap point", QKeySequence(Qt::Key_F7), this, [this] { goToWrap(1); }));
    needsProject(menu->addAction("Previous wrap &point", QKeySequence(Qt::SHIFT | Qt::Key_F7), this,
                                 [this] { goToWrap(-1); }));
    needsProject(
        menu->addAction("Next &finding", QKeySequence(Qt::Key_F8), this, [this] { goToFinding(1); }));
    needsProject(menu->addAction("Previous fin&ding", QKeySequence(Qt::SHIFT | Qt::Key_F8), this,
                                 [this] { goToFinding(-1); }));
    menu->addSeparator();
    add("Wider by 1 px", "Right", [this] { stepWidth(1); });
    add("Narrower by 1 px", "Left", [this] { stepWidth(-1); });
    add("Wider by 10 px", "Shift+Right", [this] { stepWidth(10); });
    add("Narrower by 10 px", "Shift+Left", [this] { stepWidth(-10); });
}

void MainWindow::buildHelpMenu() {
    QMenu* menu = menuBar()->addMenu("&Help");
    menu->addAction("&Keys", QKeySequence(Qt::Key_F1), this, [this] { showKeys(this); });
    menu->addAction("&About Tenter", this, [this] { showAbout(this); });
}

}  // namespace tenter::desktop::window
