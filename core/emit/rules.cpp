#include "emit/rules.h"

#include <string_view>

#include "emit/escape.h"

namespace tenter::emit {

namespace {

/// The element with the variant's class, in the selectors of a project. Selectors 4 § 8.
constexpr std::string_view scopeWord = ":scope";

std::string givenSelector(const project::Given& given, const std::string& role) {
    const std::string* selector = given.find(role);
    if (selector == nullptr || selector->empty()) return {};
    return afterTheClass(*selector);
}

}  // namespace

std::string afterTheClass(const std::string& selector) {
    if (selector.find(',') != std::string::npos) return " :is(" + selector + ")";
    return selector.starts_with(scopeWord) ? selector.substr(scopeWord.size()) : " " + selector;
}

std::string underClass(const std::string& own, const std::string& selector) {
    std::string out = own + selector;
    for (std::size_t at = out.find(scopeWord); at != std::string::npos;
         at = out.find(scopeWord, at + own.size()))
        out.replace(at, scopeWord.size(), own);
    return out;
}

std::string partSelector(const BandScope& scope, const std::string& part) {
    if (scope.given != nullptr) return givenSelector(*scope.project.row().given, part);
    return " ." + cssIdentifier(scope.project.row().name + "-" + part);
}

std::string rowSelector(const BandScope& scope) {
    return scope.given != nullptr ? givenSelector(*scope.project.row().given, "row") : std::string();
}

Rules bandRules(const BandScope& scope) {
    Rules rules;
    addRowRule(scope, rules);
    addCardRule(scope, rules);
    addPictureRules(scope, rules);
    for (const RoleUse& use : scope.uses)
        addTextRule(scope, use, rules);
    addRunRules(scope, rules);
    for (const RoleUse& use : scope.uses)
        addLinkRules(scope, use, rules);
    if (scope.given != nullptr) scope.given->adaptToTheme(scope, rules);
    return rules;
}

}  // namespace tenter::emit
