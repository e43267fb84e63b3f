#include "panels/solve_box.h"

#include <QHBoxLayout>

#include "document/wording.h"
#include "panels/into_view.h"

namespace tenter::desktop::panels {

namespace {

constexpr std::size_t mostTold = 12;  // sentences; the rest is counted

Viewing::Mark markOf(const project::Project& project, const solve::Told& told, bool conflicts) {
    const solve::Binding& at = *told.at;
    // A band starts just past the breakpoint below it.
    const bool isBelow = project::bandAt(project.variants[at.variant], at.width) < at.band;
    Viewing::Mark mark{at.variant, at.demand.role, isBelow ? at.width + 1 : at.width, at.size, {},
                       {},         conflicts};
    if (at.by.copy) mark.part = {static_cast<int>(at.by.card), static_cast<int>(at.by.part)};
    mark.says = QString::fromStdString(told.says);
    return mark;
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
    says_->setTextFormat(Qt::RichText);
    says_->setTextInteractionFlags(Qt::TextBrowserInteraction);
    connect(says_, &QLabel::linkActivated, this, [this](const QString& link) {
        const auto& marks = context_.viewing.marks();
        if (const auto at = link.toULongLong(); at < marks.size()) context_.viewing.goTo(marks[at]);
    });
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
    context_.viewing.setProposer([this]() -> Viewing::Proposal {
        if (!asked_) return nullptr;
        asked_ = ask();
        return find();
    });
    // Another proposal is looked at.
    connect(&context_.viewing, &Viewing::proposed, this, [this] {
        if (asked_ && context_.viewing.proposal() != solved_) close();
    });
    close();
}

SolveBox::~SolveBox() {
    context_.viewing.setProposer({});
}

SolveBox::Asked SolveBox::ask() const {
    const Viewing& viewing = context_.viewing;
    const project::Project& project = viewing.document().project();
    if (viewing.scope() == Viewing::Scope::AllVariants) return {project, project::everyVariant(project)};
    return {project, {viewing.variant()}};
}

void SolveBox::refresh() {
    solve_->setEnabled(!context_.viewing.showsSaved());
    if (asked_ && !context_.viewing.showsSaved()) solve();
}

void SolveBox::solve() {
    Asked asked = ask();
    if (asked_ == asked) return;
    asked_ = std::move(asked);
    context_.viewing.propose(find());
    bringIntoView(this, solve_);
}

Viewing::Proposal SolveBox::find() {
    const solve::Answer answer =
        solve::solve(asked_->project, asked_->variants, context_.viewing.document().store());
    const bool same = answer.solved && *answer.solved == asked_->project;
    solved_ = answer.solved && !same ? std::make_shared<const project::Project>(*answer.solved) : nullptr;
    clearOffers();
    for (const solve::Loosening& loosening : solve::offered(answer.conflict))
        offer(loosening);
    tell(answer, same);
    take_->setVisible(solved_ != nullptr);
    foot_->show();
    return solved_;
}

void SolveBox::tell(const solve::Answer& answer, bool same) {
    std::vector<Viewing::Mark> marks;
    QString text;
    const auto say = [&](const QString& paragraph) { text += "<p>" + paragraph + "</p>"; };
    if (same) say("The sizes keep every wish as they are.");
    std::size_t told = 0;
    for (const solve::Told& one : solve::told(asked_->project, answer)) {
        const QString says = QString::fromStdString(one.says).toHtmlEscaped();
        QString link;
        if (one.at) {
            const Viewing::Mark mark = markOf(asked_->project, one, !answer.conflict.demands.empty());
            link = QString(" <a href=\"%1\">Go to %2</a>").arg(marks.size()).arg(pixels(mark.width));
            marks.push_back(mark);
        }
        if (told++ < mostTold) say(says + link);
    }
    if (told > mostTold) say(QString("And %1 more, marked on the plot.").arg(told - mostTold));
    says_->setText(text);
    says_->show();
    context_.viewing.setMarks(std::move(marks));
}

void SolveBox::clearOffers() {
    while (QLayoutItem* item = offers_->takeAt(0)) {
        item->widget()->deleteLater();
        delete item;
    }
}

void SolveBox::offer(const solve::Loosening& loosening) {
    const QString wish = QString::fromStdString(solve::said(loosening.demand));
    auto* line = new QWidget(this);
    auto* row = new QHBoxLayout(line);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    // A button does not wrap what it says.
    auto* says = new QLabel((loosening.out ? "Without " : "Rather ") + wish, line);
    says->setWordWrap(true);
    auto* button = new QPushButton("Take this", line);
    button->setAccessibleName("Take this: " + says->text());
    row->addWidget(says, 1);
    row->addWidget(button, 0, Qt::AlignTop);
    connect(button, &QPushButton::clicked, this, [this, loosening] {
        context_.viewing.document().edit("Loosen a wish", [&](project::Project& project) {
            project = solve::loosened(project, loosening);
        });
    });
    offers_->addWidget(line);
}

void SolveBox::take() {
    if (!solved_) return;
    const Viewing::Proposal solved = solved_;
    leave();
    context_.viewing.document().edit("Solve sizes", [&](project::Project& project) { project = *solved; });
    solve_->setFocus();
}

void SolveBox::leave() {
    close();
    context_.viewing.propose(nullptr);
}

void SolveBox::close() {
    asked_.reset();
    solved_.reset();
    clearOffers();
    says_->hide();
    foot_->hide();
    context_.viewing.setMarks({});
}

void SolveBox::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    if (asked_) leave();
}

}  // namespace tenter::desktop::panels
