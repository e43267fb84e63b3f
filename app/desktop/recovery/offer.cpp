#include "recovery/offer.h"

#include <QFile>
#include <QHBoxLayout>
#include <QLocale>
#include <QVBoxLayout>

#include "controls/question.h"
#include "row/row_thumbnail.h"

namespace tenter::desktop::recovery {

namespace {

constexpr QSize thumbnailSize{144, 96};  // px
constexpr double viewportWidth = 1200;   // CSS px, as on the start page

QString nameOf(const UnsavedWork& work) {
    return work.file.empty() ? QString::fromStdString(work.project.name)
                             : QString::fromStdString(work.file.filename().string());
}

}  // namespace

Offer::Offer(QWidget* parent) : QFrame(parent), picture_(new QLabel(this)), text_(new QLabel(this)) {
    setAutoFillBackground(true);
    setAccessibleName(QObject::tr("Unsaved changes"));
    auto* restore = new QPushButton(QObject::tr("&Restore changes"), this);
    auto* discard = new QPushButton(QObject::tr("&Discard changes…"), this);
    auto* later = new QPushButton(QObject::tr("No&t now"), this);
    picture_->setFixedSize(thumbnailSize);
    picture_->setFrameShape(QFrame::StyledPanel);
    picture_->setAccessibleName(QObject::tr("Thumbnail of the unsaved row"));
    text_->setWordWrap(true);
    text_->setTextFormat(Qt::PlainText);
    text_->setAccessibleName(QObject::tr("What can be restored"));
    auto* box = new QHBoxLayout(this);
    box->setContentsMargins(16, 8, 16, 8);
    box->setSpacing(16);
    box->addWidget(picture_);
    auto* side = new QVBoxLayout;
    side->setSpacing(8);
    side->addStretch(1);
    side->addWidget(text_);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(8);
    for (QPushButton* button : {restore, discard, later}) {
        button->setAutoDefault(false);
        buttons->addWidget(button);
    }
    buttons->addStretch(1);
    side->addLayout(buttons);
    side->addStretch(1);
    box->addLayout(side, 1);
    connect(restore, &QPushButton::clicked, this, &Offer::restoreRequested);
    connect(discard, &QPushButton::clicked, this, &Offer::discard);
    // The files stay for the next start.
    connect(later, &QPushButton::clicked, this, [this] { offer({}); });
    hide();
}

void Offer::offer(std::vector<Leftover> leftovers) {
    leftovers_ = std::move(leftovers);
    showCurrent();
}

void Offer::next() {
    if (leftovers_.empty()) return;
    leftovers_.erase(leftovers_.begin());
    showCurrent();
}

void Offer::showCurrent() {
    job_.cancel();
    setVisible(!leftovers_.empty());
    if (leftovers_.empty()) return;
    const UnsavedWork& work = leftovers_.front().work;
    const QString time = QLocale().toString(work.time.toLocalTime(), QLocale::ShortFormat);
    QString text = QObject::tr("Tenter closed unexpectedly. It kept the unsaved changes of “%1” from %2.")
                       .arg(nameOf(work), time);
    if (work.file.empty()) text += ' ' + QObject::tr("This project was never saved.");
    if (leftovers_.size() > 1)
        text += ' ' + QObject::tr("%n more can be restored after it.", "projects",
                                  static_cast<int>(leftovers_.size()) - 1);
    text_->setText(text);
    picture_->clear();
    const double ratio = devicePixelRatioF();
    job_.start(
        [project = work.project, folder = work.folder, size = (QSizeF(thumbnailSize) * ratio).toSize()](
            const std::stop_token&) { return row::rowThumbnail(project, folder, viewportWidth, size); },
        [this, ratio](const QImage& image) {
            QPixmap shown = QPixmap::fromImage(image);
            shown.setDevicePixelRatio(ratio);
            picture_->setPixmap(shown);
        });
}

void Offer::discard() {
    enum { Cancel, DiscardChanges };
    const int answer = controls::ask(
        this, QObject::tr("Discard unsaved changes"),
        QObject::tr("Discard the unsaved changes of “%1”?").arg(nameOf(leftovers_.front().work)),
        QObject::tr("They cannot be restored after that. The saved file stays as it is."),
        {{QObject::tr("Cancel"), QMessageBox::RejectRole},
         {QObject::tr("&Discard changes"), QMessageBox::DestructiveRole}});
    if (answer != DiscardChanges) return;
    QFile::remove(leftovers_.front().recoveryFile);
    next();
}

}  // namespace tenter::desktop::recovery
