// The rules of one variant in one band, complete, so that bands can be compared.
#pragma once

#include <vector>

#include "emit/given_sheet.h"
#include "emit/rule.h"
#include "emit/usage.h"
#include "project/project.h"

namespace tenter::emit {

/// What the rules of a band are made from.
struct BandScope {
    const project::Project& project;
    const project::Settings& settings;  ///< resolved
    const std::vector<RoleUse>& uses;
    units::Unit unit = units::Unit::Rem;  ///< for font sizes
    const GivenSheet* given = nullptr;    ///< for markup that a page prints already
};

/// Every rule, in the order in which a person would write them.
Rules bandRules(const BandScope& scope);

/// A selector as it stands behind the class, with its leading space; a list as one selector. Selectors 4
/// § 4.2.
std::string behindTheClass(const std::string& selector);

/// The selector of a part within the element with the variant's class, with its leading space:
/// ` .walks-heading`, or what the project says of given markup.
std::string partSelector(const BandScope& scope, const std::string& part);
/// The same of the row: empty where it is the element with the class.
std::string rowSelector(const BandScope& scope);

// One function for each kind of rule; each appends to `rules`.
void addRowRule(const BandScope& scope, Rules& rules);
void addCardRule(const BandScope& scope, Rules& rules);
void addPictureRules(const BandScope& scope, Rules& rules);
void addTextRule(const BandScope& scope, const RoleUse& use, Rules& rules);
void addLinkRules(const BandScope& scope, const RoleUse& use, Rules& rules);
void addRunRules(const BandScope& scope, Rules& rules);

}  // namespace tenter::emit
