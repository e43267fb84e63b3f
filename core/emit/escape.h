// Escaping text for CSS, HTML and JSON. Any bytes are accepted; bytes that are not UTF-8, and NUL, become
// U+FFFD.
#pragma once

#include <string>
#include <string_view>

namespace tenter::emit {

/// `text` with each ill-formed sequence, and each NUL, replaced by U+FFFD. Unicode 15 § 3.9, "maximal
/// subparts".
std::string repaired(std::string_view text);

/// A quoted CSS string: CSSOM § 2.1, "serialize a string", with `<`, `>` and `&` as hex escapes.
std::string cssString(std::string_view text);

/// A CSS identifier: CSSOM § 2.1, "serialize an identifier", with `<`, `>` and `&` as hex escapes.
std::string cssIdentifier(std::string_view text);

/// Text for a CSS comment: one line, without an end of comment, `<`, `>` or `&`.
std::string cssComment(std::string_view text);

/// Text or the value of a double-quoted attribute. HTML § 13.1.2.3.
std::string html(std::string_view text);

/// A quoted JSON string. RFC 8259 § 7.
std::string jsonString(std::string_view text);

/// A finite number in JSON, in full double precision. RFC 8259 § 6.
std::string jsonNumber(double value);

}  // namespace tenter::emit
