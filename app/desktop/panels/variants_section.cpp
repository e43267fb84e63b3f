#include "panels/variants_section.h"

#include <QHBoxLayout>
#include <QRegularExpression>

#include "document/wording.h"
#include "solve/columns.h"
#include "solve/solve.h"

namespace tenter::desktop::panels {

VariantButtons::VariantButtons(Context& context, QWidget* parent)
    : QWidget(parent),
      context_(context),
      add_(new QPushButton("Add a variant", this)),
      remove_(new QPushButton("Remove", this)) {
    auto* box = new QHBoxLayout(this);
    box->setContentsMargins(12, 4, 24, 0);
    box->setSpacing(8);
    box->addWidget(add_, 1);
    box->addWidget(remove_);
    add_->setToolTip("The same row with a column more: bands that step down, sizes solved by the wishes");
    connect(add_, &QPushButton::clicked, this, &VariantButtons::add);
    connect(remove_, &QPushButton::clicked, this, &VariantButtons::remove);
}

void VariantButtons::refresh() {
    const Viewing& viewing = context_.viewing;
    const auto& variants = viewing.shown().variants;
    remove_->setEnabled(variants.size() > 1);
    remove_->setAccessibleName("Remove the variant " + variantTitle(variants[viewing.variant()]));
}

void VariantButtons::add() {
    const std::size_t from = context_.viewing.variant();
    text::ParagraphStore& store = context_.viewing.document().store();
    context_.viewing.document().edit("Add a variant", [&](project::Project& project) {
        const std::size_t last = project.variants[from].bands.size() - 1;
        const int columns = context_.viewing.row().settings(last).row.columns.value_or(1) % 12 + 1;
        const std::string base = solve::classFor(project.variants[from].className, columns);
        std::string name = base;
        for (int n = 2; project.findVariant(name); ++n)
            name = base + "-" + std::to_string(n);
        project::Variant variant = solve::inColumns(project, from, columns, name, store);
        variant.name = columnsTitle(columns).toStdString();
        project.variants.insert(project.variants.begin() + static_cast<std::ptrdiff_t>(from + 1),
                                std::move(variant));
        // By the wishes, if they can be kept; else with sizes after its sister's.
        const solve::Answer answer = solve::solve(project, {from + 1}, store);
        if (answer.solved) project = *answer.solved;
    });
    context_.viewing.setVariant(from + 1);
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
