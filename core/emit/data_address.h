// Files as `data:` addresses.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

#include "units/base64.h"

namespace tenter::emit {

using units::base64;

/// `data:TYPE;base64,…`. RFC 2397.
std::string dataAddress(std::string_view type, std::string_view bytes);

/// The type of a picture by its content: `image/png`, `image/jpeg`, `image/webp`, `image/gif`,
/// `image/svg+xml` or `image/avif`. MIME Sniffing § 6.1; empty for anything else.
std::optional<std::string> pictureType(std::string_view bytes);

/// The `data:` address of an empty picture of that size in pixels.
std::string emptyPicture(double width, double height);

/// Why a file cannot be a picture of a page, as a predicate such as `does not exist`; empty if it can.
std::string pictureTrouble(const std::filesystem::path& file);

/// A picture file as a `data:` address, or the reason why it is not one.
struct EmbeddedPicture {
    std::string address;
    std::string trouble;  ///< predicate such as `cannot be read`; empty if there is none
};
EmbeddedPicture embedPicture(const std::filesystem::path& file);

}  // namespace tenter::emit
