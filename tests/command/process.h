// tenter-cli run as a process.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace tenter::tests {

struct Finished {
    int code = -1;
    std::string out;
    std::string err;
    [[nodiscard]] std::size_t errorLines() const;
};

/// Runs tenter-cli with `arguments`; no shell reads them.
Finished tenterCli(const std::vector<std::string>& arguments);

/// A folder of one test, removed at its end.
class Folder {
public:
    Folder();
    ~Folder();
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    /// A file of it, by name; written if `content` is given.
    [[nodiscard]] std::string file(const std::string& name) const { return (path_ / name).string(); }
    std::string write(const std::string& name, const std::string& content) const;
    [[nodiscard]] std::vector<std::string> names() const;

private:
    std::filesystem::path path_;
};

std::string contentOf(const std::string& file);

}  // namespace tenter::tests
