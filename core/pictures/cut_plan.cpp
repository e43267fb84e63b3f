#include "pictures/cut_plan.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <utility>

#include "layout/prepared.h"
#include "pictures/sizes.h"
#include "pictures/source.h"
#include "sweep/sweep.h"
#include "units/ascii.h"
#include "wording/say.h"

namespace tenter::pictures {

namespace {

/// A name that every server and system accepts: letters, digits, `-` and `_` of ASCII.
std::string plainStem(const std::filesystem::path& file) {
    const std::string stem = units::hyphenated(
        file.stem().string(), [](char c) { return units::isLetter(c) || units::isDigit(c) || c == '_'; });
    return stem.empty() ? "picture" : stem;
}

/// A slot with what `sizes` says about it.
struct Shown {
    std::size_t variant = 0;
    Slot slot;
    std::string sizes;
};

class Planner {
public:
    Planner(const project::Project& project, const std::filesystem::path& folder, const CutOptions& options)
        : project_(project), folder_(folder) {
        plan_.options = options;
    }

    CutPlan plan(text::ParagraphStore& store, const text::BreakProfile& profile,
                 const std::stop_token& stop) {
        if (!readSources(stop)) return cancelled();
        std::vector<Shown> shown;
        for (const std::size_t variant : plan_.options.variants) {
            if (stop.stop_requested()) return cancelled();
            const layout::PreparedRow row(project_, variant, store, profile);
            const sweep::Sweep all = sweep::sweep(row, project_.leastWidth, project_.mostWidth);
            for (Slot& slot : slotsOf(project_, row, all.curves)) {
                std::string sizes = sizesAttribute(sourceSizes(slot, row));
                shown.push_back({variant, std::move(slot), std::move(sizes)});
            }
        }
        std::vector<std::vector<const Slot*>> slots;
        for (const Shown& one : shown)
            addUse(one, slots);
        for (std::size_t i = 0; i < plan_.pictures.size(); ++i)
            fill(plan_.pictures[i], slots[i]);
        return std::move(plan_);
    }

private:
    CutPlan cancelled() {
        plan_.isCancelled = true;
        return std::move(plan_);
    }

    [[nodiscard]] std::filesystem::path pathOf(const std::string& file) const {
        return folder_ / std::filesystem::path(file);
    }

    /// Reads the head of each picture once and corrects the sizes in the project. False if stopped.
    bool readSources(const std::stop_token& stop) {
        std::vector<project::Card>& cards = project_.row().cards;
        for (std::size_t card = 0; card < cards.size(); ++card)
            for (std::size_t part = 0; part < cards[card].parts.size(); ++part) {
                auto* picture = std::get_if<project::PicturePart>(&cards[card].parts[part]);
                if (picture == nullptr) continue;
                if (stop.stop_requested()) return false;
                if (picture->file.empty()) continue;
                const SourceInfo* info = infoOf(picture->file, card, part);
                if (info == nullptr || info->isVector) continue;
                picture->width = info->size.width;
                picture->height = info->size.height;
            }
        return true;
    }

    /// What is known about `file`; null if it cannot be cut. The first use reports what is wrong.
    const SourceInfo* infoOf(const std::string& file, std::size_t card, std::size_t part) {
        const auto known = infos_.find(file);
        if (known != infos_.end()) return known->second ? &*known->second : nullptr;
        plan_.sources.push_back(pathOf(file));
        Read<SourceInfo> read = readInfo(pathOf(file));
        const std::string place =
            "/cards/" + std::to_string(card) + "/parts/" + std::to_string(part) + "/picture";
        if (!read.value)
            plan_.problems.push_back(
                {"", place, "The picture file \"" + file + "\" " + read.trouble + ".", read.fix});
        else if (read.value->isVector) {
            plan_.problems.push_back(
                {"", place,
                 "The picture file \"" + file +
                     "\" is a vector drawing: it is sharp at every size, so it is not cut.",
                 "Use it as it is."});
            plan_.vectors.push_back(place);
        }
        const auto stored = infos_.emplace(file, std::move(read.value)).first;
        return stored->second ? &*stored->second : nullptr;
    }

