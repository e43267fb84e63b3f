// The files of pictures in a page.
#pragma once

#include <filesystem>
#include <string>

namespace tenter::markup {

/// The file of a picture, as a project names it.
struct PictureFile {
    std::string name;
    bool isThere = false;
};

/// The file that the address of a picture refers to, saved with the page, relative to the folder of the
/// project; if there is none, only the file name. Nothing is fetched, and no file outside the folder of the
/// page is looked at.
PictureFile pictureFile(const std::string& address, const std::filesystem::path& page,
                        const std::filesystem::path& projectFolder);

/// What a person calls the page in `file`: its name without the ending; of an `index` page that of its
/// folder.
std::string nameOfFile(const std::filesystem::path& file);

}  // namespace tenter::markup
