// Cards: a flex column of parts, or a subgrid if parts are aligned. CSS Flexbox 1 § 9.2, CSS Grid 2 § 9.
#include "emit/card_box.h"
#include "emit/rules.h"
#include "emit/values.h"
#include "project/card_scale.h"
#include "project/levels.h"

namespace tenter::emit {

namespace {

/// The width of a card in a row with a centred last line: N cards and their gaps fill a line, less
/// `centredSpare`.
std::string lineShare(const project::RowSettings& row) {
    const int count = row.columns.value_or(1);
    const LengthSum gaps = gapsOf(row);
    const std::string spare = " - " + units::Length::px(centredSpare).css() + ")";
    std::string whole = gaps.isZero() ? "100%" : "100% - " + gaps.term();
    if (count == 1) return "calc(" + whole + spare;
    if (!gaps.isZero()) whole = "(" + whole + ")";
    return "calc(" + whole + " / " + std::to_string(count) + spare;
}

}  // namespace

void addCardRule(const BandScope& scope, Rules& rules) {
    const project::CardSettings& card = scope.settings.card;
    const project::RowSettings& row = scope.settings.row;
    const bool beside = card.direction == project::Direction::Beside;
    const bool centred = row.lastLine == project::LastLine::Center;
    const bool levelled = row.level == project::Level::Subgrid;
    const std::size_t tracks = project::Levels::of(scope.project, scope.settings).count;
    const bool scales = project::cardScaleAt(scope.settings, project::usedRoles(scope.project)).has_value();
    const bool positioned = beside || card.linked.value_or(false);
    Rule rule;
    rule.selector = partSelector(scope, "card");
    rule.always("box-sizing", "border-box");
    rule.always("display", levelled ? "grid" : "flex");
    rule.always("flex-direction", "column");
    rule.unless("none", "grid-template-columns", levelled ? "minmax(0, 1fr)" : "none");
    rule.unless("none", "grid-template-rows", levelled ? "subgrid" : "none");
    rule.unless("auto", "grid-row", levelled ? "span " + std::to_string(tracks) : "auto");
    rule.unless("normal", "row-gap", levelled ? "0" : "normal");
    rule.unless("0 1 auto", "flex", centred ? "none" : "0 1 auto");
    rule.unless("static", "position", positioned ? "relative" : "static");
    rule.unless("normal", "container-type", scales ? "inline-size" : "normal");
    rule.unless("auto", "width", centred ? lineShare(row) : "auto");
    rule.always("min-width", "0");
    rule.always("margin", "0");
    rule.always("padding", cardPadding(scope));
    rule.unless("transparent", "background", card.background.value_or(units::Colour{0, 0, 0, 0}).css());
    rule.unless("0", "border", border(card.border));
    rule.unless("0", "border-radius", sumOf(card.radius).css());
    rule.unless("none", "box-shadow", shadow(card.shadow));
    rule.always("font-size", "1rem");
    rules.push_back(std::move(rule));
}

}  // namespace tenter::emit
