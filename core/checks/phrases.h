// Phrases of findings: how they name parts, texts and widths. Numbers with units are in units/quantities.h.
#pragma once

#include <string>
#include <string_view>

#include "checks/cause.h"

namespace tenter::checks {

/// `the heading “Low tide”`, `the picture low-tide.jpg`, `the empty button of card 2`.
std::string named(const Subject& subject, project::PartRef place);
std::string named(const project::Project& project, project::PartRef place);
/// The worst part and the number of others: `the heading “Low tide” (and 2 others)`. Grammatically one
/// subject.
std::string worstAndOthers(const Subject& subject, const Cause& cause);
/// The same with a preposition, because other languages have another article after it: `in the heading “Low
/// tide”`, `in the heading “Low tide” (and 2 others)`.
std::string inNamed(const Subject& subject, project::PartRef place);
std::string inWorstAndOthers(const Subject& subject, const Cause& cause);

/// `text` in quotation marks, white space collapsed, soft hyphens removed, shortened if long.
std::string inQuotation(std::string_view text);

/// `text` with its first letter in upper case: of ASCII or Latin-1.
std::string capitalised(std::string text);

/// `1 line`, `3 lines`.
std::string lineCount(std::size_t lines);

/// The widest whole width of the span, or its end if it holds none. CSS px.
double widestWholeWidth(const sweep::Interval& span);
/// `from 640 to 700 px`, `at 640 px`, or `at every width` for all widths of the project.
std::string atWidths(const project::Project& project, const sweep::Interval& span);
std::string atWidths(const Subject& subject, const sweep::Interval& span);
/// The widths of a finding that its text does not name: `330–415, 510–594 px and 3 more ranges`, with at most
/// `most` ranges; `every width` if the text names a part of them. Empty if the text names the only range, or
/// none although the finding holds at every width.
std::string widthsBeyondText(const project::Project& project, const Finding& finding, std::size_t most);

/// The advice for lines that browsers break differently.
std::string changeSizeSlightly();
/// The source of a finding that no standard defines: `common practice, no source`.
std::string commonPractice();

/// What a part of a role is: `heading`, `paragraph` for `body`.
std::string partKind(const std::string& role);
/// The advice to shorten a text of a role: `shorten the heading`, `shorten the paragraph`.
std::string shortening(const std::string& role);
/// The text of a role: `heading text`, `body text`.
std::string roleText(std::string_view role);

}  // namespace tenter::checks
