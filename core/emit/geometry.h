// Layouts as JSON.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "layout/layout.h"

namespace tenter::emit {

/// The first fields of the JSON.
struct GeometryHead {
    std::string project;  ///< name of the file as given
    std::string variant;  ///< class of the variant
    std::string engine;   ///< name of the break profile
};

/// Lays out the row at each of `widths` (CSS px) and passes the JSON to `sink` in pieces, so that many
/// layouts need little memory. Numbers have full double precision. `fonts` and `spaceFonts` of a part are
/// indices into the list `fonts` at the end: the files with which its characters and its spaces were
/// measured.
void writeGeometry(const layout::PreparedRow& row, const GeometryHead& head,
                   const std::vector<double>& widths, const std::function<void(const std::string&)>& sink);

}  // namespace tenter::emit
