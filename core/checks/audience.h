// An audience: how many visits come at which viewport width.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "project/problem.h"
#include "sweep/pieces.h"

namespace tenter::checks {

/// Widths in CSS px with their visits, rising.
struct Audience {
    std::vector<std::pair<double, double>> visits;
    [[nodiscard]] bool empty() const { return visits.empty(); }
    /// Share, 0 to 1, of visits within `spans`; a span holds its `to`, and its `from` if that is `least` or
    /// all of it.
    [[nodiscard]] double share(const std::vector<sweep::Interval>& spans, double least) const;
};

/// Reads comma or semicolon separated values (RFC 4180) with a line of headings, one of which names the width
/// (`width`, `viewport` …) and one the visits (`visits`, `sessions`, `users` …). A width may stand as
/// `390x844`. Lines that cannot be read are told by number and left out; empty if none is left.
std::optional<Audience> readAudience(std::string_view text, const std::string& file,
                                     project::Problems& problems);

}  // namespace tenter::checks
