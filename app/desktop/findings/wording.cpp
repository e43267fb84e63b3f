#include "findings/wording.h"

#include <QStringList>
#include <cmath>

#include "checks/phrases.h"
#include "document/wording.h"

namespace tenter::desktop::findings {

QString severityTitle(checks::Severity severity) {
    const std::string_view word = checks::word(severity);
    return QString::fromStdString(checks::sentence(std::string(word)));
}

QString shareTitle(double share) {
    // What there is at all is not told as nothing.
    if (share > 0 && share < 0.01) return QStringLiteral("under 1 %");
    return figure(std::round(share * 100), 0) + " %";
}

QString shareOf(const checks::Audience& audience) {
    return audience.empty() ? QStringLiteral("the widths") : QStringLiteral("the visits");
}

QString runTitle(const sweep::Interval& run) {
    const double last = checks::wholeIn(run);
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
    return runs.join(", ") + (more > 0 ? QStringLiteral(" and %1 more").arg(more) : QString());
}

QString spoken(const checks::Finding& finding, const checks::Audience& audience) {
    constexpr int mostRuns = 4;
    return severityTitle(finding.severity) + ", " + shareTitle(finding.share) + " of " + shareOf(audience) +
           ", at " + runsTitle(finding, mostRuns) + ". " + QString::fromStdString(finding.says);
}

}  // namespace tenter::desktop::findings
