#include "panels/proposal_box.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QVBoxLayout>
#include <utility>

#include "panels/into_view.h"
#include "session/changes.h"

namespace tenter::desktop::panels {

ProposalBox::ProposalBox(Context& context, QWidget* parent)
    : QWidget(parent),
      context_(context),
      text_(new QLabel(this)),
      apply_(new QPushButton(QObject::tr("Apply"), this)),
      discard_(new QPushButton(QObject::tr("Close"), this)) {
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(12, 4, 24, 0);
    box->setSpacing(8);
    text_->setWordWrap(true);
    text_->setTextFormat(Qt::PlainText);
    text_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    text_->setAccessibleName(QObject::tr("Preview"));
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    row->addWidget(apply_);
    row->addWidget(discard_);
    row->addStretch(1);
    box->addLayout(row);
    box->addWidget(text_);
    connect(apply_, &QPushButton::clicked, this, &ProposalBox::apply);
    connect(discard_, &QPushButton::clicked, this, &ProposalBox::discard);
    // The proposal was computed for the document as it was.
    connect(&context_.session.document, &Document::changed, this, &ProposalBox::close);
    onChange(context_.session.shown, ShownProject::Change::Proposal, this, [this] {
        if (open_ && context_.session.shown.proposal() != proposal_) close();
    });
    QWidget::hide();
}

void ProposalBox::open(const QString& undoName, const QString& buttonText, ShownProject::Proposal proposal,
                       const QStringList& text) {
    undoName_ = undoName;
    proposal_ = std::move(proposal);
    open_ = true;
    text_->setText(text.join("\n\n"));
    apply_->setText(buttonText);
    apply_->setVisible(proposal_ != nullptr);
    discard_->setText(proposal_ ? QObject::tr("Discard") : QObject::tr("Close"));
    show();
    context_.session.shown.hideProposal(false);
    context_.session.shown.propose(proposal_);
    (proposal_ ? apply_ : discard_)->setFocus();
    bringIntoView(this, apply_->isHidden() ? discard_ : apply_);
}

void ProposalBox::apply() {
    const ShownProject::Proposal applied = std::exchange(proposal_, nullptr);
    if (!applied) return;
    context_.edit(undoName_, [&](project::Project& project) { project = *applied; });
    Q_EMIT closed();
}

void ProposalBox::discard() {
    const bool wasOpen = open_;
    close();
    if (!wasOpen) return;
    context_.session.shown.propose(nullptr);
    Q_EMIT closed();
}

void ProposalBox::close() {
    open_ = false;
    proposal_.reset();
    hide();
}

void ProposalBox::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && open_)
        discard();
    else
        QWidget::keyPressEvent(event);
}

void ProposalBox::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    if (open_) discard();
}

}  // namespace tenter::desktop::panels
