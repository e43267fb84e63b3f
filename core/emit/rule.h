// Rules and declarations of a stylesheet before printing.
#pragma once

#include <string>
#include <tuple>
#include <vector>

namespace tenter::emit {

/// A declaration.
struct Declaration {
    std::string property;
    std::string value;
    /// The value without effect. If every band has it, the declaration is not printed. Empty: it is always
    /// printed.
    std::string neutral;
    /// A comment above the rule: a sentence.
    std::string note;
    /// A comment after the declaration: why it is necessary.
    std::string remark = {};
    /// True if it is printed even with the neutral value in every band, because the theme sets another value.
    bool printedAlways = false;
    bool important = false;
    /// True if both have the same property, value and importance.
    [[nodiscard]] bool same(const Declaration& other) const {
        return property == other.property && value == other.value && important == other.important;
    }
};

/// The condition of a rule besides the width. Media Queries 4 § 6, Media Queries 5 § 12.1.
enum class When { Always, Hover, MotionAllowed };

/// Additions to a selector that make it as specific as one of the theme. Selectors 4 § 17.
struct Strength {
    int ids = 0;      ///< how many `:not()` with an id that no element has
    int classes = 0;  ///< how many repetitions of the variant's class
    friend bool operator<(const Strength& one, const Strength& other) {
        return std::tie(one.ids, one.classes) < std::tie(other.ids, other.classes);
    }
};

/// A rule of one variant in one band. Every band has the same rules with the same properties in the same
/// order, so that bands can be compared. The properties of a rule do not overlap.
struct Rule {
    /// The selector after the variant's class, with its leading space: ` .walks-card`; empty for the row.
    std::string selector;
    Strength strength = {};
    std::vector<Declaration> declarations;
    When when = When::Always;
    /// False in a band that does not need the rule. A rule that no band needs is not printed.
    bool needed = true;

    /// A declaration that is always printed.
    void always(std::string property, std::string value) {
        declarations.push_back({std::move(property), std::move(value), {}, {}});
    }
    /// A neutral declaration, printed only where the theme sets another value.
    void reset(std::string property, const std::string& value, std::string remark) {
        declarations.push_back({std::move(property), value, value, {}, std::move(remark)});
    }
    /// A declaration that is printed unless every band has the value `neutral`.
    void unless(std::string neutral, std::string property, std::string value) {
        declarations.push_back({std::move(property), std::move(value), std::move(neutral), {}});
    }
};

using Rules = std::vector<Rule>;

}  // namespace tenter::emit
