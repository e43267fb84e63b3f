// The row: a grid (CSS Grid 2 § 7), or a wrapping flex container if the last line is centred.
#include "emit/card_box.h"
#include "emit/rules.h"
#include "emit/values.h"
#include "units/number.h"

namespace tenter::emit {

namespace {

std::string equalColumns(int count) {
    // minmax(0, …) so that a long word cannot widen its column. CSS Grid 2 § 7.2.3.
    const std::string column = "minmax(0, 1fr)";
    return count == 1 ? column : "repeat(" + std::to_string(count) + ", " + column + ")";
}

}  // namespace

void addRowRule(const BandScope& scope, Rules& rules) {
    const project::RowSettings& row = scope.settings.row;
    const bool centred = row.lastLine == project::LastLine::Center;
    Rule rule;
    rule.selector = rowSelector(scope);
    rule.always("box-sizing", "border-box");
    rule.always("display", centred ? "flex" : "grid");
    rule.unless("none", "grid-template-columns", centred ? "none" : equalColumns(row.columns.value_or(1)));
    rule.unless("nowrap", "flex-wrap", centred ? "wrap" : "nowrap");
    rule.unless("normal", "justify-content", centred ? "center" : "normal");
    rule.always("column-gap", sumOf(row.columnGap).css());
    rule.always("row-gap", sumOf(row.rowGap).css());
    rule.unless("normal", "container-type", rowIsContainer(scope) ? "inline-size" : "normal");
    rule.always("width", row.width.value_or(units::Length::percent(100)).css());
    rule.always("max-width", row.maxWidth.value_or(units::Length::ofNone()).css());
    rule.always("margin", "0 auto");
    rule.always("padding", sides(row.padding));
    rule.unless("transparent", "background", row.background.value_or(units::Colour{0, 0, 0, 0}).css());
    // So that em in lengths of the row and of cards is the root size, whatever font size the theme sets.
    rule.always("font-size", "1rem");
    // Optical sizing would change the advances of a font with its size.
    rule.always("font-optical-sizing", "none");
    // Chromium 156 trims full-width punctuation where the font allows it; Firefox 153 does not. CSS Text 4
    // § 8.4.
    rule.unless("normal", "text-spacing-trim", usesIdeographs(scope.project) ? "space-all" : "normal");
    // No synthetic bold: in Firefox 153 it makes text wider, in Chromium 156 it does not. Synthetic italics
    // change the width in neither. CSS Fonts 4, font-synthesis.
    rule.always("font-synthesis", "style");
    rules.push_back(std::move(rule));
}

}  // namespace tenter::emit
