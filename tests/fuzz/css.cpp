// Any bytes as a stylesheet, as a media condition and as values: offsets stay inside the source, results are
// finite.
#include <cmath>

#include "../css/tree.h"
#include "css/cascade.h"
#include "css/longhands.h"
#include "css/media.h"
#include "fuzz.h"

namespace {

using namespace tenter;

/// The properties of which a row's page needs the values.
const char* const properties[] = {"display",     "width",      "max-width",         "margin-left",
                                  "padding-top", "font-size",  "line-height",       "color",
                                  "font-family", "column-gap", "border-left-width", "grid-template-columns",
                                  "flex-basis"};

/// A page of html, body, a list and its items.
struct Page {
    css::Tree tree;
    std::vector<css::Elements::Element> all;
    Page() {
        const auto html = tree.add({}, "html", {{"lang", "en"}});
        const auto body = tree.add(html, "body", {{"class", "a"}});
        const auto list = tree.add(body, "ul", {{"id", "b"}, {"class", "a b"}});
        all = {html, body, list};
        for (int i = 0; i < 3; ++i)
            all.push_back(tree.add(list, "li", {{"class", "c"}}));
    }
};

void requireFinite(const css::Line& line) {
    fuzz::require(std::isfinite(line.atZero) && std::isfinite(line.perPx), "a length is finite");
}

void requireInside(const css::Sheet& sheet, std::size_t size) {
    for (const css::StyleRule& rule : sheet.rules) {
        fuzz::require(rule.offset <= size, "a rule starts inside the source");
        for (const css::Declaration& declaration : rule.declarations)
            fuzz::require(declaration.offset <= size && declaration.valueOffset <= size,
                          "a declaration is inside the source");
        for (const css::Condition* condition : sheet.conditionsOf(rule))
            fuzz::require(condition != nullptr, "a condition exists");
    }
    for (const css::Problem& problem : sheet.problems)
        fuzz::require(problem.offset <= size && !problem.what.empty(),
                      "a problem has a place and a sentence");
}

}  // namespace

void tenter::fuzz::test(const std::uint8_t* data, std::size_t size) {
    static const Page page;
    static const css::Sheet browser = css::readSheet("ul { padding-left: 40px } li { display: list-item }");
    const std::string_view source = fuzz::textOf(data, size);
    const css::Sheet sheet = css::readSheet(source);
    requireInside(sheet, size);

    const css::StyleRules rules(page.tree, browser, sheet);
    const std::vector<double> ends = css::intervalEnds(rules, page.all, 320, 1920);
    for (std::size_t i = 0; i < ends.size(); ++i)
        fuzz::require(ends[i] > (i == 0 ? 320 : ends[i - 1]) && ends[i] < 1920, "ends of intervals rise");
    css::Styles styles(rules, 320, ends.empty() ? 1920 : ends.front(), false);
    for (const auto element : page.all) {
        requireFinite(styles.fontSize(element));
        for (const char* property : properties) {
            fuzz::require(styles.value(element, property).size() <= std::size_t{1} << 24U,
                          "a value has an end");
            if (const auto length = styles.length(element, property, css::Line{0, 1}, "auto"))
                requireFinite(*length);
        }
    }

    css::mediaHolds(source, 700);
    css::holdsOnScreen(source, 700);
    css::dependsOnHeight(source);
    for (const double width : css::mediaWidths(source))
        fuzz::require(!std::isnan(width), "a width is a number");
    css::isSupported(source);
    std::string_view before;
    css::importsOf(source, before);
    css::Problems problems;
    css::CalculationBasis basis;
    basis.percentage = css::Line{0, 1};
    basis.allUnits = true;
    if (const auto result = css::calculate(source, basis, problems)) {
        fuzz::require(std::isfinite(result->number), "a number is finite");
        for (const double width : {320.0, 777.7, 1920.0})
            fuzz::require(std::isfinite(result->length.at(width)), "a length is finite");
    } else {
        fuzz::require(!problems.empty(), "what is not calculated has a problem");
    }
}
