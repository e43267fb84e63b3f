// An audience: visits per viewport width.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "project/problem.h"
#include "sweep/pieces.h"

namespace tenter::checks {

/// Viewport widths in CSS px with their visits, rising.
struct Audience {
    std::vector<std::pair<double, double>> visits;
    [[nodiscard]] bool empty() const { return visits.empty(); }
    /// The share of visits within `spans`, 0 to 1. A span includes its `to`, and its `from` only if that is
    /// `least` or the whole span.
    [[nodiscard]] double share(const std::vector<sweep::Interval>& spans, double least) const;
};

/// The size in bytes of the largest audience file that is read.
inline constexpr std::size_t largestAudience = 8U << 20U;

/// The audience in comma or semicolon separated values (RFC 4180). The first line has headings; one of them
/// contains `width`, `viewport`, `resolution` or `screen`, another `visits`, `sessions`, `users`, `views` or
/// `count`. A width may be written `390`, `390px` or `390x844`. Lines that cannot be read are skipped and
/// reported in `problems`; empty if no line is left, or if the text is too large.
std::optional<Audience> readAudience(std::string_view text, const std::string& file,
                                     project::Problems& problems);

}  // namespace tenter::checks
