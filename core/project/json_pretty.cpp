#include <algorithm>

#include "project/json_text.h"

namespace tenter::project {

namespace {

constexpr std::size_t lineWidth = 100;
constexpr int shallow = 3;

int depth(const Json& json) {
    if (!json.is_structured()) return 0;
    int deepest = 0;
    for (const Json& each : json)
        deepest = std::max(deepest, depth(each));
    return deepest + 1;
}

std::string onOneLine(const Json& json) {
    if (!json.is_structured() || json.empty()) return compactJson(json);
    std::string text;
    for (const auto& [key, value] : json.items()) {
        text += text.empty() ? "" : ", ";
        if (json.is_object()) text += compactJson(key) + ": ";
        text += onOneLine(value);
    }
    return json.is_object() ? "{" + text + "}" : "[" + text + "]";
}

// `used`: columns of the line that are used already, including the indent.
void append(std::string& out, const Json& json, std::size_t indent, std::size_t used) {
    const int levels = depth(json);
    if (levels == 0 || json.empty()) {
        out += compactJson(json);
        return;
    }
    if (levels <= shallow && indent > 0) {
        const std::string line = onOneLine(json);
        if (used + line.size() < lineWidth) {
            out += line;
            return;
        }
    }
    const std::string margin(indent + 2, ' ');
    out += json.is_object() ? '{' : '[';
    bool first = true;
    for (const auto& [key, value] : json.items()) {
        out += first ? "\n" : ",\n";
        first = false;
        const std::string label = json.is_object() ? compactJson(key) + ": " : "";
        out += margin + label;
        append(out, value, indent + 2, margin.size() + label.size());
    }
    out += "\n" + std::string(indent, ' ') + (json.is_object() ? '}' : ']');
}

}  // namespace

std::string compactJson(const Json& json) {
    return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

std::string prettyJson(const Json& json) {
    std::string text;
    append(text, json, 0, 0);
    return text + "\n";
}

}  // namespace tenter::project
