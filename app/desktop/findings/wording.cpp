#include "findings/wording.h"

#include "checks/phrases.h"
#include "document/wording.h"

namespace tenter::desktop::findings {

QString severityTitle(checks::Severity severity) {
    switch (severity) {
        case checks::Severity::Error:
            return QObject::tr("Error");
        case checks::Severity::Warning:
            return QObject::tr("Warning");
        case checks::Severity::Note:
            break;
    }
    return QObject::tr("Note");
}

QString whatTitle(const checks::Finding& finding) {
    return QString::fromStdString(checks::textOf({finding.statement.what, {}, {}}, finding.profiles));
}

QString percentTitle(double share) {
    // A small share must not be shown as 0 %.
    return share < 0.01 ? QObject::tr("under %1").arg(percent(0.01)) : percent(share);
}

QString shareTitle(double share, const checks::Audience& audience) {
    return (audience.empty() ? QObject::tr("%1 of widths") : QObject::tr("%1 of visits"))
        .arg(percentTitle(share));
}

QString otherWidthsTitle(const project::Project& project, const checks::Finding& finding, std::size_t most) {
    const std::string widths = checks::widthsBeyondText(project, finding, most);
    return widths.empty() ? QString()
                          : QObject::tr("All affected widths: %1").arg(QString::fromStdString(widths));
}

QString describe(const project::Project& project, const checks::Finding& finding,
                 const checks::Audience& audience) {
    constexpr std::size_t mostRuns = 4;
    const QString widths = otherWidthsTitle(project, finding, mostRuns);
    return severityTitle(finding.severity) + ", " + shareTitle(finding.share, audience) + ".\n" +
           QString::fromStdString(finding.says) + (widths.isEmpty() ? QString() : '\n' + widths + '.');
}

}  // namespace tenter::desktop::findings
