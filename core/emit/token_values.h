// Values of design tokens. Design Tokens Format Module 2025.10 § 8 and § 9, Color Module 2025.10.
#pragma once

#include <string>
#include <vector>

#include "project/json_text.h"
#include "units/colour.h"

namespace tenter::emit {

/// A number rounded to the decimals of a stylesheet; whole numbers without a decimal point.
project::Json tokenNumber(double value);

/// A `dimension` value. Prints CSS px, or rem as the format defines it: a multiple of 16 px.
class TokenUnit {
public:
    /// `rem`: true for rem, false for px.
    explicit TokenUnit(bool rem) : rem_(rem) {}
    /// `{"value": 21, "unit": "px"}` of `px` CSS px.
    [[nodiscard]] project::Json dimension(double px) const;

private:
    bool rem_;
};

/// A `color` value in sRGB, with its hexadecimal form without alpha.
project::Json tokenColour(const units::Colour& colour);

/// A token of type `type`; an empty description is omitted.
project::Json token(const char* type, project::Json value, const std::string& description = {});

/// A token and its place in the file.
struct TokenEntry {
    std::vector<std::string> path;  ///< names of groups, then that of the token
    project::Json token;
    bool neutral = false;  ///< true for a value without effect, such as a margin of 0
};
using TokenEntries = std::vector<TokenEntry>;

/// The entry at `path`; null if there is none.
const TokenEntry* findEntry(const TokenEntries& entries, const std::vector<std::string>& path);

/// Removes the entries that all lists have with the same token, and returns them. One list, or none, shares
/// nothing.
TokenEntries takeShared(std::vector<TokenEntries>& lists);

/// The entries as nested groups.
project::Json groupOf(const TokenEntries& entries);

}  // namespace tenter::emit
