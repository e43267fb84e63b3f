// Fonts and paragraphs for background tasks.
#pragma once

#include <filesystem>
#include <vector>

#include "project/project.h"
#include "text/paragraph_store.h"

namespace tenter::desktop {

/// Fonts and prepared paragraphs that one background job keeps from task to task. Those of the document are
/// not safe to use from another thread. Use by one task at a time.
class BackgroundFonts {
public:
    /// The paragraphs, measured with the fonts of `project`, whose files are in `folder`.
    text::ParagraphStore& use(const project::Project& project, const std::filesystem::path& folder) {
        if (project.fonts != entries_ || folder != folder_) {
            entries_ = project.fonts;
            folder_ = folder;
            fonts_.use(entries_, folder_);
            store_.clear();
        }
        return store_;
    }

private:
    text::Fonts fonts_;
    text::ParagraphStore store_{fonts_};
    std::vector<project::FontEntry> entries_;
    std::filesystem::path folder_;
};

}  // namespace tenter::desktop
