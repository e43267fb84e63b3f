#include "window/main_window.h"

#include <QAbstractButton>
#include <QCloseEvent>
#include <QHBoxLayout>
#include <QMenuBar>
#include <QMimeData>
#include <QScreen>
#include <QSettings>
#include <QStatusBar>
#include <QTimer>
#include <QVBoxLayout>

#include "accessible/factory.h"
#include "compare/check_offer.h"
#include "compare/compare_dialog.h"
#include "compare/wording.h"
#include "controls/text_scale.h"
#include "document/refusal.h"
#include "document/wording.h"
#include "new_row/new_row_dialog.h"
#include "page_import/import_dialog.h"
#include "recovery/failure_report.h"
#include "recovery/offer.h"
#include "recovery/recorder.h"
#include "session/changes.h"
#include "sheet_compare/sheet_dialog.h"
#include "window/export_dialogs.h"
#include "window/status_facts.h"

namespace tenter::desktop::window {

namespace {

const QString geometryKey = "geometry";
constexpr int topHeight = 40;               // px
constexpr QSize leastFirstSize{1024, 700};  // px
constexpr QSize mostFirstSize{1760, 1100};  // px
constexpr double shareOfScreen = 0.94;

}  // namespace

MainWindow::MainWindow(Session& session, QWidget* parent)
    : QMainWindow(parent),
      session_(session),
      menus_(new QMenuBar(this)),
      files_(new FileController(session_.document, this)),
      row_(new row::RowView(session_, this)),
      comparison_(new compare::Comparison(session_.layouts, session_.document, this)),
      axis_(new axis::AxisPane(session_, this)),
      side_(new panels::SidePanel(session_, this)),
      findings_(new findings::Panel(session_, this)),
      start_(new start_page::StartPage(this)),
      problems_(new ProblemPanel(this)),
      note_(new StatusNote(this)),
      breaks_(new BreakChoice(session_.view, this)),
      browserZoom_(new BrowserZoom(session_.view, *row_, *note_, this)),
      saved_(new SavedVersion(session_.document, session_.shown, *note_, this)),
      strip_(new Strip(session_.view, session_.layouts, *row_, *side_, this)),
      choices_(new ViewChoices(*row_, *breaks_, this)),
      exports_(new Exports(session_, *note_, *problems_, this)),
      help_(new help::Help(*menus_, *side_, this)),
      audience_(std::make_unique<AudienceImport>(session_.checks, *files_, *note_, *problems_)),
      drops_(
          std::make_unique<Drops>(session_.document, session_.selection, *row_, *files_, *audience_, *note_)),
      navigation_(std::make_unique<Navigation>(session_.view, session_.checks, *axis_, *findings_, *note_)) {
    accessible::install();
    setAcceptDrops(true);
    takeRoom();
    // Menus and the strip share one line, so that the row has more height.
    auto* top = new QWidget(this);
    auto* line = new QHBoxLayout(top);
    line->setContentsMargins(8, 0, 0, 0);
    line->setSpacing(0);
    menus_->setSizePolicy(QSizePolicy::Minimum, QSizePolicy::Fixed);
    line->addWidget(menus_);
    line->addWidget(strip_, 1);
    line->addStretch();
    top->setFixedHeight(controls::scaled(topHeight));
    setMenuWidget(top);

    auto* central = new QWidget(this);
    auto* box = new QVBoxLayout(central);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(0);
    box->addWidget(recovery_ = new recovery::Offer(central));
    box->addWidget(problems_);
    box->addWidget(check_ = new compare::CheckOffer(*comparison_, central));
    stack_ = new QStackedWidget(central);
    stack_->addWidget(start_);
    stack_->addWidget(work_ = new WorkArea(*row_, *axis_, *side_, *findings_, this));
    box->addWidget(stack_, 1);
    setCentralWidget(central);
    statusBar()->setSizeGripEnabled(false);
    statusBar()->setContentsMargins(16, 0, 16, 0);
    statusBar()->addWidget(note_, 1);
    new StatusFacts(session_, *statusBar());
    statusBar()->addPermanentWidget(choices_);
    axis_->addComparisonLane(*comparison_);
    addExportDialogs(*exports_, session_, *this);
    strip_->addExports(*exports_);
    buildMenus();
    // Qt measures its entries from the right edge that it has before it is laid out.
    if (layoutDirection() == Qt::RightToLeft) {
        menus_->setLayoutDirection(Qt::LeftToRight);
        menus_->setMinimumWidth(menus_->sizeHint().width());
        menus_->unsetLayoutDirection();
    }

    connect(start_, &start_page::StartPage::newRowRequested, this, [this] { newRow(); });
    connect(start_, &start_page::StartPage::importRequested, this, [this] { importRow(); });
    connect(start_, &start_page::StartPage::openRequested, files_, &FileController::openDialog);
    connect(start_, &start_page::StartPage::fileRequested, files_, &FileController::open);
    connect(start_, &start_page::StartPage::sampleRequested, files_, &FileController::openSample);
    connect(files_, &FileController::failed, problems_, &ProblemPanel::showProblems);
    connect(files_, &FileController::done, this, [this](const QString& message) {
        problems_->hide();
        note_->showMessage(message);
    });
    connect(&findings_->remedies(), &findings::RowRemedies::applied, note_, [this](const QString& label) {
        note_->showMessage(QObject::tr("Applied: %1. Undo restores the row.").arg(label));
    });
    connect(recovery_, &recovery::Offer::restoreRequested, this, &MainWindow::restoreUnsavedWork);
    connect(files_, &FileController::recentChanged, this, [this] { start_->setRecent(files_->recent()); });
    connect(comparison_, &compare::Comparison::finished, this,
            [this] { note_->showMessage(compare::headline(*comparison_)); });
    connect(comparison_, &compare::Comparison::failed, note_, &StatusNote::showMessage);
    connect(side_, &panels::SidePanel::copied, note_, &StatusNote::showMessage);
    connect(row_, &row::RowView::message, note_, &StatusNote::showMessage);
    connect(&row_->menu(), &row::editing::RowMenu::settingsRequested, this, &MainWindow::showSettings);
    connect(&session_.document, &Document::opened, check_, &QWidget::hide);
    connect(check_, &compare::CheckOffer::detailsRequested, this, [this] {
        compareWithBrowser();
        compare_->setSavedPage(check_->page());
    });
    connect(side_, &panels::SidePanel::importRowRequested, this, [this] { importRow(); });
    connect(side_, &panels::SidePanel::ownMarkupRequested, this, &MainWindow::useOwnMarkup);
    followSession();
    drops_->startNewRow = [this](const QStringList& files) { newRow(files); };
    drops_->startImport = [this](const QString& page) { importRow(page); };
    showProject();
    showTitle();
    // Samples are read once the window is shown.
    QTimer::singleShot(0, this, [this] {
        start_->setSamples(findSamples());
        start_->setRecent(files_->recent());
    });
}

// Panels end their previews when they are hidden. This changes the session, so it must happen while every
// widget exists.
MainWindow::~MainWindow() {
    hide();
}

// The last size, or at the first start most of the screen.
void MainWindow::takeRoom() {
    const QSize room = screen()->availableSize() * shareOfScreen;
    resize(room.expandedTo(leastFirstSize).boundedTo(mostFirstSize));
    if (const auto kept = QSettings().value(geometryKey).toByteArray(); !kept.isEmpty())
        restoreGeometry(kept);
}

void MainWindow::followSession() {
    connect(&session_.document, &Document::opened, this, &MainWindow::showProject);
    connect(&session_.document, &Document::fileChanged, this, &MainWindow::showTitle);
    connect(&session_.scope, &EditScope::refused, this, [this](const project::Problems& problems) {
        note_->showMessage(refusal(session_.document.project(), problems.front()));
    });
    onChange(session_.layouts, LayoutCache::Change::Row, this, &MainWindow::enableOwnMarkup);
}

void MainWindow::showTitle() {
    const QString title = files_->title();
    setWindowTitle(title.isEmpty() ? QString("Tenter") : title + "[*] – Tenter");
    setWindowModified(session_.document.isModified());
}

void MainWindow::showProject() {
    const bool has = session_.document.hasProject();
    stack_->setCurrentWidget(has ? static_cast<QWidget*>(work_) : start_);
    strip_->setVisible(has);
    choices_->setVisible(has);
    for (QAction* action : projectActions_)
        action->setEnabled(has);
    if (has) row_->setFocus();
    enableOwnMarkup();
}

// Opens the panel with the settings of what is selected.
void MainWindow::showSettings() {
    const auto place = session_.selection.place();
    if (!place)
        side_->openPanel(panels::PanelKind::Row);
    else if (!place->part)
        side_->openPanel(panels::PanelKind::Spacing);
    else if (std::holds_alternative<project::PicturePart>(
                 session_.document.project().part(*place->partRef())))
        side_->openPanel(panels::PanelKind::Pictures);
    else
        side_->openPanel(panels::PanelKind::Text);
    side_->setFocus(Qt::ShortcutFocusReason);
}

void MainWindow::compareWithBrowser() {
    if (compare_ == nullptr) compare_ = new compare::CompareDialog(*comparison_, session_, this);
    compare_->show();
    compare_->raise();
    compare_->activateWindow();
}

void MainWindow::newRow(const QStringList& files) {
    if (newRow_ == nullptr) {
        newRow_ = new new_row::NewRowDialog(this);
        connect(newRow_, &new_row::NewRowDialog::created, this, &MainWindow::startProject);
    }
    newRow_->open();
    if (!files.isEmpty()) newRow_->addFiles(files);
}

void MainWindow::importRow(const QString& page) {
    if (given_ == nullptr) {
        given_ = new page_import::ImportDialog(session_.document, this);
        connect(given_, &page_import::ImportDialog::importedAsNew, this,
                [this](const project::Project& project, const std::filesystem::path& folder,
                       const QString& message) {
                    const bool hasPage = given_->reader().result().row.has_value();
                    if (startProject(project, folder, message) && hasPage) offerCheck();
                });
        connect(given_, &page_import::ImportDialog::imported, this, [this](int cards) {
            problems_->hide();
            note_->showMessage(QObject::tr("Row imported from a page: %n card(s)", nullptr, cards));
            offerCheck();
        });
    }
    given_->open();
    if (!page.isEmpty()) given_->openPage(page);
}

void MainWindow::compareSheet() {
    if (sheet_ == nullptr) {
        sheet_ = new sheet_compare::SheetDialog(session_.document, this);
        connect(sheet_, &sheet_compare::SheetDialog::applied, this, [this](int settings) {
            problems_->hide();
            note_->showMessage(QObject::tr("%n setting(s) of the stylesheet applied", nullptr, settings));
        });
    }
    sheet_->open();
}

bool MainWindow::startProject(const project::Project& project, const std::filesystem::path& folder,
                              const QString& message) {
    const std::filesystem::path usual = files_->startFolder().toStdString();
    const bool started = files_->startNew(project, folder.empty() ? usual : folder, message);
    if (started && newRow_ != nullptr) newRow_->reset();
    return started;
}

void MainWindow::offerCheck() {
    check_->offer(QString::fromStdString(given_->reader().file().string()), compare::installedBrowsers());
}

void MainWindow::useOwnMarkup() {
    if (session_.scope.edit(QObject::tr("Use Tenter’s markup"),
                            [](project::Project& project) { project.row().given.reset(); }))
        note_->showMessage(
            QObject::tr("The row has Tenter’s markup now. Undo restores the imported markup."));
}

void MainWindow::revertToSaved() {
    const project::Project saved = session_.document.savedProject();
    if (!session_.document.isModified())
        note_->showMessage(QObject::tr("Nothing has changed since the project was saved or opened."));
    else if (session_.scope.edit(QObject::tr("Revert to saved"),
                                 [&](project::Project& project) { project = saved; }))
        note_->showMessage(QObject::tr("The project is as it was saved. Undo restores your changes."));
}

void MainWindow::enableOwnMarkup() {
    ownMarkup_->setEnabled(session_.document.hasProject() &&
                           session_.shown.project().row().given.has_value());
}

void MainWindow::showPreviewState() {
    preview_->setEnabled(session_.shown.proposal() != nullptr);
    preview_->setChecked(session_.shown.isProposal());
}

void MainWindow::keepUnsavedWork(const QString& folder) {
    recorder_ = new recovery::Recorder(session_.document, folder + "/recovery", this);
    connect(recorder_, &recovery::Recorder::failed, note_, [this](const QString& why) {
        note_->showMessage(QObject::tr("Unsaved changes cannot be kept for a restart.") + ' ' + why);
    });
    recovery_->offer(recovery::leftovers(folder + "/recovery"));
    const QString reports = recovery::crashReports(folder);
    if (reports.isEmpty()) return;
    recovery::removeCrashReports(folder);
    const QString safety =
        recovery_->current() != nullptr
            ? QObject::tr("Your unsaved changes were kept. You can restore them in the window.")
            : QObject::tr("There were no unsaved changes.");
    QTimer::singleShot(0, this, [this, reports, safety] {
        recovery::showFailure(
            this, QObject::tr("Tenter was ended by an internal error."),
            safety + ' ' + QObject::tr("The report helps to fix the error; it has no content of your files."),
            reports);
    });
}

void MainWindow::restoreUnsavedWork() {
    const recovery::Leftover* const leftover = recovery_->current();
    if (leftover == nullptr || !files_->restore(leftover->work)) return;
    recorder_->adopt(leftover->recoveryFile);
    recovery_->next();
}

void MainWindow::changeEvent(QEvent* event) {
    QMainWindow::changeEvent(event);
    // After a change of the file, the person comes back from another program.
    if (event->type() == QEvent::ActivationChange && isActiveWindow())
        QTimer::singleShot(0, files_, &FileController::checkDisk);
}

// Keys that the focused widget does not use.
void MainWindow::keyPressEvent(QKeyEvent* event) {
    if (saved_->handleKey(*event)) return;
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (auto* button = qobject_cast<QAbstractButton*>(focusWidget()); enter && button != nullptr)
        // As in dialogs.
        button->click();
    else if (event->key() == Qt::Key_Escape && session_.shown.proposal() != nullptr)
        session_.shown.propose(nullptr);
    else if (event->key() == Qt::Key_Escape && findings_->isAncestorOf(focusWidget()))
        row_->setFocus(Qt::OtherFocusReason);
    else if (!session_.document.hasProject() || !navigation_->handleWidthKey(*event))
        QMainWindow::keyPressEvent(event);
}

void MainWindow::keyReleaseEvent(QKeyEvent* event) {
    if (!saved_->handleKey(*event)) QMainWindow::keyReleaseEvent(event);
}

void MainWindow::closeEvent(QCloseEvent* event) {
    if (!files_->maybeSave()) {
        event->ignore();
        return;
    }
    // Changes that were not saved are discarded now.
    if (recorder_ != nullptr) recorder_->discard();
    QSettings().setValue(geometryKey, saveGeometry());
    work_->save();
    event->accept();
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
    if (!event->mimeData()->hasUrls()) return;
    event->acceptProposedAction();
    start_->setDropping(true);
}

void MainWindow::dragLeaveEvent(QDragLeaveEvent*) {
    start_->setDropping(false);
}

void MainWindow::dropEvent(QDropEvent* event) {
    start_->setDropping(false);
    const QPoint global = mapToGlobal(event->position().toPoint());
    QStringList files;
    for (const QUrl& url : event->mimeData()->urls())
        if (const QString file = url.toLocalFile(); !file.isEmpty()) files << file;
    if (files.isEmpty()) return;
    event->acceptProposedAction();
    drops_->drop(files, global);
}

}  // namespace tenter::desktop::window
