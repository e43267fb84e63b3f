// The design tokens of one band.
#pragma once

#include "emit/token_values.h"
#include "emit/usage.h"
#include "project/project.h"

namespace tenter::emit {

/// The input for the tokens of a band.
struct TokenScope {
    const project::Project& project;
    const project::Settings& settings;  ///< resolved
    const std::vector<RoleUse>& uses;
    TokenUnit unit;
    double rem = 16;  ///< root font size in CSS px at the wide end of the band
};

/// The tokens of row, card, picture and roles of text. Paths start with `row`, `card`, `picture` or `text`;
/// the last name is a CSS property, or the end of a ramp: `narrow` or `wide`.
TokenEntries bandTokens(const TokenScope& scope);

}  // namespace tenter::emit
