// Names of roles, parts, bands, variants and numbers as the window shows them.
#pragma once

#include <QString>
#include <string>

#include "project/cascade.h"
#include "project/trial.h"
#include "text/profile.h"

namespace tenter::desktop {

class LayoutCache;

/// `1320`, `24.13`, `−2`: at most `decimals` decimals, no trailing zeros, a true minus sign (U+2212).
QString figure(double value, int decimals = 2);
/// `1320 px`: `value` in CSS px with a no-break space before the unit.
QString pixels(double value, int decimals = 2);
/// `35 %`: `share` (0 to 1) as a percentage with a no-break space before the sign.
QString percent(double share, int decimals = 0);
/// A range of widths in CSS px for labels and tables: `931–1320 px`, or `931 px` if both ends are equal.
QString widthsTitle(double first, double last);
/// The same in a sentence: `from 931 to 1320 px`, or `at 931 px`.
QString widthsInSentence(double first, double last);
/// `heading, card 2`: the role and the card of a part, given by its indices in the project.
QString partTitle(const project::Project& project, std::size_t card, std::size_t part);
/// `Heading`, `Body`; also `Card`, `Picture` and `Row` for the names that are not roles of text.
QString roleTitle(const std::string& role);
/// The role as the project names it, if the window has no word for it: `heading`, `fine-print`.
QString roleName(const std::string& role);
/// Its title inside a sentence: `heading`, `fine print`.
QString roleInSentence(const std::string& role);
/// A title inside a sentence: with a small first letter in languages that write nouns so.
QString inSentence(const QString& title);
/// `Ctrl+Right` as the window's language names these keys.
QString keysTitle(const QString& keys);
/// `1 column`, `3 columns`.
QString columnsTitle(int columns);
/// `1 line`, `3 lines`.
QString linesTitle(std::size_t lines);
/// The whole viewport widths of a band: `up to 560 px`, `561–940 px`, `from 941 px`, `all widths`.
QString bandWidths(const project::Variant& variant, std::size_t band);
/// `561–940 px (2 columns)`. Sentences put “the band” before it.
QString bandTitle(const LayoutCache& layouts, std::size_t band);
/// What an edit at this scope changes: `all variants`, `the variant “3 columns”`, `the band 561–940 px (2
/// columns)`.
QString scopeTitle(const LayoutCache& layouts, project::CascadeLayer scope);
/// Name of a text test: `Longer text`, `Longest heading in every card`.
QString trialTitle(project::Trial::Kind kind);
/// Why `role` cannot be the name of a role, as a sentence; empty if it can.
QString wrongWithRole(const std::string& role);
/// Name of the variant; `3 columns` if the name is only `3`; its class if it has no name.
QString variantTitle(const project::Variant& variant);
/// `class walks-trio, 1 to 3 columns`
QString variantFacts(const project::Project& project, const project::Variant& variant);
/// The browser that breaks lines by this profile: `Chromium`, `Firefox`.
QString engineTitle(const text::BreakProfile& profile);
/// `text` as rich text for a tooltip, because Qt breaks long lines only in rich text. Line feeds are kept.
QString toolTipText(const QString& text);

}  // namespace tenter::desktop
