// Texts about findings in the window.
#pragma once

#include <QString>

#include "document/survey.h"

namespace tenter::desktop::findings {

/// `Error`, `Warning`, `Note`.
QString severityTitle(checks::Severity severity);
/// A share (0 to 1) as a percentage: `15 %`, `under 1 %`.
QString percentTitle(double share);
/// The share of a finding and what it is a share of: `15 % of widths`, or `15 % of visits` if there is an
/// audience.
QString shareTitle(double share, const checks::Audience& audience);
/// The whole widths of an interval: `1653–1880 px`.
QString runTitle(const sweep::Interval& run);
/// The first `most` width ranges of a finding: `590–629 px, 931–937 px and 3 more ranges`.
QString runsTitle(const checks::Finding& finding, int most);
/// The whole finding as text, for tooltips and screen readers.
QString describe(const checks::Finding& finding, const checks::Audience& audience);

}  // namespace tenter::desktop::findings
