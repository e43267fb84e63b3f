#include "page_import/no_row_notice.h"

#include <QFormLayout>
#include <QVBoxLayout>

#include "controls/inks.h"
#include "controls/selectable_label.h"
#include "controls/text_scale.h"
#include "page_import/role_bar.h"
#include "page_import/wording.h"

namespace tenter::desktop::page_import {

NoRowNotice::NoRowNotice(QWidget* parent)
    : QWidget(parent),
      title_(controls::selectableLabel({}, this)),
      reason_(controls::selectableLabel({}, this)),
      selectorError_(controls::selectableLabel({}, this)),
      form_(new QWidget(this)),
      selector_(new QLineEdit(form_)) {
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(16, 32, 0, 0);
    box->setSpacing(8);
    QFont bold = title_->font();
    bold.setWeight(QFont::DemiBold);
    title_->setFont(bold);
    title_->setAccessibleName(QObject::tr("Result"));
    reason_->setAccessibleName(QObject::tr("Why no row was found"));
    selector_->setPlaceholderText(QObject::tr("such as .walk, then press Enter"));
    selector_->setFixedWidth(controls::scaled(256));
    selector_->setAccessibleName(QObject::tr("Selector of the cards"));
    selectorError_->setAccessibleName(QObject::tr("Problem with the selector"));
    auto* form = new QFormLayout(form_);
    form->setContentsMargins(0, 8, 0, 0);
    form->setHorizontalSpacing(8);
    form->addRow(QObject::tr("&Selector of the cards"), selector_);
    for (QWidget* each : {static_cast<QWidget*>(title_), static_cast<QWidget*>(reason_), form_,
                          static_cast<QWidget*>(selectorError_)})
        box->addWidget(each);
    box->addStretch(1);
    connect(selector_, &QLineEdit::textEdited, this, [this](const QString& text) {
        selectorError_->setText(text.isEmpty() ? QString() : selectorProblem(text));
    });
    connect(selector_, &QLineEdit::returnPressed, this, [this] {
        const QString text = selector_->text().trimmed();
        if (!text.isEmpty() && selectorProblem(text).isEmpty()) Q_EMIT cardSelectorEntered(text);
    });
}

void NoRowNotice::setTitle(const QString& title, bool cautious) {
    QPalette ink = palette();
    if (cautious) ink.setColor(QPalette::WindowText, controls::caution(ink));
    title_->setPalette(ink);
    title_->setText(title);
    ink.setColor(QPalette::WindowText, controls::caution(ink));
    selectorError_->setPalette(ink);
}

void NoRowNotice::showReading() {
    setTitle(QObject::tr("Reading the page…"), false);
    reason_->clear();
    selectorError_->clear();
    form_->hide();
}

void NoRowNotice::showProblems(const project::Problems& problems, const project::Problems& refused,
                               bool isSheet) {
    setTitle(QObject::tr("No row to import"), true);
    reason_->setText(problemSentences(problems));
    selectorError_->setText(problemSentences(refused));
    form_->setVisible(!isSheet);
}

void NoRowNotice::showFailure(const QString& why) {
    setTitle(QObject::tr("This page cannot be read"), true);
    reason_->setText(why);
    selectorError_->clear();
    form_->hide();
}

}  // namespace tenter::desktop::page_import
