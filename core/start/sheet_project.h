// A project from a stylesheet without markup.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

#include "start/page_project.h"

namespace tenter::start {

/// A project with the settings that a stylesheet of any origin gives a row: its columns, breakpoints, sizes,
/// spacing and colours. Elements are recognised as in `pageForSheet`. The cards have placeholder texts and no
/// pictures, and there are as many as the widest layout has columns. Empty, with a problem that says what is
/// missing, if no row is recognised. `file`: named in problems and places; empty for pasted text. `rootSize`:
/// root font size in CSS px where the stylesheet sets none.
std::optional<Imported> importSheet(std::string_view css, const std::filesystem::path& file, double rootSize,
                                    text::ParagraphStore& store, project::Problems& problems);

}  // namespace tenter::start
