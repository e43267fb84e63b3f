#include "emit/data_address.h"

#include <algorithm>
#include <cstdint>
#include <system_error>
#include <utility>

#include "pictures/personal_data.h"
#include "project/file_bytes.h"
#include "units/number.h"

namespace tenter::emit {

namespace {

constexpr std::uintmax_t mostBytes = std::uintmax_t{64} * 1024 * 1024;

/// Skips the text before the root of an SVG file: a byte order mark, white space, declarations, comments.
bool isSvg(std::string_view bytes) {
    std::string_view rest = bytes.substr(0, 4096);
    const auto skip = [&](std::string_view opening, std::string_view closing) {
        if (!rest.starts_with(opening)) return false;
        const std::size_t end = rest.find(closing);
        rest = end == std::string_view::npos ? std::string_view() : rest.substr(end + closing.size());
        return true;
    };
    if (rest.starts_with("\xEF\xBB\xBF")) rest.remove_prefix(3);
    bool skipped = true;
    while (skipped) {
        const std::size_t start = rest.find_first_not_of(" \t\r\n");
        rest = start == std::string_view::npos ? std::string_view() : rest.substr(start);
        skipped = skip("<?", "?>") || skip("<!--", "-->") || skip("<!DOCTYPE", ">");
    }
    return rest.starts_with("<svg");
}

}  // namespace

std::string dataAddress(std::string_view type, std::string_view bytes) {
    return "data:" + std::string(type) + ";base64," + base64(bytes);
}

std::optional<std::string> pictureType(std::string_view bytes) {
    if (bytes.starts_with("\x89PNG\r\n\x1A\n")) return "image/png";
    if (bytes.starts_with("\xFF\xD8\xFF")) return "image/jpeg";
    if (bytes.starts_with("GIF87a") || bytes.starts_with("GIF89a")) return "image/gif";
    if (bytes.starts_with("RIFF") && bytes.size() >= 12 && bytes.substr(8, 4) == "WEBP") return "image/webp";
    if (bytes.size() >= 12 && bytes.substr(4, 7) == "ftypavi" && (bytes[11] == 'f' || bytes[11] == 's'))
        return "image/avif";
    if (isSvg(bytes)) return "image/svg+xml";
    return std::nullopt;
}

std::string emptyPicture(double width, double height) {
    width = std::max(width, 1.0);
    height = std::max(height, 1.0);
    return dataAddress("image/svg+xml", "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" +
                                            units::number(width) + "\" height=\"" + units::number(height) +
                                            "\"/>");
}

std::string pictureTrouble(const std::filesystem::path& file) {
    std::error_code error;
    if (!std::filesystem::is_regular_file(file, error)) return "does not exist";
    if (std::filesystem::file_size(file, error) > mostBytes || error) return "is larger than 64 MB";
    const std::optional<std::string> start = project::fileStart(file, 4096);
    if (!start) return "cannot be read";
    return pictureType(*start) ? "" : "is not a PNG, JPEG, WebP, GIF, SVG or AVIF file";
}

EmbeddedPicture embedPicture(const std::filesystem::path& file) {
    if (std::string trouble = pictureTrouble(file); !trouble.empty()) return {"", std::move(trouble)};
    const std::optional<std::string> bytes = project::fileBytes(file, mostBytes);
    const std::optional<std::string> type = bytes ? pictureType(*bytes) : std::nullopt;
    if (!type) return {"", "cannot be read"};
    return {dataAddress(*type, pictures::withoutPersonalData(*bytes)), ""};
}

}  // namespace tenter::emit
