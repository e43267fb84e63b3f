#include "panels/solve_box.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QSignalBlocker>
#include <utility>

#include "controls/selectable_label.h"
#include "document/wording.h"
#include "panels/into_view.h"
#include "remedy/wording.h"
#include "session/changes.h"

namespace tenter::desktop::panels {

namespace {

// A click is answered at once if the answer takes no longer; a drag keeps its frames.
constexpr int clickWait = 100;  // ms
constexpr int dragWait = 30;    // ms
// A drag has a new answer in every frame; only the last one is worth the comparison of findings.
constexpr int findingsWait = 120;  // ms

QString asText(const std::vector<std::string>& paragraphs) {
    QStringList all;
    for (const std::string& one : paragraphs)
        all << QString::fromStdString(one);
    return all.join("\n\n");
}

QString conflictText(const solve::ConflictTable& conflict) {
    QString text = conflict.wishes.size() == 1 ? QObject::tr("No sizes satisfy this wish:")
                                               : QObject::tr("No sizes satisfy these wishes together:");
    for (const std::string& wish : conflict.wishes)
        text += "\n•\u00A0" + QString::fromStdString(wish);
    return text;
}

void setTextOrHide(QLabel* label, const QString& text) {
    label->setText(text);
    label->setVisible(!text.isEmpty());
}

QLabel* textLabel(const QString& accessibleName, QWidget* parent) {
    auto* label = controls::selectableLabel({}, parent);
    label->setAccessibleName(accessibleName);
    return label;
}

}  // namespace

SolveBox::SolveBox(Context& context, QWidget* parent)
    : QWidget(parent),
      context_(context),
      solve_(new QPushButton(QObject::tr("Solve sizes"), this)),
      progress_(new QWidget(this)),
      stop_(new QPushButton(QObject::tr("Stop"), progress_)),
      foot_(new QWidget),
      apply_(new QPushButton(QObject::tr("Apply sizes"), foot_)),
      discard_(new QPushButton(QObject::tr("Close"), foot_)),
      preview_(new QCheckBox(QObject::tr("Preview (F4)"), foot_)),
      findings_(textLabel(QObject::tr("Findings that come and go"), this)),
      summary_(textLabel(QObject::tr("Result"), this)),
      model_(new AnswerModel(this)),
      view_(new AnswerView(*model_, this)),
      advice_(textLabel(QObject::tr("Advice"), this)),
      resolutions_(new QVBoxLayout) {
    // Cells have a margin of 4 px for their focus ring; all text starts at the same edge.
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(8, 4, 20, 0);
    box->setSpacing(8);
    auto* above = new QVBoxLayout;
    above->setContentsMargins(AnswerView::cellMargin, 0, AnswerView::cellMargin, 0);
    above->addWidget(solve_);
    auto* busy = new QHBoxLayout(progress_);
    busy->setContentsMargins(0, 0, 0, 0);
    busy->setSpacing(8);
    auto* solving = new QLabel(QObject::tr("Solving sizes…"), progress_);
    busy->addWidget(solving, 1);
    busy->addWidget(stop_);
    stop_->setAccessibleName(QObject::tr("Stop solving"));
    progress_->hide();
    above->addWidget(progress_);
    auto* footBox = new QVBoxLayout(foot_);
    footBox->setContentsMargins(24, 8, 24, 8);
    footBox->setSpacing(4);
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    row->addWidget(apply_);
    row->addWidget(discard_);
    row->addStretch(1);
    footBox->addLayout(row);
    footBox->addWidget(preview_);
    preview_->setToolTip(QObject::tr("Show the row with the solved sizes; off: with the current sizes"));
    // The answer can be longer than the panel is high.
    context_.pin(foot_);
    foot_->installEventFilter(this);
    above->addWidget(summary_);
    above->addWidget(findings_);
    box->addLayout(above);
    box->addWidget(view_);
    auto* below = new QVBoxLayout;
    below->setContentsMargins(AnswerView::cellMargin, 0, AnswerView::cellMargin, 0);
    below->addWidget(advice_);
    resolutions_->setSpacing(8);
    below->addLayout(resolutions_);
    box->addLayout(below);
    solve_->setToolTip(toolTipText(
        QObject::tr("Finds sizes that satisfy every wish at every width, in Chromium and Firefox. You see a "
                    "preview before you apply them.")));
    connect(solve_, &QPushButton::clicked, this, [this] {
        task_.reset();
        context_.session.shown.hideProposal(false);
        solve();
        (job_.isRunning() ? stop_ : solved_ ? apply_ : solve_)->setFocus();
    });
    connect(stop_, &QPushButton::clicked, this, [this] {
        discard();
        goBack();
    });
    connect(&job_, &BackgroundJob::runningChanged, this, [this](bool running) {
        if (!running) showProgress(false);
    });
    connect(apply_, &QPushButton::clicked, this, &SolveBox::apply);
    connect(preview_, &QCheckBox::toggled, this,
            [this](bool on) { context_.session.shown.hideProposal(!on); });
    findingsTimer_.setSingleShot(true);
    findingsTimer_.setInterval(findingsWait);
    connect(&findingsTimer_, &QTimer::timeout, this, &SolveBox::compareFindings);
    connect(discard_, &QPushButton::clicked, this, [this] {
        goBack();
        discard();
    });
    connect(view_, &AnswerView::placeChosen, this, [this](const PlotMark& place) {
        goTo(place, context_.session.view, context_.session.selection);
    });
    context_.session.shown.setProposer([this]() -> ShownProject::Proposal {
        if (!task_) return nullptr;
        task_ = currentTask();
        return preview(dragWait);
    });
    onChange(context_.session.shown, ShownProject::Change::Content | ShownProject::Change::Proposal, this,
             &SolveBox::onProposal);
    close();
}

SolveBox::~SolveBox() {
    context_.session.shown.setProposer({});
}

SolveBox::Task SolveBox::currentTask() const {
    const Session& session = context_.session;
    const project::Project& project = session.document.project();
    if (session.scope.layer() == project::CascadeLayer::Style)
        return {project, project::everyVariant(project)};
    return {project, {session.view.variant()}};
}

void SolveBox::refresh() {
    solve_->setEnabled(!context_.session.shown.showsSaved());
    if (task_ && !context_.session.shown.showsSaved()) solve();
}

void SolveBox::solve() {
    Task task = currentTask();
    if (task_ == task) return;
    task_ = std::move(task);
    context_.session.shown.propose(preview(clickWait));
    showAnswer();
    bringIntoView(this, solve_);
}

void SolveBox::onProposal() {
    showAnswer();
    const QSignalBlocker quiet(preview_);
    preview_->setChecked(!context_.session.shown.hidesProposal());
    // A preview of something else replaces this one.
    if (task_ && context_.session.shown.proposal() != solved_) close();
}

ShownProject::Proposal SolveBox::preview(int milliseconds) {
    solved_ = nullptr;
    unshown_.reset();
    isLate_ = false;
    job_.start(
        [task = *task_, kept = kept_, folder = context_.session.document.folder()](std::stop_token stop) {
            if (std::exchange(kept->folder, folder) != folder) kept->memory = {};
            text::ParagraphStore& store = kept->fonts.use(task.project, folder);
            solve::Options options;
            options.cancellation = stop;
            options.memory = &kept->memory;
            Answer result{solve::solve(task.project, task.variants, store, options), {}};
            if (!stop.stop_requested()) result.table = solve::answerTable(task.project, result.answer, store);
            return result;
        },
        [this](Answer answer) { onAnswer(std::move(answer)); });
    if (job_.waitFor(milliseconds)) return solved_;
    isLate_ = true;
    return nullptr;
}

void SolveBox::onAnswer(Answer answer) {
    solved_ = answer.answer.solved && !answer.table.isUnchanged
                  ? std::make_shared<const project::Project>(*answer.answer.solved)
                  : nullptr;
    changed_ = answer.answer.variants;
    unshown_ = std::move(answer);
    if (!isLate_) return;
    const bool hadFocus = stop_->hasFocus();
    context_.session.shown.propose(solved_);
    showAnswer();
    if (hadFocus) (solved_ ? apply_ : solve_)->setFocus();
    bringIntoView(this, solve_);
}

void SolveBox::showAnswer() {
    if (job_.isRunning()) showProgress(true);
    if (!unshown_) return;
    const Answer answer = *std::exchange(unshown_, std::nullopt);
    showTable(answer.table);
    apply_->setVisible(solved_ != nullptr);
    preview_->setVisible(solved_ != nullptr);
    findingsJob_.cancel();
    findings_->setVisible(solved_ != nullptr);
    if (solved_) {
        findings_->setText(QObject::tr("Findings: comparing…"));
        findingsTimer_.start();
    }
    discard_->setText(solved_ ? QObject::tr("Discard") : QObject::tr("Close"));
    showProgress(false);
    foot_->show();
}

void SolveBox::showProgress(bool running) {
    progress_->setVisible(running);
    // What is shown belongs to an earlier state of the project.
    apply_->setEnabled(!running);
    view_->setEnabled(!running);
    for (int i = 0; i < resolutions_->count(); ++i)
        resolutions_->itemAt(i)->widget()->setEnabled(!running);
}

void SolveBox::showTable(const solve::AnswerTable& table) {
    model_->setTable(task_->project, table, context_.session.view.variant());
    clearResolutions();
    QString advice = asText(table.notes);
    if (table.conflict) {
        std::vector<std::string> paragraphs = table.conflict->notes;
        paragraphs.push_back(table.conflict->advice);
        advice = asText(paragraphs);
        for (const solve::Resolution& resolution : table.conflict->resolutions)
            addResolution(resolution);
    }
    setTextOrHide(summary_, table.conflict      ? conflictText(*table.conflict)
                            : table.isUnchanged ? QObject::tr("The current sizes satisfy every wish.")
                                                : QString());
    setTextOrHide(advice_, advice);
    view_->setVisible(model_->rowCount() > 0);
    context_.session.plot.setMarks(model_->marks());
}

void SolveBox::compareFindings() {
    if (!solved_ || !task_) return;
    checks::Options options;
    options.audience = context_.session.checks.audience();
    findingsJob_.start(
        [before = std::make_shared<const project::Project>(task_->project), after = solved_,
         variants = changed_, fonts = findingsFonts_, folder = context_.session.document.folder(),
         options](const std::stop_token& stop) {
            return remedy::effectsOf(*before, *after, variants, fonts->use(*before, folder), options, stop);
        },
        [this](const remedy::Effects& effects) {
            if (!task_) return;
            model_->setEffects(task_->project, effects);
            findings_->setText(QObject::tr("Findings: %1")
                                   .arg(QString::fromStdString(remedy::summaryOf(task_->project, effects))));
        });
}

void SolveBox::clearResolutions() {
    while (QLayoutItem* item = resolutions_->takeAt(0)) {
        item->widget()->deleteLater();
        delete item;
    }
}

void SolveBox::addResolution(const solve::Resolution& resolution) {
    auto* line = new QWidget(this);
    auto* row = new QHBoxLayout(line);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    // A label wraps its text, a button does not.
    auto* label = new QLabel(QString::fromStdString(resolution.text), line);
    label->setWordWrap(true);
    row->addWidget(label, 1);
    resolutions_->addWidget(line);
    if (!resolution.isApplicable) return;
    auto* button = new QPushButton(QObject::tr("Apply"), line);
    button->setAccessibleName(QObject::tr("Apply: %1").arg(label->text()));
    row->addWidget(button, 0, Qt::AlignTop);
    connect(button, &QPushButton::clicked, this, [this, relaxation = resolution.relaxation] {
        context_.edit(QObject::tr("Change a wish"),
                      [&](project::Project& project) { project = solve::relaxed(project, relaxation); });
    });
}

void SolveBox::apply() {
    if (!solved_) return;
    const ShownProject::Proposal solved = solved_;
    goBack();
    discard();
    context_.edit(QObject::tr("Solve sizes"), [&](project::Project& project) { project = *solved; });
}

void SolveBox::discard() {
    close();
    context_.session.shown.propose(nullptr);
}

void SolveBox::close() {
    job_.cancel();
    findingsTimer_.stop();
    findingsJob_.cancel();
    task_.reset();
    solved_.reset();
    unshown_.reset();
    clearResolutions();
    for (QWidget* widget :
         {static_cast<QWidget*>(foot_), static_cast<QWidget*>(summary_), static_cast<QWidget*>(view_),
          static_cast<QWidget*>(advice_), static_cast<QWidget*>(findings_)})
        widget->hide();
    context_.session.plot.setMarks({});
}

// The buttons below the panel are no children of the box.
bool SolveBox::eventFilter(QObject* watched, QEvent* event) {
    if (watched == foot_ && event->type() == QEvent::KeyPress) {
        event->ignore();
        keyPressEvent(static_cast<QKeyEvent*>(event));
        return event->isAccepted();
    }
    return QWidget::eventFilter(watched, event);
}

void SolveBox::keyPressEvent(QKeyEvent* event) {
    if (event->key() != Qt::Key_Escape || !task_) {
        QWidget::keyPressEvent(event);
        return;
    }
    event->accept();
    goBack();
    discard();
}

// Before the table is hidden: a hidden widget passes its focus on to the next one, and the panel scrolls
// there.
void SolveBox::goBack() {
    solve_->setFocus();
    bringIntoView(this, solve_);
}

void SolveBox::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    if (task_) discard();
}

}  // namespace tenter::desktop::panels
