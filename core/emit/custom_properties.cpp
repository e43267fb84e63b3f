#include "emit/custom_properties.h"

#include <algorithm>
#include <array>
#include <map>
#include <set>
#include <string_view>

#include "emit/escape.h"
#include "emit/rules.h"
#include "units/ascii.h"

namespace tenter::emit {

namespace {

/// What a maintainer most often changes.
constexpr std::array<std::string_view, 9> oftenChanged{"font-size", "color",   "background",
                                                       "margin",    "padding", "column-gap",
                                                       "row-gap",   "border",  "border-radius"};

/// Letters, digits and single hyphens of a selector: `heading-a-hover` of ` .walks-heading a:hover` without
/// `walks-`.
std::string wordsOf(std::string_view selector, const std::string& prefix) {
    std::string out = units::hyphenated(selector, units::isWordCharacter);
    if (out.starts_with(prefix + "-")) out.erase(0, prefix.size() + 1);
    return out;
}

/// A declaration, by the index of its rule and its property. All variants and bands have the same rules.
using Key = std::pair<std::size_t, std::string>;

class Mover {
public:
    Mover(const project::Project& project, const GivenSheet* given, std::vector<Block>& blocks)
        : project_(project), blocks_(blocks) {
        nameRules(given);
    }

    void move() {
        collect();
        for (Block& block : blocks_)
            for (VariantRules& variant : block.variants)
                moveIn(variant, !block.upTo);
    }

private:
    /// A name for each rule: that of its part, or the words of its selector.
    void nameRules(const GivenSheet* given) {
        const project::Given* row = given == nullptr ? nullptr : &*project_.row().given;
        std::map<std::string, std::string> parts;
        if (row != nullptr)
            for (const auto& [role, selector] : row->selectors)
                if (!selector.empty()) parts[afterTheClass(selector)] = role;
        std::set<std::string> taken;
        for (const Rule& rule : blocks_.front().variants.front().rules) {
            const auto known = parts.find(rule.selector);
            std::string name =
                known != parts.end() ? known->second : wordsOf(rule.selector, project_.row().name);
            if (name.empty()) name = "row";
            if (rule.when == When::MotionAllowed) name += "-motion";
            const std::string stem = name;
            for (int count = 2; !taken.insert(name).second; ++count)
                name = stem + "-" + std::to_string(count);
            names_.push_back(std::move(name));
        }
    }

    /// Finds the declarations to move.
    void collect() {
        const std::vector<VariantRules>& base = blocks_.front().variants;
        for (std::size_t b = 0; b < blocks_.size(); ++b)
            for (const VariantRules& variant : blocks_[b].variants)
                for (std::size_t r = 0; r < variant.rules.size(); ++r)
                    for (const Declaration& declaration : variant.rules[r].declarations)
                        if (b > 0 || isOften(declaration.property) || differs(base, r, declaration))
                            moved_.insert({r, declaration.property});
    }

    static bool isOften(const std::string& property) {
        return std::ranges::find(oftenChanged, property) != oftenChanged.end();
    }
    /// True if another variant has another value for the same property.
    static bool differs(const std::vector<VariantRules>& variants, std::size_t rule,
                        const Declaration& declaration) {
        for (const VariantRules& variant : variants)
            for (const Declaration& other : variant.rules[rule].declarations)
                if (other.property == declaration.property && other.value != declaration.value) return true;
        return false;
    }

    [[nodiscard]] std::string propertyName(const Key& key) const {
        return "--" + cssIdentifier(project_.row().name + "-" + names_[key.first] + "-" + key.second);
    }

    void moveIn(VariantRules& variant, bool isBase) {
        Rule properties;
        for (std::size_t r = 0; r < variant.rules.size(); ++r) {
            std::vector<Declaration> kept;
            for (Declaration& declaration : variant.rules[r].declarations) {
                const Key key{r, declaration.property};
                if (!moved_.contains(key)) {
                    kept.push_back(std::move(declaration));
                    continue;
                }
                properties.declarations.push_back(
                    {propertyName(key), declaration.value, {}, declaration.note});
                if (!isBase) continue;
                declaration.value = "var(" + propertyName(key) + ")";
                declaration.note.clear();
                kept.push_back(std::move(declaration));
            }
            variant.rules[r].declarations = std::move(kept);
        }
        variant.rules.insert(variant.rules.begin(), std::move(properties));
    }

    const project::Project& project_;
    std::vector<Block>& blocks_;
    std::vector<std::string> names_;  ///< of rules, by index
    std::set<Key> moved_;
};

}  // namespace

void moveToCustomProperties(const project::Project& project, const GivenSheet* given,
                            std::vector<Block>& blocks) {
    if (blocks.empty() || blocks.front().variants.empty()) return;
    Mover(project, given, blocks).move();
}

}  // namespace tenter::emit
