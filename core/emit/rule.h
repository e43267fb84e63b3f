// Rules and declarations before they are printed.
#pragma once

#include <string>
#include <tuple>
#include <vector>

namespace tenter::emit {

struct Declaration {
    std::string property;
    std::string value;
    /// The value that changes nothing. If every band has it, the declaration is left out; empty: always said.
    std::string neutral;
    /// A sentence to stand above the rule.
    std::string note;
    /// Why it is there, to stand behind it.
    std::string remark = {};
    /// Said even if it is neutral in every band: something around the row says otherwise.
    bool insisted = false;
    bool important = false;
    /// True if both say the same of the same property.
    [[nodiscard]] bool same(const Declaration& other) const {
        return property == other.property && value == other.value && important == other.important;
    }
};

/// When a rule holds besides the width. Media Queries 4 § 6, Media Queries 5 § 12.1.
enum class When { Always, Hovering, MotionWelcome };

/// What a selector has more than its own classes, to be as strong as a theme's. Selectors 4 § 17.
struct Strength {
    int ids = 0;      ///< of `:not()` with an id that no element has
    int classes = 0;  ///< times the variant's class is said again
    friend bool operator<(const Strength& one, const Strength& other) {
        return std::tie(one.ids, one.classes) < std::tie(other.ids, other.classes);
    }
};

/// A rule of one variant in one band. Every band has the same rules with the same properties in the same
/// order, so that bands can be compared; no two properties of a rule overlap.
struct Rule {
    /// What follows the variant's class, with its leading space: ` .walks-card`; empty for the row itself.
    std::string selector;
    Strength strength = {};
    std::vector<Declaration> declarations;
    When when = When::Always;
    /// False in a band that has no use for the rule; a rule no band needs is left out.
    bool needed = true;

    void always(std::string property, std::string value) {
        declarations.push_back({std::move(property), std::move(value), {}, {}});
    }
    /// Said only where something around the row says otherwise.
    void reset(std::string property, const std::string& value, std::string remark) {
        declarations.push_back({std::move(property), value, value, {}, std::move(remark)});
    }
    void unless(std::string neutral, std::string property, std::string value) {
        declarations.push_back({std::move(property), std::move(value), std::move(neutral), {}});
    }
};

using Rules = std::vector<Rule>;

}  // namespace tenter::emit
