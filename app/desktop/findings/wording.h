// Texts about findings in the window.
#pragma once

#include <QString>

#include "session/check_runner.h"

namespace tenter::desktop::findings {

/// `Error`, `Warning`, `Note`.
/// What is wrong and where: the first sentence of what the finding says.
QString whatTitle(const checks::Finding& finding);
QString severityTitle(checks::Severity severity);
/// A share (0 to 1) as a percentage: `15 %`, `under 1 %`.
QString percentTitle(double share);
/// The share of a finding and what it is a share of: `15 % of widths`, or `15 % of visits` if there is an
/// audience.
QString shareTitle(double share, const checks::Audience& audience);
/// The widths of a finding that its text does not name, with at most `most` ranges: `All affected widths:
/// 590–629, 931–937 px and 3 more ranges`. Empty if the text names them all.
QString otherWidthsTitle(const project::Project& project, const checks::Finding& finding, std::size_t most);
/// The whole finding as text, for tooltips and screen readers.
QString describe(const project::Project& project, const checks::Finding& finding,
                 const checks::Audience& audience);

}  // namespace tenter::desktop::findings
