#include "start_page/thumbnails.h"

#include <QCryptographicHash>
#include <QDateTime>
#include <QDir>
#include <QFileInfo>
#include <QImageReader>
#include <QSaveFile>
#include <QStandardPaths>

#include "row/row_thumbnail.h"

namespace tenter::desktop::start_page {

namespace {

constexpr double viewportWidth = 1200;  // CSS px: wide enough for every column of usual rows
constexpr int mostKept = 100;           // files in the cache
constexpr int cacheVersion = 1;         // to be raised when rows are painted differently

QString cacheFolder() {
    return QStandardPaths::writableLocation(QStandardPaths::CacheLocation) + "/thumbnails";
}

/// The name of a thumbnail's file: it differs after every change of the project file.
QString cacheFile(const QString& file, const QSize& size) {
    const QFileInfo info(file);
    const QString key = QString("%1|%2|%3|%4|%5x%6")
                            .arg(cacheVersion)
                            .arg(info.absoluteFilePath())
                            .arg(info.lastModified().toMSecsSinceEpoch())
                            .arg(info.size())
                            .arg(size.width())
                            .arg(size.height());
    const QByteArray hash = QCryptographicHash::hash(key.toUtf8(), QCryptographicHash::Sha1).toHex();
    return cacheFolder() + '/' + QString::fromLatin1(hash) + ".png";
}

void keep(const QString& name, const QImage& image) {
    QDir folder(cacheFolder());
    if (!folder.mkpath(".")) return;
    QSaveFile out(name);
    if (out.open(QIODevice::WriteOnly) && image.save(&out, "png")) out.commit();
    const QFileInfoList all = folder.entryInfoList({"*.png"}, QDir::Files, QDir::Time);
    for (qsizetype i = mostKept; i < all.size(); ++i)
        QFile::remove(all[i].filePath());
}

QImage thumbnail(const QString& file, const QSize& size) {
    const QString kept = cacheFile(file, size);
    if (QImage image(kept); image.size() == size) return image;
    QImage image = row::rowThumbnail(file.toStdString(), viewportWidth, size);
    if (!image.isNull()) keep(kept, image);
    return image;
}

}  // namespace

Thumbnails::Thumbnails(QObject* parent) : QObject(parent) {}

void Thumbnails::request(const QString& file, const QSize& size) {
    job_.add([file, size](const std::stop_token&) { return thumbnail(file, size); },
             [this, file](const QImage& image) { Q_EMIT arrived(file, image); });
}

}  // namespace tenter::desktop::start_page
