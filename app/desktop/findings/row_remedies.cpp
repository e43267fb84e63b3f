#include "findings/row_remedies.h"

#include <QEvent>
#include <QScrollBar>
#include <utility>

namespace tenter::desktop::findings {

RowRemedies::RowRemedies(Session& session, const Model& model, QListView& list, Delegate& delegate,
                         QObject* parent)
    : QObject(parent), session_(session), model_(model), list_(list), delegate_(delegate) {
    delegate_.setRoomBelow([this](int width) { return box_ ? box_->heightOfContent(width) : 0; });
    connect(&search_, &RemedySearch::answered, this, &RowRemedies::showAnswer);
}

void RowRemedies::follow() {
    const int row = delegate_.open();
    if (row < 0 || row >= model_.rowCount() || !session_.shown.showsDocument()) return close();
    if (box_ && row_ != row) close();
    if (!session_.checks.isFresh()) {
        // What is shown belongs to an earlier state of the row.
        asked_.reset();
        search_.cancel();
        if (box_) box_->setEnabled(false);
        return;
    }
    if (!box_) open(row);
    ask(model_.finding(row));
}

void RowRemedies::close() {
    asked_.reset();
    search_.cancel();
    if (!box_) return;
    RemedyBox* const box = box_;
    const int row = std::exchange(row_, -1);
    box_.clear();
    if (list_.indexWidget(model_.index(row)) == box) list_.setIndexWidget(model_.index(row), nullptr);
    if (row < model_.rowCount()) Q_EMIT delegate_.sizeHintChanged(model_.index(row));
}

void RowRemedies::open(int row) {
    row_ = row;
    box_ = new RemedyBox;
    list_.setIndexWidget(model_.index(row), box_);
    connect(box_, &RemedyBox::chosen, this, &RowRemedies::apply);
    resizeRow();
}

void RowRemedies::ask(const checks::Finding& finding) {
    Asked asked{
        session_.document.revision(), session_.view.variant(), finding.key, finding.says, finding.share,
        session_.shown.trial()};
    if (asked_ == asked) {
        if (search_.answer()) showAnswer();
        return;
    }
    asked_ = std::move(asked);
    RemedySearch::Question question;
    question.project = session_.document.project();
    question.variant = session_.view.variant();
    question.finding = finding;
    question.checks.audience = session_.checks.audience();
    question.trial = session_.shown.trial();
    question.folder = session_.document.folder();
    search_.ask(std::move(question));
}

void RowRemedies::showAnswer() {
    if (!box_ || !search_.answer()) return;
    box_->setEnabled(true);
    box_->showRemedies(session_.document.project(), *search_.answer(),
                       session_.checks.audience().empty() ? "widths" : "visits");
    QWidget* before = &list_;
    for (RemedyButton* button : box_->buttons()) {
        QWidget::setTabOrder(before, button);
        before = button;
        button->installEventFilter(this);
    }
    resizeRow();
}

void RowRemedies::resizeRow() {
    const QModelIndex index = model_.index(row_);
    Q_EMIT delegate_.sizeHintChanged(index);
    if (list_.currentIndex() != index) return;
    const bool tall = list_.visualRect(index).height() > list_.viewport()->height();
    list_.scrollTo(index, tall ? QAbstractItemView::PositionAtTop : QAbstractItemView::EnsureVisible);
}

// A remedy that has the focus is in sight, with its effect.
bool RowRemedies::eventFilter(QObject* watched, QEvent* event) {
    if (auto* button = qobject_cast<RemedyButton*>(watched);
        button != nullptr && event->type() == QEvent::FocusIn) {
        const int top = button->mapTo(list_.viewport(), QPoint(0, 0)).y();
        const int below = top + button->height() + 8 - list_.viewport()->height();
        if (below > 0) list_.verticalScrollBar()->setValue(list_.verticalScrollBar()->value() + below);
        if (top < 0) list_.verticalScrollBar()->setValue(list_.verticalScrollBar()->value() + top - 8);
    }
    return QObject::eventFilter(watched, event);
}

void RowRemedies::apply(int index) {
    if (!search_.answer() || !asked_ || asked_->revision != session_.document.revision()) return;
    const remedy::Remedy remedy = search_.answer()->at(static_cast<std::size_t>(index));
    // The button goes with its finding.
    list_.setFocus();
    const QString label = QString::fromStdString(remedy.label);
    if (session_.scope.edit(label, [&](project::Project& project) { project = remedy.project; }))
        Q_EMIT applied(label);
}

}  // namespace tenter::desktop::findings
