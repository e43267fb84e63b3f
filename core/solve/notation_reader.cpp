#include "solve/notation_reader.h"

#include <algorithm>

#include "project/wording.h"
#include "units/scan.h"

namespace tenter::solve {

using project::Json;

bool NotationReader::wrong(const std::string& what, const std::string& fix) {
    problems_.push_back({text_, "", what, fix});
    return false;
}

std::optional<double> NotationReader::number(const std::string& text) {
    const auto scanned = units::scanNumber(text);
    if (!scanned || !scanned->rest.empty()) return std::nullopt;
    return scanned->value;
}

bool NotationReader::putNumber(Json& json, const char* key, const std::string& text, const char* fix) {
    const auto value = number(text);
    if (!value) return wrong(project::inQuotes(text) + " is not a number", fix);
    json[key] = *value;
    return true;
}

bool NotationReader::putShare(Json& json, const char* key, const std::string& text) {
    const bool percent = text.ends_with('%');
    const auto value = number(percent ? text.substr(0, text.size() - 1) : text);
    if (!value) return wrong(project::inQuotes(text) + " is not a share", "write for example 20%");
    json[key] = percent ? *value / 100 : *value;
    return true;
}

bool NotationReader::putRange(Json& json, const char* least, const char* most, const std::string& text,
                              const char* fix) {
    const std::size_t dash = text.find('-');
    if (dash == std::string::npos || text == "-")
        return wrong(project::inQuotes(text) + " is not a range", fix);
    const std::string low = text.substr(0, dash);
    const std::string high = text.substr(dash + 1);
    return (low.empty() || putNumber(json, least, low, fix)) &&
           (high.empty() || putNumber(json, most, high, fix));
}

bool NotationReader::putWord(Json& json, const char* key, const std::string& text,
                             const std::vector<std::pair<std::string, Json>>& words) {
    std::vector<std::string> known;
    for (const auto& [word, value] : words) {
        if (word == text) {
            json[key] = value;
            return true;
        }
        known.push_back(word);
    }
    return wrong(project::inQuotes(text) + " is not a value of this wish", "write " + project::either(known));
}

bool NotationReader::isRole(const std::string& name) {
    const std::vector<std::string> known = project::roles(project_);
    if (std::ranges::find(known, name) != known.end()) return true;
    const std::string similar = project::nearest(name, known);
    return wrong("the project has no role " + project::inQuotes(name),
                 similar.empty() ? "write " + project::either(known)
                                 : "did you mean " + project::inQuotes(similar) + "?");
}

}  // namespace tenter::solve
