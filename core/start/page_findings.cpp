#include "start/page_findings.h"

#include <algorithm>
#include <array>

#include "css/longhands.h"
#include "markup/theme.h"

namespace tenter::start {

namespace {

using markup::NodeId;

/// Properties of text that elements inherit and a project has.
constexpr std::array<const char*, 9> inheritedProperties{"color",       "font-family", "font-size",
                                                         "font-style",  "font-weight", "letter-spacing",
                                                         "line-height", "text-align",  "text-transform"};
/// Declarations of an element, or intervals of widths, that are read. Pages have fewer.
constexpr std::size_t mostDeclarations = 300;
constexpr std::size_t mostIntervals = 60;
/// The longest value that is listed, in bytes.
constexpr std::size_t longestValue = 2000;

class Finder {
public:
    Finder(const markup::GivenRow& row, const css::StyleRules& rules, std::string_view theme)
        : row_(row), rules_(rules) {
        for (std::size_t at = 0; at < theme.size();) {
            const std::size_t end = std::min(theme.find('\n', at), theme.size());
            lines_.push_back(theme.substr(at, end - at));
            at = end + 1;
        }
        for (const markup::RoleNodes& role : row.roles)
            if (!role.nodes.empty()) found_.push_back({role.role, role.selector, role.nodes.size(), {}});
    }

    void read(css::Styles& styles) {
        std::size_t index = 0;
        for (const markup::RoleNodes& role : row_.roles) {
            if (role.nodes.empty()) continue;
            FoundElement& element = found_[index++];
            readOwn(role.nodes.front(), styles, element);
            if (role.role != "row" && role.role != "card" && role.role != "picture")
                readInherited(role.nodes.front(), styles, element);
        }
    }

    std::vector<FoundElement> take() { return std::move(found_); }

private:
    /// True if the declaration is the strongest for one of its longhands.
    static bool wins(const css::Applying& applying, NodeId node, css::Styles& styles) {
        const css::Declaration& declaration = *applying.declaration;
        const auto longhands = css::physicalLonghands(declaration.property, declaration.value, false);
        return std::ranges::any_of(longhands, [&](const css::Longhand& longhand) {
            const css::Applying* winner = styles.winner(node, longhand.property);
            return winner != nullptr && winner->declaration == applying.declaration;
        });
    }

    void readOwn(NodeId node, css::Styles& styles, FoundElement& element) {
        for (const css::Applying& applying : rules_.atRest(node)) {
            if (applying.origin == css::Origin::Browser || applying.declaration->property.starts_with("--"))
                continue;
            if (wins(applying, node, styles)) add(applying, false, node, styles, element);
        }
    }

    void readInherited(NodeId node, css::Styles& styles, FoundElement& element) {
        const std::vector<css::Applying>& own = rules_.atRest(node);
        for (const char* property : inheritedProperties) {
            const css::Applying* winner = styles.winner(node, property);
            if (winner == nullptr || winner->origin == css::Origin::Browser) continue;
            const bool isOwn = std::ranges::any_of(
                own, [&](const css::Applying& one) { return one.declaration == winner->declaration; });
            if (!isOwn) add(*winner, true, node, styles, element);
        }
    }

    void add(const css::Applying& applying, bool inherited, NodeId node, css::Styles& styles,
             FoundElement& element) {
        const css::Declaration& declaration = *applying.declaration;
        FoundDeclaration found{declaration.property, declaration.value, {}, {}, {}, inherited, {}};
        // A shorthand has no value of its own.
        constexpr std::size_t longest = 200;
        constexpr int mostComputed = 500;
        const bool hasVariable = declaration.value.find("var(") != std::string::npos;
        if (hasVariable && declaration.value.size() <= longest && ++computed_ <= mostComputed)
            found.computed = styles.value(node, declaration.property).substr(0, longest);
        if (applying.rule != nullptr) {
            found.selector = applying.rule->selectorText;
            const std::size_t line = applying.rule->line - 1;
            if (line < lines_.size()) found.place = markup::originOfRule(lines_[line], 1);
        }
        const auto known = std::ranges::find_if(element.declarations, [&](const FoundDeclaration& one) {
            return one.property == found.property && one.value == found.value &&
                   one.computed == found.computed && one.selector == found.selector &&
                   one.place == found.place;
        });
        if (known == element.declarations.end()) {
            if (element.declarations.size() >= mostDeclarations) return;
            found.widths.emplace_back(styles.least(), styles.most());
            element.declarations.push_back(std::move(found));
        } else if (known->widths.back().second == styles.least()) {
            known->widths.back().second = styles.most();
        } else if (known->widths.back().second < styles.least()) {
            known->widths.emplace_back(styles.least(), styles.most());
        }
    }

    const markup::GivenRow& row_;
    const css::StyleRules& rules_;
    std::vector<std::string_view> lines_;  ///< of the theme
    std::vector<FoundElement> found_;
    int computed_ = 0;  ///< values with variables that were replaced
};

}  // namespace

std::vector<FoundElement> foundElements(const markup::GivenRow& row, const css::StyleRules& rules,
                                        std::string_view theme, const std::vector<double>& ends, double least,
                                        const std::function<void(css::Styles&)>& prepare) {
    Finder finder(row, rules, theme);
    double from = least;
    for (std::size_t i = 0; i < std::min(ends.size(), mostIntervals); ++i) {
        css::Styles styles(rules, from, ends[i], false);
        prepare(styles);
        finder.read(styles);
        from = ends[i];
    }
    return finder.take();
}

}  // namespace tenter::start
