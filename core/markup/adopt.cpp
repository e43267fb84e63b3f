#include "markup/adopt.h"

#include <algorithm>

#include "markup/copy.h"
#include "markup/encoding.h"
#include "markup/matching.h"
#include "markup/picture_file.h"
#include "markup/row_finder.h"
#include "markup/selectors.h"
#include "markup/theme.h"
#include "markup/theme_page.h"
#include "project/cascade.h"
#include "project/file.h"
#include "project/rules.h"
#include "project/wording.h"

namespace tenter::markup {

namespace {

using project::inQuotes;

std::string counted(std::size_t count, const std::string& what) {
    return std::to_string(count) + " " + what + (count == 1 ? "" : "s");
}

bool showsOwnRatio(const project::Project& project) {
    for (const project::Variant& variant : project.variants)
        for (std::size_t band = 0; band < variant.bands.size(); ++band)
            if (project::resolve(project, variant, band).picture.ratio->isOwn()) return true;
    return false;
}

// Puts what was found in a page into a project.
class Adopter {
public:
    Adopter(const project::Project& project, const PageToAdopt& page, FoundRow found,
            project::Problems& problems)
        : page_(page), found_(std::move(found)), problems_(problems) {
        adopted_.project = project;
    }

    std::optional<Adopted> adopted() {
        if (found_.classWasAdded)
            say("The row has none of the project's classes: give it the class " +
                adopted_.project.variants.front().className + " in the CMS. Here it has it already.");
        if (found_.kept.row == tree().body())
            say("The cards stand in the page's body itself: if they have an element around them, paste it "
                "too.");
        takeGiven();
        takeCards();
        tellPictures();
        takeLanguage();
        if (found_.loose > 0)
            say(counted(static_cast<std::size_t>(found_.loose), "piece") +
                " of text beside other blocks belongs to no element and was left out.");
        return isSound() ? std::optional(std::move(adopted_)) : std::nullopt;
    }

private:
    void say(std::string sentence) { adopted_.report.push_back(std::move(sentence)); }
    [[nodiscard]] const Tree& tree() const { return found_.kept.tree; }

    // The roles in the order they come up, each with its elements.
    [[nodiscard]] std::vector<std::pair<std::string, std::vector<NodeId>>> nodesByRole() const {
        std::vector<std::pair<std::string, std::vector<NodeId>>> roles{{"card", {}}};
        for (const FoundCard& card : found_.cards) {
            roles.front().second.push_back(card.node);
            for (const GuessedPart& part : card.parts) {
                const auto known = std::ranges::find(roles, part.role, &decltype(roles)::value_type::first);
                if (known == roles.end())
                    roles.emplace_back(part.role, std::vector{part.node});
                else
                    known->second.push_back(part.node);
            }
        }
        return roles;
    }

    // The person's own selector for a role, if it selects the same within the row's class; else one made for
    // it.
    std::string selectorFor(const SelectorMaker& maker, const std::string& role,
                            const std::vector<NodeId>& nodes) {
        for (const RoleChoice& choice : page_.choices) {
            css::Problems unread;
            std::optional<css::SelectorList> list = css::readSelectors(choice.selector, unread);
            if (choice.role == role && list &&
                selectedWithin(tree(), found_.classElement, std::move(*list)) == nodes)
                return choice.selector;
        }
        Derived derived = maker.derived(nodes);
        if (!derived.exact)
            say("No selector selects " + role + " alone: " + inQuotes(derived.selector) + " selects more.");
        return std::move(derived.selector);
    }

    void takeGiven() {
        project::Given given = adopted_.project.given.value_or(project::Given{});
        given.markup = found_.kept.markup;
        // A row pasted alone says nothing of what stands before it.
        if (found_.levelBefore) given.levelBefore = found_.levelBefore;
        given.selectors.clear();
        given.selectorsRemembered = {};
        std::vector<std::string> classes;
        for (const project::Variant& variant : adopted_.project.variants)
            classes.push_back(variant.className);
        const SelectorMaker maker(tree(), found_.classElement, classes);
        const NodeId row = found_.kept.row;
        given.selectors.emplace_back("row",
                                     row == found_.classElement ? "" : selectorFor(maker, "row", {row}));
        say("The row is " + described(row) + " with " + counted(found_.cards.size(), "card") + ".");
        for (const auto& [role, nodes] : nodesByRole()) {
            given.selectors.emplace_back(role, selectorFor(maker, role, nodes));
            say(role + ": " + counted(nodes.size(), "element") + ", the first " + described(nodes.front()) +
                ", by " + given.selectors.back().second + ".");
        }
        adopted_.project.given = std::move(given);
    }

    [[nodiscard]] std::string described(NodeId node) const {
        const std::string* name = tree()[node].find("class");
        return "<" + tree()[node].name + (name != nullptr ? " class=" + inQuotes(*name) : "") + ">";
    }

