#include "export/written_file.h"

#include <QDir>
#include <QFileInfo>

#include "project/file.h"

namespace tenter::desktop::exporting {

QStringList sentencesOf(const project::Problems& problems) {
    QStringList out;
    for (const project::Problem& problem : problems)
        out << QString::fromStdString(problem.sentence());
    return out;
}

Planner filePlanner(const QString& path, ContentMaker make) {
    return [path, make = std::move(make)](const std::stop_token&) {
        FileContent content = make();
        Plan plan;
        plan.isEstimate = false;
        if (!content.text) {
            plan.problem = sentencesOf(content.problems).join(' ');
            return plan;
        }
        plan.notes = content.notes + sentencesOf(content.problems);
        plan.files.push_back(
            {QFileInfo(path).fileName(), content.about, static_cast<qint64>(content.text->size()),
             QFileInfo::exists(path) ? QObject::tr("replaced", "file") : QObject::tr("new", "file")});
        return plan;
    };
}

Writer fileWriter(const QString& path, ContentMaker make) {
    return [path, make = std::move(make)](const std::stop_token& stop, const Report& report) {
        Outcome outcome;
        report({0, 1, QFileInfo(path).fileName()});
        const FileContent content = make();
        outcome.isStopped = stop.stop_requested();
        if (outcome.isStopped) return outcome;
        outcome.notes = content.notes;
        project::Problems problems = content.problems;
        QDir().mkpath(QFileInfo(path).path());
        if (!content.text || !project::replaceFile(path.toStdString(), *content.text, problems)) {
            outcome.failure = sentencesOf(problems).join(' ');
            return outcome;
        }
        outcome.files.push_back({QFileInfo(path).fileName(), content.about,
                                 static_cast<qint64>(content.text->size()), QObject::tr("written", "file")});
        return outcome;
    };
}

}  // namespace tenter::desktop::exporting
