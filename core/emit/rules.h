// All rules of one variant in one band, so that bands can be compared.
#pragma once

#include <vector>

#include "emit/given_sheet.h"
#include "emit/rule.h"
#include "emit/usage.h"
#include "project/project.h"

namespace tenter::emit {

/// The input for the rules of a band, at widths with one root size.
struct BandScope {
    const project::Project& project;
    const project::Settings& settings;  ///< resolved
    const units::RootSize& rootSize;    ///< of the page
    const std::vector<RoleUse>& uses;
    units::Unit unit = units::Unit::Rem;  ///< for font sizes
    const GivenSheet* given = nullptr;    ///< null for our own markup
};

/// All rules of a band, in the order of the stylesheet.
Rules bandRules(const BandScope& scope);

/// A selector for use after the class, with its leading space; a list becomes one selector with `:is()`.
/// Selectors 4 § 4.2.
std::string afterTheClass(const std::string& selector);
/// Such a selector after `own`, the class of a variant with its dot and what makes it stronger.
std::string underClass(const std::string& own, const std::string& selector);

/// The selector of a part inside the element with the variant's class, with its leading space: `
/// .walks-heading`, or that of the given row.
std::string partSelector(const BandScope& scope, const std::string& part);
/// The same for the row; empty if the row is the element with the class.
std::string rowSelector(const BandScope& scope);

// One function for each kind of rule; each appends to `rules`.
void addRowRule(const BandScope& scope, Rules& rules);
void addCardRule(const BandScope& scope, Rules& rules);
void addPictureRules(const BandScope& scope, Rules& rules);
void addTextRule(const BandScope& scope, const RoleUse& use, Rules& rules);
void addLinkRules(const BandScope& scope, const RoleUse& use, Rules& rules);
void addRunRules(const BandScope& scope, Rules& rules);

}  // namespace tenter::emit
