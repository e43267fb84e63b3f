// User text made safe for the places it is written into. Any bytes are taken: what is not UTF-8, and NUL,
// becomes U+FFFD.
#pragma once

#include <string>
#include <string_view>

namespace tenter::emit {

/// `text` with each ill-formed sequence, and each NUL, replaced by U+FFFD. Unicode 15 § 3.9, "maximal
/// subparts".
std::string repaired(std::string_view text);

/// A quoted CSS string. CSSOM § 2.1, "serialize a string", and besides `<`, `>` and `&` as hex escapes.
std::string cssString(std::string_view text);

/// A CSS identifier. CSSOM § 2.1, "serialize an identifier", with the same three as hex escapes.
std::string cssIdentifier(std::string_view text);

/// Text that can stand in a CSS comment: one line, no end of comment, no `<`, `>` or `&`.
std::string cssComment(std::string_view text);

/// Text or a double-quoted attribute's value. HTML § 13.1.2.3.
std::string html(std::string_view text);

/// A quoted JSON string. RFC 8259 § 7.
std::string jsonString(std::string_view text);

/// A finite number as JSON has it, in full double precision. RFC 8259 § 6.
std::string jsonNumber(double value);

}  // namespace tenter::emit
