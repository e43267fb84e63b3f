// Which file a picture of a page is.
#pragma once

#include <filesystem>
#include <string>

namespace tenter::markup {

/// A picture's file as a project names it.
struct PictureFile {
    std::string name;
    bool isThere = false;
};

/// The file beside the saved page that a picture's address means, relative to the project's folder; if there
/// is none, the name alone. Nothing is fetched, and nothing outside the page's folder looked at.
PictureFile pictureFile(const std::string& address, const std::filesystem::path& page,
                        const std::filesystem::path& projectFolder);

}  // namespace tenter::markup
