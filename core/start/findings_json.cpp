#include "start/findings_json.h"

#include <algorithm>
#include <charconv>

#include "project/json_text.h"
#include "project/utf8.h"
#include "project/wording.h"

namespace tenter::start {

namespace {

using project::Json;

/// The number at the end of `text` after a colon, which is removed; empty if there is none.
std::optional<std::size_t> takeNumber(std::string_view& text) {
    const std::size_t colon = text.rfind(':');
    if (colon == std::string_view::npos) return std::nullopt;
    std::size_t number = 0;
    const char* end = text.data() + text.size();
    const auto [rest, error] = std::from_chars(text.data() + colon + 1, end, number);
    if (error != std::errc() || rest != end) return std::nullopt;
    text = text.substr(0, colon);
    return number;
}

/// A rule with the parts of its place, `look.css:12:3`.
Json ruleJson(const std::string& selector, const std::string& place) {
    Json rule = Json::object();
    if (!selector.empty()) rule["selector"] = selector;
    std::string_view rest = place;
    const auto column = takeNumber(rest);
    const auto line = column ? takeNumber(rest) : std::nullopt;
    if (!line) return rule;
    if (!rest.empty()) rule["file"] = std::string(rest);
    rule["line"] = *line;
    rule["column"] = *column;
    return rule;
}

Json declarationJson(const FoundDeclaration& declaration) {
    Json out = {{"property", declaration.property}, {"value", declaration.value}};
    if (!declaration.computed.empty()) out["computed"] = declaration.computed;
    if (declaration.inherited) out["inherited"] = true;
    Json widths = Json::array();
    for (const auto& [from, upTo] : declaration.widths)
        widths.push_back({from, upTo});
    out["widths"] = std::move(widths);
    out["rule"] = ruleJson(declaration.selector, declaration.place);
    return out;
}

}  // namespace

std::string findingsJson(const std::string& file, const std::string& form,
                         const std::vector<FoundElement>& found, const std::vector<PageNote>& notes,
                         const std::vector<std::string>& report) {
    Json out = {{"format", "tenter-intake"}, {"version", 1}, {"file", file}, {"form", form}};
    Json elements = Json::array();
    for (const FoundElement& element : found) {
        Json declarations = Json::array();
        for (const FoundDeclaration& declaration : element.declarations)
            declarations.push_back(declarationJson(declaration));
        elements.push_back({{"role", element.role},
                            {"selector", element.selector},
                            {"count", element.count},
                            {"declarations", std::move(declarations)}});
    }
    out["elements"] = std::move(elements);
    Json unread = Json::array();
    for (const PageNote& note : notes) {
        Json entry = Json::object();
        if (note.at) {
            entry["property"] = note.at->property;
            entry["value"] = note.at->value;
            entry["rule"] = ruleJson(note.at->selector, note.at->place);
        }
        const std::size_t start = project::isWarning(note.says) ? project::warning("").size() : 0;
        entry["says"] = project::visible(note.says.substr(start));
        unread.push_back(std::move(entry));
    }
    out["notUnderstood"] = std::move(unread);
    Json sentences = Json::array();
    for (const std::string& sentence : report)
        sentences.push_back(project::visible(sentence));
    out["report"] = std::move(sentences);
    return project::prettyJson(out);
}

}  // namespace tenter::start
