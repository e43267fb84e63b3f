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

// A new file beside another, removed again unless it is kept.
class Beside {
public:
    explicit Beside(const std::filesystem::path& folder) {
        for (int attempt = 0; attempt < 100 && descriptor_ < 0; ++attempt) {
            const std::string name = ".tenter-" + std::to_string(getpid()) + "-" + std::to_string(attempt);
            path_ = folder / name;
            descriptor_ = open(path_.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
            if (descriptor_ < 0 && errno != EEXIST) return;
        }
        exists_ = descriptor_ >= 0;
    }
    ~Beside() {
        const int kept = errno;
        if (descriptor_ >= 0) close(descriptor_);
        if (exists_) unlink(path_.c_str());
        errno = kept;
    }
    Beside(const Beside&) = delete;
    Beside& operator=(const Beside&) = delete;

    [[nodiscard]] bool isOpen() const { return descriptor_ >= 0; }

    // Takes over the permissions and, where allowed, the owner of the file to be replaced.
    bool take(const struct stat& status) {
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

// The name itself is safe on disk only when its folder is.
void syncFolder(const std::filesystem::path& folder) {
    const int descriptor = open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (descriptor < 0) return;
    fsync(descriptor);
    close(descriptor);
}

}  // namespace

bool replaceFile(const std::filesystem::path& file, const std::string& content, Problems& problems) {
    const auto failed = [&](const std::string& what, const char* mend) {
        problems.push_back({file.string(), "", what, mend});
        return false;
    };
    // A link keeps leading where it led: what it points to is replaced.
    std::error_code error;
    const std::filesystem::path linked = std::filesystem::canonical(file, error);
    const std::filesystem::path target = error ? file : linked;
    const std::filesystem::path parent = target.parent_path();
    const std::filesystem::path folder = parent.empty() ? "." : parent;

    struct stat status = {};
    const bool exists = stat(target.c_str(), &status) == 0;
    if (exists && !S_ISREG(status.st_mode)) return failed("this is no ordinary file", "choose another name");
    if (exists && access(target.c_str(), W_OK) != 0) {
        return failed("the file may not be written: " + reason(), "save under another name");
    }
    Beside beside(folder);
    if (!beside.isOpen()) {
        return failed("nothing can be written in its folder: " + reason(), "save in another folder");
    }
    if (exists && !beside.take(status)) {
        return failed("its permissions cannot be kept: " + reason(), "save under another name");
    }
    if (!beside.writeAndSync(content)) {
        return failed("it could not be written: " + reason() + "; the old file is as it was",
                      "make room on the disk");
    }
    if (!beside.renameTo(target)) {
        return failed("it could not be replaced: " + reason() + "; the old file is as it was",
                      "save under another name");
    }
    syncFolder(folder);
    return true;
}

}  // namespace tenter::project
