// The style rules of a style sheet, with what each depends on. CSS Syntax 3 § 5, CSS Conditional 3, CSS
// Cascade 5.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "css/places.h"
#include "css/selectors.h"

namespace tenter::css {

struct Declaration {
    std::string property;  ///< in lower case, custom properties as written
    std::string value;     ///< as written, without white space at its ends and without `!important`
    bool important = false;
    std::size_t offset = 0;       ///< where the property stands
    std::size_t valueOffset = 0;  ///< where the value stands
    std::size_t line = 1;         ///< of the property
};

enum class ConditionKind { Media, Supports, Container };

/// What an at-rule asks for; its rules hold only where it does.
struct Condition {
    ConditionKind kind = ConditionKind::Media;
    std::string text;                   ///< `(max-width: 700px)`
    std::optional<std::size_t> parent;  ///< the condition it stands in
};

struct Layer {
    std::string name;                   ///< of its own, without its parents'; empty if it has none
    std::optional<std::size_t> parent;  ///< the layer it stands in
};

struct StyleRule {
    SelectorList selectors;
    std::string selectorText;
    std::vector<Declaration> declarations;
    std::optional<std::size_t> condition;  ///< the innermost, of Sheet::conditions
    std::optional<std::size_t> layer;      ///< of Sheet::layers
    std::size_t offset = 0;
    std::size_t line = 1;
};

/// An at-rule that was passed over: `font-face`, `keyframes`, or any within a style rule.
struct Skipped {
    std::string name;
    std::size_t line = 1;
};

struct Sheet {
    std::vector<StyleRule> rules;  ///< in the order of the source
    std::vector<Condition> conditions;
    /// Weakest first; rules of no layer are stronger than all. Important declarations go the other way. CSS
    /// Cascade 5 § 6.4.
    std::vector<Layer> layers;
    std::vector<Skipped> skipped;
    /// What was dropped, as browsers drop it; the first thousand.
    Problems problems;

    /// What `rule` depends on, outermost first.
    [[nodiscard]] std::vector<const Condition*> conditionsOf(const StyleRule& rule) const;
};

/// Reads a style sheet. What is wrong costs no rule after it. Rules nested in style rules, and conditions or
/// layers more than 32 deep, are passed over and told.
Sheet readSheet(std::string_view source);

/// Reads declarations that stand alone, as in a `style` attribute.
std::vector<Declaration> readDeclarations(std::string_view source, Problems& problems);

}  // namespace tenter::css
