#include "window/audience_import.h"

#include <QFile>
#include <QFileDialog>
#include <QFileInfo>

#include "document/wording.h"

namespace tenter::desktop::window {

void AudienceImport::choose(QWidget* window) {
    const QString file =
        QFileDialog::getOpenFileName(window, QObject::tr("Import audience"), files_.startFolder(),
                                     QObject::tr("Comma-separated values (*.csv *.txt);;All files (*)"));
    if (!file.isEmpty()) read(file);
}

void AudienceImport::read(const QString& file) {
    QFile in(file);
    project::Problems problems;
    if (!in.open(QIODevice::ReadOnly)) {
        problems.push_back({file.toStdString(), "", QObject::tr("the file cannot be read").toStdString(),
                            QObject::tr("choose a CSV file that you may read").toStdString()});
        problems_.showProblems(QObject::tr("The audience was not imported."), problems);
        return;
    }
    const QString name = QFileInfo(file).fileName();
    const auto audience =
        checks::readAudience(in.read(static_cast<qint64>(checks::largestAudience) + 1).toStdString(),
                             name.toStdString(), problems);
    if (!audience) {
        problems_.showProblems(QObject::tr("The audience was not imported."), problems);
        return;
    }
    if (problems.empty())
        problems_.hide();
    else
        problems_.showProblems(QObject::tr("The audience was imported without these lines:"), problems);
    checks_.setAudience(*audience);
    double visits = 0;
    for (const auto& [width, count] : audience->visits)
        visits += count;
    note_.showMessage(QObject::tr("Findings are weighted by %1 visits from %2").arg(figure(visits, 0), name));
}

}  // namespace tenter::desktop::window
