#include "compare/check_offer.h"

#include <QFileInfo>
#include <QHBoxLayout>
#include <utility>

#include "compare/wording.h"
#include "controls/inks.h"

namespace tenter::desktop::compare {

CheckOffer::CheckOffer(Comparison& comparison, QWidget* parent)
    : QFrame(parent),
      comparison_(comparison),
      text_(new QLabel(this)),
      check_(new QPushButton(QObject::tr("&Check"), this)),
      details_(new QPushButton(QObject::tr("Show &details…"), this)) {
    auto* close = new QPushButton(QObject::tr("Close"), this);
    auto* box = new QHBoxLayout(this);
    box->setContentsMargins(16, 8, 16, 8);
    box->setSpacing(8);
    text_->setWordWrap(true);
    text_->setAccessibleName(QObject::tr("Check of the imported row"));
    box->addWidget(text_, 1);
    box->addWidget(check_);
    box->addWidget(details_);
    box->addWidget(close);
    for (QPushButton* button : {check_, details_, close})
        button->setAutoDefault(false);
    connect(check_, &QPushButton::clicked, this, &CheckOffer::startOrStop);
    connect(details_, &QPushButton::clicked, this, &CheckOffer::detailsRequested);
    connect(close, &QPushButton::clicked, this, &QWidget::hide);
    connect(&comparison_, &Comparison::changed, this, &CheckOffer::updateState);
    connect(&comparison_, &Comparison::failed, this, [this](const QString& why) {
        failure_ = why;
        updateState();
    });
    hide();
}

void CheckOffer::offer(const QString& file, std::vector<Browser> browsers) {
    file_ = file;
    browsers_ = std::move(browsers);
    isOurs_ = false;
    failure_.clear();
    updateState();
    setVisible(!file_.isEmpty() && !browsers_.empty());
}

void CheckOffer::startOrStop() {
    if (isOurs_ && comparison_.isRunning()) {
        comparison_.cancel();
        return;
    }
    failure_.clear();
    isOurs_ = true;
    comparison_.start(browsers_.front(), {}, file_);
}

void CheckOffer::updateState() {
    if (browsers_.empty()) return;
    const bool running = isOurs_ && comparison_.isRunning();
    check_->setText(running ? QObject::tr("&Stop")
                            : QObject::tr("&Check in %1").arg(browsers_.front().title));
    details_->setVisible(isOurs_);
    QPalette ink = palette();
    if (isOurs_ && !failure_.isEmpty()) ink.setColor(QPalette::WindowText, controls::caution(ink));
    text_->setPalette(ink);
    if (!isOurs_) {
        text_->setText(QObject::tr("Check the imported row at every viewport width, on its page %1?")
                           .arg(QFileInfo(file_).fileName()));
        return;
    }
    if (!failure_.isEmpty()) {
        text_->setText(failure_);
        return;
    }
    const QString share = agreementTitle(comparison_);
    text_->setText(headline(comparison_) + (share.isEmpty() ? QString() : ". " + share + '.'));
}

}  // namespace tenter::desktop::compare
