#include "help/manual_window.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QPushButton>
#include <QSplitter>
#include <QVBoxLayout>
#include <algorithm>

#include "controls/text_scale.h"

namespace tenter::desktop::help {

ManualWindow::ManualWindow(QWidget* parent)
    : QDialog(parent),
      search_(new QLineEdit(this)),
      missing_(new QLabel(QObject::tr("Not found"), this)),
      contents_(new QTreeWidget(this)),
      page_(new ManualPage(this)) {
    setWindowTitle(QObject::tr("Tenter manual"));
    resize(controls::scaled(960), controls::scaled(680));
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(16, 16, 16, 16);
    box->setSpacing(8);
    auto* head = new QHBoxLayout;
    head->setSpacing(8);
    auto* next = new QPushButton(QObject::tr("Find next"), this);
    next->setAutoDefault(false);
    search_->setPlaceholderText(QObject::tr("Find in the manual"));
    search_->setAccessibleName(QObject::tr("Find in the manual"));
    search_->setFixedWidth(controls::scaled(240));
    missing_->setForegroundRole(QPalette::PlaceholderText);
    missing_->hide();
    head->addWidget(search_);
    head->addWidget(next);
    head->addWidget(missing_);
    head->addStretch(1);
    box->addLayout(head);
    auto* split = new QSplitter(Qt::Horizontal, this);
    contents_->setAccessibleName(QObject::tr("Contents"));
    contents_->header()->hide();
    split->addWidget(contents_);
    split->addWidget(page_);
    split->setStretchFactor(1, 1);
    split->setSizes({controls::scaled(260), controls::scaled(660)});
    split->setChildrenCollapsible(false);
    box->addWidget(split, 1);
    connect(search_, &QLineEdit::returnPressed, this, &ManualWindow::findNext);
    connect(search_, &QLineEdit::textEdited, missing_, &QWidget::hide);
    connect(next, &QPushButton::clicked, this, &ManualWindow::findNext);
    connect(contents_, &QTreeWidget::currentItemChanged, this, [this](const QTreeWidgetItem* item) {
        if (item != nullptr) page_->show(item->data(0, Qt::UserRole).toInt());
    });
}

void ManualWindow::setText(const QString& markdown) {
    page_->setText(markdown);
    const QSignalBlocker quiet(contents_);
    contents_->clear();
    QTreeWidgetItem* chapter = nullptr;
    for (const ManualPage::Heading& heading : page_->headings()) {
        constexpr int chapterLevel = 2;
        const bool isChapter = heading.level <= chapterLevel || chapter == nullptr;
        auto* item = isChapter ? new QTreeWidgetItem(contents_) : new QTreeWidgetItem(chapter);
        item->setText(0, heading.words);
        item->setToolTip(0, heading.words);
        item->setData(0, Qt::UserRole, heading.position);
        if (isChapter) chapter = item;
    }
}

void ManualWindow::showTopic(const QString& topic) {
    const auto headings = page_->headings();
    const auto found = std::ranges::find(headings, topic, &ManualPage::Heading::words);
    page_->show(found == headings.end() ? 0 : found->position);
    page_->setFocus(Qt::OtherFocusReason);
}

void ManualWindow::findNext() {
    missing_->setVisible(!page_->findNext(search_->text()));
}

}  // namespace tenter::desktop::help
