#include "document/file_stamp.h"

#include <QCryptographicHash>
#include <QFile>
#include <cstring>

namespace tenter::desktop {

FileStamp FileStamp::of(const std::filesystem::path& file) {
    QFile in(QString::fromStdString(file.string()));
    QCryptographicHash hash(QCryptographicHash::Sha256);
    FileStamp stamp;
    if (!in.open(QIODevice::ReadOnly) || !hash.addData(&in)) return stamp;
    const QByteArray bytes = hash.result();
    std::memcpy(&stamp.hash, bytes.constData(), sizeof stamp.hash);
    stamp.size = static_cast<std::uintmax_t>(in.size());
    stamp.exists = true;
    return stamp;
}

}  // namespace tenter::desktop
