// Where Chromium's family breaks between two ASCII characters.
#pragma once

namespace tenter::text {

/// True if a line may break between two printable ASCII characters, neither a space; false for all others.
bool blinkBreaksBetween(char16_t before, char16_t after);

}  // namespace tenter::text
