// A browser without a window that opens one page.
#pragma once

#include <optional>
#include <string>

namespace tenter::command {

/// The path of an installed browser, Chromium before Firefox; empty if there is none on the search path.
std::string installedBrowser();

/// Opens `html` in the browser `program` and returns the text that the page posts to the address `result`.
/// The page is served on 127.0.0.1 below a random path; the browser's profile is in a temporary folder. Empty
/// if the browser does not start or posts nothing within 60 seconds.
std::optional<std::string> browse(const std::string& program, const std::string& html);

}  // namespace tenter::command
