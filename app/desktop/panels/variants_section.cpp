#include "panels/variants_section.h"

#include <QHBoxLayout>
#include <QRegularExpression>
#include <algorithm>

#include "controls/number_editors.h"
#include "document/wording.h"
#include "panels/into_view.h"
#include "project/cascade.h"
#include "solve/columns.h"
#include "solve/solve.h"

namespace tenter::desktop::panels {

namespace {

constexpr int mostColumns = 12;

}  // namespace

VariantButtons::VariantButtons(Context& context, QWidget* parent)
    : QWidget(parent),
      context_(context),
      columns_(new controls::NumberField(controls::numberKind(1, mostColumns, 1, 0), this)),
      add_(new QPushButton("Add a variant", this)),
      remove_(new QPushButton("Remove", this)),
      says_(new QLabel(this)) {
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(12, 4, 24, 0);
    box->setSpacing(8);
    auto* asked = new QHBoxLayout;
    asked->setSpacing(8);
    auto* before = new QLabel("The same row in", this);
    before->setBuddy(columns_);
    columns_->setAccessibleName("The same row in so many columns");
    columns_->setAlwaysFilled(true);
    columns_->setFixedWidth(48);
    asked->addWidget(before);
    asked->addWidget(columns_);
    asked->addWidget(new QLabel("columns", this));
    asked->addStretch(1);
    box->addLayout(asked);
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    row->addWidget(add_, 1);
    row->addWidget(remove_);
    box->addLayout(row);
    says_->setWordWrap(true);
    says_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    says_->setAccessibleName("What was added");
    says_->hide();
    box->addWidget(says_);
    add_->setToolTip("The same row in so many columns: bands that step down, sizes solved by the wishes");
    connect(columns_, &controls::NumberField::amountEdited, this, [this] { isAsked_ = true; });
    connect(columns_, &controls::NumberField::refused, this,
            [this](const QString& why) { context_.refuse("Columns", why); });
    connect(add_, &QPushButton::clicked, this, &VariantButtons::add);
    connect(remove_, &QPushButton::clicked, this, &VariantButtons::remove);
    // What was said is of the row as it was added.
    connect(&context_.viewing.document(), &Document::changed, says_, &QWidget::hide);
}

void VariantButtons::refresh() {
    const Viewing& viewing = context_.viewing;
    const auto& variants = viewing.shown().variants;
    remove_->setEnabled(variants.size() > 1);
    remove_->setAccessibleName("Remove the variant " + variantTitle(variants[viewing.variant()]));
    if (!isAsked_) columns_->setAmount({static_cast<double>(nextColumns()), {}});
}

int VariantButtons::nextColumns() const {
    const project::Project& project = context_.viewing.shown();
    const auto widest = [&](const project::Variant& variant) {
        return project::resolve(project, variant, variant.bands.size() - 1).row.columns.value_or(1);
    };
    const int now = widest(project.variants[context_.viewing.variant()]);
    // One more, and on; after the most from the least.
    for (int more = 1; more < mostColumns; ++more) {
        const int columns = (now + more - 1) % mostColumns + 1;
        if (std::ranges::find(project.variants, columns, widest) == project.variants.end()) return columns;
    }
    return now;
}

void VariantButtons::add() {
    columns_->finish();
    const std::size_t from = context_.viewing.variant();
    const int columns = static_cast<int>(columns_->amount().value);
    text::ParagraphStore& store = context_.viewing.document().store();
    QString says;
    context_.viewing.document().edit("Add a variant", [&](project::Project& project) {
        const std::string base = solve::classFor(project.variants[from].className, columns);
        std::string name = base;
        for (int n = 2; project.findVariant(name); ++n)
            name = base + "-" + std::to_string(n);
        const QString sister = variantTitle(project.variants[from]);
        project.variants.insert(project.variants.begin() + static_cast<std::ptrdiff_t>(from + 1),
                                solve::inColumns(project, from, columns, name, store));
        says = "Added " + variantTitle(project.variants[from + 1]) + ", class " +
               QString::fromStdString(name) + ". ";
        // By the wishes, if they can be kept; else with sizes after its sister's.
        const solve::Answer answer = solve::solve(project, {from + 1}, store);
        const std::vector<std::string> told = solve::sentences(project, answer);
        if (answer.solved) project = *answer.solved;
        says += answer.solved ? "Its sizes are solved by the wishes."
                              : "Its sizes are after those of " + sister + ", not by the wishes. " +
                                    QString::fromStdString(told.empty() ? std::string() : told.front());
    });
    isAsked_ = false;
    context_.viewing.setVariant(from + 1);
    says_->setText(says);
    says_->show();
    bringIntoView(this, says_);
}

void VariantButtons::remove() {
    const std::size_t gone = context_.viewing.variant();
    context_.viewing.document().edit("Remove a variant", [&](project::Project& project) {
        if (project.variants.size() < 2) return;
        project.variants.erase(project.variants.begin() + static_cast<std::ptrdiff_t>(gone));
    });
}

QString wrongWithClass(const QString& text) {
    static const QRegularExpression shape("^[A-Za-z][A-Za-z0-9_-]*$");
    if (shape.match(text).hasMatch()) return {};
    return "a class name starts with a letter and goes on with letters, digits, - or _";
}

}  // namespace tenter::desktop::panels
