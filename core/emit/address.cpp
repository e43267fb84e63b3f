#include "emit/address.h"

#include <system_error>

#include "emit/escape.h"
#include "units/ascii.h"

namespace tenter::emit {

std::string pathAddress(std::string_view path) {
    static constexpr std::string_view plain = "./~!$'()*+,;=@";
    static constexpr char hex[] = "0123456789ABCDEF";
    std::string out;
    for (const char c : repaired(path)) {
        if (c == '\\') {
            out += '/';
        } else if (units::isWordCharacter(c) || plain.find(c) != std::string_view::npos) {
            out += c;
        } else {
            const auto byte = static_cast<unsigned char>(c);
            out += '%';
            out += hex[byte >> 4];
            out += hex[byte & 0xF];
        }
    }
    return out;
}

std::string folderAddress(const std::filesystem::path& folder, const std::filesystem::path& from) {
    std::error_code error;
    const std::filesystem::path relative =
        std::filesystem::relative(folder, from.empty() ? "." : from, error);
    if (error || relative.empty() || relative == ".") return {};
    return pathAddress(relative.generic_string()) + "/";
}

}  // namespace tenter::emit
