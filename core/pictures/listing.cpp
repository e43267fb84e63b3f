#include "pictures/listing.h"

#include <algorithm>
#include <nlohmann/json.hpp>

#include "project/file_bytes.h"
#include "project/json_text.h"

namespace tenter::pictures {

namespace {

using Json = nlohmann::ordered_json;

constexpr const char* formatWord = "tenter-pictures";
constexpr int version = 1;

/// The format of the file for browsers that know neither `srcset` nor `<picture>`: the oldest one.
Format oldest(const std::vector<Format>& formats) {
    for (const Format format : {Format::Jpeg, Format::Png, Format::WebP})
        if (std::ranges::find(formats, format) != formats.end()) return format;
    return formats.front();
}

/// The narrowest file that fills the largest slot at one pixel per CSS px.
std::string fallbackOf(const CutPicture& picture) {
    const Format format = oldest(picture.formats);
    std::string name;
    for (const CutFile& file : picture.files) {
        if (file.format != format) continue;
        name = file.name;
        if (file.size.width >= wholePixels(picture.largest.value)) break;
    }
    return name;
}

Json jsonOf(const PixelSize& size) {
    return Json::array({size.width, size.height});
}

PixelSize sizeFrom(const Json& json) {
    return {json.at(0).get<int>(), json.at(1).get<int>()};
}

Json jsonOf(const ListedPicture& picture) {
    Json formats = Json::array();
    for (const ListedFormat& format : picture.formats) {
        Json files = Json::array();
        for (const auto& [name, size] : format.files)
            files.push_back({{"name", name}, {"size", jsonOf(size)}});
        formats.push_back({{"format", formatName(format.format)},
                           {"type", mediaType(format.format)},
                           {"files", std::move(files)}});
    }
    return {{"variant", picture.variant},     {"card", picture.card},
            {"part", picture.part},           {"source", picture.source},
            {"sizes", picture.sizes},         {"formats", std::move(formats)},
            {"fallback", picture.fallback},   {"upload", jsonOf(picture.upload)},
            {"tooSmall", picture.isTooSmall}, {"surplus", picture.surplusShare}};
}

ListedPicture pictureFrom(const Json& json) {
    ListedPicture picture;
    picture.variant = json.at("variant").get<std::string>();
    picture.card = json.at("card").get<std::size_t>();
    picture.part = json.at("part").get<std::size_t>();
    picture.source = json.at("source").get<std::string>();
    picture.sizes = json.at("sizes").get<std::string>();
    for (const Json& one : json.at("formats")) {
        ListedFormat format;
        format.format = formatNamed(one.at("format").get<std::string>()).value();
        for (const Json& file : one.at("files"))
            format.files.emplace_back(file.at("name").get<std::string>(), sizeFrom(file.at("size")));
        if (!format.files.empty()) picture.formats.push_back(std::move(format));
    }
    picture.fallback = json.at("fallback").get<std::string>();
    picture.upload = sizeFrom(json.at("upload"));
    picture.isTooSmall = json.at("tooSmall").get<bool>();
    picture.surplusShare = json.at("surplus").get<double>();
    return picture;
}

Listing listingFrom(const Json& json) {
    Listing listing;
    for (const auto& [name, file] : json.at("files").items())
        listing.files[name] = {file.at("from").get<std::string>(), file.at("bytes").get<std::size_t>()};
    for (const Json& picture : json.at("pictures"))
        listing.pictures.push_back(pictureFrom(picture));
    return listing;
}

}  // namespace

const ListedPicture* Listing::find(const std::string& variant, std::size_t card, std::size_t part) const {
    const auto found = std::ranges::find_if(pictures, [&](const ListedPicture& picture) {
        return picture.variant == variant && picture.card == card && picture.part == part;
    });
    return found == pictures.end() ? nullptr : &*found;
}

std::vector<ListedPicture> listed(const CutPlan& plan, const project::Project& project) {
    std::vector<ListedPicture> out;
    out.reserve(plan.uses.size());
    for (const CutUse& use : plan.uses) {
        const CutPicture& cut = plan.pictures[use.picture];
        if (cut.files.empty()) continue;
        ListedPicture picture;
        picture.variant = project.row(use.place.row).variants[use.variant].className;
        picture.card = use.place.card;
        picture.part = use.place.part;
        picture.source = cut.source;
        picture.sizes = use.sizes;
        for (const CutFile& file : cut.files) {
            if (picture.formats.empty() || picture.formats.back().format != file.format)
                picture.formats.push_back({file.format, {}});
            picture.formats.back().files.emplace_back(file.name, file.size);
        }
        picture.fallback = fallbackOf(cut);
        picture.upload = cut.upload;
        picture.isTooSmall = cut.isTooSmall;
        picture.surplusShare = cut.surplusShare;
        out.push_back(std::move(picture));
    }
    return out;
}

std::string listingJson(const Listing& listing) {
    Json files = Json::object();
    for (const auto& [name, file] : listing.files)
        files[name] = {{"from", file.from}, {"bytes", file.bytes}};
    Json pictures = Json::array();
    for (const ListedPicture& picture : listing.pictures)
        pictures.push_back(jsonOf(picture));
    const Json json{{"format", formatWord},
                    {"version", version},
                    {"files", std::move(files)},
                    {"pictures", std::move(pictures)}};
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

std::optional<Listing> readListing(const std::string& text) {
    try {
        const Json json = Json::parse(text);
        if (json.at("format") != formatWord || json.at("version") != version) return std::nullopt;
        return listingFrom(json);
    } catch (const std::exception&) {
        return std::nullopt;
    }
}

std::optional<Listing> listingIn(const std::filesystem::path& folder) {
    const std::optional<std::string> text = project::fileBytes(folder / listingName, project::largestFile);
    return text ? readListing(*text) : std::nullopt;
}

}  // namespace tenter::pictures
