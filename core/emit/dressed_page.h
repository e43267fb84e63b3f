// A saved copy of a page, with the stylesheet where a CMS would print it.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

#include "project/problem.h"
#include "project/project.h"
#include "text/paragraph.h"

namespace tenter::emit {

/// A page as it was saved.
struct SavedPage {
    std::string_view bytes;
    std::filesystem::path file;  ///< what lies beside it is read; told in problems
};

/// HTML of the saved page with the given row's stylesheet last in its head, the fonts of the measurement, the
/// style sheets and pictures that lie beside it, and parts marked as in `page`. Whatever runs is left out,
/// and a Content-Security-Policy lets nothing be fetched (CSP 3 § 3.3). The row is the element with a
/// variant's class, else the one that is as the project's given markup. Empty, with problems, without one.
std::string dressedPage(const project::Project& project, std::size_t variant,
                        const std::filesystem::path& folder, const SavedPage& saved,
                        text::ParagraphStore& store, project::Problems& problems);

}  // namespace tenter::emit
