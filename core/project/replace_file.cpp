#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <system_error>

#include "project/file.h"

namespace tenter::project {

namespace {

std::string reason() {
    return std::generic_category().message(errno);
}

// A new file in the folder of another one. It is removed again unless it has been renamed.
class TemporaryFile {
public:
    explicit TemporaryFile(const std::filesystem::path& folder) {
        for (int attempt = 0; attempt < 100 && descriptor_ < 0; ++attempt) {
            const std::string name = ".tenter-" + std::to_string(getpid()) + "-" + std::to_string(attempt);
            path_ = folder / name;
            descriptor_ = open(path_.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
            if (descriptor_ < 0 && errno != EEXIST) return;
        }
        exists_ = descriptor_ >= 0;
    }
    ~TemporaryFile() {
        const int kept = errno;
        if (descriptor_ >= 0) close(descriptor_);
        if (exists_) unlink(path_.c_str());
        errno = kept;
    }
    TemporaryFile(const TemporaryFile&) = delete;
    TemporaryFile& operator=(const TemporaryFile&) = delete;

    [[nodiscard]] bool isOpen() const { return descriptor_ >= 0; }

    // Copies the permissions and, where allowed, the owner of the file to be replaced.
    bool copyOwnership(const struct stat& status) {
        if (fchown(descriptor_, status.st_uid, status.st_gid) != 0) errno = 0;
        return fchmod(descriptor_, status.st_mode & 07777U) == 0;
    }

    bool writeAndSync(const std::string& content) {
        for (std::size_t done = 0; done < content.size();) {
            const ssize_t wrote = ::write(descriptor_, content.data() + done, content.size() - done);
            if (wrote < 0 && errno == EINTR) continue;
            if (wrote < 0) return false;
            done += static_cast<std::size_t>(wrote);
        }
        if (fsync(descriptor_) != 0) return false;
        const int descriptor = descriptor_;
        descriptor_ = -1;
        return close(descriptor) == 0;
    }

    bool renameTo(const std::filesystem::path& file) {
        if (rename(path_.c_str(), file.c_str()) != 0) return false;
        exists_ = false;
        return true;
    }

private:
    std::filesystem::path path_;
    int descriptor_ = -1;
    bool exists_ = false;
};

// A new name is safe on the disk only when its folder is synced.
void syncFolder(const std::filesystem::path& folder) {
    const int descriptor = open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (descriptor < 0) return;
    fsync(descriptor);
    close(descriptor);
}

}  // namespace

bool replaceFile(const std::filesystem::path& file, const std::string& content, Problems& problems) {
    const auto failed = [&](const std::string& what, const char* fix) {
        problems.push_back({file.string(), "", what, fix});
        return false;
    };
    // A symbolic link stays: the file that it points to is replaced.
    std::error_code error;
    const std::filesystem::path linked = std::filesystem::canonical(file, error);
    const std::filesystem::path target = error ? file : linked;
    const std::filesystem::path parent = target.parent_path();
    const std::filesystem::path folder = parent.empty() ? "." : parent;

    struct stat status = {};
    const bool exists = stat(target.c_str(), &status) == 0;
    if (exists && !S_ISREG(status.st_mode))
        return failed("This is not a regular file.", "Choose another name.");
    if (exists && access(target.c_str(), W_OK) != 0) {
        return failed("The file cannot be written: " + reason() + ".", "Save under another name.");
    }
    TemporaryFile temporary(folder);
    if (!temporary.isOpen()) {
        return failed("No file can be made in its folder: " + reason() + ".", "Save in another folder.");
    }
    if (exists && !temporary.copyOwnership(status)) {
        return failed("The permissions of the file cannot be kept: " + reason() + ".",
                      "Save under another name.");
    }
    if (!temporary.writeAndSync(content)) {
        return failed("The file could not be written: " + reason() + ". The old file is unchanged.",
                      "Free some space on the disk.");
    }
    if (!temporary.renameTo(target)) {
        return failed("The file could not be replaced: " + reason() + ". The old file is unchanged.",
                      "Save under another name.");
    }
    syncFolder(folder);
    return true;
}

}  // namespace tenter::project
