#include "document/collect_files.h"

#include <QObject>
#include <QString>
#include <algorithm>
#include <array>
#include <fstream>
#include <map>
#include <system_error>
#include <utility>
#include <variant>

namespace tenter::desktop {

namespace fs = std::filesystem;

namespace {

bool leavesFolder(const fs::path& relative) {
    return relative.empty() || *relative.begin() == "..";
}

bool sameContent(const fs::path& a, const fs::path& b) {
    std::error_code error;
    if (fs::equivalent(a, b, error)) return true;
    if (fs::file_size(a, error) != fs::file_size(b, error) || error) return false;
    std::ifstream first(a, std::ios::binary);
    std::ifstream second(b, std::ios::binary);
    std::array<char, 65536> ofFirst;
    std::array<char, 65536> ofSecond;
    do {
        first.read(ofFirst.data(), ofFirst.size());
        second.read(ofSecond.data(), ofSecond.size());
        if (first.bad() || second.bad() || first.gcount() != second.gcount() ||
            !std::equal(ofFirst.begin(), ofFirst.begin() + first.gcount(), ofSecond.begin()))
            return false;
    } while (first && second);
    return first.eof() && second.eof();
}

/// Copies each file once and remembers its new name.
class FileCollector {
public:
    FileCollector(fs::path from, fs::path to, project::Problems& problems)
        : from_(std::move(from)), to_(std::move(to)), problems_(problems) {
        std::error_code error;
        sameFolder_ = fs::weakly_canonical(from_, error) == fs::weakly_canonical(to_, error);
    }

    /// Copies `file` and replaces it by the name of the copy.
    void collect(std::string& file, const fs::path& subfolder) {
        if (const auto known = names_.find(file); known != names_.end()) {
            file = known->second;
            return;
        }
        const std::string before = file;
        copyOrReuse(file, subfolder);
        names_[before] = file;
    }
    [[nodiscard]] bool failed() const { return failed_; }

private:
    void copyOrReuse(std::string& file, const fs::path& subfolder) {
        const fs::path name(file);
        if (file.empty() || (sameFolder_ && name.is_relative())) return;
        const fs::path source = name.is_absolute() ? name : from_ / name;
        std::error_code error;
        if (!fs::exists(source, error)) {
            if (name.is_absolute()) reportMissing(source);
            return;
        }
        const bool outside = name.is_absolute() || leavesFolder(name.lexically_normal());
        const fs::path wanted = outside ? subfolder / source.filename() : name.lexically_normal();
        fs::path target = to_ / wanted;
        for (int n = 2; fs::exists(target, error) && !sameContent(source, target); ++n)
            target = (to_ / wanted)
                         .replace_filename(wanted.stem().string() + "-" + std::to_string(n) +
                                           wanted.extension().string());
        if (!fs::exists(target, error)) copy(source, target);
        file = target.lexically_relative(to_).generic_string();
    }

    /// An absolute name that stays would make a file that cannot be opened.
    void reportMissing(const fs::path& source) {
        failed_ = true;
        problems_.push_back(
            {source.string(), "", QObject::tr("This file does not exist any more.").toStdString(),
             QObject::tr("Choose the picture or the font again, or remove it from the project.")
                 .toStdString()});
    }

    void copy(const fs::path& source, const fs::path& target) {
        std::error_code error;
        fs::create_directories(target.parent_path(), error);
        if (fs::copy_file(source, target, error)) return;
        failed_ = true;
        problems_.push_back(
            {target.string(), "",
             QObject::tr("the file could not be copied here: %1")
                 .arg(QString::fromLocal8Bit(error.message().c_str()))
                 .toStdString(),
             QObject::tr("save into a folder that you may write to, on a disk with enough space")
                 .toStdString()});
    }

    fs::path from_, to_;
    project::Problems& problems_;
    std::map<std::string, std::string> names_;
    bool sameFolder_ = false;
    bool failed_ = false;
};

}  // namespace

std::optional<project::Project> collectFiles(const project::Project& project, const fs::path& from,
                                             const fs::path& to, project::Problems& problems) {
    project::Project collected = project;
    FileCollector collector(from, to, problems);
    for (project::Card& card : collected.row().cards)
        for (project::Part& part : card.parts)
            if (auto* picture = std::get_if<project::PicturePart>(&part))
                collector.collect(picture->file, "pictures");
    for (project::FontEntry& font : collected.fonts)
        collector.collect(font.file, "fonts");
    if (collector.failed()) return std::nullopt;
    return collected;
}

std::string storedPath(const fs::path& file, const fs::path& folder) {
    const fs::path relative = file.lexically_relative(folder);
    return leavesFolder(relative) ? file.string() : relative.generic_string();
}

}  // namespace tenter::desktop
