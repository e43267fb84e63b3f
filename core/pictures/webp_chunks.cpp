#include "pictures/webp_chunks.h"

#include <cstdint>

namespace tenter::pictures {

namespace {

constexpr std::size_t headSize = 12;  // RIFF, size, WEBP
constexpr std::size_t chunkHead = 8;  // name, size

std::uint32_t littleEndian(std::string_view bytes) {
    std::uint32_t number = 0;
    for (std::size_t i = 4; i-- > 0;)
        number = number << 8 | static_cast<unsigned char>(bytes[i]);
    return number;
}

void setLittleEndian(std::string& bytes, std::size_t at, std::size_t number) {
    for (std::size_t i = 0; i < 4; ++i)
        bytes[at + i] = static_cast<char>(number >> (8 * i) & 0xFF);
}

bool isMetadata(std::string_view name, bool keepsProfile) {
    return name == "EXIF" || name == "XMP " || (name == "ICCP" && !keepsProfile);
}

}  // namespace

std::string withoutMetadata(std::string_view webp, bool keepsProfile) {
    if (webp.size() < headSize || !webp.starts_with("RIFF") || webp.substr(8, 4) != "WEBP")
        return std::string(webp);
    std::string out(webp.substr(0, headSize));
    out.reserve(webp.size());
    for (std::size_t at = headSize; at < webp.size();) {
        if (webp.size() - at < chunkHead) return std::string(webp);
        const std::size_t size = littleEndian(webp.substr(at + 4, 4));
        // Chunks of odd size are padded by one byte.
        const std::size_t whole = chunkHead + size + size % 2;
        if (webp.size() - at < whole) return std::string(webp);
        const std::string_view name = webp.substr(at, 4);
        if (!isMetadata(name, keepsProfile)) out += webp.substr(at, whole);
        at += whole;
    }
    setLittleEndian(out, 4, out.size() - chunkHead);
    constexpr std::size_t flagsAt = headSize + chunkHead;
    const unsigned metadataFlags = (keepsProfile ? 0U : 0x20U) | 0x08U | 0x04U;  // ICC profile, Exif, XMP
    if (out.size() > flagsAt && out.substr(headSize, 4) == "VP8X")
        out[flagsAt] = static_cast<char>(static_cast<unsigned char>(out[flagsAt]) & ~metadataFlags);
    return out;
}

}  // namespace tenter::pictures
