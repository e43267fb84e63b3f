#include "export/destination.h"

#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>

namespace tenter::desktop::exporting {

Destination::Destination(Kind kind, const QString& filter, QWidget* parent)
    : QWidget(parent),
      kind_(kind),
      filter_(filter),
      field_(new QLineEdit(this)),
      button_(new QPushButton(QObject::tr("C&hoose…"), this)) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    row->addWidget(field_, 1);
    row->addWidget(button_);
    setFocusProxy(field_);
    field_->setAccessibleName(kind == Kind::Folder ? QObject::tr("Folder") : QObject::tr("File"));
    button_->setAccessibleName(kind == Kind::Folder ? QObject::tr("Choose folder")
                                                    : QObject::tr("Choose file"));
    button_->setAutoDefault(false);
    connect(field_, &QLineEdit::textEdited, this, &Destination::changed);
    connect(button_, &QPushButton::clicked, this, &Destination::choose);
}

QString Destination::path() const {
    const QString text = field_->text().trimmed();
    return text.isEmpty() ? text : QDir::cleanPath(text);
}

void Destination::setPath(const QString& path) {
    field_->setText(QDir::toNativeSeparators(path));
    field_->setCursorPosition(0);
}

QString Destination::folder() const {
    return kind_ == Kind::Folder ? path() : QFileInfo(path()).path();
}

QString Destination::problem() const {
    const bool isFolder = kind_ == Kind::Folder;
    if (path().isEmpty())
        return isFolder ? QObject::tr("Choose a folder to write to.")
                        : QObject::tr("Choose a file to write to.");
    if (!QDir::isAbsolutePath(path()))
        return QObject::tr("The path must be complete. Choose the folder with the button.");
    if (isFolder && QFileInfo(path()).isFile())
        return QObject::tr("There is a file of this name. Choose a folder.");
    if (!isFolder && QFileInfo(path()).isDir())
        return QObject::tr("There is a folder of this name. Choose a file.");
    // Folders that do not exist are made, so the nearest one that exists must be writable.
    QString nearest = folder();
    while (!QFileInfo::exists(nearest) && QFileInfo(nearest).path() != nearest)
        nearest = QFileInfo(nearest).path();
    if (!QFileInfo(nearest).isDir()) return QObject::tr("There is no such folder. Choose another folder.");
    if (!QFileInfo(nearest).isWritable())
        return QObject::tr("This folder is read-only. Choose another folder.");
    return {};
}

void Destination::choose() {
    QString start = path();
    if (kind_ == Kind::Folder)
        while (!start.isEmpty() && !QFileInfo::exists(start) && QFileInfo(start).path() != start)
            start = QFileInfo(start).path();
    const QString chosen =
        kind_ == Kind::Folder ? QFileDialog::getExistingDirectory(this, QObject::tr("Choose folder"), start)
                              : QFileDialog::getSaveFileName(this, QObject::tr("Choose file"), start, filter_,
                                                             nullptr, QFileDialog::DontConfirmOverwrite);
    if (chosen.isEmpty()) return;
    setPath(chosen);
    Q_EMIT changed();
}

}  // namespace tenter::desktop::exporting
