// What a verb reads and prints by: the process, or one request of `serve`. A verb need not know which.
#pragma once

#include <map>
#include <memory>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "project/problem.h"
#include "project/project.h"
#include "text/paragraph_store.h"

namespace tenter::command {

/// Fonts with the paragraphs that were prepared by them.
struct Workshop {
    text::Fonts fonts;
    text::ParagraphStore store{fonts};
};

/// Keeps the fonts and paragraphs of the projects that were used last, so that a request on the same project,
/// or on one that differs in a setting, shapes only what is new.
class Workshops {
public:
    /// The workshop for a project with these font files in `folder`. A font file that has changed is read
    /// again.
    std::shared_ptr<Workshop> get(const std::vector<project::FontEntry>& entries,
                                  const std::filesystem::path& folder);

private:
    static constexpr std::size_t mostKept = 8;
    std::vector<std::pair<std::string, std::shared_ptr<Workshop>>> kept_;  ///< the last one was used last
};

/// A request: it collects what a verb would print.
struct Request {
    std::string result;              ///< standard output
    std::vector<std::string> notes;  ///< standard error, without problems
    project::Problems problems;
    std::map<std::string, std::string> files;  ///< texts that stand in for files, by path
    std::stop_token cancellation;
    Workshops* workshops = nullptr;
};

/// Makes `request` the one that the verbs of this thread work for, for the life of the object.
class InRequest {
public:
    explicit InRequest(Request& request);
    ~InRequest();
    InRequest(const InRequest&) = delete;
    InRequest& operator=(const InRequest&) = delete;
};

/// The request that this thread works for; null: the process itself.
Request* currentRequest();

/// Stops long work of the request; never, if there is none.
std::stop_token cancellation();

/// Prints text, which may have several lines, to standard error or into the notes.
void printNote(const std::string& text);

/// A workshop for the project's fonts: kept by `serve`, or a new one.
std::shared_ptr<Workshop> workshopFor(const project::Project& project, const std::filesystem::path& folder);

}  // namespace tenter::command
