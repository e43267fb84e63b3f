#include "export/choices.h"

#include <QCryptographicHash>
#include <QSettings>

namespace tenter::desktop::exporting {

Choices::Choices(const std::filesystem::path& projectFile, const QString& kind) {
    // A path contains slashes, which separate groups.
    const QByteArray path = QByteArray::fromStdString(projectFile.string());
    const QByteArray key = QCryptographicHash::hash(path, QCryptographicHash::Sha256).toHex().left(16);
    group_ = "export/" + (path.isEmpty() ? QString("unsaved") : QString::fromLatin1(key)) + "/" + kind + "/";
}

QVariant Choices::value(const QString& name, const QVariant& fallback) const {
    return QSettings().value(group_ + name, fallback);
}

void Choices::set(const QString& name, const QVariant& value) const {
    QSettings().setValue(group_ + name, value);
}

}  // namespace tenter::desktop::exporting
