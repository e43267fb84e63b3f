#include "units/base64.h"

#include <cstdint>

namespace tenter::units {

std::string base64(std::string_view bytes) {
    static constexpr char digits[] = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
    std::string out;
    out.reserve((bytes.size() + 2) / 3 * 4);
    for (std::size_t i = 0; i < bytes.size(); i += 3) {
        std::uint32_t group = 0;
        for (std::size_t j = 0; j < 3; ++j) {
            const auto byte = i + j < bytes.size() ? static_cast<unsigned char>(bytes[i + j]) : 0U;
            group = group << 8 | byte;
        }
        for (std::size_t j = 0; j < 4; ++j)
            out += i + j <= bytes.size() ? digits[group >> (18 - 6 * j) & 0x3F] : '=';
    }
    return out;
}

}  // namespace tenter::units
