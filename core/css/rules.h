// The style rules of a stylesheet, with their conditions and layers. CSS Syntax 3 § 5, CSS Conditional 3,
// CSS Cascade 5.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "css/places.h"
#include "css/selectors.h"

namespace tenter::css {

/// A declaration. Offsets are bytes of the source.
struct Declaration {
    std::string property;  ///< in lower case, custom properties as written
    std::string value;     ///< as written, without white space at its ends and without `!important`
    bool important = false;
    std::size_t offset = 0;       ///< of the property
    std::size_t valueOffset = 0;  ///< of the value
    std::size_t line = 1;         ///< of the property
};

enum class ConditionKind { Media, Supports, Container };

/// The condition of an at-rule: its rules apply only where the condition is true.
struct Condition {
    ConditionKind kind = ConditionKind::Media;
    std::string text;                   ///< `(max-width: 700px)`
    std::optional<std::size_t> parent;  ///< index of the enclosing condition
};

/// A cascade layer.
struct Layer {
    std::string name;                   ///< without the names of its parents; empty if it has none
    std::optional<std::size_t> parent;  ///< index of the enclosing layer
};

/// A style rule. A rule that is nested in another one is a rule of its own, whose selectors contain those of
/// the outer rule in `:is()`. CSS Nesting 1 § 3.
struct StyleRule {
    SelectorList selectors;
    std::string selectorText;
    std::vector<Declaration> declarations;
    std::optional<std::size_t> condition;  ///< index of the innermost condition in Sheet::conditions
    std::optional<std::size_t> layer;      ///< index in Sheet::layers
    std::size_t source = 0;                ///< index of its source
    std::size_t offset = 0;
    std::size_t line = 1;
};

/// A registered custom property. CSS Properties and Values 1 § 2.
struct RegisteredProperty {
    std::string name;  ///< with its two hyphens
    bool inherits = true;
    std::optional<std::string> initialValue;
};

/// A stylesheet that another one imports. CSS Cascade 5 § 2.
struct Import {
    std::string address;  ///< as written
    std::string media;    ///< media condition; empty: always
    std::string supports;
    std::optional<std::string> layer;  ///< empty name: a layer without a name
};

/// An at-rule that was skipped: such as `font-face` or `keyframes`.
struct Skipped {
    std::string name;
    std::size_t line = 1;
};

/// A stylesheet.
struct Sheet {
    std::vector<StyleRule> rules;  ///< in the order of the source
    std::vector<Condition> conditions;
    /// Weakest first. Rules outside layers are stronger than all layers. For important declarations the order
    /// is reversed. CSS Cascade 5 § 6.4.
    std::vector<Layer> layers;
    std::vector<RegisteredProperty> properties;
    std::vector<Skipped> skipped;
    /// The first thousand problems. The text at them is dropped, as in browsers.
    Problems problems;

    /// The conditions of `rule`, outermost first.
    [[nodiscard]] std::vector<const Condition*> conditionsOf(const StyleRule& rule) const;
};

/// The text of a stylesheet and the conditions under which a page uses it.
struct SheetSource {
    std::string_view css;
    std::vector<std::pair<ConditionKind, std::string>> conditions = {};  ///< outermost first; not blank
    std::vector<std::string> layers = {};  ///< outermost first; an empty name: a layer without a name
};

/// The size in bytes of the longest text of a sheet, all its sources together.
inline constexpr std::size_t longestSheet = 4U << 20U;

/// The stylesheet in a text. A problem does not affect the rules after it. Rules, conditions and layers that
/// are more than 32 deep are skipped, with a problem. Of a text that is too long nothing is read.
Sheet readSheet(std::string_view source);

/// The stylesheets of a page in their order, as one sheet: layers of the same name are one layer. A source
/// with which they would be too long is read as an empty one.
Sheet readSheets(std::span<const SheetSource> sources);

/// The imports at the start of a stylesheet. `before` becomes the text before the last of them, which can
/// name layers.
std::vector<Import> importsOf(std::string_view source, std::string_view& before);

/// The declarations in a text without a rule, such as a `style` attribute.
std::vector<Declaration> readDeclarations(std::string_view source, Problems& problems);

}  // namespace tenter::css
