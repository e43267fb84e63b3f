#include "pictures/cut_files.h"

#include <algorithm>
#include <array>
#include <atomic>
#include <condition_variable>
#include <iterator>
#include <mutex>
#include <system_error>
#include <thread>
#include <utility>

#include "pictures/encode.h"
#include "pictures/listing.h"
#include "pictures/resample.h"
#include "project/file.h"

namespace tenter::pictures {

namespace fs = std::filesystem;

namespace {

/// Sources that are decoded at the same time. More would need more memory, and the library uses all
/// processors for one picture.
constexpr std::size_t workers = 2;

/// Megapixels that are decoded at the same time; a larger picture is decoded alone.
constexpr double mostAtOnce = 60;

/// How `file` is made: another text whenever it would be made differently.
std::string recipe(const CutPicture& picture, const CutFile& file, const CutOptions& options) {
    std::error_code error;
    const auto bytes = fs::file_size(picture.path, error);
    const auto time = fs::last_write_time(picture.path, error).time_since_epoch().count();
    const Crop& crop = picture.crop;
    const std::array<long long, 9> numbers{static_cast<long long>(bytes),
                                           static_cast<long long>(time),
                                           crop.left,
                                           crop.top,
                                           crop.width,
                                           crop.height,
                                           file.size.width,
                                           file.size.height,
                                           options.qualityOf(file.format)};
    std::string out = picture.source;
    for (const long long number : numbers) {
        out += ' ';
        out += std::to_string(number);
    }
    out += ' ';
    return out.append(formatName(file.format));
}

bool isUpToDate(const Listing& listing, const fs::path& folder, const std::string& name,
                const std::string& from) {
    const auto known = listing.files.find(name);
    if (known == listing.files.end() || known->second.from != from) return false;
    std::error_code error;
    return fs::is_regular_file(folder / name, error) &&
           fs::file_size(folder / name, error) == known->second.bytes && !error;
}

/// A file and its picture.
struct Job {
    const CutPicture* picture = nullptr;
    const CutFile* file = nullptr;
    std::string from;  // its recipe
};

class Cutter {
public:
    Cutter(const CutPlan& plan, const project::Project& project, fs::path folder, const std::stop_token& stop,
           const std::function<void(const CutProgress&)>& progress)
        : plan_(plan), project_(project), folder_(std::move(folder)), stop_(stop), progress_(progress) {}

    CutResult run() {
        if (!prepare()) return std::move(result_);
        {
            std::vector<std::jthread> threads;
            const std::size_t count = std::min(workers, plan_.pictures.size());
            threads.reserve(count);
            for (std::size_t i = 0; i < count; ++i)
                threads.emplace_back([this] { work(); });
        }
        finish();
        return std::move(result_);
    }

private:
    void problem(const std::string& file, const std::string& what, const std::string& fix) {
        result_.problems.push_back({file, "", what, fix});
    }

    /// Makes the folder and refuses to write over sources or a foreign listing.
    bool prepare() {
        std::error_code error;
        fs::create_directories(folder_, error);
        if (!fs::is_directory(folder_)) {
            problem(folder_.string(), "The folder cannot be made: " + error.message() + ".",
                    "Choose another folder.");
            return false;
        }
        if (fs::exists(folder_ / listingName, error)) {
            std::optional<Listing> before = listingIn(folder_);
            if (!before) {
                problem((folder_ / listingName).string(),
                        "This file would be replaced by the listing of the pictures, but it is not one.",
                        "Choose another folder, or move the file.");
                return false;
            }
            listing_.files = std::move(before->files);
        }
        for (const CutPicture& picture : plan_.pictures)
            for (const CutFile& file : picture.files)
                if (isSource(folder_ / file.name)) {
                    problem((folder_ / file.name).string(),
                            "This is a picture of the project, which would be overwritten.",
                            "Choose another folder.");
                    return false;
                }
        written_.resize(plan_.pictures.size());
        return true;
    }

    [[nodiscard]] bool isSource(const fs::path& target) const {
        std::error_code error;
        if (!fs::exists(target, error)) return false;
        return std::ranges::any_of(plan_.sources, [&](const fs::path& source) {
            std::error_code ignored;
            return fs::equivalent(source, target, ignored);
        });
    }

    void work() {
        for (std::size_t i = next_++; i < plan_.pictures.size(); i = next_++) {
            if (stop_.stop_requested() || isFailed_) return;
            cut(plan_.pictures[i], written_[i]);
        }
    }

    void cut(const CutPicture& picture, std::vector<WrittenFile>& written) {
        std::vector<Job> missing;
        for (const CutFile& file : picture.files) {
            Job job{&picture, &file, recipe(picture, file, plan_.options)};
            if (isKept(job, written)) continue;
            missing.push_back(std::move(job));
        }
        if (missing.empty()) return;
        const double megapixels =
            std::min(mostAtOnce, 1e-6 * picture.sourceSize.width * picture.sourceSize.height);
        reserve(megapixels);
        write(picture, missing, written);
        reserve(-megapixels);
        // Files are listed by format, then width, but written by width.
        std::ranges::sort(written, {}, [&](const WrittenFile& file) {
            return std::ranges::find(picture.files, file.name, &CutFile::name) - picture.files.begin();
        });
    }

