#include "export/export_dialog.h"

#include <QDesktopServices>
#include <QDir>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QStandardPaths>
#include <QUrl>
#include <QVBoxLayout>
#include <utility>

#include "controls/selectable_label.h"
#include "project/file.h"

namespace tenter::desktop::exporting {

namespace {

/// Time without a change of the choices after which a plan starts, ms.
constexpr int planPause = 120;

}  // namespace

ExportDialog::ExportDialog(Session& session, ExportKind kind, QWidget* parent)
    : QDialog(parent),
      session_(session),
      kind_(std::move(kind)),
      destination_(new Destination(kind_.destination, kind_.filter, this)),
      options_(new QFormLayout),
      list_(new FileList(kind_.contentTitle, this)),
      headline_(controls::selectableLabel({}, this)),
      notes_(controls::selectableLabel({}, this)),
      doing_(new QLabel(this)),
      progress_(new QProgressBar(this)),
      open_(new QPushButton(QObject::tr("&Open folder"), this)),
      write_(new QPushButton(kind_.verb, this)),
      close_(new QPushButton(QObject::tr("Close"), this)) {
    setWindowTitle(kind_.title);
    setWindowModality(Qt::WindowModal);
    resize(640, 704);
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(24, 24, 24, 16);
    box->setSpacing(16);
    QLabel* about = controls::selectableLabel({}, this);
    about->setText(kind_.about);
    about->setForegroundRole(QPalette::PlaceholderText);
    box->addWidget(about);
    options_->setHorizontalSpacing(16);
    options_->setVerticalSpacing(8);
    options_->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    options_->addRow(
        kind_.destination == Destination::Kind::Folder ? QObject::tr("&Folder") : QObject::tr("&File"),
        destination_);
    box->addLayout(options_);
    box->addWidget(buildState(), 1);
    auto* foot = new QHBoxLayout;
    foot->setSpacing(8);
    foot->addWidget(open_);
    foot->addStretch(1);
    foot->addWidget(write_);
    foot->addWidget(close_);
    box->addLayout(foot);
    write_->setDefault(true);
    close_->setAutoDefault(false);
    open_->setAutoDefault(false);
    resultButtons_ << open_;
    pause_.setSingleShot(true);
    pause_.setInterval(planPause);

    connect(destination_, &Destination::changed, this, &ExportDialog::replan);
    connect(&pause_, &QTimer::timeout, this, &ExportDialog::startPlan);
    connect(write_, &QPushButton::clicked, this, &ExportDialog::writeOrStop);
    connect(open_, &QPushButton::clicked, this, &ExportDialog::openFolder);
    connect(close_, &QPushButton::clicked, this, &ExportDialog::reject);
}

ExportDialog::~ExportDialog() {
    if (writing_) writing_->request_stop();
}

QWidget* ExportDialog::buildState() {
    auto* state = new QWidget(this);
    auto* box = new QVBoxLayout(state);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(8);
    QFont bold = headline_->font();
    bold.setWeight(QFont::DemiBold);
    headline_->setFont(bold);
    headline_->setAccessibleName(QObject::tr("Result"));
    notes_->setAccessibleName(QObject::tr("Notes"));
    progress_->setTextVisible(false);
    progress_->setFixedHeight(8);
    progress_->setAccessibleName(QObject::tr("Progress"));
    doing_->setForegroundRole(QPalette::PlaceholderText);
    doing_->setAccessibleName(QObject::tr("File being written"));
    box->addWidget(headline_);
    box->addWidget(progress_);
    box->addWidget(doing_);
    box->addWidget(notes_);
    box->addWidget(list_, 1);
    return state;
}

void ExportDialog::addResultButton(QPushButton* button) {
    button->setAutoDefault(false);
    auto* foot = static_cast<QHBoxLayout*>(layout()->itemAt(layout()->count() - 1)->layout());
    foot->insertWidget(static_cast<int>(resultButtons_.size()), button);
    resultButtons_ << button;
    updateState();
}

Choices ExportDialog::choices() const {
    return {session_.document.file(), kind_.key};
}

void ExportDialog::showEvent(QShowEvent* event) {
    QDialog::showEvent(event);
    if (isWriting()) return;
    const Choices remembered = choices();
    const QString last = remembered.value("destination", QString()).toString();
    destination_->setPath(last.isEmpty() ? usualDestination() : destinationAfter(last));
    restore(remembered);
    replan();
}

void ExportDialog::replan() {
    if (isWriting()) return;
    outcome_.reset();
    planning_.cancel();
    pause_.start();
    updateState();
}

void ExportDialog::startPlan() {
    planning_.start(planner(), [this](Plan plan) {
        showPlan(std::move(plan));
        // The job counts as running until this returns.
        QMetaObject::invokeMethod(this, &ExportDialog::updateState, Qt::QueuedConnection);
    });
    updateState();
}

void ExportDialog::showPlan(Plan plan) {
    plan_ = std::move(plan);
    list_->setFiles(plan_.files, plan_.isEstimate);
}

void ExportDialog::writeOrStop() {
    if (writing_) {
        writing_->request_stop();
        updateState();
    } else if (write_->isEnabled()) {
        startWriting();
    }
}

void ExportDialog::startWriting() {
    const Choices remembered = choices();
    remembered.set("destination", destination_->path());
    remember(remembered);
    writing_.emplace();
    progress_->setRange(0, 0);
    doing_->clear();
    // The thread that calls this ends before the dialog does.
    const Report report = [this](const Progress& progress) {
        QMetaObject::invokeMethod(
            this, [this, progress] { showProgress(progress); }, Qt::QueuedConnection);
    };
    // A stop keeps the result: what was written until then is shown.
    work_.start([write = writer(), stop = writing_->get_token(),
                 report](const std::stop_token&) { return write(stop, report); },
                [this](Outcome outcome) { showOutcome(std::move(outcome)); });
    updateState();
}

void ExportDialog::showProgress(const Progress& progress) {
    if (!isWriting()) return;
    progress_->setRange(0, progress.total);
    progress_->setValue(progress.done);
    doing_->setText(doing_->fontMetrics().elidedText(progress.current, Qt::ElideMiddle, width() - 48));
}

void ExportDialog::showOutcome(Outcome outcome) {
    writing_.reset();
    outcome_ = std::move(outcome);
    list_->setFiles(outcome_->files, false);
    updateState();
    if (std::exchange(closesAtEnd_, false)) reject();
}

void ExportDialog::updateState() {
    const bool isDone = outcome_.has_value();
    const QString wrong = !plan_.problem.isEmpty() ? plan_.problem : destination_->problem();
    const bool isWritable = !isPlanning() && wrong.isEmpty() && !plan_.files.empty();
    QStringList notes;
    if (isWriting()) {
        headline_->setText(writing_->stop_requested() ? QObject::tr("Stopping…") : QObject::tr("Writing…"));
    } else if (isDone) {
        const QString total = totalTitle(outcome_->files, false);
        if (!outcome_->failure.isEmpty())
            headline_->setText(outcome_->failure);
        else
            headline_->setText((outcome_->isStopped ? QObject::tr("Stopped. Complete so far: %1")
                                                    : QObject::tr("Written: %1"))
                                   .arg(total));
        notes = outcome_->notes;
    } else if (isPlanning()) {
        headline_->setText(QObject::tr("Reading…"));
    } else if (!wrong.isEmpty()) {
        headline_->setText(wrong);
    } else {
        headline_->setText(QObject::tr("Will be written: %1").arg(totalTitle(plan_.files, plan_.isEstimate)));
        notes = plan_.notes;
    }
    notes_->setText(notes.join('\n'));
    notes_->setVisible(!notes.isEmpty());
    progress_->setVisible(isWriting());
    doing_->setVisible(isWriting());
    for (QPushButton* button : resultButtons_)
        button->setVisible(isDone && !outcome_->files.empty());
    write_->setText(isWriting() ? QObject::tr("Stop") : kind_.verb);
    write_->setEnabled(isWriting() ? !writing_->stop_requested() : isWritable);
    destination_->setEnabled(!isWriting());
    for (int row = 0; row < options_->rowCount(); ++row)
        if (QLayoutItem* item = options_->itemAt(row, QFormLayout::FieldRole); item->widget() != nullptr)
            item->widget()->setEnabled(!isWriting());
}

void ExportDialog::openFolder() {
    QDesktopServices::openUrl(QUrl::fromLocalFile(destination_->folder()));
}

void ExportDialog::reject() {
    if (isWriting()) {
        closesAtEnd_ = true;
        writing_->request_stop();
        updateState();
        return;
    }
    planning_.cancel();
    pause_.stop();
    QDialog::reject();
}

QString ExportDialog::projectFolder() const {
    const QString folder = QString::fromStdString(session_.document.folder().string());
    const QString absolute = QFileInfo(folder).absoluteFilePath();
    if (!folder.isEmpty() && !session_.document.file().empty() && QFileInfo(absolute).isWritable())
        return absolute;
    return QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
}

QString ExportDialog::projectName() const {
    QString name = QString::fromStdString(session_.document.file().filename().string());
    if (name.endsWith(project::fileEnding)) name.chop(static_cast<int>(qstrlen(project::fileEnding)));
    if (name.isEmpty()) name = QString::fromStdString(session_.document.project().name);
    for (QChar& c : name)
        if (c < ' ' || QString("/\\:*?\"<>|").contains(c)) c = '-';
    return name.isEmpty() ? "row" : name;
}

}  // namespace tenter::desktop::exporting
