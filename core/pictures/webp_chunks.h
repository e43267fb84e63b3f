// The container of WebP files.
#pragma once

#include <string>
#include <string_view>

namespace tenter::pictures {

/// The WebP file without its chunks of metadata and colour profile, which libvips 8.14 writes even when it is
/// asked to strip them. `keepsProfile`: with its colour profile. A file of another form stays as it is. RFC
/// 9649 § 2.7.
std::string withoutMetadata(std::string_view webp, bool keepsProfile = false);

}  // namespace tenter::pictures
