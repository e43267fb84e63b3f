#include "window/main_window.h"

#include <QAbstractButton>
#include <QActionGroup>
#include <QApplication>
#include <QClipboard>
#include <QCloseEvent>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QMenuBar>
#include <QMimeData>
#include <QSettings>
#include <QStatusBar>
#include <QTimer>
#include <cmath>

#include "compare/compare_dialog.h"
#include "compare/wording.h"
#include "controls/glossary.h"
#include "controls/inks.h"
#include "document/handover.h"
#include "document/place_font.h"
#include "document/place_picture.h"
#include "document/refusal.h"
#include "document/wording.h"
#include "page_import/import_dialog.h"
#include "window/tooltips.h"

namespace tenter::desktop::window {

namespace {

constexpr int stripHeight = 48;
const QString geometryKey = "geometry";
const QString engineKey = "engine";

/// Shows the saved version while it is held.
constexpr int savedVersionKey = Qt::Key_F2;

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
      problems_(new ProblemPanel(this)) {
    setAcceptDrops(true);
    resize(1280, 800);
    if (const auto kept = QSettings().value(geometryKey).toByteArray(); !kept.isEmpty())
        restoreGeometry(kept);

    auto* central = new QWidget(this);
    auto* box = new QVBoxLayout(central);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(0);
    box->addWidget(strip_ = buildStrip());
    box->addWidget(problems_);
    stack_ = new QStackedWidget(central);
    stack_->addWidget(start_);
    stack_->addWidget(buildWork());
    box->addWidget(stack_, 1);
    setCentralWidget(central);
    buildStatus();
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
    // An edit must be visible.
    connect(&document_, &Document::changed, showSaved_, [this] { showSaved_->setChecked(false); });
    connect(&document_, &Document::fileChanged, this, &MainWindow::showTitle);
    connect(&viewing_, &Viewing::rowChanged, this, &MainWindow::showVariants);
    connect(&viewing_, &Viewing::profileChanged, this, &MainWindow::showEngine);
    connect(&viewing_, &Viewing::refused, this, [this](const project::Problems& problems) {
        note_->showMessage(refusal(document_.project(), problems.front()));
    });
    connect(&viewing_, &Viewing::rowChanged, this, &MainWindow::showNotes);
    connect(&viewing_, &Viewing::rowChanged, this, &MainWindow::showGiven);
    connect(side_, &panels::SidePanel::importRowRequested, this, &MainWindow::importRow);
    connect(side_, &panels::SidePanel::ownMarkupRequested, this, &MainWindow::useOwnMarkup);
    if (const auto* kept = text::profile(QSettings().value(engineKey).toString().toStdString()))
        viewing_.setProfile(*kept);
    showEngine();
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

QWidget* MainWindow::buildStrip() {
    auto* strip = new QWidget(this);
    strip->setFixedHeight(stripHeight);
    auto* box = new QHBoxLayout(strip);
    box->setContentsMargins(16, 0, 16, 0);
    box->setSpacing(12);
    auto* label = new QLabel("Variant", strip);
    label->setToolTip(glossary::variant);
    label->setForegroundRole(QPalette::PlaceholderText);
    variants_ = new controls::Segments(strip);
    variants_->setAccessibleName("Variant");
    search_ = new SettingSearch(*side_, strip);
    search_->setFixedWidth(280);
    auto* breaks = new QLabel("Line breaks as in", strip);
    breaks->setForegroundRole(QPalette::PlaceholderText);
    engines_ = new controls::Segments(strip);
    engines_->setAccessibleName("Line breaks as in");
    QStringList engines;
    QStringList names;
    for (const text::BreakProfile* profile : text::profiles()) {
        engines << engineTitle(*profile);
        names << "Line breaks as in " + engineTitle(*profile);
    }
    engines_->setTexts(engines, names);
    box->addWidget(label);
    box->addWidget(variants_);
    all_ = new QToolButton(strip);
    all_->setDefaultAction(row_->allVariantsAction());
    all_->setAccessibleName("All variants at this width");
    box->addWidget(all_);
    box->addSpacing(12);
    box->addWidget(breaks);
    box->addWidget(engines_);
    box->addStretch(1);
    box->addWidget(search_);
    connect(variants_, &controls::Segments::chosen, this,
            [this](int index) { viewing_.setVariant(static_cast<std::size_t>(index)); });
    connect(engines_, &controls::Segments::chosen, this,
            [this](int index) { chooseEngine(*text::profiles()[static_cast<std::size_t>(index)]); });
    return strip;
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

void MainWindow::buildStatus() {
    note_ = new StatusNote(this);
    fontNotes_ = new QLabel(this);
    fontNotes_->setAccessibleName("Font problems");
    QPalette ink = fontNotes_->palette();
    ink.setColor(QPalette::WindowText, controls::caution(ink));
    fontNotes_->setPalette(ink);
    givenNote_ = new QLabel("Row imported from a page", this);
    givenNote_->setForegroundRole(QPalette::PlaceholderText);
    givenNote_->setAccessibleName("Markup of the row");
    givenNote_->setToolTip(
        "The stylesheet is for the markup of the imported page. For a stylesheet with Tenter’s own markup, "
        "choose Edit › Use Tenter’s markup.");
    trialNote_ = new QPushButton(this);
    trialNote_->setFlat(true);
    trialNote_->setToolTip("End this text test");
    trialNote_->hide();
    connect(trialNote_, &QPushButton::clicked, this, [this] { viewing_.tryOut(std::nullopt); });
    connect(&viewing_, &Viewing::trialChanged, this, [this] {
        const auto& trial = viewing_.trial();
        trialNote_->setVisible(trial.has_value());
        if (trial) trialNote_->setText("Text test: " + trialTitle(trial->kind) + "  ×");
    });
    statusBar()->setSizeGripEnabled(false);
    statusBar()->setContentsMargins(16, 0, 16, 0);
    statusBar()->addWidget(note_, 1);
    statusBar()->addPermanentWidget(trialNote_);
    statusBar()->addPermanentWidget(givenNote_);
    statusBar()->addPermanentWidget(fontNotes_);
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
    showVariants();
    showGiven();
}

void MainWindow::showVariants() {
    QStringList titles;
    QStringList names;
    for (const project::Variant& variant : viewing_.shown().variants) {
        titles << variantTitle(variant);
        names << variantTitle(variant) + ", class " + QString::fromStdString(variant.className);
    }
    variants_->setTexts(titles, names);
    variants_->setCurrent(static_cast<int>(viewing_.variant()));
    all_->setVisible(titles.size() > 1);
}

void MainWindow::compareWithBrowser() {
    if (compare_ == nullptr) compare_ = new compare::CompareDialog(*comparison_, viewing_, this);
    compare_->show();
    compare_->raise();
    compare_->activateWindow();
}

void MainWindow::showEngine() {
    for (std::size_t i = 0; i < text::profiles().size(); ++i) {
        if (text::profiles()[i] != &viewing_.profile()) continue;
        engines_->setCurrent(static_cast<int>(i));
        engineActions_[static_cast<qsizetype>(i)]->setChecked(true);
    }
}

// A reader at zoom z on a viewport W sees the page laid out at W / z. CSSOM View 1, § 2: page zoom.
void MainWindow::setBrowserZoom(double zoom) {
    const double window = viewing_.width() * browserZoom_;
    browserZoom_ = zoom;
    viewing_.setWidth(window / zoom);
    row_->setZoom(zoom);
    const QString cut = viewing_.width() == window / zoom ? QString()
                                                          : " Shown at " + pixels(viewing_.width()) +
                                                                ", the end of the project’s range of widths.";
    note_->showMessage("A browser window of " + pixels(window) + " at " + percent(zoom) +
                       " zoom has a viewport of " + pixels(window / zoom) + '.' + cut);
}

void MainWindow::onRowZoom(double zoom) {
    if (zoom != browserZoom_) browserZoom_ = 1;
    for (QAction* action : browserZooms_->actions())
        action->setChecked(action->data().toDouble() == browserZoom_);
}

void MainWindow::chooseEngine(const text::BreakProfile& profile) {
    viewing_.setProfile(profile);
    QSettings().setValue(
        engineKey, QString::fromUtf8(profile.name().data(), static_cast<qsizetype>(profile.name().size())));
}

void MainWindow::showNotes() {
    if (!document_.hasProject()) return;
    QStringList notes;
    for (const text::FontNote& note : viewing_.row().notes())
        notes << QString::fromStdString(note.family) + " " + QString::fromStdString(note.says);
    fontNotes_->setText(notes.isEmpty()     ? QString()
                        : notes.size() == 1 ? notes.first()
                                            : QString("%1 font problems").arg(notes.size()));
    fontNotes_->setToolTip(notes.join('\n'));
}

void MainWindow::copyStylesheetOf(const std::vector<std::size_t>& variants) {
    project::Problems problems;
    const auto css = stylesheetOf(document_.project(), variants, problems);
    if (!css) {
        problems_->showProblems("The stylesheet was not copied. The imported row has these problems:",
                                problems);
        return;
    }
    QGuiApplication::clipboard()->setText(QString::fromStdString(*css));
    if (problems.empty())
        problems_->hide();
    else
        problems_->showProblems("The stylesheet was copied. The imported row has these problems:", problems);
    const auto& all = document_.project().variants;
    note_->showMessage("Stylesheet copied: " + figure(static_cast<double>(css->size()) / 1000, 1) +
                       "\u00A0kB, " +
                       (variants.size() == 1 ? QString::fromStdString(all[variants[0]].className)
                                             : QString("all %1 variants").arg(variants.size())) +
                       (document_.project().given ? ", for the imported row" : "") +
                       (viewing_.isProposal() ? ", with the current sizes, not those of the preview" : ""));
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

void MainWindow::importAudience() {
    const QString file = QFileDialog::getOpenFileName(this, "Import audience", files_->startFolder(),
                                                      "Comma-separated values (*.csv *.txt);;All files (*)");
    if (!file.isEmpty()) readAudience(file);
}

void MainWindow::readAudience(const QString& file) {
    QFile in(file);
    project::Problems problems;
    if (!in.open(QIODevice::ReadOnly)) {
        problems.push_back(
            {file.toStdString(), "", "the file cannot be read", "choose a CSV file that you may read"});
        problems_->showProblems("The audience was not imported.", problems);
        return;
    }
    const QString name = QFileInfo(file).fileName();
    const auto audience = checks::readAudience(in.readAll().toStdString(), name.toStdString(), problems);
    if (!audience) {
        problems_->showProblems("The audience was not imported.", problems);
        return;
    }
    if (problems.empty())
        problems_->hide();
    else
        problems_->showProblems("The audience was imported without these lines:", problems);
    survey_.setAudience(*audience);
    double visits = 0;
    for (const auto& [width, count] : audience->visits)
        visits += count;
    note_->showMessage("Findings are weighted by " + figure(visits, 0) + " visits from " + name);
}

void MainWindow::goToWrap(int direction) {
    const QString says = axis_->goToWrap(direction);
    note_->showMessage(!says.isEmpty() ? says
                       : direction > 0 ? QString("No wrap point at a wider viewport")
                                       : QString("No wrap point at a narrower viewport"));
}

void MainWindow::goToFinding(int direction) {
    if (findings_->go(direction)) return;
    if (survey_.findings().empty())
        note_->showMessage("There are no findings");
    else
        note_->showMessage(direction > 0 ? "This is the last finding" : "This is the first finding");
}

void MainWindow::useOwnMarkup() {
    if (viewing_.edit("Use Tenter’s markup", [](project::Project& project) { project.given.reset(); }))
        note_->showMessage("The row has Tenter’s markup now. Undo restores the imported markup.");
}

void MainWindow::showGiven() {
    const bool given = document_.hasProject() && viewing_.shown().given.has_value();
    ownMarkup_->setEnabled(given);
    givenNote_->setVisible(given);
}

void MainWindow::copySize() {
    const std::string css =
        fontSizeOf(document_.project(), viewing_.variant(), viewing_.band(), viewing_.role());
    QGuiApplication::clipboard()->setText(QString::fromStdString(css));
    note_->showMessage(roleTitle(viewing_.role()) + " font size copied: " + QString::fromStdString(css));
}

void MainWindow::stepWidth(double by) {
    // To whole widths, also from a width between them.
    const double width = viewing_.width();
    const double from = by > 0 ? std::floor(width) : std::ceil(width);
    viewing_.setWidth(from + by);
}

bool MainWindow::handleWidthKey(const QKeyEvent& event) {
    const auto modifiers = event.modifiers() & ~Qt::KeypadModifier;
    const int direction = event.key() == Qt::Key_Right ? 1 : event.key() == Qt::Key_Left ? -1 : 0;
    if (direction == 0 || !document_.hasProject()) return false;
    if (modifiers == Qt::NoModifier)
        stepWidth(direction);
    else if (modifiers == Qt::ShiftModifier)
        stepWidth(10 * direction);
    else if (modifiers == Qt::ControlModifier)
        axis_->goToBandEdge(direction);
    else
        return false;
    return true;
}

void MainWindow::keyPressEvent(QKeyEvent* event) {
    // Keys that no other widget has handled.
    if (event->key() == Qt::Key_Escape && viewing_.isProposal())
        viewing_.propose(nullptr);
    else if (!handleWidthKey(*event))
        QMainWindow::keyPressEvent(event);
}

bool MainWindow::eventFilter(QObject* watched, QEvent* event) {
    const bool press = event->type() == QEvent::KeyPress;
    if (press || event->type() == QEvent::KeyRelease) {
        auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() == savedVersionKey && document_.hasProject() && isActiveWindow()) {
            if (!key->isAutoRepeat()) showSaved_->setChecked(press);
            return true;
        }
        // As in dialogs, Enter clicks the button that has the focus.
        const bool enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
        if (auto* button = qobject_cast<QAbstractButton*>(watched);
            press && enter && button != nullptr && button->hasFocus() && button->window() == this) {
            button->click();
            return true;
        }
        // In the row view and on the axis, arrow keys change the width. Tab goes from card to card.
        if (press && (watched == row_ || watched == axis_) && handleWidthKey(*key)) return true;
    }
    if (event->type() == QEvent::ToolTip && showWrapped(*static_cast<QHelpEvent*>(event), watched))
        return true;
    if (event->type() == QEvent::ApplicationDeactivate && showSaved_) showSaved_->setChecked(false);
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

Viewing::Selection MainWindow::placeUnder(const QPoint& global) const {
    const QPoint at = row_->viewport()->mapFromGlobal(global);
    if (!row_->viewport()->rect().contains(at)) return viewing_.selection();
    return row_->placeAt(at).value_or(viewing_.selection());
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
    const QString& first = files.first();
    if (first.endsWith(project::fileEnding)) {
        files_->open(first);
    } else if (first.endsWith(".csv", Qt::CaseInsensitive)) {
        readAudience(first);
    } else if (!document_.hasProject()) {
        note_->showMessage("Open a project first. Then drop pictures and fonts.");
    } else if (isFontName(first)) {
        const QString wrong = placeFont(document_, first, viewing_.role());
        note_->showMessage(wrong.isEmpty() ? roleTitle(viewing_.role()) + " now has this font" : wrong);
    } else {
        dropPictures(files, global);
    }
}

void MainWindow::dropPictures(const QStringList& files, const QPoint& global) {
    const bool makesCards = document_.project().cards.empty();
    const Viewing::Selection under = makesCards ? Viewing::Selection{0, -1} : placeUnder(global);
    if (under.card < 0) {
        note_->showMessage("Drop a picture on a card, or a .tenter.json file anywhere.");
        return;
    }
    const auto part = under.part < 0 ? std::nullopt : std::optional(static_cast<std::size_t>(under.part));
    const PlacedPictures done = placePictures(document_, static_cast<std::size_t>(under.card), files, part);
    if (!done.problem.isEmpty()) {
        note_->showMessage(done.problem);
        return;
    }
    const auto counted = [](std::size_t count, const char* one) {
        return QString::number(count) + ' ' + one + (count == 1 ? "" : "s");
    };
    QString message;
    if (makesCards)
        message = counted(done.placed, "card") + " added. Edit the text in the Words panel.";
    else if (done.placed == 1)
        message = QString("Picture placed in card %1.").arg(under.card + 1);
    else
        message = QString("Pictures placed in cards %1 to %2.")
                      .arg(under.card + 1)
                      .arg(under.card + static_cast<int>(done.placed));
    if (const std::size_t unused = static_cast<std::size_t>(files.size()) - done.placed; unused > 0)
        message += ' ' + counted(unused, "picture") + (unused == 1 ? " was" : " were") +
                   " not used, because there are no more cards.";
    note_->showMessage(message);
}

}  // namespace tenter::desktop::window