    void addUse(const Shown& shown, std::vector<std::vector<const Slot*>>& slots) {
        const auto& part = std::get<project::PicturePart>(project_.part(shown.slot.place));
        const auto info = infos_.find(part.file);
        if (info == infos_.end() || !info->second || info->second->isVector) return;
        if (!(shown.slot.cutRatio > 0)) return;
        std::size_t index = 0;
        while (index < plan_.pictures.size() && !isCutLike(index, part, shown.slot.cutRatio))
            ++index;
        if (index == plan_.pictures.size()) {
            plan_.pictures.push_back(pictureOf(part, *info->second, shown.slot.cutRatio));
            focus_.emplace_back(part.focusX, part.focusY);
            slots.emplace_back();
        }
        slots[index].push_back(&shown.slot);
        plan_.uses.push_back({shown.variant, shown.slot.place, index, shown.sizes});
    }

    [[nodiscard]] bool isCutLike(std::size_t index, const project::PicturePart& part, double ratio) const {
        const CutPicture& picture = plan_.pictures[index];
        return picture.source == part.file && std::abs(picture.ratio / ratio - 1) < sameRatio &&
               focus_[index] == std::pair{part.focusX, part.focusY};
    }

    [[nodiscard]] CutPicture pictureOf(const project::PicturePart& part, const SourceInfo& info,
                                       double ratio) const {
        CutPicture picture;
        picture.source = part.file;
        picture.path = pathOf(part.file);
        picture.sourceSize = info.size;
        picture.ratio = ratio;
        picture.crop = cropOf(info.size, ratio, part.focusX, part.focusY);
        picture.notes = info.notes;
        for (Format format : plan_.options.formats) {
            if (format == Format::Jpeg && info.hasAlpha) format = Format::Png;
            if (std::ranges::find(picture.formats, format) == picture.formats.end())
                picture.formats.push_back(format);
        }
        if (info.hasAlpha && picture.formats != plan_.options.formats)
            picture.notes.emplace_back(
                wording::say("Some of it is transparent, so PNG is written in place of JPEG."));
        return picture;
    }

    void fill(CutPicture& picture, const std::vector<const Slot*>& slots) {
        const CutOptions& options = plan_.options;
        const std::vector<Demand> demand =
            demandOf(slots, options.visits, project_.leastWidth, project_.mostWidth, options.ratios);
        const Candidates best = bestCandidates(demand, options.candidates, picture.ratio, picture.crop.width);
        picture.surplusShare = best.needed > 0 ? best.surplus / best.needed : 0;
        for (const int width : best.widths)
            picture.sizes.push_back({width, std::min(heightFor(width, picture.ratio), picture.crop.height)});
        for (const Slot* slot : slots) {
            if (slot->largest.value <= picture.largest.value) continue;
            picture.largest = slot->largest;
            const Upload upload = uploadOf(*slot);
            picture.upload = upload.size;
            picture.isTooSmall = upload.isTooSmall;
        }
        const std::string stem = freeStem(picture);
        for (const Format format : picture.formats)
            for (const PixelSize& size : picture.sizes)
                picture.files.push_back({nameOf(stem, size, format), format, size,
                                         estimatedBytes(format, options.qualityOf(format),
                                                        static_cast<double>(size.width) * size.height)});
    }

    static std::string nameOf(const std::string& stem, const PixelSize& size, Format format) {
        std::string name = stem;
        name += '-';
        name += std::to_string(size.width);
        name += 'x';
        name += std::to_string(size.height);
        return name.append(fileEnding(format));
    }

    /// A stem with which no name of `picture` is taken, also where letter case does not count.
    std::string freeStem(const CutPicture& picture) {
        const std::string plain = plainStem(picture.path);
        for (int count = 1;; ++count) {
            std::string stem = count == 1 ? plain : plain + "-" + std::to_string(count);
            std::set<std::string> names;
            for (const Format format : picture.formats)
                for (const PixelSize& size : picture.sizes)
                    names.insert(units::lowered(nameOf(stem, size, format)));
            if (std::ranges::any_of(names, [&](const std::string& name) { return taken_.contains(name); }))
                continue;
            taken_.merge(names);
            return stem;
        }
    }

    project::Project project_;  // with the sizes of the files
    std::filesystem::path folder_;
    CutPlan plan_;
    std::map<std::string, std::optional<SourceInfo>> infos_;
    std::vector<std::pair<double, double>> focus_;  // of each picture of the plan
    std::set<std::string> taken_;
};

}  // namespace

std::size_t CutPlan::fileCount() const {
    std::size_t count = 0;
    for (const CutPicture& picture : pictures)
        count += picture.files.size();
    return count;
}

CutPlan planCuts(const project::Project& project, const std::filesystem::path& folder,
                 text::ParagraphStore& store, const text::BreakProfile& profile, const CutOptions& options,
                 const std::stop_token& stop) {
    return Planner(project, folder, options).plan(store, profile, stop);
}

}  // namespace tenter::pictures
