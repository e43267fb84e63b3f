// The `sizes` attribute of a picture.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "pictures/slots.h"

namespace tenter::pictures {

/// A range of viewport widths in which a picture is drawn `px` + `vw` / 100 × viewport width wide, CSS px.
struct SourceSize {
    std::optional<double> upTo;  ///< largest viewport width of the range, CSS px; empty: no limit
    double px = 0;
    double vw = 0;
    /// `calc(25.33vw - 18px)`, `80vw` or `784px`. HTML allows no percentages here.
    [[nodiscard]] std::string css() const;
    friend bool operator==(const SourceSize&, const SourceSize&) = default;
};

/// The ranges of `slot`, rising. Conditions are in px, because relative lengths in `sizes` follow the
/// reader's initial font size, not the root of the page (Media Queries 4 § 1.3). `row` says where `vw` leaves
/// out a scrollbar.
std::vector<SourceSize> sourceSizes(const Slot& slot, const layout::PreparedRow& row);

/// The value of the attribute: `(max-width: 980px) 80vw, calc(26.667vw - 20px)`. The first condition that
/// holds decides. HTML § 4.8.4.2.
std::string sizesAttribute(const std::vector<SourceSize>& sizes);

/// The source size at viewport width `width` (CSS px), as the attribute says it. `outside`: the width of a
/// scrollbar that `vw` leaves out, CSS px.
double sourceSizeAt(const std::vector<SourceSize>& sizes, double width, double outside = 0);

}  // namespace tenter::pictures
