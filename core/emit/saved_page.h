// A saved page of the site with the stylesheet of the row.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

#include "project/problem.h"
#include "project/project.h"
#include "text/paragraph_store.h"

namespace tenter::emit {

/// A saved page.
struct SavedPage {
    std::string_view bytes;
    std::filesystem::path file;  ///< the saved file; files next to it are read, problems name it
};

/// HTML of the saved page with the stylesheet of the given row last in its head, the fonts of the
/// measurement, the stylesheets and pictures that are saved with the page, and parts marked as in `page`.
/// Scripts are removed, and a Content-Security-Policy prevents every request (CSP 3 § 3.3). The row is the
/// element with the class of a variant, else the one that equals the project's given markup. Empty, with
/// problems, if there is none.
std::string savedPageWithStylesheet(const project::Project& project, std::size_t variant,
                                    const std::filesystem::path& folder, const SavedPage& saved,
                                    text::ParagraphStore& store, project::Problems& problems);

}  // namespace tenter::emit
