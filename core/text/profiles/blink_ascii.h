// Chromium's line breaks between two ASCII characters.
#pragma once

namespace tenter::text {

/// True if a line may break between `before` and `after`, two printable ASCII characters other than a space;
/// false for other characters.
bool blinkBreaksBetween(char16_t before, char16_t after);

}  // namespace tenter::text
