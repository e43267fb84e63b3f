#include "emit/given_resets.h"

#include <algorithm>
#include <span>
#include <string_view>
#include <vector>

#include "markup/neutral_values.h"
#include "project/cascade.h"

namespace tenter::emit {

namespace {

using markup::Neutral;

class Resetter {
public:
    Resetter(const BandScope& scope, Rules& rules)
        : scope_(scope), rules_(rules), themeUnknown_(!scope.given->knowsTheme()) {}

    void run() {
        const std::string row = rowSelector(scope_);
        const Neutral direction[] = {
            {"direction", scope_.project.rightToLeft ? "rtl" : "ltr", markup::neutral::lettering}};
        into(row, markup::rowResets);
        into(row, direction);
        const auto rule = std::ranges::find(rules_, row, &Rule::selector);
        if (rule != rules_.end()) keepMargins(*rule, true);
        into(row, markup::letterResets);
        into(row, markup::motionResets);
        boxes(row, "no extra item in the grid", true);
        const std::string card = partSelector(scope_, "card");
        into(card, markup::cardResets);
        into(card, markup::letterResets);
        into(card, markup::motionResets);
        boxes(card, "no extra part in the card", true);
        const std::string picture = partSelector(scope_, "picture");
        if (!picture.empty()) {
            into(picture, markup::pictureResets);
            into(picture, markup::motionResets);
        }
        for (const RoleUse& use : scope_.uses)
            resetText(use);
        if (!row.empty()) resetOuter();
        for (const ElementGroup& wrapper : scope_.given->wrappers())
            resetWrapper(wrapper);
    }

private:
    void apply(Rule& rule, std::span<const Neutral> resets) const {
        for (const Neutral& reset : resets) {
            const std::string property(reset.property);
            if (std::ranges::find(rule.declarations, property, &Declaration::property) !=
                rule.declarations.end())
                continue;
            rule.reset(property, std::string(reset.value), std::string(reset.why));
            rule.declarations.back().printedAlways = reset.usual && themeUnknown_;
        }
    }

    void into(const std::string& selector, std::span<const Neutral> resets) {
        for (Rule& rule : rules_) {
            if (rule.selector != selector || rule.when != When::Always) continue;
            apply(rule, resets);
            return;
        }
    }

    /// Keeps the theme's margins above and below the row, which are distances of the page, unless one is
    /// negative: that makes up for gutters that the row does not have. `isRow`: the rule is that of the row,
    /// which has a font size of its own.
    void keepMargins(Rule& rule, bool isRow) const {
        if (themeUnknown_) return;
        const std::string across = isRow ? "auto" : "0";
        const auto margin = std::ranges::find(rule.declarations, "margin", &Declaration::property);
        if (margin == rule.declarations.end()) return;
        std::vector<Declaration> sides;
        const auto add = [&](const char* property, const std::string& value) {
            sides.push_back(*margin);
            sides.back().property = property;
            sides.back().value = value;
        };
        const GivenSheet& given = *scope_.given;
        if (given.isMarginAboveNegative() && given.isMarginBelowNegative()) return;
        if (given.isMarginAboveNegative())
            add("margin-top", "0");
        else if (isRow && given.marginAbove())
            add("margin-top", *given.marginAbove());
        if (given.isMarginBelowNegative())
            add("margin-bottom", "0");
        else if (isRow && given.marginBelow())
            add("margin-bottom", *given.marginBelow());
        add("margin-left", across);
        add("margin-right", across);
        const auto at = rule.declarations.erase(margin);
        rule.declarations.insert(at, sides.begin(), sides.end());
    }

    /// Resets for boxes that a theme adds before and after an element.
    void boxes(const std::string& selector, const std::string& why, bool usual, bool after = true) {
        for (const char* pseudo : {"::before", "::after"}) {
            if (!after && std::string_view(pseudo) == "::after") continue;
            Rule rule;
            rule.selector = selector + pseudo;
            rule.reset("content", "none", why);
            rule.declarations.back().printedAlways = usual && themeUnknown_;
            rules_.push_back(std::move(rule));
        }
    }

    void resetText(const RoleUse& use) {
        const std::string selector = partSelector(scope_, use.role);
        into(selector, markup::textResets);
        into(selector, markup::letterResets);
        into(selector, markup::motionResets);
        for (const char* pseudo : {"::first-letter", "::first-line"}) {
            Rule first;
            first.selector = selector + pseudo;
            apply(first, markup::firstResets);
            rules_.push_back(std::move(first));
        }
        // A card that is one link needs the `::after` box of the button.
        boxes(selector, "no extra text", false, use.role != "button" || !anyLinked());
        for (const ElementGroup& inner : scope_.given->inside(use.role)) {
            Rule rule;
            rule.selector = inner.selector;
            apply(rule, markup::innerResets);
            // An inherited size would follow that of the part late.
            apply(rule, markup::motionResets);
            const bool bold = inner.tag == "strong" || inner.tag == "b";
            const bool italic = inner.tag == "em" || inner.tag == "i";
            if (!bold && !italic) apply(rule, markup::plainResets);
            if (inner.tag != "a") apply(rule, markup::lookResets);
            rules_.push_back(std::move(rule));
            boxes(inner.selector, "no extra text", false);
        }
    }

    /// True if a card is one link in some band.
    [[nodiscard]] bool anyLinked() const {
        const project::Variant& variant = scope_.project.row().variants[scope_.given->row().variant];
        for (std::size_t band = 0; band < variant.bands.size(); ++band)
            if (project::resolve(scope_.project, variant, band).card.linked.value_or(false)) return true;
        return false;
    }

    void resetOuter() {
        Rule rule;
        apply(rule, markup::outerResets);
        keepMargins(rule, false);
        rules_.push_back(std::move(rule));
        boxes("", "no extra box next to the row", true);
    }

    void resetWrapper(const ElementGroup& wrapper) {
        Rule rule;
        rule.selector = wrapper.selector;
        if (wrapper.tag == "a") {
            rule.always("display", "flex");
            rule.always("flex-direction", "column");
            apply(rule, markup::linkResets);
        } else {
            rule.always("display", "contents");
            rule.declarations.back().remark = "its parts become items of the card";
        }
        apply(rule, markup::letterResets);
        rules_.push_back(std::move(rule));
        boxes(wrapper.selector, "no extra part", false);
    }

    const BandScope& scope_;
    Rules& rules_;
    bool themeUnknown_;
};

}  // namespace

void addResets(const BandScope& scope, Rules& rules) {
    Resetter(scope, rules).run();
}

}  // namespace tenter::emit
