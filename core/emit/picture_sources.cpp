#include "emit/picture_sources.h"

#include <algorithm>

#include "emit/address.h"
#include "emit/values.h"
#include "project/cascade.h"

namespace tenter::emit {

namespace {

using pictures::Format;
using pictures::ListedFormat;
using pictures::ListedPicture;

/// Every candidate with its width. HTML § 4.8.4.2.1.
std::string srcsetOf(const ListedFormat& format, const std::string& address) {
    std::string out;
    for (const auto& [name, size] : format.files) {
        if (!out.empty()) out += ", ";
        out += address;
        out += pathAddress(name);
        out += ' ';
        out += std::to_string(size.width);
        out += 'w';
    }
    return out;
}

/// A browser uses the first `<source>` that it knows, so formats with smaller files come first.
int orderOf(Format format) {
    switch (format) {
        case Format::Avif:
            return 0;
        case Format::WebP:
            return 1;
        case Format::Jpeg:
        case Format::Png:
            break;
    }
    return 2;
}

const ListedPicture* listedAt(const project::Project& project, std::size_t variant,
                              const pictures::Listing& listing, std::size_t card, std::size_t part) {
    const ListedPicture* found = listing.find(project.row().variants[variant].className, card, part);
    const std::vector<project::Card>& cards = project.row().cards;
    if (found == nullptr || card >= cards.size() || part >= cards[card].parts.size()) return nullptr;
    const auto* picture = std::get_if<project::PicturePart>(&cards[card].parts[part]);
    return picture != nullptr && found->source == picture->file && !found->formats.empty() ? found : nullptr;
}

/// The ratio of the source if the variant shows `part` in it at every width and some file has another one.
std::string ratioOfSource(const project::Project& project, std::size_t variant, const ListedPicture& listed,
                          const project::PicturePart& part) {
    if (part.ratio || part.width <= 0 || part.height <= 0) return {};
    const project::Variant& shown = project.row().variants[variant];
    for (std::size_t band = 0; band < shown.bands.size(); ++band)
        if (!project::resolve(project, shown, band).picture.ratio.value_or(project::Ratio{}).isOwn())
            return {};
    const auto differs = [&](const auto& file) {
        return file.second.width * part.height != file.second.height * part.width;
    };
    const bool anyDiffers = std::ranges::any_of(listed.formats, [&](const ListedFormat& format) {
        return std::ranges::any_of(format.files, differs);
    });
    return anyDiffers ? ratio({part.width, part.height}) : std::string();
}

}  // namespace

PictureSources pictureSources(const ListedPicture& picture, const std::string& address) {
    std::vector<const ListedFormat*> formats;
    formats.reserve(picture.formats.size());
    for (const ListedFormat& format : picture.formats)
        formats.push_back(&format);
    std::ranges::stable_sort(formats, {}, [](const ListedFormat* format) { return orderOf(format->format); });
    PictureSources sources;
    for (std::size_t i = 0; i + 1 < formats.size(); ++i)
        sources.alternatives.push_back(
            {std::string(mediaType(formats[i]->format)), srcsetOf(*formats[i], address)});
    sources.srcset = srcsetOf(*formats.back(), address);
    sources.sizes = picture.sizes;
    sources.src = address + pathAddress(picture.fallback);
    sources.size = formats.back()->files.back().second;
    return sources;
}

std::function<std::optional<PictureSources>(std::size_t card, std::size_t part)> sourcesIn(
    const project::Project& project, std::size_t variant, const CutPictures& cut) {
    return [&project, variant, cut](std::size_t card, std::size_t part) -> std::optional<PictureSources> {
        const ListedPicture* picture = listedAt(project, variant, *cut.listing, card, part);
        if (picture == nullptr) return std::nullopt;
        PictureSources sources = pictureSources(*picture, cut.address);
        const project::Part& shown = project.row().cards[card].parts[part];
        sources.ratio = ratioOfSource(project, variant, *picture, std::get<project::PicturePart>(shown));
        return sources;
    };
}

std::vector<project::PartRef> uncutPictures(const project::Project& project, std::size_t variant,
                                            const pictures::Listing& listing) {
    std::vector<project::PartRef> uncut;
    const std::vector<project::Card>& cards = project.row().cards;
    for (std::size_t card = 0; card < cards.size(); ++card)
        for (std::size_t part = 0; part < cards[card].parts.size(); ++part)
            if (std::holds_alternative<project::PicturePart>(cards[card].parts[part]) &&
                listedAt(project, variant, listing, card, part) == nullptr)
                uncut.push_back({card, part});
    return uncut;
}

}  // namespace tenter::emit
