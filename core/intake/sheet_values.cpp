#include "intake/sheet_values.h"

#include <algorithm>
#include <set>

#include "css/media.h"

namespace tenter::intake {

namespace {

constexpr std::string_view cardEnding = "-card";

bool isNameCharacter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-' || c == '_';
}

std::string_view trimmed(std::string_view text) {
    const std::size_t start = std::min(text.find_first_not_of(" \t\r\n\f"), text.size());
    return text.substr(start, text.find_last_not_of(" \t\r\n\f") + 1 - start);
}

/// The name of the class at the start of `text`, which is removed; empty if there is none.
std::string takeClass(std::string_view& text) {
    if (!text.starts_with('.')) return {};
    std::size_t end = 1;
    while (end < text.size() && isNameCharacter(text[end]))
        ++end;
    std::string name(text.substr(1, end - 1));
    text.remove_prefix(end);
    return name;
}

std::vector<std::string_view> selectorsOf(std::string_view list) {
    std::vector<std::string_view> out;
    while (true) {
        const std::size_t comma = std::min(list.find(','), list.size());
        out.push_back(trimmed(list.substr(0, comma)));
        if (comma == list.size()) return out;
        list.remove_prefix(comma + 1);
    }
}

void addOnce(std::vector<std::string>& names, const std::string& name) {
    if (!name.empty() && std::ranges::find(names, name) == names.end()) names.push_back(name);
}

/// `value` with each `var()` replaced. CSS Custom Properties 1 § 3.
std::string substituted(std::string value, const Values& properties) {
    // As deep as variables in variables may be.
    for (int depth = 0; depth < 16; ++depth) {
        const std::size_t start = value.find("var(");
        if (start == std::string::npos) break;
        const std::size_t end = value.find(')', start);
        if (end == std::string::npos) break;
        const auto known = properties.find(std::string(trimmed(value.substr(start + 4, end - start - 4))));
        value.replace(start, end + 1 - start, known == properties.end() ? "" : known->second);
    }
    return value;
}

/// Whether all conditions of a rule hold at a width. A condition that does not depend on it holds: its rules
/// have selectors of their own.
bool holds(const css::Sheet& sheet, const css::StyleRule& rule, double width) {
    return std::ranges::all_of(sheet.conditionsOf(rule), [&](const css::Condition* condition) {
        return condition->kind != css::ConditionKind::Media ||
               css::mediaHolds(condition->text, width) != css::Truth::False;
    });
}

}  // namespace

std::optional<OwnSheet> OwnSheet::read(std::string_view css) {
    OwnSheet out;
    out.sheet_ = css::readSheet(css);
    out.collectNames();
    if (out.classes_.empty() || out.rowName_.empty()) return std::nullopt;
    if (!out.isOwn()) return std::nullopt;
    return out;
}

/// True if the row has the declarations that it has in every form that Tenter prints, and that others seldom
/// write. Other authors give their classes such names, too.
bool OwnSheet::isOwn() const {
    constexpr double widest = 100000;
    return std::ranges::any_of(classes_, [&](const std::string& className) {
        const RowValues values = at(className, widest);
        const auto row = values.find("");
        if (row == values.end()) return false;
        const auto has = [&](const char* property, const char* value) {
            const auto set = row->second.find(property);
            return set != row->second.end() && set->second == value;
        };
        return has("font-optical-sizing", "none") && has("font-synthesis", "style");
    });
}

void OwnSheet::collectNames() {
    for (const css::StyleRule& rule : sheet_.rules)
        for (std::string_view selector : selectorsOf(rule.selectorText)) {
            const std::string outer = takeClass(selector);
            selector = trimmed(selector);
            const std::string inner = takeClass(selector);
            if (outer.empty() || !inner.ends_with(cardEnding)) continue;
            addOnce(classes_, outer);
            if (rowName_.empty()) rowName_ = inner.substr(0, inner.size() - cardEnding.size());
        }
    for (const css::StyleRule& rule : sheet_.rules)
        for (const std::string_view selector : selectorsOf(rule.selectorText)) {
            const std::optional<Target> target = targetOf(selector);
            if (!target || target->element.find_first_of(" :") != std::string::npos) continue;
            const std::string& part = target->element;
            if (part != "card" && !part.starts_with("picture")) addOnce(roles_, part);
        }
}

std::optional<OwnSheet::Target> OwnSheet::targetOf(std::string_view selector) const {
    const std::string outer = takeClass(selector);
    if (std::ranges::find(classes_, outer) == classes_.end()) return std::nullopt;
    selector = trimmed(selector);
    if (selector.empty()) return Target{outer, ""};
    const std::string inner = takeClass(selector);
    // Emphasis and strong text have no class.
    if (inner.empty()) return Target{outer, " " + std::string(selector)};
    if (!inner.starts_with(rowName_ + "-")) return std::nullopt;
    return Target{outer, inner.substr(rowName_.size() + 1) + std::string(selector)};
}

std::vector<double> OwnSheet::breakpoints(const std::string& className) const {
    std::set<double> widths;
    for (const css::StyleRule& rule : sheet_.rules) {
        const std::vector<std::string_view> selectors = selectorsOf(rule.selectorText);
        const bool concerns = std::ranges::any_of(selectors, [&](std::string_view selector) {
            const std::optional<Target> target = targetOf(selector);
            return target && target->className == className;
        });
        if (!concerns) continue;
        for (const css::Condition* condition : sheet_.conditionsOf(rule))
            if (condition->kind == css::ConditionKind::Media)
                for (const double width : css::mediaWidths(condition->text))
                    widths.insert(width);
    }
    return {widths.begin(), widths.end()};
}

RowValues OwnSheet::at(const std::string& className, double width) const {
    RowValues values;
    for (const css::StyleRule& rule : sheet_.rules) {
        if (!holds(sheet_, rule, width)) continue;
        for (const std::string_view selector : selectorsOf(rule.selectorText)) {
            const std::optional<Target> target = targetOf(selector);
            if (!target || target->className != className) continue;
            for (const css::Declaration& declaration : rule.declarations)
                values[target->element][declaration.property] = declaration.value;
        }
    }
    Values properties;
    for (const auto& [property, value] : values[""])
        if (property.starts_with("--")) properties[property] = value;
    for (auto& [element, own] : values)
        for (auto& [property, value] : own)
            value = substituted(value, properties);
    return values;
}

}  // namespace tenter::intake
