// The pictures of a page folder, cut to their slots.
#pragma once

#include <filesystem>
#include <functional>
#include <stop_token>

#include "pictures/cut_files.h"
#include "pictures/listing.h"

namespace tenter::emit {

/// Cut files in a folder of their own, which is removed at the end.
class FolderCuts {
public:
    /// Plans the cuts for `variant`: files for screens with 1, 2 and 3 device px per CSS px, in the formats
    /// that all browsers know. `folder`: that of the project file.
    FolderCuts(const project::Project& project, const std::filesystem::path& folder, std::size_t variant,
               text::ParagraphStore& store, const text::BreakProfile& profile,
               const std::stop_token& stop = {});
    ~FolderCuts();
    FolderCuts(const FolderCuts&) = delete;
    FolderCuts& operator=(const FolderCuts&) = delete;

    /// To be called before `pageFolder`: writes the files beside the page folder `target`. False, with
    /// problems unless `stop` was requested, if one cannot be written.
    bool write(const std::filesystem::path& target, project::Problems& problems,
               const std::stop_token& stop = {},
               const std::function<void(const pictures::CutProgress&)>& progress = {});

    [[nodiscard]] const pictures::CutPlan& plan() const { return plan_; }
    [[nodiscard]] const pictures::Listing& listing() const { return listing_; }
    /// The cut file `name`. It exists after `write`.
    [[nodiscard]] std::filesystem::path file(const std::string& name) const { return staging_ / name; }
    /// What is wrong with pictures that cannot be cut.
    [[nodiscard]] project::Problems troubles() const;

private:
    const project::Project& project_;
    pictures::CutPlan plan_;
    pictures::Listing listing_;
    std::filesystem::path staging_;
};

}  // namespace tenter::emit
