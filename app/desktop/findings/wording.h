// How the window says findings.
#pragma once

#include <QString>

#include "document/survey.h"

namespace tenter::desktop::findings {

/// `Error`, `Warning`, `Note`.
QString severityTitle(checks::Severity severity);
/// `15 %`, `under 1 %`.
QString shareTitle(double share);
/// What shares are of: `the widths`, `the visits`.
QString shareOf(const checks::Audience& audience);
/// The whole widths of a run, `1 653 to 1 880 px`.
QString runTitle(const sweep::Interval& run);
/// `590 to 629 px, 931 to 937 px`, and how many more there are past `most` runs.
QString runsTitle(const checks::Finding& finding, int most);
/// All of a finding in a sentence or two, as a tool tip or a screen reader has it.
QString spoken(const checks::Finding& finding, const checks::Audience& audience);

}  // namespace tenter::desktop::findings
