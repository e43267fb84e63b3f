#include "request.h"

#include <algorithm>
#include <filesystem>
#include <iostream>

namespace tenter::command {

namespace {

/// Verbs run on one thread for each request, from their start to their end.
thread_local Request* current = nullptr;

}  // namespace

std::shared_ptr<Workshop> Workshops::get(const std::vector<project::FontEntry>& entries,
                                         const std::filesystem::path& folder) {
    std::string key = folder.string();
    for (const project::FontEntry& entry : entries) {
        std::error_code error;
        const auto changed =
            std::filesystem::last_write_time(folder / entry.file, error).time_since_epoch().count();
        key += '\n' + entry.family + '\t' + entry.file + '\t' + std::to_string(entry.leastWeight) + '\t' +
               std::to_string(entry.mostWeight) + '\t' + std::to_string(static_cast<int>(entry.slant)) +
               '\t' + std::to_string(changed);
    }
    const auto found = std::ranges::find(kept_, key, [](const auto& each) { return each.first; });
    if (found != kept_.end()) {
        std::rotate(found, found + 1, kept_.end());
        return kept_.back().second;
    }
    if (kept_.size() >= mostKept) kept_.erase(kept_.begin());
    kept_.emplace_back(key, std::make_shared<Workshop>());
    kept_.back().second->fonts.use(entries, folder);
    return kept_.back().second;
}

InRequest::InRequest(Request& request) {
    current = &request;
}

InRequest::~InRequest() {
    current = nullptr;
}

Request* currentRequest() {
    return current;
}

std::stop_token cancellation() {
    return current == nullptr ? std::stop_token() : current->cancellation;
}

void printNote(const std::string& text) {
    if (current == nullptr) {
        std::cerr << text << (text.ends_with('\n') ? "" : "\n");
        return;
    }
    std::string note = text;
    while (note.ends_with('\n'))
        note.pop_back();
    current->notes.push_back(std::move(note));
}

std::shared_ptr<Workshop> workshopFor(const project::Project& project, const std::filesystem::path& folder) {
    if (current != nullptr && current->workshops != nullptr)
        return current->workshops->get(project.fonts, folder);
    auto workshop = std::make_shared<Workshop>();
    workshop->fonts.use(project.fonts, folder);
    return workshop;
}

}  // namespace tenter::command
