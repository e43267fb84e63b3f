// The sizes, spacing and colours of a row as design tokens. Design Tokens Format Module 2025.10.
#pragma once

#include <string>
#include <vector>

#include "project/project.h"

namespace tenter::emit {

/// Options of printing design tokens.
struct TokenOptions {
    std::vector<std::size_t> variants{0};  ///< indices of the variants
    units::Unit unit = units::Unit::Px;    ///< Px, or Rem: multiples of 16 px
};

/// The tokens as JSON: the row is a group, each variant a group in it, each band a group in its variant.
/// Tokens that all bands share are in the group `all-widths` of the variant; tokens that all variants share,
/// in the group `all-variants` of the row. Lengths in em become dimensions at both ends of the ramp;
/// percentages become numbers. A value without effect in every band, such as a margin of 0, has no token.
std::string tokens(const project::Project& project, const TokenOptions& options);

}  // namespace tenter::emit
