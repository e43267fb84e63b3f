// Example text for a new row without text of its own.
#pragma once

#include <string>

#include "start/pasted_text.h"

namespace tenter::start {

/// So many cards of example text in the language, or in English if there is none in it. `language` of the
/// result is that of the text.
PastedText exampleText(std::size_t cards, const std::string& language);

}  // namespace tenter::start
