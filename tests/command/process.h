// tenter-cli run as a process.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace tenter::tests {

/// The result of a process.
struct Finished {
    int code = -1;
    std::string out;
    std::string err;
    double seconds = 0;    ///< processor time
    double megabytes = 0;  ///< largest resident memory
    [[nodiscard]] std::size_t errorLines() const;
};

/// Runs tenter-cli with `arguments`, without a shell and with an empty standard input, in the folder `in`
/// (empty: the present one). The process is killed if it opens a connection to a network.
Finished tenterCli(const std::vector<std::string>& arguments, const std::filesystem::path& in = {});

/// A temporary folder for one test.
class Folder {
public:
    Folder();
    ~Folder();
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    /// The path of a file in it; `write` also writes the file.
    [[nodiscard]] std::string file(const std::string& name) const { return (path_ / name).string(); }
    std::string write(const std::string& name, const std::string& content) const;
    [[nodiscard]] std::vector<std::string> names() const;
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }

private:
    std::filesystem::path path_;
};

std::string contentOf(const std::string& file);

}  // namespace tenter::tests