    /// Waits until `megapixels` more may be decoded; gives them back if negative.
    void reserve(double megapixels) {
        std::unique_lock lock(mutex_);
        if (megapixels > 0) room_.wait(lock, [&] { return decoding_ + megapixels <= mostAtOnce + 1e-6; });
        decoding_ += megapixels;
        room_.notify_all();
    }

    bool isKept(const Job& job, std::vector<WrittenFile>& written) {
        const std::lock_guard lock(mutex_);
        if (!isUpToDate(listing_, folder_, job.file->name, job.from)) return false;
        written.push_back({job.file->name, job.file->size, listing_.files[job.file->name].bytes, true});
        report(job.file->name);
        return true;
    }

    void write(const CutPicture& picture, const std::vector<Job>& jobs, std::vector<WrittenFile>& written) {
        Read<Source> source = readSource(picture.path);
        if (!source.value) {
            const std::lock_guard lock(mutex_);
            problem(picture.path.string(), "The picture " + source.trouble + ".", source.fix);
            return;
        }
        if (source.value->size != picture.sourceSize) {
            const std::lock_guard lock(mutex_);
            problem(picture.path.string(), "The picture has changed meanwhile.", "Start again.");
            return;
        }
        Resampler resampler(*source.value, picture.crop);
        for (const PixelSize& size : picture.sizes) {
            ImagePtr image;
            for (const Job& job : jobs) {
                if (job.file->size != size) continue;
                if (stop_.stop_requested() || isFailed_) return;
                if (image == nullptr) image = resampler.resized(size);
                if (!writeOne(job, image, written)) return;
            }
        }
    }

    bool writeOne(const Job& job, const ImagePtr& image, std::vector<WrittenFile>& written) {
        std::string trouble = imageLibrary().trouble;
        std::optional<std::string> bytes;
        if (image != nullptr)
            bytes = encoded(image, job.file->format, plan_.options.qualityOf(job.file->format), trouble);
        else
            trouble = imageLibrary().takeError();
        const fs::path target = folder_ / job.file->name;
        project::Problems problems;
        const bool isWritten = bytes && project::replaceFile(target, *bytes, problems);
        const std::lock_guard lock(mutex_);
        if (!isWritten) {
            isFailed_ = true;
            if (!bytes)
                problem(target.string(), "The file cannot be made: " + trouble + ".",
                        "Choose another format.");
            result_.problems.insert(result_.problems.end(), problems.begin(), problems.end());
            return false;
        }
        listing_.files[job.file->name] = {job.from, bytes->size()};
        written.push_back({job.file->name, job.file->size, bytes->size(), false});
        report(job.file->name);
        // After every file, so that an interrupted run can go on from here.
        if (!project::replaceFile(folder_ / listingName, listingJson(listing_), result_.problems)) {
            isFailed_ = true;
            return false;
        }
        return true;
    }

    /// Called with the mutex locked.
    void report(const std::string& name) {
        ++done_;
        if (progress_) progress_({done_, plan_.fileCount(), name});
    }

    void finish() {
        for (std::vector<WrittenFile>& files : written_)
            std::ranges::move(files, std::back_inserter(result_.files));
        result_.isComplete = result_.files.size() == plan_.fileCount() && !isFailed_;
        result_.isStopped = !result_.isComplete && stop_.stop_requested();
        if (isFailed_) return;
        // Also if all files were kept: the markup may have changed. Pictures that lack a file are not listed.
        std::vector<ListedPicture> pictures = listed(plan_, project_);
        std::erase_if(pictures, [&](const ListedPicture& picture) {
            return std::ranges::any_of(picture.formats, [&](const ListedFormat& format) {
                return std::ranges::any_of(format.files, [&](const auto& file) {
                    return std::ranges::find(result_.files, file.first, &WrittenFile::name) ==
                           result_.files.end();
                });
            });
        });
        listing_.pictures = std::move(pictures);
        if (!project::replaceFile(folder_ / listingName, listingJson(listing_), result_.problems))
            result_.isComplete = false;
    }

    const CutPlan& plan_;
    const project::Project& project_;
    fs::path folder_;
    std::stop_token stop_;
    const std::function<void(const CutProgress&)>& progress_;
    CutResult result_;
    Listing listing_;
    std::vector<std::vector<WrittenFile>> written_;  // of each picture
    std::atomic<std::size_t> next_ = 0;
    std::atomic<bool> isFailed_ = false;
    std::mutex mutex_;  // of what follows, and of result_ and listing_ while threads run
    std::condition_variable room_;
    double decoding_ = 0;  // megapixels
    std::size_t done_ = 0;
};

}  // namespace

std::vector<bool> upToDate(const CutPlan& plan, const fs::path& folder) {
    const Listing listing = listingIn(folder).value_or(Listing{});
    std::vector<bool> out;
    out.reserve(plan.fileCount());
    for (const CutPicture& picture : plan.pictures)
        for (const CutFile& file : picture.files)
            out.push_back(isUpToDate(listing, folder, file.name, recipe(picture, file, plan.options)));
    return out;
}

CutResult writeCuts(const CutPlan& plan, const project::Project& project, const fs::path& folder,
                    const std::stop_token& stop, const std::function<void(const CutProgress&)>& progress) {
    return Cutter(plan, project, folder, stop, progress).run();
}

}  // namespace tenter::pictures
