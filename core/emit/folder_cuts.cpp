#include "emit/folder_cuts.h"

#include <algorithm>
#include <cerrno>
#include <cstdlib>
#include <system_error>

namespace tenter::emit {

namespace fs = std::filesystem;

namespace {

pictures::CutPlan planOf(const project::Project& project, const fs::path& folder, std::size_t variant,
                         text::ParagraphStore& store, const text::BreakProfile& profile,
                         const std::stop_token& stop) {
    pictures::CutOptions options;
    options.variants = {variant};
    for (const double ratio : pictures::shownRatios)
        options.ratios.push_back({ratio, 1.0 / static_cast<double>(std::size(pictures::shownRatios))});
    return pictures::planCuts(project, folder, store, profile, options, stop);
}

}  // namespace

FolderCuts::FolderCuts(const project::Project& project, const fs::path& folder, std::size_t variant,
                       text::ParagraphStore& store, const text::BreakProfile& profile,
                       const std::stop_token& stop)
    : project_(project), plan_(planOf(project, folder, variant, store, profile, stop)) {
    listing_.pictures = pictures::listed(plan_, project);
}

FolderCuts::~FolderCuts() {
    std::error_code error;
    if (!staging_.empty()) fs::remove_all(staging_, error);
}

bool FolderCuts::write(const fs::path& target, project::Problems& problems, const std::stop_token& stop,
                       const std::function<void(const pictures::CutProgress&)>& progress) {
    if (plan_.pictures.empty()) return true;
    fs::path place = target.has_filename() ? target : target.parent_path();
    place = place.parent_path().empty() ? fs::path(".") : place.parent_path();
    std::string name = (place / ".tenter-cut-XXXXXX").string();
    if (mkdtemp(name.data()) == nullptr) {
        problems.push_back({target.string(), "",
                            "No folder can be made there: " + std::generic_category().message(errno) + ".",
                            "Choose another place."});
        return false;
    }
    staging_ = name;
    const pictures::CutResult result = pictures::writeCuts(plan_, project_, staging_, stop, progress);
    for (project::Problem problem : result.problems) {
        const fs::path file(problem.file);
        if (file.parent_path() == staging_) problem.file = (target / "pictures" / file.filename()).string();
        problems.push_back(std::move(problem));
    }
    return result.isComplete;
}

project::Problems FolderCuts::troubles() const {
    project::Problems out;
    for (const project::Problem& problem : plan_.problems)
        if (std::ranges::find(plan_.vectors, problem.place) == plan_.vectors.end()) out.push_back(problem);
    return out;
}

}  // namespace tenter::emit
