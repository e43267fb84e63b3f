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
#include "controls/inks.h"
#include "document/engines.h"
#include "document/handover.h"
#include "document/place_font.h"
#include "document/place_picture.h"
#include "document/wording.h"
#include "given/given_dialog.h"

namespace tenter::desktop::window {

namespace {

constexpr int stripHeight = 48;
const QString geometryKey = "geometry";
const QString engineKey = "engine";

/// Held down, it shows the row as it was saved.
constexpr int savedKey = Qt::Key_F2;

}  // namespace

MainWindow::MainWindow(QWidget* parent)
    : QMainWindow(parent),
      viewing_(document_),
      survey_(viewing_),
      files_(new FileDesk(document_, this)),
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
    axis_->addVerdicts(*comparison_);
    buildMenus();

    connect(start_, &StartPage::openWanted, files_, &FileDesk::openAsked);
    connect(start_, &StartPage::fileWanted, files_, &FileDesk::open);
    connect(start_, &StartPage::sampleWanted, files_, &FileDesk::openSample);
    connect(files_, &FileDesk::failed, problems_, &ProblemPanel::tell);
    connect(files_, &FileDesk::done, this, [this](const QString& what) {
        problems_->hide();
        note_->say(what);
    });
    connect(files_, &FileDesk::recentChanged, this, [this] { start_->setRecent(files_->recent()); });
    connect(comparison_, &compare::Comparison::finished, this,
            [this] { note_->say(compare::headline(*comparison_)); });
    connect(comparison_, &compare::Comparison::failed, note_, &StatusNote::say);
    connect(&document_, &Document::opened, this, &MainWindow::showProject);
    // What is edited is what is seen.
    connect(&document_, &Document::changed, asSaved_, [this] { asSaved_->setChecked(false); });
    connect(&document_, &Document::fileChanged, this, &MainWindow::showTitle);
    connect(&viewing_, &Viewing::rowChanged, this, &MainWindow::showVariants);
    connect(&viewing_, &Viewing::profileChanged, this, &MainWindow::showEngine);
    connect(&viewing_, &Viewing::rowChanged, this, &MainWindow::showNotes);
    connect(&viewing_, &Viewing::rowChanged, this, &MainWindow::showGiven);
    connect(side_, &panels::SidePanel::pagesRowWanted, this, &MainWindow::takePagesRow);
    connect(side_, &panels::SidePanel::ownMarkupWanted, this, &MainWindow::useOwnMarkup);
    if (const auto* kept = text::profile(QSettings().value(engineKey).toString().toStdString()))
        viewing_.setProfile(*kept);
    showEngine();
    qApp->installEventFilter(this);
    showProject();
    showTitle();
    // The samples are read once the window stands.
    QTimer::singleShot(0, this, [this] {
        start_->setSamples(findSamples());
        start_->setRecent(files_->recent());
    });
}

