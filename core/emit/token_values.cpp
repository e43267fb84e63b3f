#include "emit/token_values.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "units/number.h"
#include "units/root_size.h"

namespace tenter::emit {

using project::Json;

Json tokenNumber(double value) {
    const double rounded = units::rounded(value);
    if (rounded == std::floor(rounded) && std::abs(rounded) < 1e15) return static_cast<long long>(rounded);
    return rounded;
}

Json TokenUnit::dimension(double px) const {
    return Json{{"value", tokenNumber(rem_ ? px / units::usualReaderSize : px)},
                {"unit", rem_ ? "rem" : "px"}};
}

Json tokenColour(const units::Colour& colour) {
    static constexpr char digits[] = "0123456789abcdef";
    const std::array<unsigned, 3> channels{colour.red, colour.green, colour.blue};
    Json components = Json::array();
    std::string hex = "#";
    for (const unsigned channel : channels) {
        components.push_back(tokenNumber(channel / 255.0));
        hex += digits[channel >> 4U];
        hex += digits[channel & 0xFU];
    }
    Json value{{"colorSpace", "srgb"}, {"components", std::move(components)}};
    if (colour.alpha != 255) value["alpha"] = tokenNumber(colour.alpha / 255.0);
    value["hex"] = hex;
    return value;
}

Json token(const char* type, Json value, const std::string& description) {
    Json out{{"$type", type}, {"$value", std::move(value)}};
    if (!description.empty()) out["$description"] = description;
    return out;
}

const TokenEntry* findEntry(const TokenEntries& entries, const std::vector<std::string>& path) {
    const auto found = std::ranges::find(entries, path, &TokenEntry::path);
    return found == entries.end() ? nullptr : &*found;
}

TokenEntries takeShared(std::vector<TokenEntries>& lists) {
    TokenEntries shared;
    if (lists.size() < 2) return shared;
    for (const TokenEntry& entry : lists.front()) {
        const bool everywhere = std::ranges::all_of(lists, [&](const TokenEntries& list) {
            const TokenEntry* other = findEntry(list, entry.path);
            return other != nullptr && other->token == entry.token;
        });
        if (everywhere) shared.push_back(entry);
    }
    for (TokenEntries& list : lists)
        std::erase_if(list,
                      [&](const TokenEntry& entry) { return findEntry(shared, entry.path) != nullptr; });
    return shared;
}

Json groupOf(const TokenEntries& entries) {
    Json group = Json::object();
    for (const TokenEntry& entry : entries) {
        Json* at = &group;
        for (const std::string& name : entry.path)
            at = &(*at)[name];
        *at = entry.token;
    }
    return group;
}

}  // namespace tenter::emit
