// What picture files say beside the picture: where, when, by whom and with what it was made.
#pragma once

#include <string>
#include <string_view>

namespace tenter::pictures {

/// The file without Exif (apart from the orientation of a JPEG), XMP, IPTC, comments, times, thumbnails and
/// what follows its end; with its colour profile. For JPEG, PNG and WebP; a file of another form, or one that
/// is not well-formed, stays as it is. ITU-T T.81 § B; JFIF; Exif 2.3 § 4.5; PNG 3 § 5; RFC 9649 § 2.7.
std::string withoutPersonalData(std::string_view bytes);

}  // namespace tenter::pictures