    void takeCards() {
        adopted_.project.cards.clear();
        const bool ownRatio = showsOwnRatio(adopted_.project);
        bool hasLevel = false;
        for (const FoundCard& found : found_.cards) {
            project::Card& card = adopted_.project.cards.emplace_back();
            for (const GuessedPart& part : found.parts) {
                if (part.role == "picture") {
                    card.parts.emplace_back(takenPicture(part.node, ownRatio));
                    continue;
                }
                card.parts.emplace_back(textPartOf(tree(), part.node, part.role));
                const std::string& tag = tree()[part.node].name;
                if (part.role == "heading" && !hasLevel && tag.size() == 2 && tag[0] == 'h') {
                    adopted_.project.headingLevel = tag[1] - '0';
                    hasLevel = true;
                }
            }
        }
    }

    project::PicturePart takenPicture(NodeId node, bool ownRatio) {
        std::string address;
        project::PicturePart part = picturePartOf(tree(), node, address);
        const PictureFile file = pictureFile(address, page_.file, page_.projectFolder);
        part.file = file.name;
        if (address.empty()) {
            // One name for each, so that each can have a file.
            part.file = "picture-" + std::to_string(adopted_.project.cards.size());
            unnamed_.push_back(inQuotes(part.file));
        } else if (!file.isThere && std::ranges::find(missing_, inQuotes(file.name)) == missing_.end()) {
            missing_.push_back(inQuotes(file.name));
        }
        if (ownRatio && part.width == 0) {
            part.ratio = project::Ratio{3, 2};
            say("The page does not say how large the picture " + inQuotes(file.name) + " is: 3/2 is taken.");
        }
        return part;
    }

    void tellPictures() {
        const auto one = [](const std::vector<std::string>& names) { return names.size() == 1; };
        if (!missing_.empty())
            say(std::string(one(missing_) ? "The picture " : "The pictures ") + project::listed(missing_) +
                (one(missing_) ? " is not beside the page: put it" : " are not beside the page: put them") +
                " beside the project.");
        if (!unnamed_.empty())
            say(std::string(one(unnamed_) ? "A picture stands" : "Pictures stand") +
                " in the page itself or without an address: save " + (one(unnamed_) ? "it as " : "them as ") +
                project::listed(unnamed_) + " beside the project, or choose others.");
    }

    void takeLanguage() {
        bool hasLanguage = false;
        bool hasDirection = false;
        for (NodeId at = found_.kept.row; at != noNode; at = tree()[at].parent) {
            const std::string* language = tree()[at].find("lang");
            if (language != nullptr && !hasLanguage && project::isLanguage(*language)) {
                adopted_.project.language = *language;
                hasLanguage = true;
            }
            const std::string* direction = tree()[at].find("dir");
            if (direction == nullptr || hasDirection || (*direction != "rtl" && *direction != "ltr"))
                continue;
            adopted_.project.rightToLeft = *direction == "rtl";
            hasDirection = true;
        }
    }

    // What was taken must make a project that can be opened.
    bool isSound() {
        project::Problems unsound;
        const std::string text = project::write(adopted_.project);
        const bool sound =
            project::parse(text, page_.file.string(), page_.projectFolder, unsound).has_value();
        problems_.insert(problems_.end(), unsound.begin(), unsound.end());
        return sound;
    }

    const PageToAdopt& page_;
    FoundRow found_;
    project::Problems& problems_;
    Adopted adopted_;
    std::vector<std::string> missing_, unnamed_;  ///< pictures without a file, in quotes
};

/// True if there are elements between the page's body and the row.
bool standsInSomething(const Tree& tree, NodeId row) {
    return row != tree.body() && tree[row].parent != tree.body();
}

}  // namespace

std::optional<Adopted> adopt(const project::Project& project, const PageToAdopt& page,
                             project::Problems& problems) {
    const std::string file = page.file.string();
    const Characters characters = charactersOf(page.bytes, file, problems);
    std::optional<Tree> tree = parse(characters.utf8, file, problems);
    if (!tree) return std::nullopt;
    std::optional<FoundRow> found = findRow(cleaned(*tree), project, file, page.choices, problems);
    if (!found) return std::nullopt;
    std::vector<std::string> aboutTheme;
    const Tree keptTree = found->kept.tree;
    const NodeId classElement = found->classElement;
    const std::string theme =
        page.theme ? rulesConcerning(*page.theme, keptTree) : themeOf(*tree, keptTree, page.file, aboutTheme);
    if (page.theme && theme.empty() && !isBlank(*page.theme))
        aboutTheme.emplace_back("No rule of the theme's CSS concerns the row.");
    std::optional<Adopted> adopted = Adopter(project, page, std::move(*found), problems).adopted();
    if (adopted) {
        // A row pasted alone says nothing of its theme: what was known of it stays.
        if (page.theme || !theme.empty()) adopted->project.given->theme = theme;
        if (!theme.empty()) {
            const ThemePage around =
                themePage(keptTree, classElement, theme, project.leastWidth, project.mostWidth);
            adopted->project.page.rootSize = around.rootSize;
            // Nor does it say what it sits in.
            if (!page.theme || standsInSomething(keptTree, classElement))
                adopted->project.page.container = around.container;
            aboutTheme.insert(aboutTheme.end(), around.report.begin(), around.report.end());
        }
        adopted->report.insert(adopted->report.end(), aboutTheme.begin(), aboutTheme.end());
    }
    if (adopted && characters.encoding != "UTF-8")
        adopted->report.insert(adopted->report.begin(), "The page was read as " + characters.encoding + ".");
    return adopted;
}

}  // namespace tenter::markup
