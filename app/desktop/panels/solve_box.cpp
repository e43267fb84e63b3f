#include "panels/solve_box.h"

#include <QHBoxLayout>
#include <QKeyEvent>

#include "panels/into_view.h"

namespace tenter::desktop::panels {

namespace {

constexpr std::size_t mostTold = 12;  // sentences; the rest is counted

Viewing::Mark markOf(const solve::ToldPlace& place, bool conflicts) {
    const solve::Binding& at = place.at;
    Viewing::Mark mark{at.variant, at.demand.role, place.width, at.size, {}, {}, conflicts};
    if (at.by.copy) mark.part = {static_cast<int>(at.by.card), static_cast<int>(at.by.part)};
    mark.says = QString::fromStdString(place.says);
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
    setTabOrder(solve_, take_);
    setTabOrder(take_, leave_);
    setTabOrder(leave_, says_);
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
    // What is too wide for its box is no wish that could be loosened.
    for (const solve::Loosening& loosening : solve::offered(answer.conflict))
        if (loosening.demand.kind != solve::Kind::Words) offer(loosening);
    tell(answer, same);
    take_->setVisible(solved_ != nullptr);
    leave_->setText(solved_ ? "Leave" : "Close");
    foot_->show();
    return solved_;
}

void SolveBox::tell(const solve::Answer& answer, bool same) {
    std::vector<Viewing::Mark> marks;
    QString text;
    // As it is, or spaces within numbers become such as lines break at.
    const auto say = [&](const QString& paragraph) {
        text += "<p style='white-space: pre-wrap'>" + paragraph + "</p>";
    };
    if (same) say("The sizes keep every wish as they are.");
    std::size_t told = 0;
    for (const solve::Told& one : solve::told(asked_->project, answer)) {
        // Each place is a link, in the words that the sentence has for it.
        QString says;
        std::size_t done = 0;
        const auto add = [&](std::size_t end) {
            says += QString::fromStdString(one.says.substr(done, end - done)).toHtmlEscaped();
            done = end;
        };
        for (const solve::ToldPlace& place : one.places) {
            add(place.start);
            if (place.length > 0) {
                says += QString("<a href=\"%1\">").arg(marks.size());
                add(place.start + place.length);
                says += "</a>";
            }
            marks.push_back(markOf(place, !answer.conflict.demands.empty()));
        }
        add(one.says.size());
        if (told++ < mostTold) say(says);
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
    QWidget* before = says_;
    for (int i = 0; i < offers_->count(); ++i)
        before = offers_->itemAt(i)->widget()->findChild<QPushButton*>();
    setTabOrder(before, button);
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

void SolveBox::keyPressEvent(QKeyEvent* event) {
    if (event->key() != Qt::Key_Escape || !asked_) {
        QWidget::keyPressEvent(event);
        return;
    }
    leave();
    solve_->setFocus();
}

void SolveBox::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    if (asked_) leave();
}

}  // namespace tenter::desktop::panels
