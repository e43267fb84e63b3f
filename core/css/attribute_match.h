// Attributes as selectors ask for them. Selectors 4 § 6.
#pragma once

#include <string_view>

#include "css/selectors.h"

namespace tenter::css {

/// Whether an attribute of an HTML element with the value `actual` is as `asked`.
bool attributeIs(const Simple& asked, std::string_view actual);

/// Whether `word` is one of those in `actual`, white space between. Case counts.
bool hasWord(std::string_view actual, std::string_view word);

}  // namespace tenter::css
