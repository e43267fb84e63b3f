#include "text/sfnt.h"

#include <woff2/decode.h>
#include <woff2/output.h>
#include <zlib.h>

#include <algorithm>
#include <cstdint>

namespace tenter::text {
namespace {

constexpr std::size_t mostBytes = std::size_t{64} << 20;
constexpr std::uint32_t woff1 = 0x774F4646;
constexpr std::uint32_t woff2Signature = 0x774F4632;

/// Reads big-endian numbers from untrusted bytes. A read past the end gives 0 and sets a flag.
class Reader {
public:
    explicit Reader(const std::string& bytes) : bytes_(bytes) {}
    std::uint32_t u32(std::size_t at) { return (u16(at) << 16) | u16(at + 2); }
    std::uint32_t u16(std::size_t at) {
        if (at + 2 > bytes_.size()) {
            ok_ = false;
            return 0;
        }
        return (std::uint32_t{static_cast<std::uint8_t>(bytes_[at])} << 8) |
               static_cast<std::uint8_t>(bytes_[at + 1]);
    }
    [[nodiscard]] bool ok() const { return ok_; }

private:
    const std::string& bytes_;
    bool ok_ = true;
};

void put16(std::string& out, std::uint32_t value) {
    out.push_back(static_cast<char>(value >> 8));
    out.push_back(static_cast<char>(value));
}

void put32(std::string& out, std::uint32_t value) {
    put16(out, value >> 16);
    put16(out, value & 0xFFFF);
}

/// WOFF 1.0 § 3 to 5: a header of 44 bytes, entries of 20, tables each stored or zlib-compressed.
std::optional<std::string> fromWoff(const std::string& woff) {
    Reader read(woff);
    const std::uint32_t flavour = read.u32(4);
    const std::uint32_t tables = read.u16(12);
    if (!read.ok() || tables == 0 || tables > 4096) return std::nullopt;
    std::uint32_t power = 1;
    std::uint32_t selector = 0;
    while (power * 2 <= tables) {
        power *= 2;
        ++selector;
    }
    std::string sfnt;
    put32(sfnt, flavour);
    put16(sfnt, tables);
    put16(sfnt, power * 16);
    put16(sfnt, selector);
    put16(sfnt, tables * 16 - power * 16);
    std::string body;
    const std::size_t bodyAt = 12 + std::size_t{tables} * 16;
    for (std::uint32_t i = 0; i < tables; ++i) {
        const std::size_t entry = 44 + std::size_t{i} * 20;
        const std::uint32_t tag = read.u32(entry);
        const std::uint32_t offset = read.u32(entry + 4);
        const std::uint32_t packed = read.u32(entry + 8);
        const std::uint32_t length = read.u32(entry + 12);
        const std::uint32_t checksum = read.u32(entry + 16);
        if (!read.ok() || offset > woff.size() || packed > woff.size() - offset || packed > length)
            return std::nullopt;
        if (length > mostBytes || body.size() + length > mostBytes) return std::nullopt;
        put32(sfnt, tag);
        put32(sfnt, checksum);
        put32(sfnt, static_cast<std::uint32_t>(bodyAt + body.size()));
        put32(sfnt, length);
        if (packed == length) {
            body.append(woff, offset, length);
        } else {
            std::string table(length, '\0');
            uLongf got = length;
            const auto* from = reinterpret_cast<const Bytef*>(woff.data() + offset);
            if (uncompress(reinterpret_cast<Bytef*>(table.data()), &got, from, packed) != Z_OK ||
                got != length)
                return std::nullopt;
            body += table;
        }
        body.resize((body.size() + 3) / 4 * 4);
    }
    return sfnt + body;
}

std::optional<std::string> fromWoff2(const std::string& woff) {
    const auto* bytes = reinterpret_cast<const std::uint8_t*>(woff.data());
    const std::size_t told = woff2::ComputeWOFF2FinalSize(bytes, woff.size());
    if (told == 0 || told > mostBytes) return std::nullopt;
    std::string sfnt(told, '\0');
    woff2::WOFF2StringOut out(&sfnt);
    out.SetMaxSize(mostBytes);
    if (!woff2::ConvertWOFF2ToTTF(bytes, woff.size(), &out)) return std::nullopt;
    sfnt.resize(std::min(sfnt.size(), out.Size()));
    return sfnt;
}

}  // namespace

std::optional<std::string> sfntBytes(std::string content) {
    Reader read(content);
    const std::uint32_t signature = read.u32(0);
    if (!read.ok()) return std::nullopt;
    if (signature == woff1) return fromWoff(content);
    if (signature == woff2Signature) return fromWoff2(content);
    if (signature == 0x00010000 || signature == 0x4F54544F || signature == 0x74727565 ||
        signature == 0x74746366)
        return content;
    return std::nullopt;
}

}  // namespace tenter::text
