#include "window/main_window.h"

#include <QAbstractButton>
#include <QApplication>
#include <QCloseEvent>
#include <QMenuBar>
#include <QMimeData>
#include <QSettings>
#include <QStatusBar>
#include <QTimer>
#include <QVBoxLayout>

#include "compare/compare_dialog.h"
#include "compare/wording.h"
#include "document/refusal.h"
#include "document/wording.h"
#include "page_import/import_dialog.h"
#include "window/status_facts.h"
#include "window/tooltips.h"

namespace tenter::desktop::window {

namespace {

const QString geometryKey = "geometry";

}  // namespace

MainWindow::MainWindow(QWidget* parent)
    : QMainWindow(parent),
      viewing_(document_),
      survey_(viewing_),
      files_(new FileController(document_, this)),
      row_(new row::RowView(viewing_, survey_, this)),
      comparison_(new compare::Comparison(viewing_, this)),
      axis_(new axis::AxisPane(viewing_, survey_, this)),
      side_(new panels::SidePanel(viewing_, this)),
      findings_(new findings::Panel(survey_, viewing_, this)),
      start_(new StartPage(this)),
      problems_(new ProblemPanel(this)),
      note_(new StatusNote(this)),
      breaks_(new BreakChoice(viewing_, this)),
      browserZoom_(new BrowserZoom(viewing_, *row_, *note_, this)),
      saved_(new SavedVersion(viewing_, *note_, this)),
      strip_(new Strip(viewing_, *row_, *breaks_, *side_, this)),
      exports_(std::make_unique<Exports>(viewing_, *note_, *problems_)),
      audience_(std::make_unique<AudienceImport>(survey_, *files_, *note_, *problems_)),
      drops_(std::make_unique<Drops>(viewing_, *row_, *files_, *audience_, *note_)),
      navigation_(std::make_unique<Navigation>(viewing_, survey_, *axis_, *findings_, *note_)) {
    setAcceptDrops(true);
    resize(1280, 800);
    if (const auto kept = QSettings().value(geometryKey).toByteArray(); !kept.isEmpty())
        restoreGeometry(kept);

    auto* central = new QWidget(this);
    auto* box = new QVBoxLayout(central);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(0);
    box->addWidget(strip_);
    box->addWidget(problems_);
    stack_ = new QStackedWidget(central);
    stack_->addWidget(start_);
    stack_->addWidget(buildWork());
    box->addWidget(stack_, 1);
    setCentralWidget(central);
    statusBar()->setSizeGripEnabled(false);
    statusBar()->setContentsMargins(16, 0, 16, 0);
    statusBar()->addWidget(note_, 1);
    new StatusFacts(viewing_, *statusBar());
    axis_->addComparisonLane(*comparison_);
    buildMenus();

    connect(start_, &StartPage::openRequested, files_, &FileController::openDialog);
    connect(start_, &StartPage::fileRequested, files_, &FileController::open);
    connect(start_, &StartPage::sampleRequested, files_, &FileController::openSample);
    connect(files_, &FileController::failed, problems_, &ProblemPanel::showProblems);
    connect(files_, &FileController::done, this, [this](const QString& message) {
        problems_->hide();
        note_->showMessage(message);
    });
    connect(files_, &FileController::recentChanged, this, [this] { start_->setRecent(files_->recent()); });
    connect(comparison_, &compare::Comparison::finished, this,
            [this] { note_->showMessage(compare::headline(*comparison_)); });
    connect(comparison_, &compare::Comparison::failed, note_, &StatusNote::showMessage);
    connect(&document_, &Document::opened, this, &MainWindow::showProject);
    connect(&document_, &Document::fileChanged, this, &MainWindow::showTitle);
    connect(&viewing_, &Viewing::refused, this, [this](const project::Problems& problems) {
        note_->showMessage(refusal(document_.project(), problems.front()));
    });
    connect(&viewing_, &Viewing::rowChanged, this, &MainWindow::enableOwnMarkup);
    connect(side_, &panels::SidePanel::importRowRequested, this, &MainWindow::importRow);
    connect(side_, &panels::SidePanel::ownMarkupRequested, this, &MainWindow::useOwnMarkup);
    qApp->installEventFilter(this);
    showProject();
    showTitle();
    // Samples are read once the window is shown.
    QTimer::singleShot(0, this, [this] {
        start_->setSamples(findSamples());
        start_->setRecent(files_->recent());
    });
}

MainWindow::~MainWindow() {
    qApp->removeEventFilter(this);
    // The views use `viewing_` until they are deleted, and members are deleted before children.
    delete compare_;
    delete given_;
    delete takeCentralWidget();
    delete comparison_;
    document_.disconnect();
    survey_.disconnect();
    viewing_.disconnect();
}

QWidget* MainWindow::buildWork() {
    auto* left = new QSplitter(Qt::Vertical, this);
    left->addWidget(row_);
    left->addWidget(axis_);
    left->setChildrenCollapsible(false);
    // At 1280 × 800 the row view has the larger half.
    left->setStretchFactor(0, 1);
    left->setStretchFactor(1, 1);
    left->setSizes({540, 460});
    auto* across = new QSplitter(Qt::Horizontal, this);
    across->addWidget(left);
    auto* right = new QSplitter(Qt::Vertical, this);
    right->addWidget(side_);
    right->addWidget(findings_);
    right->setChildrenCollapsible(false);
    right->setStretchFactor(0, 3);
    right->setStretchFactor(1, 2);
    right->setSizes({390, 310});
    across->addWidget(right);
    across->setChildrenCollapsible(false);
    across->setStretchFactor(0, 1);
    across->setStretchFactor(1, 0);
    across->setSizes({1280 - side_->sizeHint().width(), side_->sizeHint().width()});
    return across;
}

void MainWindow::showTitle() {
    const QString title = files_->title();
    setWindowTitle(title.isEmpty() ? QString("Tenter") : title + "[*] – Tenter");
    setWindowModified(document_.isModified());
}

void MainWindow::showProject() {
    const bool has = document_.hasProject();
    stack_->setCurrentIndex(has ? 1 : 0);
    strip_->setVisible(has);
    for (QAction* action : projectActions_)
        action->setEnabled(has);
    if (has) row_->setFocus();
    strip_->showVariants();
    enableOwnMarkup();
}

void MainWindow::compareWithBrowser() {
    if (compare_ == nullptr) compare_ = new compare::CompareDialog(*comparison_, viewing_, this);
    compare_->show();
    compare_->raise();
    compare_->activateWindow();
}

void MainWindow::importRow() {
    if (given_ == nullptr) {
        given_ = new page_import::ImportDialog(document_, this);
        connect(given_, &page_import::ImportDialog::imported, this, [this](int cards) {
            problems_->hide();
            note_->showMessage(
                QString("Row imported from a page: %1 card%2").arg(cards).arg(cards == 1 ? "" : "s"));
        });
    }
    given_->open();
}

void MainWindow::useOwnMarkup() {
    if (viewing_.edit("Use Tenter’s markup", [](project::Project& project) { project.row().given.reset(); }))
        note_->showMessage("The row has Tenter’s markup now. Undo restores the imported markup.");
}

void MainWindow::enableOwnMarkup() {
    ownMarkup_->setEnabled(document_.hasProject() && viewing_.shown().row().given.has_value());
}

void MainWindow::keyPressEvent(QKeyEvent* event) {
    // Keys that no other widget has handled.
    if (event->key() == Qt::Key_Escape && viewing_.isProposal())
        viewing_.propose(nullptr);
    else if (!navigation_->handleWidthKey(*event))
        QMainWindow::keyPressEvent(event);
}

bool MainWindow::eventFilter(QObject* watched, QEvent* event) {
    const bool press = event->type() == QEvent::KeyPress;
    if (press || event->type() == QEvent::KeyRelease) {
        auto* key = static_cast<QKeyEvent*>(event);
        if (isActiveWindow() && saved_->handleKey(*key)) return true;
        // As in dialogs, Enter clicks the button that has the focus.
        const bool enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
        if (auto* button = qobject_cast<QAbstractButton*>(watched);
            press && enter && button != nullptr && button->hasFocus() && button->window() == this) {
            button->click();
            return true;
        }
        // In the row view and on the axis, arrow keys change the width. Tab goes from card to card.
        if (press && (watched == row_ || watched == axis_) && navigation_->handleWidthKey(*key)) return true;
    }
    if (event->type() == QEvent::ToolTip && showWrapped(*static_cast<QHelpEvent*>(event), watched))
        return true;
    if (event->type() == QEvent::ApplicationDeactivate) saved_->hide();
    return QMainWindow::eventFilter(watched, event);
}

void MainWindow::closeEvent(QCloseEvent* event) {
    if (!files_->maybeSave()) {
        event->ignore();
        return;
    }
    QSettings().setValue(geometryKey, saveGeometry());
    event->accept();
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
    if (event->mimeData()->hasUrls()) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
    const QPoint global = mapToGlobal(event->position().toPoint());
    QStringList files;
    for (const QUrl& url : event->mimeData()->urls())
        if (const QString file = url.toLocalFile(); !file.isEmpty()) files << file;
    if (files.isEmpty()) return;
    event->acceptProposedAction();
    drops_->drop(files, global);
}

}  // namespace tenter::desktop::window
