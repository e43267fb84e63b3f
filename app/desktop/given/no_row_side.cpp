#include "given/no_row_side.h"

#include <QFormLayout>
#include <QVBoxLayout>

#include "controls/inks.h"
#include "given/role_bar.h"
#include "given/wording.h"

namespace tenter::desktop::given {

namespace {

QLabel* wrapped(QWidget* parent) {
    auto* label = new QLabel(parent);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    return label;
}

}  // namespace

NoRowSide::NoRowSide(QWidget* parent)
    : QWidget(parent),
      title_(wrapped(this)),
      says_(wrapped(this)),
      refused_(wrapped(this)),
      form_(new QWidget(this)),
      selector_(new QLineEdit(form_)) {
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(16, 32, 0, 0);
    box->setSpacing(8);
    QFont bold = title_->font();
    bold.setWeight(QFont::DemiBold);
    title_->setFont(bold);
    says_->setAccessibleName("Why no row was found");
    selector_->setPlaceholderText(".walk, then Enter");
    selector_->setFixedWidth(256);
    selector_->setAccessibleName("Selector of the cards");
    refused_->setAccessibleName("What is wrong with the selector");
    auto* form = new QFormLayout(form_);
    form->setContentsMargins(0, 8, 0, 0);
    form->setHorizontalSpacing(8);
    form->addRow("The &cards are", selector_);
    for (QWidget* each : {static_cast<QWidget*>(title_), static_cast<QWidget*>(says_), form_,
                          static_cast<QWidget*>(refused_)})
        box->addWidget(each);
    box->addStretch(1);
    connect(selector_, &QLineEdit::textEdited, this, [this](const QString& text) {
        refused_->setText(text.isEmpty() ? QString() : selectorProblem(text));
    });
    connect(selector_, &QLineEdit::returnPressed, this, [this] {
        const QString text = selector_->text().trimmed();
        if (!text.isEmpty() && selectorProblem(text).isEmpty()) emit cardsSaid(text);
    });
}

void NoRowSide::setTitle(const QString& title, bool cautious) {
    QPalette ink = palette();
    if (cautious) ink.setColor(QPalette::WindowText, controls::caution(ink));
    title_->setPalette(ink);
    title_->setText(title);
    ink.setColor(QPalette::WindowText, controls::caution(ink));
    refused_->setPalette(ink);
}

void NoRowSide::showReading() {
    setTitle("Reading…", false);
    says_->clear();
    refused_->clear();
    form_->hide();
}

void NoRowSide::showProblems(const project::Problems& problems, const project::Problems& refused) {
    setTitle("There is no row to be had in this", true);
    says_->setText(problemSentences(problems));
    refused_->setText(problemSentences(refused));
    form_->show();
}

void NoRowSide::showFailure(const QString& why) {
    setTitle("The page cannot be read", true);
    says_->setText(why);
    refused_->clear();
    form_->hide();
}

}  // namespace tenter::desktop::given
