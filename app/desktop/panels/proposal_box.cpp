#include "panels/proposal_box.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QVBoxLayout>
#include <utility>

#include "panels/into_view.h"

namespace tenter::desktop::panels {

ProposalBox::ProposalBox(Context& context, QWidget* parent)
    : QWidget(parent),
      context_(context),
      says_(new QLabel(this)),
      take_(new QPushButton(this)),
      leave_(new QPushButton("Leave", this)) {
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(12, 4, 24, 0);
    box->setSpacing(8);
    says_->setWordWrap(true);
    says_->setTextFormat(Qt::PlainText);
    says_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    says_->setAccessibleName("What is proposed");
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    row->addWidget(take_);
    row->addWidget(leave_);
    row->addStretch(1);
    box->addLayout(row);
    box->addWidget(says_);
    connect(take_, &QPushButton::clicked, this, &ProposalBox::take);
    connect(leave_, &QPushButton::clicked, this, &ProposalBox::leave);
    // What was proposed was of the document as it was.
    connect(&context_.viewing.document(), &Document::changed, this, &ProposalBox::close);
    connect(&context_.viewing, &Viewing::proposed, this, [this] {
        if (open_ && context_.viewing.proposal() != proposal_) close();
    });
    QWidget::hide();
}

void ProposalBox::open(const QString& name, const QString& take, Viewing::Proposal proposal,
                       const QStringList& says) {
    name_ = name;
    proposal_ = std::move(proposal);
    open_ = true;
    says_->setText(says.join("\n\n"));
    take_->setText(take);
    take_->setVisible(proposal_ != nullptr);
    leave_->setText(proposal_ ? "Leave" : "Close");
    show();
    context_.viewing.propose(proposal_);
    (proposal_ ? take_ : leave_)->setFocus();
    bringIntoView(this, take_->isHidden() ? leave_ : take_);
}

void ProposalBox::take() {
    const Viewing::Proposal taken = std::exchange(proposal_, nullptr);
    if (!taken) return;
    context_.viewing.document().edit(name_, [&](project::Project& project) { project = *taken; });
    emit left();
}

void ProposalBox::leave() {
    const bool was = open_;
    close();
    if (!was) return;
    context_.viewing.propose(nullptr);
    emit left();
}

void ProposalBox::close() {
    open_ = false;
    proposal_.reset();
    hide();
}

void ProposalBox::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && open_)
        leave();
    else
        QWidget::keyPressEvent(event);
}

void ProposalBox::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    if (open_) leave();
}

}  // namespace tenter::desktop::panels
