#include "emit/rules.h"

#include <algorithm>

#include "emit/escape.h"

namespace tenter::emit {

namespace {

bool follows(const std::optional<units::Length>& length) {
    return length && length->unit() == units::Unit::Cqi;
}

bool sidesFollow(const project::Sides& sides) {
    return follows(sides.top) || follows(sides.right) || follows(sides.bottom) || follows(sides.left);
}

bool lengthsFollow(const project::TextStyle& style) {
    const bool height =
        style.lineHeight && !style.lineHeight->isNumber() && follows(style.lineHeight->length());
    return height || sidesFollow(style.margin) || sidesFollow(style.padding) ||
           follows(style.letterSpacing) || follows(style.wordSpacing) || follows(style.border.width) ||
           follows(style.radius);
}

bool standsAtEnd(const BandScope& scope, const project::Part& part) {
    const auto* text = std::get_if<project::TextPart>(&part);
    const project::TextStyle* style = text == nullptr ? nullptr : scope.settings.text.find(text->role);
    return style != nullptr && style->margin.top && style->margin.top->isAuto();
}

}  // namespace

std::string partSelector(const project::Project& project, const std::string& part) {
    return " ." + cssIdentifier(project.row + "-" + part);
}

bool followsCard(const BandScope& scope) {
    if (sidesFollow(scope.settings.picture.margin) || follows(scope.settings.picture.radius)) return true;
    return std::ranges::any_of(scope.uses, [&](const RoleUse& use) {
        const project::TextStyle* style = scope.settings.text.find(use.role);
        return style != nullptr && (style->follow == project::Follow::Card || lengthsFollow(*style));
    });
}

bool endsTakeLastLevel(const BandScope& scope) {
    for (const project::Card& card : scope.project.cards)
        for (std::size_t i = 0; i + 1 < card.parts.size(); ++i)
            if (standsAtEnd(scope, card.parts[i])) return false;
    return true;
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
