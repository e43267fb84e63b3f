#include "document/carry_files.h"

#include <fstream>
#include <iterator>
#include <set>
#include <system_error>
#include <utility>
#include <variant>
#include <vector>

namespace tenter::desktop {

namespace fs = std::filesystem;

namespace {

std::set<std::string> filesOf(const project::Project& project) {
    std::set<std::string> files;
    for (const project::Card& card : project.cards)
        for (const project::Part& part : card.parts)
            if (const auto* picture = std::get_if<project::PicturePart>(&part)) files.insert(picture->file);
    for (const project::FontEntry& font : project.fonts)
        files.insert(font.file);
    files.erase("");
    return files;
}

bool sameContent(const fs::path& a, const fs::path& b) {
    std::error_code error;
    if (fs::file_size(a, error) != fs::file_size(b, error) || error) return false;
    std::ifstream first(a, std::ios::binary);
    std::ifstream second(b, std::ios::binary);
    return std::equal(std::istreambuf_iterator<char>(first), {}, std::istreambuf_iterator<char>(second));
}

}  // namespace

bool carryFiles(const project::Project& project, const fs::path& from, const fs::path& to,
                project::Problems& problems) {
    std::error_code error;
    if (fs::weakly_canonical(from, error) == fs::weakly_canonical(to, error)) return true;
    std::vector<std::pair<fs::path, fs::path>> copies;
    const std::size_t before = problems.size();
    for (const std::string& file : filesOf(project)) {
        const fs::path relative = fs::path(file).lexically_normal();
        if (relative.is_absolute()) continue;
        const fs::path source = from / relative;
        const fs::path target = to / relative;
        if (!fs::exists(source, error)) continue;
        if (*relative.begin() == "..")
            problems.push_back({target.string(), file, "it would lie outside the project's folder",
                                "save into the old folder, or move the file beside the project first"});
        else if (!fs::exists(target, error))
            copies.emplace_back(source, target);
        else if (!sameContent(source, target))
            problems.push_back({target.string(), file, "another file of that name is there already",
                                "save into another folder, or rename one of the two"});
    }
    if (problems.size() != before) return false;
    for (const auto& [source, target] : copies) {
        fs::create_directories(target.parent_path(), error);
        if (!fs::copy_file(source, target, error)) {
            problems.push_back({target.string(), "", "it could not be copied here: " + error.message(),
                                "save into a folder that can be written to and has room"});
            return false;
        }
    }
    return true;
}

}  // namespace tenter::desktop
