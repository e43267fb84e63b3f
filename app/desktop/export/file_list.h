// The files of an export as a table, before and after writing.
#pragma once

#include <QTreeWidget>
#include <vector>

#include "export/plan.h"

namespace tenter::desktop::exporting {

class FileList : public QTreeWidget {
    Q_OBJECT

public:
    /// `contentTitle`: the title of the column of `ExportFile::content`, such as `Pixels`.
    explicit FileList(const QString& contentTitle, QWidget* parent = nullptr);
    /// `isEstimate`: sizes are shown as `about 40 kB`.
    void setFiles(const std::vector<ExportFile>& files, bool isEstimate);

private:
    QString contentTitle_;
};

/// `8 files, about 1.4 MB`; without the size if that of no file is known.
QString totalTitle(const std::vector<ExportFile>& files, bool isEstimate);

}  // namespace tenter::desktop::exporting
