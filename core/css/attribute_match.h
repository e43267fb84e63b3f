// Matching attribute selectors. Selectors 4 § 6.
#pragma once

#include <string_view>

#include "css/selectors.h"

namespace tenter::css {

/// True if an attribute selector matches an attribute of an HTML element with the value `actual`.
bool attributeMatches(const Simple& selector, std::string_view actual);

/// True if `word` is one of the words of `actual`, which white space separates. Case-sensitive.
bool hasWord(std::string_view actual, std::string_view word);

}  // namespace tenter::css
