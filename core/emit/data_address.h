// Bytes within an address.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

namespace tenter::emit {

/// RFC 4648 § 4.
std::string base64(std::string_view bytes);

/// `data:TYPE;base64,…`. RFC 2397.
std::string dataAddress(std::string_view type, std::string_view bytes);

/// What `bytes` are by their content: `image/png`, `image/jpeg`, `image/webp`, `image/gif`, `image/svg+xml`
/// or `image/avif`. MIME Sniffing § 6.1; empty for anything else.
std::optional<std::string> pictureType(std::string_view bytes);

/// A picture of that size, in pixels, with nothing on it.
std::string emptyPicture(double width, double height);

/// A picture file as an address, or why not.
struct EmbeddedPicture {
    std::string address;
    std::string trouble;  ///< empty if there is none
};
EmbeddedPicture embedPicture(const std::filesystem::path& file);

}  // namespace tenter::emit
