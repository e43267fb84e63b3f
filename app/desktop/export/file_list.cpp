#include "export/file_list.h"

#include <QHeaderView>

namespace tenter::desktop::exporting {

namespace {

QString sizeTitle(qint64 bytes, bool isEstimate) {
    if (bytes < 0) return {};
    return isEstimate ? QObject::tr("about %1").arg(bytesTitle(bytes)) : bytesTitle(bytes);
}

}  // namespace

FileList::FileList(const QString& contentTitle, QWidget* parent)
    : QTreeWidget(parent), contentTitle_(contentTitle) {
    setRootIsDecorated(false);
    setUniformRowHeights(true);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setAccessibleName(QObject::tr("Files"));
    setHeaderLabels({QObject::tr("File"), contentTitle_, QObject::tr("Size"), QObject::tr("State")});
    for (const int number : {1, 2})
        headerItem()->setTextAlignment(number, Qt::AlignRight | Qt::AlignVCenter);
    header()->setSectionsMovable(false);
    header()->setStretchLastSection(false);
    header()->setSectionResizeMode(QHeaderView::ResizeToContents);
    header()->setSectionResizeMode(0, QHeaderView::Stretch);
}

void FileList::setFiles(const std::vector<ExportFile>& files, bool isEstimate) {
    clear();
    QList<QTreeWidgetItem*> items;
    for (const ExportFile& file : files) {
        auto* item =
            new QTreeWidgetItem({file.name, file.content, sizeTitle(file.bytes, isEstimate), file.state});
        item->setToolTip(0, file.name);
        item->setTextAlignment(1, Qt::AlignRight | Qt::AlignVCenter);
        item->setTextAlignment(2, Qt::AlignRight | Qt::AlignVCenter);
        items << item;
    }
    addTopLevelItems(items);
}

QString totalTitle(const std::vector<ExportFile>& files, bool isEstimate) {
    qint64 bytes = 0;
    for (const ExportFile& file : files)
        if (file.bytes > 0) bytes += file.bytes;
    const QString size = bytes > 0 ? ", " + sizeTitle(bytes, isEstimate) : QString();
    return filesTitle(files.size()) + size;
}

}  // namespace tenter::desktop::exporting
