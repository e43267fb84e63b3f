// Layouts as JSON.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "layout/layout.h"

namespace tenter::emit {

struct GeometryHead {
    std::string project;  ///< the file as given
    std::string variant;  ///< its class
    std::string engine;   ///< break profile
};

/// Lays out at each of `widths` (CSS px) and hands the JSON to `sink` piece by piece, so that a hundred
/// thousand layouts need no memory. Numbers are in full double precision.
void writeGeometry(const layout::PreparedRow& row, const GeometryHead& head,
                   const std::vector<double>& widths, const std::function<void(const std::string&)>& sink);

}  // namespace tenter::emit
