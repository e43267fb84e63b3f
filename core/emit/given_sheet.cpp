#include "emit/given_sheet.h"

#include <algorithm>
#include <array>
#include <string_view>

#include "css/match.h"
#include "emit/escape.h"
#include "emit/given_resets.h"
#include "emit/rules.h"
#include "emit/values.h"
#include "markup/class_words.h"
#include "markup/matching.h"
#include "markup/selectors.h"
#include "markup/theme.h"
#include "project/wording.h"

namespace tenter::emit {

namespace {

using markup::NodeId;

markup::SelectorMaker selectorMaker(const markup::GivenRow& row, const project::Project& project) {
    std::vector<std::string> variants;
    for (const project::Variant& variant : project.row().variants)
        variants.push_back(variant.className);
    return {row.tree, row.classElement, std::move(variants)};
}

/// The tags and classes of an element and of those around it, up to the element with the class.
std::string pathOf(const markup::GivenRow& row, NodeId node) {
    std::string path;
    for (NodeId at = node; at != row.classElement && at != markup::noNode; at = row.tree[at].parent) {
        const std::string* classes = row.tree[at].find("class");
        path += row.tree[at].name + "." + (classes == nullptr ? "" : *classes) + ">";
    }
    return path;
}

/// Groups of elements with the same tag and the same classes, each with a selector. A group for which there
/// is no selector is divided by what is around its elements.
std::vector<ElementGroup> groupsOf(const markup::GivenRow& row, const project::Project& project,
                                   const std::vector<NodeId>& nodes, project::Problems& problems) {
    const markup::SelectorMaker maker = selectorMaker(row, project);
    using Groups = std::map<std::string, std::vector<NodeId>>;
    Groups groups;
    for (const NodeId node : nodes) {
        const std::string* classes = row.tree[node].find("class");
        std::vector<NodeId>& group = groups[row.tree[node].name + " " + (classes == nullptr ? "" : *classes)];
        if (std::ranges::find(group, node) == group.end()) group.push_back(node);
    }
    std::vector<ElementGroup> found;
    const auto add = [&](std::vector<NodeId> group) {
        std::ranges::sort(group);
        const markup::Derived derived = maker.derived(group);
        if (derived.exact) found.push_back({afterTheClass(derived.selector), row.tree[group.front()].name});
        return derived.exact;
    };
    for (const auto& [kind, group] : groups) {
        if (add(group)) continue;
        Groups parts;
        for (const NodeId node : group)
            parts[pathOf(row, node)].push_back(node);
        for (const auto& [path, part] : parts) {
            if (add(part)) continue;
            problems.push_back({"", "/given/markup",
                                "No selector matches only the <" + row.tree[part.front()].name +
                                    "> elements around or inside the parts.",
                                "Give them a class of their own in the CMS and in the markup."});
        }
    }
    return found;
}

/// The visible elements inside a part, without line breaks, which have no box.
std::vector<NodeId> shownInside(const markup::Tree& tree, NodeId part) {
    std::vector<NodeId> found;
    for (NodeId at = tree.following(part, part); at != markup::noNode;) {
        const markup::Node& node = tree[at];
        const bool hidden = !node.isText() && markup::isHidden(node);
        if (!node.isText() && !hidden && !node.isHtml("br") && !node.isHtml("wbr")) found.push_back(at);
        at = hidden ? tree.past(at, part) : tree.following(at, part);
    }
    return found;
}

/// CSS Text 3, CSS Fonts 4, CSS Text Decoration 4: the property tables say which properties are inherited.
constexpr std::array<std::string_view, 25> inheritedProperties{"direction",
                                                               "writing-mode",
                                                               "text-rendering",
                                                               "text-justify",
                                                               "font-variant-east-asian",
                                                               "font-variant-position",
                                                               "font-variant-alternates",
                                                               "text-indent",
                                                               "white-space",
                                                               "word-break",
                                                               "line-break",
                                                               "font-variant-caps",
                                                               "font-variant-ligatures",
                                                               "font-stretch",
                                                               "font-kerning",
                                                               "font-feature-settings",
                                                               "font-size-adjust",
                                                               "text-align-last",
                                                               "text-shadow",
                                                               "hanging-punctuation",
                                                               "font-variant-numeric",
                                                               "text-spacing-trim",
                                                               "font-optical-sizing",
                                                               "font-synthesis",
                                                               "font-variation-settings"};

bool isInherited(const std::string& property) {
    return std::ranges::find(inheritedProperties, property) != inheritedProperties.end();
}

}  // namespace

std::optional<GivenSheet> GivenSheet::of(const project::Project& project, project::Problems& problems) {
    if (!project.row().given) {
        problems.push_back(
            {"", "/given", "The project has no imported row.",
             "Import one (File › Import row from page…, or tenter-cli adopt), or use Tenter's own "
             "markup."});
        return std::nullopt;
    }
    std::optional<markup::GivenRow> row = markup::givenRow(project, problems);
    if (!row) return std::nullopt;
    return GivenSheet(std::move(*row), project, problems);
}

GivenSheet::GivenSheet(markup::GivenRow row, const project::Project& project, project::Problems& problems)
    : row_(std::make_shared<const markup::GivenRow>(std::move(row))),
      facts_(row_->tree, project.row().given->theme),
      knowsTheme_(!project.row().given->theme.empty()) {
    std::vector<NodeId> around = row_->wrappers;
    std::map<std::string, std::vector<NodeId>> inside;
    for (const markup::GivenCard& card : row_->cards) {
        around.insert(around.end(), card.wrappers.begin(), card.wrappers.end());
        for (const markup::GivenPart& part : card.parts) {
            around.insert(around.end(), part.wrappers.begin(), part.wrappers.end());
            if (part.role == "picture") continue;
            const std::vector<NodeId> found = shownInside(row_->tree, part.node);
            inside[part.role].insert(inside[part.role].end(), found.begin(), found.end());
        }
    }
    wrappers_ = groupsOf(*row_, project, around, problems);
    for (const auto& [role, nodes] : inside)
        inside_[role] = groupsOf(*row_, project, nodes, problems);
    findOwnPictures(project, problems);
    for (const NodeId node : {row_->row, row_->classElement}) {
        negativeAbove_ = negativeAbove_ || facts_.canBeNegative(node, "margin-top");
        negativeBelow_ = negativeBelow_ || facts_.canBeNegative(node, "margin-bottom");
    }
    marginAbove_ = facts_.fontRelative(row_->row, "margin-top");
    marginBelow_ = facts_.fontRelative(row_->row, "margin-bottom");
}

void GivenSheet::findOwnPictures(const project::Project& project, project::Problems& problems) {
    std::map<std::pair<std::string, std::string>, std::vector<NodeId>> alike;
    for (std::size_t c = 0; c < std::min(row_->cards.size(), project.row().cards.size()); ++c) {
        const markup::GivenCard& given = row_->cards[c];
        const std::vector<project::Part>& parts = project.row().cards[c].parts;
        for (std::size_t p = 0; p < std::min(given.parts.size(), parts.size()); ++p) {
            const auto* picture = std::get_if<project::PicturePart>(&parts[p]);
            if (picture == nullptr || given.parts[p].role != "picture") continue;
            const std::pair own{ownRatio(*picture), ownPosition(*picture)};
            if (!own.first.empty() || !own.second.empty()) alike[own].push_back(given.parts[p].node);
        }
    }
    const markup::SelectorMaker maker = selectorMaker(*row_, project);
    for (const auto& [own, nodes] : alike) {
        const markup::Derived derived = maker.derived(nodes);
        if (derived.exact)
            ownPictures_.push_back({afterTheClass(derived.selector), own.first, own.second});
        else
            problems.push_back({"", "/given/markup",
                                "No selector matches only the pictures with their own ratio or focal point.",
                                "Give them a class of their own in the CMS and in the markup."});
    }
}

const std::vector<ElementGroup>& GivenSheet::inside(const std::string& role) const {
    static const std::vector<ElementGroup> none;
    const auto found = inside_.find(role);
    return found == inside_.end() ? none : found->second;
}

void GivenSheet::adaptToTheme(const BandScope& scope, Rules& rules) const {
    addResets(scope, rules);
    for (Rule& rule : rules)
        adaptRule(scope, rule);
    strengthenOwnPictures(scope, rules);
    // A rule for hover must override the rule without hover.
    for (Rule& rule : rules) {
        const std::size_t state = rule.selector.find_last_of(':');
        for (const Rule& base : rules) {
            const bool isBase =
                base.when == When::Always &&
                (rule.when == When::Always
                     ? state != std::string::npos && base.selector == rule.selector.substr(0, state)
                     : rule.selector.starts_with(base.selector));
            if (isBase && rule.strength < base.strength) rule.strength = base.strength;
        }
    }
}

/// Makes the rule of some pictures more specific than that of all pictures, in narrower bands too.
void GivenSheet::strengthenOwnPictures(const BandScope& scope, Rules& rules) const {
    const auto all = std::ranges::find(rules, partSelector(scope, "picture"), &Rule::selector);
    if (all == rules.end()) return;
    const auto strengthOf = [&](const Rule& rule) {
        css::Problems unread;
        const auto list = css::readSelectors(rule.selector, unread);
        css::Specificity strength =
            list && !list->empty() ? css::specificityOf(list->front()) : css::Specificity{};
        strength.a += rule.strength.ids;
        strength.b += rule.strength.classes;
        return strength;
    };
    for (const OwnPicture& own : ownPictures_) {
        // The last rule: if the selectors of both rules are the same, the one for some pictures follows.
        const auto rule = std::ranges::find(rules.rbegin(), rules.rend(), own.selector, &Rule::selector);
        if (rule == rules.rend()) continue;
        rule->strength.ids = std::max(rule->strength.ids, all->strength.ids);
        while (!(strengthOf(*all) < strengthOf(*rule)))
            ++rule->strength.classes;
    }
}

void GivenSheet::adaptRule(const BandScope& scope, Rule& rule) const {
    const std::string own = "." + cssIdentifier(scope.project.row().variants[row_->variant].className);
    css::Problems unread;
    const auto list = css::readSelectors(underClass(own, rule.selector), unread);
    if (!list || list->empty()) return;
    const css::Complex& selector = list->front();
    const auto& pseudos = selector.pseudoElements();
    markup::Subjects subjects{{}, pseudos.empty() ? std::string() : pseudos.front().name};
    const markup::TreeElements elements(row_->tree);
    for (NodeId at = row_->classElement; at != markup::noNode;
         at = row_->tree.following(at, row_->classElement))
        if (!row_->tree[at].isText() && css::matches(selector, elements, at, markup::dynamicPseudoClasses))
            subjects.nodes.push_back(at);

    css::Specificity ours = css::specificityOf(selector);
    markup::ThemeValue strongest;
    for (Declaration& declaration : rule.declarations) {
        const bool fromAbove = isInherited(declaration.property) &&
                               (declaration.remark.empty() || rule.selector == rowSelector(scope));
        const markup::ThemeValue theme =
            facts_.valueOf(subjects, declaration.property, declaration.value, fromAbove);
        declaration.printedAlways = declaration.printedAlways || theme.differs;
        declaration.important = theme.important;
        if (theme.important && declaration.remark.empty())
            declaration.remark = "the theme marks it important or sets it in a style attribute";
        if (!theme.unbeatable.empty())
            declaration.note =
                "No stylesheet can override the theme's " + declaration.property + ": " +
                project::inQuotes(theme.unbeatable) +
                (theme.unbeatableOrigin.empty() ? "" : " in " + theme.unbeatableOrigin) +
                " sets it with !important in a layer or in a style attribute. Remove it from the "
                "theme.";
        if (!theme.selector.empty() && (strongest.selector.empty() || strongest.most < theme.most))
            strongest = theme;
    }
    if (strongest.selector.empty() || !(ours < strongest.most)) return;
    rule.strength.ids = std::max(0, strongest.most.a - ours.a);
    ours.a += rule.strength.ids;
    for (; ours < strongest.most; ++ours.b)
        ++rule.strength.classes;
    rule.declarations.front().note +=
        (rule.declarations.front().note.empty() ? "" : " ") +
        ("As specific as the theme's selector " + project::inQuotes(strongest.selector) + ".");
}

}  // namespace tenter::emit
