#include "panels/solve_box.h"

#include <QHBoxLayout>
#include <QScrollArea>
#include <QTimer>
#include <numeric>

#include "document/wording.h"

namespace tenter::desktop::panels {

namespace {

constexpr std::size_t mostTold = 6;  // sentences; the rest is counted

QString told(const std::vector<std::string>& sentences) {
    QStringList lines;
    for (std::size_t i = 0; i < sentences.size() && i < mostTold; ++i)
        lines << QString::fromStdString(sentences[i]);
    if (sentences.size() > mostTold)
        lines << QString("And %1 more; tenter-cli solve tells them all.").arg(sentences.size() - mostTold);
    return lines.join("\n\n");
}

}  // namespace

SolveBox::SolveBox(Context& context, QWidget* parent)
    : QWidget(parent),
      context_(context),
      solve_(new QPushButton("Solve sizes", this)),
      says_(new QLabel(this)),
      foot_(new QWidget(this)),
      take_(new QPushButton("Take these sizes", foot_)),
      leave_(new QPushButton("Leave", foot_)),
      offers_(new QVBoxLayout) {
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(12, 4, 24, 0);
    box->setSpacing(8);
    box->addWidget(solve_);
    box->addWidget(foot_);
    says_->setWordWrap(true);
    says_->setTextFormat(Qt::PlainText);
    says_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    says_->setAccessibleName("What decides the sizes");
    box->addWidget(says_);
    offers_->setSpacing(8);
    box->addLayout(offers_);
    auto* row = new QHBoxLayout(foot_);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    row->addWidget(take_);
    row->addWidget(leave_);
    row->addStretch(1);
    solve_->setToolTip("Sizes that keep every wish at every width, in both families of browsers");
    connect(solve_, &QPushButton::clicked, this, [this] {
        asked_.reset();
        solve();
        (solved_ ? take_ : solve_)->setFocus();
    });
    connect(take_, &QPushButton::clicked, this, &SolveBox::take);
    connect(leave_, &QPushButton::clicked, this, &SolveBox::leave);
    leave();
}

SolveBox::Asked SolveBox::ask() const {
    const Viewing& viewing = context_.viewing;
    Asked asked{viewing.document().project(), {}};
    if (viewing.scope() == Viewing::Scope::AllVariants) {
        asked.variants.resize(asked.project.variants.size());
        std::iota(asked.variants.begin(), asked.variants.end(), std::size_t{0});
    } else {
        asked.variants = {viewing.variant()};
    }
    return asked;
}

void SolveBox::refresh() {
    solve_->setEnabled(!context_.viewing.showsSaved());
    if (asked_ && !context_.viewing.showsSaved()) solve();
}

void SolveBox::solve() {
    Asked asked = ask();
    if (asked_ == asked) return;
    asked_ = std::move(asked);
    show(solve::solve(asked_->project, asked_->variants, context_.viewing.document().store()));
}

void SolveBox::show(const solve::Answer& answer) {
    clearOffers();
    solved_.reset();
    const bool same = answer.solved && *answer.solved == asked_->project;
    if (answer.solved && !same) solved_ = std::make_shared<const project::Project>(*answer.solved);
    for (const solve::Loosening& loosening : answer.conflict.loosenings)
        offer(loosening);
    const QString sentences = told(solve::sentences(asked_->project, answer));
    says_->setText(same ? "The sizes keep every wish as they are.\n\n" + sentences : sentences);
    says_->show();
    take_->setVisible(solved_ != nullptr);
    foot_->show();
    context_.viewing.propose(solved_);
    // Once it has its new height.
    QTimer::singleShot(0, this, &SolveBox::comeIntoView);
}

void SolveBox::comeIntoView() {
    for (QWidget* above = parentWidget(); above != nullptr; above = above->parentWidget())
        if (auto* scrolled = qobject_cast<QScrollArea*>(above)) {
            scrolled->ensureWidgetVisible(this, 0, 0);
            // Rather its head than its foot.
            scrolled->ensureWidgetVisible(solve_, 0, 8);
        }
}

void SolveBox::clearOffers() {
    while (QLayoutItem* item = offers_->takeAt(0)) {
        item->widget()->deleteLater();
        delete item;
    }
}

void SolveBox::offer(const solve::Loosening& loosening) {
    const QString wish = QString::fromStdString(solve::said(loosening.demand));
    auto* button = new QPushButton((loosening.out ? "Without: " : "Rather: ") + wish, this);
    button->setToolTip(button->text());
    connect(button, &QPushButton::clicked, this, [this, loosening] {
        context_.viewing.document().edit("Loosen a wish", [&](project::Project& project) {
            project = solve::loosened(project, loosening);
        });
    });
    offers_->addWidget(button);
}

void SolveBox::take() {
    if (!solved_) return;
    const std::shared_ptr<const project::Project> solved = solved_;
    leave();
    context_.viewing.document().edit("Solve sizes", [&](project::Project& project) { project = *solved; });
    solve_->setFocus();
}

void SolveBox::leave() {
    asked_.reset();
    solved_.reset();
    clearOffers();
    says_->hide();
    foot_->hide();
    context_.viewing.propose(nullptr);
}

void SolveBox::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    if (asked_) leave();
}

}  // namespace tenter::desktop::panels
