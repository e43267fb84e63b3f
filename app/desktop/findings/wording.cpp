#include "findings/wording.h"

#include <QStringList>
#include <cmath>

#include "checks/phrases.h"
#include "document/wording.h"

namespace tenter::desktop::findings {

QString severityTitle(checks::Severity severity) {
    const std::string_view word = checks::word(severity);
    return QString::fromStdString(checks::capitalised(std::string(word)));
}

QString percentTitle(double share) {
    // A small share must not be shown as 0 %.
    return share > 0 && share < 0.01 ? "under " + percent(0.01) : percent(share);
}

QString shareTitle(double share, const checks::Audience& audience) {
    return percentTitle(share) + (audience.empty() ? " of widths" : " of visits");
}

QString runTitle(const sweep::Interval& run) {
    const double last = checks::widestWholeWidth(run);
    const double first = std::floor(run.from) + 1;
    return first >= last ? pixels(last) : widthsTitle(first == run.from + 1 ? run.from : first, last);
}

QString runsTitle(const checks::Finding& finding, int most) {
    QStringList runs;
    for (const sweep::Interval& run : finding.widths) {
        if (runs.size() == most) break;
        runs << runTitle(run);
    }
    const auto more = static_cast<qsizetype>(finding.widths.size()) - runs.size();
    if (more <= 0) return runs.join(", ");
    return runs.join(", ") + QStringLiteral(" and %1 more %2").arg(more).arg(more == 1 ? "range" : "ranges");
}

QString describe(const checks::Finding& finding, const checks::Audience& audience) {
    constexpr int mostRuns = 4;
    return severityTitle(finding.severity) + ", " + shareTitle(finding.share, audience) + ": " +
           runsTitle(finding, mostRuns) + ".\n" + QString::fromStdString(finding.says);
}

}  // namespace tenter::desktop::findings
