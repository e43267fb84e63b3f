// Words for parts, widths and figures, as a designer says them.
#pragma once

#include <string>
#include <string_view>

#include "checks/cause.h"

namespace tenter::checks {

/// `the heading “Low tide”`, `the picture low-tide.jpg`.
std::string named(const Subject& subject, std::size_t card, std::size_t part);
std::string named(const project::Project& project, std::size_t card, std::size_t part);
/// The same with how many others there are: `the heading “Low tide” (and 2 others)`, which stays one
/// subject of a sentence.
std::string worstAndOthers(const Subject& subject, const Cause& cause);

/// `text` with white space collapsed and without soft hyphens, in quotes, cut if long.
std::string inQuotation(std::string_view text);

/// First letter in upper case, ASCII.
std::string sentence(std::string text);

/// At most `decimals` decimals, and no more than that the value is reached: cut down, not rounded.
std::string figure(double value, int decimals = 1);
/// The nearest such figure, of what is set against no limit.
std::string about(double value, int decimals = 1);
std::string percent(double share);
/// `1 240`, with spaces that neither are wide nor break.
std::string spaced(double value, int decimals = 1);
/// `1 240 px`, which stays on one line.
std::string px(double value, int decimals = 1);
/// A number as a sentence has it, with that unit.
std::string inPx(std::string number);

/// A whole width of the span, if it holds one; the widest.
double wholeIn(const sweep::Interval& span);
/// `at 640 px`, `from 640 to 700 px`.
std::string atWidths(const Subject& subject, const sweep::Interval& span);

/// The role's name in text: `heading`, `body type`, `button label`.
std::string typeOf(std::string_view role);

}  // namespace tenter::checks
