#include "pictures/personal_data.h"

#include <cstdint>
#include <optional>
#include <utility>

#include "pictures/webp_chunks.h"

namespace tenter::pictures {

namespace {

using Bytes = std::optional<std::string>;

unsigned byteAt(std::string_view bytes, std::size_t at) {
    return at < bytes.size() ? static_cast<unsigned char>(bytes[at]) : 0;
}

/// `count` bytes at `at` as a number.
std::uint32_t numberAt(std::string_view bytes, std::size_t at, std::size_t count,
                       bool isLittleEndian = false) {
    std::uint32_t number = 0;
    for (std::size_t i = 0; i < count; ++i)
        number = number << 8U | byteAt(bytes, at + (isLittleEndian ? count - 1 - i : i));
    return number;
}

constexpr std::string_view exifName("Exif\0\0", 6);

/// The orientation in the first directory of an Exif segment, 1 to 8; 1 if it has none.
std::uint32_t orientationOf(std::string_view exif) {
    const std::string_view tiff = exif.substr(exifName.size());
    const bool isLittleEndian = tiff.starts_with("II");
    const std::uint32_t directory = numberAt(tiff, 4, 4, isLittleEndian);
    const std::uint32_t count = numberAt(tiff, directory, 2, isLittleEndian);
    constexpr std::size_t entrySize = 12;
    constexpr std::uint32_t orientation = 0x0112;
    for (std::size_t at = directory + 2U; at < directory + 2U + count * entrySize && at < tiff.size();
         at += entrySize) {
        if (numberAt(tiff, at, 2, isLittleEndian) != orientation) continue;
        const std::uint32_t value = numberAt(tiff, at + 8, 2, isLittleEndian);
        return value >= 1 && value <= 8 ? value : 1;
    }
    return 1;
}

/// An Exif segment with nothing but the orientation; empty if that is the usual one.
std::string exifOf(std::uint32_t orientation) {
    if (orientation == 1) return {};
    std::string segment(
        "\xFF\xE1\0\x22"
        "Exif\0\0"
        "MM\0\x2A\0\0\0\x08"
        "\0\x01"
        "\x01\x12\0\x03\0\0\0\x01\0\0\0\0"
        "\0\0\0\0",
        36);
    segment[29] = static_cast<char>(orientation);
    return segment;
}

/// What is kept of a segment of a JPEG; `segment` starts with its marker.
std::string keptOf(std::string_view segment) {
    const unsigned marker = byteAt(segment, 1);
    const std::string_view content = segment.substr(4);
    const bool isApplication = marker >= 0xE0 && marker <= 0xEF;
    constexpr unsigned comment = 0xFE;
    if (marker == 0xE1 && content.starts_with(exifName)) return exifOf(orientationOf(content));
    const bool isPicture = (marker == 0xE0 && content.starts_with(std::string_view("JFIF\0", 5))) ||
                           (marker == 0xE2 && content.starts_with(std::string_view("ICC_PROFILE\0", 12))) ||
                           (marker == 0xEE && content.starts_with("Adobe"));
    if (marker == comment || (isApplication && !isPicture)) return {};
    return std::string(segment);
}

/// The end of the data of a scan: the next marker that is not part of it.
std::size_t endOfScan(std::string_view jpeg, std::size_t at) {
    for (; at + 1 < jpeg.size(); ++at) {
        const unsigned marker = byteAt(jpeg, at + 1);
        const bool isData = marker == 0 || marker == 0xFF || (marker >= 0xD0 && marker <= 0xD7);
        if (byteAt(jpeg, at) == 0xFF && !isData) return at;
    }
    return jpeg.size();
}

Bytes ofJpeg(std::string_view jpeg) {
    constexpr unsigned startOfScan = 0xDA;
    constexpr unsigned endOfImage = 0xD9;
    std::string out(jpeg.substr(0, 2));
    out.reserve(jpeg.size());
    for (std::size_t at = 2; at + 1 < jpeg.size();) {
        if (byteAt(jpeg, at) != 0xFF) return std::nullopt;
        const unsigned marker = byteAt(jpeg, at + 1);
        if (marker == 0xFF) {  // a fill byte
            ++at;
            continue;
        }
        if (marker == endOfImage) return out + std::string(jpeg.substr(at, 2));
        const std::size_t size = 2 + numberAt(jpeg, at + 2, 2);
        if (size < 4 || at + size > jpeg.size()) return std::nullopt;
        out += keptOf(jpeg.substr(at, size));
        at += size;
        if (marker != startOfScan) continue;
        const std::size_t end = endOfScan(jpeg, at);
        out += jpeg.substr(at, end - at);
        at = end;
    }
    return out;
}

Bytes ofPng(std::string_view png) {
    constexpr std::size_t signature = 8;
    constexpr std::size_t around = 12;  // length, name and checksum of a chunk
    std::string out(png.substr(0, signature));
    out.reserve(png.size());
    for (std::size_t at = signature; at + around <= png.size();) {
        const std::size_t size = around + numberAt(png, at, 4);
        if (size > png.size() - at) return std::nullopt;
        const std::string_view name = png.substr(at + 4, 4);
        if (name != "tEXt" && name != "zTXt" && name != "iTXt" && name != "tIME" && name != "eXIf")
            out += png.substr(at, size);
        if (name == "IEND") return out;
        at += size;
    }
    return std::nullopt;
}

}  // namespace

std::string withoutPersonalData(std::string_view bytes) {
    Bytes out;
    if (bytes.starts_with("\xFF\xD8\xFF")) out = ofJpeg(bytes);
    if (bytes.starts_with("\x89PNG\r\n\x1A\n")) out = ofPng(bytes);
    if (out) return std::move(*out);
    return withoutMetadata(bytes, true);
}

}  // namespace tenter::pictures
