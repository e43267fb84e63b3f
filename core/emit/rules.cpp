#include "emit/rules.h"

#include "emit/escape.h"

namespace tenter::emit {

std::string partSelector(const project::Project& project, const std::string& part) {
    return " ." + cssIdentifier(project.row + "-" + part);
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
    return rules;
}

}  // namespace tenter::emit
