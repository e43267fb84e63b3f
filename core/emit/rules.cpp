#include "emit/rules.h"

#include "emit/escape.h"

namespace tenter::emit {

namespace {

std::string givenSelector(const project::Given& given, const std::string& role) {
    const std::string* selector = given.find(role);
    if (selector == nullptr || selector->empty()) return {};
    return afterTheClass(*selector);
}

}  // namespace

std::string afterTheClass(const std::string& selector) {
    return selector.find(',') == std::string::npos ? " " + selector : " :is(" + selector + ")";
}

std::string partSelector(const BandScope& scope, const std::string& part) {
    if (scope.given != nullptr) return givenSelector(*scope.project.given, part);
    return " ." + cssIdentifier(scope.project.row + "-" + part);
}

std::string rowSelector(const BandScope& scope) {
    return scope.given != nullptr ? givenSelector(*scope.project.given, "row") : std::string();
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
