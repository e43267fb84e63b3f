#include "controls/fold.h"

#include "controls/expander.h"
#include "controls/glyphs.h"

namespace tenter::desktop::controls {

Fold::Fold(const QString& title, QWidget* parent)
    : QWidget(parent),
      title_(title),
      button_(new QToolButton(this)),
      content_(new QWidget(this)),
      box_(new QVBoxLayout(content_)) {
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->setSpacing(4);
    auto* head = new QVBoxLayout;
    head->setContentsMargins(8, 0, 24, 0);
    head->addWidget(button_, 0, Qt::AlignLeft);
    all->addLayout(head);
    all->addWidget(content_);
    box_->setContentsMargins(0, 0, 0, 0);
    box_->setSpacing(4);
    markAsExpander(*button_);
    button_->setAutoRaise(true);
    button_->setIconSize({12, 12});
    button_->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    button_->setFocusPolicy(Qt::StrongFocus);
    connect(button_, &QToolButton::toggled, this, &Fold::setOpen);
    setOpen(false);
}

void Fold::setOpen(bool open) {
    button_->setChecked(open);
    content_->setVisible(open);
    button_->setIcon(expanderIcon(*this, open));
    showTitle();
}

void Fold::setCount(int count) {
    made_ = count;
    showTitle();
}

void Fold::showTitle() {
    const bool showsCount = made_ > 0 && !button_->isChecked();
    button_->setText(showsCount ? QObject::tr("%1, %2 set").arg(title_).arg(made_) : title_);
}

void unfold(QWidget* widget) {
    for (QWidget* above = widget; above != nullptr; above = above->parentWidget())
        if (auto* fold = qobject_cast<Fold*>(above)) fold->setOpen(true);
}

}  // namespace tenter::desktop::controls
