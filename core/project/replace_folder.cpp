#include "project/replace_folder.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include "project/file_bytes.h"

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <fstream>
#include <set>
#include <system_error>

#include "project/file.h"
#include "project/json_text.h"
#include "project/wording.h"

namespace tenter::project {

namespace fs = std::filesystem;

namespace {

constexpr const char* listFormat = "tenter-folder";

std::string errorText() {
    return std::generic_category().message(errno);
}

std::string listOf(const std::vector<FolderFile>& files) {
    Json names = Json::array();
    for (const FolderFile& file : files)
        names.push_back(file.name);
    names.push_back(folderListName);
    return prettyJson(Json{{"format", listFormat}, {"version", 1}, {"files", std::move(names)}});
}

/// The names in the list of a folder; empty if it has none.
std::set<std::string> listedIn(const fs::path& folder) {
    const std::string text = fileBytes(folder / folderListName, largestFile).value_or("");
    Problems ignored;
    const std::optional<Json> list = parseJson(text, "", ignored);
    std::set<std::string> names;
    if (!list || !list->is_object() || list->value("format", "") != listFormat) return names;
    for (const Json& name : list->value("files", Json::array()))
        if (name.is_string()) names.insert(name.get<std::string>());
    return names;
}

/// The first file of `folder` that is not in its list; empty if there is none.
std::string foreignFile(const fs::path& folder, std::error_code& error) {
    const std::set<std::string> listed = listedIn(folder);
    std::string foreign;
    fs::recursive_directory_iterator at(folder, error);
    for (const fs::recursive_directory_iterator end; !error && at != end; at.increment(error)) {
        if (at->is_directory(error) && !at->is_symlink(error)) continue;
        std::string name = at->path().lexically_relative(folder).generic_string();
        if (!listed.contains(name) && (foreign.empty() || name < foreign)) foreign = std::move(name);
    }
    return foreign;
}

/// A new folder beside another one. It is removed again.
class TemporaryFolder {
public:
    explicit TemporaryFolder(const fs::path& parent) {
        for (int attempt = 0; attempt < 100 && !exists_; ++attempt) {
            path_ = parent / (".tenter-" + std::to_string(getpid()) + "-" + std::to_string(attempt));
            exists_ = mkdir(path_.c_str(), 0777) == 0;
            if (!exists_ && errno != EEXIST) return;
        }
    }
    ~TemporaryFolder() {
        if (!exists_) return;
        const int kept = errno;
        std::error_code error;
        fs::remove_all(path_, error);
        errno = kept;
    }
    TemporaryFolder(const TemporaryFolder&) = delete;
    TemporaryFolder& operator=(const TemporaryFolder&) = delete;

    [[nodiscard]] bool exists() const { return exists_; }
    [[nodiscard]] const fs::path& path() const { return path_; }

    /// Gives the folder the name `target`; what had it takes the name of the temporary folder.
    bool changePlacesWith(const fs::path& target) {
        if (renameat2(AT_FDCWD, path_.c_str(), AT_FDCWD, target.c_str(), RENAME_EXCHANGE) == 0) return true;
        if (errno == ENOENT) {
            if (rename(path_.c_str(), target.c_str()) != 0) return false;
            exists_ = false;
            return true;
        }
        if (errno != EINVAL && errno != ENOSYS) return false;
        // A file system that cannot exchange names.
        const fs::path old = path_.string() + "-old";
        if (rename(target.c_str(), old.c_str()) != 0) return false;
        if (rename(path_.c_str(), target.c_str()) != 0) {
            const int kept = errno;
            if (rename(old.c_str(), target.c_str()) != 0) return false;
            errno = kept;
            return false;
        }
        path_ = old;
        return true;
    }

private:
    fs::path path_;
    bool exists_ = false;
};

bool syncPath(const fs::path& path, int flags) {
    const int descriptor = open(path.c_str(), flags | O_CLOEXEC);
    if (descriptor < 0) return false;
    const bool synced = fsync(descriptor) == 0;
    return close(descriptor) == 0 && synced;
}

/// Reads a file to copy; false with the reason in `why`.
bool readWhole(const fs::path& file, std::string& bytes, std::string& why) {
    std::error_code error;
    const std::uintmax_t size = fs::file_size(file, error);
    if (error) {
        why = error.message();
        return false;
    }
    bytes.resize(size);
    std::ifstream in(file, std::ios::binary);
    if (in.read(bytes.data(), static_cast<std::streamsize>(size))) return true;
    why = "It cannot be read";
    return false;
}

/// Writes one file below `folder`. False, with the reason in `why`, if it cannot be written.
bool writeInto(const fs::path& folder, const FolderFile& file, std::string& why) {
    const fs::path path = folder / fs::path(file.name);
    std::error_code error;
    fs::create_directories(path.parent_path(), error);
    if (error) {
        why = error.message();
        return false;
    }
    // Not the library's copying, which reports a full disk as an error of input and output.
    std::string bytes;
    if (!file.source.empty() && !readWhole(file.source, bytes, why)) return false;
    Problems problems;
    if (replaceFile(path, file.source.empty() ? file.content : bytes, problems)) return true;
    why = errorText();
    return false;
}

}  // namespace

std::uintmax_t FolderFile::size() const {
    if (source.empty()) return content.size();
    std::error_code error;
    const std::uintmax_t bytes = fs::file_size(source, error);
    return error ? 0 : bytes;
}

bool canReplaceFolder(const fs::path& folder, Problems& problems) {
    const auto refused = [&](const std::string& what, const std::string& fix) {
        problems.push_back({folder.string(), "", what, fix});
        return false;
    };
    std::error_code error;
    if (!fs::exists(folder, error)) return true;
    if (!fs::is_directory(folder, error))
        return refused("This is a file, not a folder.", "Choose another name.");
    const std::string foreign = foreignFile(folder, error);
    if (error) return refused("The folder cannot be read: " + error.message() + ".", "Choose another.");
    if (foreign.empty()) return true;
    return refused("The folder contains " + inQuotes(foreign) +
                       ", which Tenter did not write; the folder was not changed.",
                   "Choose an empty folder or a new name.");
}

bool replaceFolder(const fs::path& folder, const std::vector<FolderFile>& files, Problems& problems,
                   const FolderProgress& progress) {
    const auto failed = [&](const std::string& what, const std::string& fix) {
        problems.push_back({folder.string(), "", what, fix});
        return false;
    };
    if (!canReplaceFolder(folder, problems)) return false;
    std::error_code error;
    const fs::path linked = fs::canonical(folder, error);
    fs::path target = error ? folder : linked;
    if (!target.has_filename()) target = target.parent_path();
    const fs::path parent = target.parent_path().empty() ? fs::path(".") : target.parent_path();
    TemporaryFolder temporary(parent);
    if (!temporary.exists())
        return failed("No folder can be made there: " + errorText() + ".", "Choose another place.");
    std::vector<FolderFile> all = files;
    all.push_back({folderListName, listOf(files), {}});
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (progress && i < files.size() && !progress(i)) return false;
        std::string why;
        if (!writeInto(temporary.path(), all[i], why))
            return failed("The file " + inQuotes(all[i].name) + " could not be written: " + why +
                              ". Nothing was changed.",
                          "Free some space on the disk, or choose another place.");
    }
    if (!temporary.changePlacesWith(target))
        return failed("The folder could not be replaced: " + errorText() + ".", "Choose another place.");
    syncPath(parent, O_RDONLY | O_DIRECTORY);
    return true;
}

}  // namespace tenter::project
