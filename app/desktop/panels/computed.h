// What a setting comes to at the width that is looked at.
#pragma once

#include <optional>
#include <string>

#include "document/viewing.h"

namespace tenter::desktop::panels {

/// CSS px of the length or line height `value` at setting `path`; empty for keywords and what is no length.
std::optional<double> computedPixels(const Viewing& viewing, const std::string& path,
                                     const project::Json& value);

}  // namespace tenter::desktop::panels
