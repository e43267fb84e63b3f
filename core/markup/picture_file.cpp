#include "markup/picture_file.h"

#include <algorithm>
#include <optional>
#include <vector>

#include "project/address.h"

namespace tenter::markup {

namespace {

std::optional<int> hexValue(char c) {
    if (c >= '0' && c <= '9') return c - '0';
    if (c >= 'a' && c <= 'f') return c - 'a' + 10;
    if (c >= 'A' && c <= 'F') return c - 'A' + 10;
    return std::nullopt;
}

// Decodes percent escapes; anything else stays. RFC 3986 § 2.1.
std::string percentDecoded(std::string_view text) {
    std::string out;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const auto high = i + 2 < text.size() && text[i] == '%' ? hexValue(text[i + 1]) : std::nullopt;
        const auto low = high ? hexValue(text[i + 2]) : std::nullopt;
        const int byte = low ? *high * 16 + *low : 0;
        if (byte > 0) {
            out += static_cast<char>(byte);
            i += 2;
        } else {
            out += text[i];
        }
    }
    return out;
}

// The address without query and fragment. RFC 3986 § 3.
std::string pathIn(const std::string& address) {
    return percentDecoded(std::string_view(address).substr(0, address.find_first_of("?#")));
}

bool climbs(const std::filesystem::path& path) {
    return std::ranges::any_of(path, [](const std::filesystem::path& step) { return step == ".."; });
}

}  // namespace

PictureFile pictureFile(const std::string& address, const std::filesystem::path& page,
                        const std::filesystem::path& projectFolder) {
    const std::string path = pathIn(address);
    const std::size_t slash = path.find_last_of("/\\");
    std::string name = slash == std::string::npos ? path : path.substr(slash + 1);
    std::erase_if(name, [](char c) { return static_cast<unsigned char>(c) < 0x20; });
    if (name.empty() || name == "." || name == "..") return {"picture", false};
    std::vector<std::filesystem::path> candidates;
    const std::filesystem::path relative(path);
    if (!project::addressScheme(address) && !relative.is_absolute() && !climbs(relative))
        candidates.push_back(relative);
    candidates.emplace_back(name);
    // The folder in which browsers save the files of a page. Common practice, no source.
    candidates.push_back(std::filesystem::path(page.stem().string() + "_files") / name);
    const std::filesystem::path folder = page.parent_path();
    std::error_code error;
    for (const std::filesystem::path& candidate : candidates) {
        const std::filesystem::path file = folder / candidate;
        if (!std::filesystem::is_regular_file(file, error)) continue;
        const std::filesystem::path found =
            std::filesystem::relative(file, projectFolder.empty() ? "." : projectFolder, error);
        if (!error && !found.empty() && !found.is_absolute()) return {found.generic_string(), true};
    }
    return {name, false};
}

std::string nameOfFile(const std::filesystem::path& file) {
    if (file.stem() != "index") return file.stem().string();
    std::error_code error;
    const std::filesystem::path folder = std::filesystem::absolute(file, error).parent_path().filename();
    return error || folder.empty() ? file.stem().string() : folder.string();
}

}  // namespace tenter::markup