MainWindow::~MainWindow() {
    qApp->removeEventFilter(this);
    // The views look at `viewing_` until they are gone, and members go before children.
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
    label->setForegroundRole(QPalette::PlaceholderText);
    variants_ = new controls::Segments(strip);
    variants_->setAccessibleName("Variant");
    search_ = new SettingSearch(*side_, strip);
    search_->setFixedWidth(280);
    auto* breaks = new QLabel("Breaks as", strip);
    breaks->setForegroundRole(QPalette::PlaceholderText);
    engines_ = new controls::Segments(strip);
    engines_->setAccessibleName("Whose line breaks are shown");
    QStringList engines;
    QStringList says;
    for (const text::BreakProfile* profile : text::profiles()) {
        engines << engineTitle(*profile);
        says << "Breaks as " + engineTitle(*profile);
    }
    engines_->setTexts(engines, says);
    box->addWidget(label);
    box->addWidget(variants_);
    all_ = new QToolButton(strip);
    all_->setDefaultAction(row_->allVariantsAction());
    all_->setText("All");
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
    // At 1280 × 800 the row keeps the larger half.
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
    fontNotes_->setAccessibleName("Notes on fonts");
    QPalette ink = fontNotes_->palette();
    ink.setColor(QPalette::WindowText, controls::caution(ink));
    fontNotes_->setPalette(ink);
    givenNote_ = new QLabel("Row taken from a page", this);
    givenNote_->setForegroundRole(QPalette::PlaceholderText);
    givenNote_->setAccessibleName("Whose markup the row has");
    givenNote_->setToolTip(
        "The stylesheet is written for the page’s own elements. Edit, Use our own markup goes back.");
    trialNote_ = new QPushButton(this);
    trialNote_->setFlat(true);
    trialNote_->setToolTip("Back to the row as it is");
    trialNote_->hide();
    connect(trialNote_, &QPushButton::clicked, this, [this] { viewing_.tryOut(std::nullopt); });
    connect(&viewing_, &Viewing::trialChanged, this, [this] {
        const auto& trial = viewing_.trial();
        trialNote_->setVisible(trial.has_value());
        if (trial) trialNote_->setText("Tried: " + trialTitle(trial->kind) + "  ×");
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
void MainWindow::zoomAsReader(double zoom) {
    const double window = viewing_.width() * readerZoom_;
    readerZoom_ = zoom;
    viewing_.setWidth(window / zoom);
    row_->setZoom(zoom);
    const bool whole = viewing_.width() == window / zoom;
    note_->say(
        "A window of " + pixels(window) + " at " + figure(100 * zoom, 0) + " %: the page is " +
        pixels(window / zoom) + " wide" +
        (whole ? QString() : ", narrower than the row is looked at; here at " + pixels(viewing_.width())));
}

void MainWindow::followZoom(double zoom) {
    if (zoom != readerZoom_) readerZoom_ = 1;
    for (QAction* action : readerZooms_->actions())
        action->setChecked(action->data().toDouble() == readerZoom_);
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
        notes << QString::fromStdString(note.family) + ": " + QString::fromStdString(note.says);
    fontNotes_->setText(notes.isEmpty()     ? QString()
                        : notes.size() == 1 ? notes.first()
                                            : QString("%1 notes on fonts").arg(notes.size()));
    fontNotes_->setToolTip(notes.join('\n'));
}

void MainWindow::copyStylesheetOf(const std::vector<std::size_t>& variants) {
    project::Problems problems;
    const auto css = stylesheetOf(document_.project(), variants, problems);
    if (!css) {
        problems_->tell("The stylesheet was not copied: the page’s row is none as it stands.", problems);
        return;
    }
    QGuiApplication::clipboard()->setText(QString::fromStdString(*css));
    if (problems.empty())
        problems_->hide();
    else
        problems_->tell("The stylesheet was copied; of the page’s row there is something to mend.", problems);
    const auto& all = document_.project().variants;
    note_->say("Stylesheet copied: " + figure(static_cast<double>(css->size()) / 1000, 1) + " kB, " +
               (variants.size() == 1 ? QString::fromStdString(all[variants[0]].className)
                                     : QString("all %1 variants").arg(variants.size())) +
               (document_.project().given ? ", for the page’s own row" : "") +
               (viewing_.isProposal() ? "; sizes as they were, not those proposed" : ""));
}

void MainWindow::takePagesRow() {
    if (given_ == nullptr) {
        given_ = new given::GivenDialog(document_, this);
        connect(given_, &given::GivenDialog::taken, this, [this](int cards) {
            problems_->hide();
            note_->say(QString("Row taken from a page: %1 card%2").arg(cards).arg(cards == 1 ? "" : "s"));
        });
    }
    given_->open();
}

void MainWindow::openAudience() {
    const QString file = QFileDialog::getOpenFileName(this, "Open an audience", files_->startFolder(),
                                                      "Comma separated values (*.csv *.txt);;All files (*)");
    if (!file.isEmpty()) readAudience(file);
}

void MainWindow::readAudience(const QString& file) {
    QFile in(file);
    project::Problems problems;
    if (!in.open(QIODevice::ReadOnly)) {
        problems.push_back(
            {file.toStdString(), "", "it cannot be read", "choose a file of comma separated values"});
        problems_->tell("The audience was not opened.", problems);
        return;
    }
    const QString name = QFileInfo(file).fileName();
    const auto audience = checks::readAudience(in.readAll().toStdString(), name.toStdString(), problems);
    if (!audience) {
        problems_->tell("The audience was not opened.", problems);
        return;
    }
    if (problems.empty())
        problems_->hide();
    else
        problems_->tell("The audience was opened; some lines of it were left out.", problems);
    survey_.setAudience(*audience);
    double visits = 0;
    for (const auto& [width, count] : audience->visits)
        visits += count;
    note_->say("Findings are weighed by " + figure(visits, 0) + " visits of " + name);
}

void MainWindow::goToWrap(int direction) {
    const QString says = axis_->goToWrap(direction);
    note_->say(!says.isEmpty() ? says
               : direction > 0 ? QString("Nothing wraps otherwise on a wider page")
                               : QString("Nothing wraps otherwise on a narrower page"));
}

void MainWindow::goToFinding(int direction) {
    if (findings_->go(direction)) return;
    if (survey_.findings().empty())
        note_->say("Nothing was found at any width");
    else
        note_->say(direction > 0 ? "That was the last finding" : "That was the first finding");
}

void MainWindow::useOwnMarkup() {
    document_.edit("Use our own markup", [](project::Project& project) { project.given.reset(); });
    note_->say("The row has our own markup again; undo brings the page’s back");
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
    note_->say(roleTitle(viewing_.role()) + " size copied: " + QString::fromStdString(css));
}

void MainWindow::stepWidth(double by) {
    // Whole widths, also from between them.
    const double width = viewing_.width();
    const double from = by > 0 ? std::floor(width) : std::ceil(width);
    viewing_.setWidth(from + by);
}

bool MainWindow::takeWidthKey(const QKeyEvent& event) {
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
    // What nothing else took.
    if (event->key() == Qt::Key_Escape && viewing_.isProposal())
        viewing_.propose(nullptr);
    else if (!takeWidthKey(*event))
        QMainWindow::keyPressEvent(event);
}

bool MainWindow::eventFilter(QObject* watched, QEvent* event) {
    const bool press = event->type() == QEvent::KeyPress;
    if (press || event->type() == QEvent::KeyRelease) {
        auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() == savedKey && document_.hasProject() && isActiveWindow()) {
            if (!key->isAutoRepeat()) asSaved_->setChecked(press);
            return true;
        }
        // As in dialogs, Enter presses the button that has the keyboard.
        const bool enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
        if (auto* button = qobject_cast<QAbstractButton*>(watched);
            press && enter && button != nullptr && button->hasFocus() && button->window() == this) {
            button->click();
            return true;
        }
        // In the row as on the axis, arrows are widths; Tab goes from card to card.
        if (press && (watched == row_ || watched == axis_) && takeWidthKey(*key)) return true;
    }
    if (event->type() == QEvent::ApplicationDeactivate && asSaved_) asSaved_->setChecked(false);
    return QMainWindow::eventFilter(watched, event);
}

void MainWindow::closeEvent(QCloseEvent* event) {
    if (!files_->mayLeave()) {
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
    for (const QUrl& url : event->mimeData()->urls()) {
        const QString file = url.toLocalFile();
        if (file.isEmpty()) continue;
        event->acceptProposedAction();
        if (file.endsWith(project::fileEnding)) {
            files_->open(file);
            return;
        }
        if (file.endsWith(".csv", Qt::CaseInsensitive)) {
            readAudience(file);
            return;
        }
        if (!document_.hasProject()) {
            note_->say("Open a project first; then pictures and fonts can be dropped in.");
            return;
        }
        if (isFontName(file)) {
            const QString wrong = placeFont(document_, file, viewing_.role());
            note_->say(wrong.isEmpty() ? QString("The font is now that of %1").arg(roleTitle(viewing_.role()))
                                       : wrong);
            return;
        }
        const Viewing::Selection under = placeUnder(global);
        const int card = under.card;
        if (card < 0) {
            note_->say("Drop a picture onto a card, or a .tenter.json file anywhere.");
            return;
        }
        const QString wrong =
            placePicture(document_, static_cast<std::size_t>(card), file,
                         under.part < 0 ? std::nullopt : std::optional(static_cast<std::size_t>(under.part)));
        note_->say(wrong.isEmpty() ? QString("Picture put into card %1").arg(card + 1) : wrong);
        return;
    }
}

}  // namespace tenter::desktop::window
