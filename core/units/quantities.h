// Numbers and units as people read them, in the language in use (wording/language.h): in the window, in
// findings, reports and messages. CSS has its own numbers (units/number.h).
#pragma once

#include <string>

namespace tenter::units {

/// What happens to the decimals that are not shown. `Down`: towards −∞, so that a figure compared with a
/// minimum never looks as if it reached it.
enum class Rounding { Nearest, Down };

/// `value` with at most `decimals` decimals: no thousands separator, no trailing zeros, U+2212 as the minus
/// sign.
std::string figure(double value, int decimals = 2, Rounding rounding = Rounding::Nearest);

/// `1320 px`. The space (U+00A0) does not break.
std::string px(double value, int decimals = 2, Rounding rounding = Rounding::Nearest);

/// `931–1320 px`, or `931 px` if both ends look the same; for labels and tables.
std::string pxRange(double from, double to, int decimals = 2);

/// `from 931 to 1320 px`, or `at 931 px` if both ends look the same; for sentences.
std::string fromPxToPx(double from, double to, int decimals = 2);

/// `35 %` of a share from 0 to 1. A share above 0 that would be shown as 0 is `under 1 %`.
std::string percent(double share, int decimals = 0);

}  // namespace tenter::units
