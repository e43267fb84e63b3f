#include "new_row/picture_list.h"

#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QSettings>
#include <QStandardPaths>

#include "controls/inks.h"
#include "document/place_picture.h"

namespace tenter::desktop::new_row {

namespace {

const QString folderKey = "newRow/pictures";

/// The folder from which pictures were chosen last, or that of the system for pictures. A folder that does
/// not exist would become a file name in the dialog.
QString folderOfPictures() {
    for (const QString& folder : {QSettings().value(folderKey).toString(),
                                  QStandardPaths::writableLocation(QStandardPaths::PicturesLocation)})
        if (!folder.isEmpty() && QFileInfo(folder).isDir()) return folder;
    return QDir::homePath();
}

}  // namespace

PictureList::PictureList(QWidget* parent)
    : QWidget(parent),
      list_(new QLabel(this)),
      clear_(new QPushButton(QObject::tr("Remove pictures"), this)) {
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(8);
    list_->setWordWrap(true);
    list_->setTextFormat(Qt::PlainText);
    list_->setAccessibleName(QObject::tr("Pictures"));
    auto* choose = new QPushButton(QObject::tr("&Choose pictures…"), this);
    auto* line = new QHBoxLayout;
    line->setSpacing(8);
    line->addWidget(choose);
    line->addWidget(clear_);
    line->addStretch(1);
    for (QPushButton* button : {choose, clear_})
        button->setAutoDefault(false);
    box->addWidget(list_);
    box->addLayout(line);
    connect(choose, &QPushButton::clicked, this, &PictureList::choose);
    connect(clear_, &QPushButton::clicked, this, &PictureList::clear);
    show({});
}

void PictureList::choose() {
    const QString start = files_.isEmpty() ? folderOfPictures() : QFileInfo(files_.first()).absolutePath();
    const QStringList files =
        QFileDialog::getOpenFileNames(this, QObject::tr("Choose pictures"), start,
                                      QObject::tr("Pictures (*.png *.jpg *.jpeg *.webp);;All files (*)"));
    if (files.isEmpty()) return;
    QSettings().setValue(folderKey, QFileInfo(files.first()).absolutePath());
    add(files);
}

void PictureList::add(const QStringList& files) {
    QString problem;
    for (const QString& file : files) {
        if (picturePartOf(file, {}))
            files_ << QFileInfo(file).absoluteFilePath();
        else
            problem = QObject::tr("%1 cannot be read as a picture. Use a PNG, JPEG or WebP file.")
                          .arg(QFileInfo(file).fileName());
    }
    show(problem);
    Q_EMIT changed();
}

void PictureList::clear() {
    files_.clear();
    show({});
    Q_EMIT changed();
}

void PictureList::show(const QString& problem) {
    QStringList names;
    for (qsizetype i = 0; i < std::min<qsizetype>(files_.size(), 4); ++i)
        names << QString("%1. %2").arg(i + 1).arg(QFileInfo(files_[i]).fileName());
    if (files_.size() > 4)
        names << QObject::tr("and %n more", "pictures", static_cast<int>(files_.size()) - 4);
    if (names.isEmpty())
        names << QObject::tr("Drop pictures on this window: one for each card, in their order.");
    if (!problem.isEmpty()) names.prepend(problem);
    QPalette ink = palette();
    ink.setColor(QPalette::WindowText, problem.isEmpty() ? controls::quiet(ink) : controls::caution(ink));
    list_->setPalette(ink);
    list_->setText(names.join('\n'));
    clear_->setVisible(!files_.isEmpty());
}

std::filesystem::path PictureList::folder() const {
    return files_.isEmpty() ? std::filesystem::path()
                            : std::filesystem::path(QFileInfo(files_.first()).path().toStdString());
}

std::vector<project::PicturePart> PictureList::parts() const {
    std::vector<project::PicturePart> parts;
    for (const QString& file : files_)
        if (auto part = picturePartOf(file, folder())) parts.push_back(std::move(*part));
    return parts;
}

}  // namespace tenter::desktop::new_row
