#include "panels/variants_section.h"

#include <QHBoxLayout>
#include <QRegularExpression>
#include <algorithm>

#include "controls/number_editors.h"
#include "controls/text_scale.h"
#include "document/wording.h"
#include "panels/into_view.h"
#include "project/cascade.h"
#include "project/titles.h"
#include "solve/answer_table.h"
#include "solve/columns.h"

namespace tenter::desktop::panels {

namespace {

constexpr int mostColumns = 12;

}  // namespace

VariantButtons::VariantButtons(Context& context, QWidget* parent)
    : QWidget(parent),
      context_(context),
      columns_(new controls::NumberField(controls::numberKind(1, mostColumns, 1, 0), this)),
      add_(new QPushButton(QObject::tr("Add variant"), this)),
      remove_(new QPushButton(QObject::tr("Remove variant"), this)),
      result_(new QLabel(this)) {
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(12, 4, 24, 0);
    box->setSpacing(8);
    auto* asked = new QHBoxLayout;
    asked->setSpacing(8);
    auto* before = new QLabel(QObject::tr("Variant with"), this);
    before->setBuddy(columns_);
    columns_->setAccessibleName(QObject::tr("Variant with this many columns"));
    columns_->setAlwaysFilled(true);
    columns_->setFixedWidth(controls::scaled(48));
    asked->addWidget(before);
    asked->addWidget(columns_);
    asked->addWidget(new QLabel(QObject::tr("columns", "after a field: Variant with 3 columns"), this));
    asked->addStretch(1);
    box->addLayout(asked);
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    row->addWidget(add_, 1);
    row->addWidget(remove_);
    box->addLayout(row);
    result_->setWordWrap(true);
    result_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    result_->setAccessibleName(QObject::tr("Result"));
    result_->hide();
    box->addWidget(result_);
    add_->setToolTip(toolTipText(QObject::tr(
        "Adds the same cards with this many columns. Narrower bands get fewer columns, down to one. The "
        "sizes satisfy the wishes.")));
    connect(columns_, &controls::NumberField::amountEdited, this, [this] { isTyped_ = true; });
    connect(columns_, &controls::NumberField::rejected, this,
            [this](const QString& why) { context_.showError(QObject::tr("Columns"), why); });
    connect(add_, &QPushButton::clicked, this, &VariantButtons::addOrStop);
    connect(remove_, &QPushButton::clicked, this, &VariantButtons::remove);
    // After any edit the result, or the variant that is being made, is out of date.
    connect(&context_.session.document, &Document::changed, this, [this] {
        job_.cancel();
        result_->hide();
    });
    connect(&job_, &BackgroundJob::runningChanged, this, [this](bool running) {
        add_->setText(running ? QObject::tr("Stop") : QObject::tr("Add variant"));
        if (!running) result_->hide();
    });
}

void VariantButtons::refresh() {
    const Session& session = context_.session;
    const auto& variants = session.shown.project().row().variants;
    remove_->setEnabled(variants.size() > 1);
    remove_->setAccessibleName(
        QObject::tr("Remove variant %1").arg(variantTitle(variants[session.view.variant()])));
    if (!isTyped_) columns_->setAmount({static_cast<double>(nextColumns()), {}});
}

int VariantButtons::nextColumns() const {
    const project::Project& project = context_.session.shown.project();
    const auto widest = [&](const project::Variant& variant) {
        return project::resolve(project, variant, variant.bands.size() - 1).row.columns.value_or(1);
    };
    const int now = widest(project.row().variants[context_.session.view.variant()]);
    // The next larger count, then on from 1.
    for (int more = 1; more < mostColumns; ++more) {
        const int columns = (now + more - 1) % mostColumns + 1;
        if (std::ranges::find(project.row().variants, columns, widest) == project.row().variants.end())
            return columns;
    }
    return now;
}

namespace {

struct AddedVariant {
    project::Project project;
    QString text;  ///< what was added and how its sizes were found
};

/// `project` with the same row in `columns` columns after variant `from`, its sizes solved.
AddedVariant withVariant(const project::Project& project, std::size_t from, int columns,
                         text::ParagraphStore& store, const std::stop_token& stop) {
    AddedVariant added{project, {}};
    const std::string base = solve::classFor(project.row().variants[from].className, columns);
    std::string name = base;
    for (int n = 2; project.row().findVariant(name); ++n)
        name = base + "-" + std::to_string(n);
    auto& variants = added.project.row().variants;
    variants.insert(variants.begin() + static_cast<std::ptrdiff_t>(from + 1),
                    solve::withColumns(project, from, columns, name, store));
    added.text = QObject::tr("Added the variant %1 with %2.")
                     .arg(variantTitle(variants[from + 1]),
                          QString::fromStdString(project::columnsOf(added.project, variants[from + 1]))) +
                 ' ';
    solve::Options options;
    options.cancellation = stop;
    const solve::Answer answer = solve::solve(added.project, {from + 1}, store, options);
    if (answer.solved) {
        added.project = *answer.solved;
        added.text += QObject::tr("Its sizes satisfy the wishes.");
        return added;
    }
    // If the wishes conflict, the sizes stay as derived from the source.
    added.text += QObject::tr("Its sizes are derived from the variant %1.")
                      .arg(variantTitle(project.row().variants[from]));
    const solve::AnswerTable table = solve::answerTable(added.project, answer, store);
    if (table.conflict) added.text += ' ' + QString::fromStdString(solve::summary(*table.conflict));
    if (!table.notes.empty()) added.text += ' ' + QString::fromStdString(table.notes.front());
    return added;
}

}  // namespace

void VariantButtons::addOrStop() {
    if (job_.isRunning()) return job_.cancel();
    columns_->finish();
    const std::size_t from = context_.session.view.variant();
    job_.start(
        [project = context_.session.document.project(), from,
         columns = static_cast<int>(columns_->amount().value), fonts = fonts_,
         folder = context_.session.document.folder()](const std::stop_token& stop) {
            return withVariant(project, from, columns, fonts->use(project, folder), stop);
        },
        [this, from](AddedVariant added) {
            const bool accepted = context_.edit(QObject::tr("Add variant"), [&](project::Project& project) {
                project = std::move(added.project);
            });
            if (!accepted) return;
            isTyped_ = false;
            context_.session.view.setVariant(from + 1);
            // Shown after the job has ended, which hides what it said on the way.
            QMetaObject::invokeMethod(
                this, [this, text = added.text] { showResult(text); }, Qt::QueuedConnection);
        });
    showResult(QObject::tr("Solving sizes…"));
}

void VariantButtons::showResult(const QString& text) {
    result_->setText(text);
    result_->show();
    bringIntoView(this, result_);
}

void VariantButtons::remove() {
    const std::size_t gone = context_.session.view.variant();
    context_.edit(QObject::tr("Remove variant"), [&](project::Project& project) {
        if (project.row().variants.size() < 2) return;
        project.row().variants.erase(project.row().variants.begin() + static_cast<std::ptrdiff_t>(gone));
    });
}

QString wrongWithClass(const QString& text) {
    static const QRegularExpression shape("^[A-Za-z][A-Za-z0-9_-]*$");
    if (shape.match(text).hasMatch()) return {};
    return QObject::tr("it must start with a letter and have only letters, digits, - and _");
}

}  // namespace tenter::desktop::panels
