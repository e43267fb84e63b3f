#include "markup/adopt.h"

#include <algorithm>
#include <cmath>

#include "markup/copy.h"
#include "markup/encoding.h"
#include "markup/headings.h"
#include "markup/matching.h"
#include "markup/picture_file.h"
#include "markup/row_finder.h"
#include "markup/selectors.h"
#include "markup/theme.h"
#include "markup/theme_page.h"
#include "project/cascade.h"
#include "project/file.h"
#include "project/rules.h"
#include "project/titles.h"
#include "project/wording.h"
#include "units/ascii.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::markup {

namespace {

using project::inQuotes;

std::string capitalised(std::string role) {
    if (!role.empty() && units::isLowerLetter(role.front()))
        role.front() = static_cast<char>(role.front() - 'a' + 'A');
    return role;
}

bool showsOwnRatio(const project::Project& project) {
    for (const project::Variant& variant : project.row().variants)
        for (std::size_t band = 0; band < variant.bands.size(); ++band)
            if (project::resolve(project, variant, band).picture.ratio->isOwn()) return true;
    return false;
}

/// What the import found, and what the person must check.
struct Report {
    std::vector<std::string> cautions;
    std::vector<std::string> found;

    /// A list: cautions first.
    [[nodiscard]] std::vector<std::string> lines() const {
        std::vector<std::string> out;
        for (const std::string& caution : cautions)
            out.push_back(project::warning(caution));
        out.insert(out.end(), found.begin(), found.end());
        return out;
    }
};

// Puts the row that was found in a page into a project.
class Adopter {
public:
    Adopter(const project::Project& project, const PageToAdopt& page, FoundRow found, Report& report,
            project::Problems& problems)
        : page_(page), found_(std::move(found)), report_(report), problems_(problems) {
        adopted_.project = project;
    }

    std::optional<Adopted> adopted() {
        if (found_.classWasAdded)
            caution(wording::say(
                "The row on the page does not have the class of a variant. Tenter added %1 to the "
                "imported markup. Add it to the row in the CMS, too.",
                {adopted_.project.row().variants.front().className}));
        if (found_.kept.row == tree().body())
            caution(
                wording::say("The cards are directly in the body of the page. If they have an element around "
                             "them, paste that element too."));
        setGiven();
        setCards();
        setLanguage();
        reportPictures();
        if (found_.loose > 0)
            caution(
                wording::sayCount("Some text is not inside an element of its own and was not imported (%n "
                                  "piece). Put it into an "
                                  "element on the page, or type it in the Words panel.",
                                  "Some text is not inside an element of its own and was not imported (%n "
                                  "pieces). Put it into an "
                                  "element on the page, or type it in the Words panel.",
                                  static_cast<std::size_t>(found_.loose)));
        return isSound() ? std::optional(std::move(adopted_)) : std::nullopt;
    }

private:
    void caution(std::string sentence) { report_.cautions.push_back(std::move(sentence)); }
    void found(std::string sentence) { report_.found.push_back(std::move(sentence)); }
    /// `chosen` for a role that the person gave a selector for, else `guessed`.
    [[nodiscard]] std::string originOf(const std::string& role) const {
        const bool chosen = std::ranges::find(page_.choices, role, &RoleChoice::role) != page_.choices.end();
        //: A selector of a role
        return chosen ? wording::say("chosen") : wording::say("guessed");
    }
    [[nodiscard]] const Tree& tree() const { return found_.kept.tree; }

    // The roles in the order of their first elements, each with its elements.
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

    // The selector that the person gave for a role, if it selects the same elements inside the element with
    // the class; else a new one.
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
            caution(wording::say(
                "The selector %1 for %2 also selects other elements. Choose a selector for %2, or "
                "add a class on the page.",
                {inQuotes(derived.selector), project::roleName(role)}));
        return std::move(derived.selector);
    }

    void setGiven() {
        project::Given given = adopted_.project.row().given.value_or(project::Given{});
        given.markup = found_.kept.markup;
        // Without the rest of the page the level before the row is not known.
        if (found_.levelBefore) given.levelBefore = found_.levelBefore;
        given.selectors.clear();
        given.selectorsFileKeys = {};
        std::vector<std::string> classes;
        for (const project::Variant& variant : adopted_.project.row().variants)
            classes.push_back(variant.className);
        const SelectorMaker maker(tree(), found_.classElement, classes);
        const NodeId row = found_.kept.row;
        given.selectors.emplace_back("row",
                                     row == found_.classElement ? "" : selectorFor(maker, "row", {row}));
        found(wording::sayCount("Row: %1 with %n card (%2).", "Row: %1 with %n cards (%2).",
                                found_.cards.size(), {described(row), originOf("row")}));
        for (const auto& [role, nodes] : nodesByRole()) {
            given.selectors.emplace_back(role, selectorFor(maker, role, nodes));
            found(wording::sayCount(
                "%1: %n element with the selector %2; the first is %3 (%4).",
                "%1: %n elements with the selector %2; the first is %3 (%4).", nodes.size(),
                {capitalised(project::roleName(role)), inQuotes(given.selectors.back().second),
                 described(nodes.front()), originOf(role)}));
        }
        adopted_.project.row().given = std::move(given);
    }

    [[nodiscard]] std::string described(NodeId node) const {
        const std::string* name = tree()[node].find("class");
        return "<" + tree()[node].name + (name != nullptr ? " class=" + inQuotes(*name) : "") + ">";
    }

    void setCards() {
        adopted_.project.row().cards.clear();
        const bool ownRatio = showsOwnRatio(adopted_.project);
        bool hasLevel = false;
        for (const FoundCard& source : found_.cards) {
            project::Card& card = adopted_.project.row().cards.emplace_back();
            for (const GuessedPart& part : source.parts) {
                if (part.role == "picture") {
                    card.parts.emplace_back(importedPicture(part.node, ownRatio));
                    continue;
                }
                card.parts.emplace_back(textPartOf(tree(), part.node, part.role));
                const int level = headingLevelOf(tree()[part.node]);
                if (part.role == "heading" && !hasLevel && level > 0) {
                    adopted_.project.row().headingLevel = level;
                    hasLevel = true;
                    found(wording::say("Heading level: %1.",
                                       {std::to_string(adopted_.project.row().headingLevel)}));
                }
            }
        }
    }

    project::PicturePart importedPicture(NodeId node, bool ownRatio) {
        std::string address;
        project::PicturePart part = picturePartOf(tree(), node, address);
        const PictureFile file = pictureFile(address, page_.file, page_.projectFolder);
        part.file = file.name;
        if (address.empty()) {
            // A name of its own for each picture, so that each can have a file.
            part.file = "picture-" + std::to_string(adopted_.project.row().cards.size());
            unnamed_.push_back(inQuotes(part.file));
        } else if (!file.isThere && std::ranges::find(missing_, inQuotes(file.name)) == missing_.end()) {
            missing_.push_back(inQuotes(file.name));
        }
        // The attributes of the markup can be those of the slot.
        if (file.isThere && page_.pictureSize) {
            if (const auto size = page_.pictureSize(folder() / file.name)) {
                part.width = size->first;
                part.height = size->second;
            }
        }
        if (ownRatio && part.width == 0) {
            part.ratio = project::Ratio{3, 2};
            sizeless_.push_back(inQuotes(part.file));
        }
        return part;
    }

    [[nodiscard]] std::filesystem::path folder() const {
        return page_.projectFolder.empty() ? "." : page_.projectFolder;
    }

    void reportPictures() {
        if (!missing_.empty())
            caution(wording::sayCount(
                "The picture file %1 is not saved with the page. Put it into the folder of the project.",
                "The picture files %1 are not saved with the page. Put them into the folder of the project.",
                missing_.size(), {project::listed(missing_)}));
        if (!unnamed_.empty())
            caution(
                wording::sayCount("%n picture on the page has no src with a file name. Save a picture file "
                                  "for it in the folder of "
                                  "the project, named %1, or choose another picture.",
                                  "%n pictures on the page have no src with a file name. Save a picture file "
                                  "for each in the folder "
                                  "of the project, named %1, or choose other pictures.",
                                  unnamed_.size(), {project::listed(unnamed_)}));
        if (!sizeless_.empty())
            caution(wording::sayCount(
                "The size of the picture %1 is not known. Tenter assumes an aspect ratio of 3/2.",
                "The sizes of the pictures %1 are not known. Tenter assumes an aspect ratio of 3/2.",
                sizeless_.size(), {project::listed(sizeless_)}));
    }

    void setLanguage() {
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
        if (hasLanguage) found(wording::say("Language: %1.", {adopted_.project.language}));
        if (hasDirection)
            found(adopted_.project.rightToLeft ? wording::say("Direction: right to left.")
                                               : wording::say("Direction: left to right."));
    }

    // The result must be a project that can be opened.
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
    Report& report_;
    project::Problems& problems_;
    Adopted adopted_;
    std::vector<std::string> missing_, unnamed_, sizeless_;  ///< names of pictures, in quotes
};

/// True if there are elements between the page's body and the row.
bool hasContainer(const Tree& tree, NodeId row) {
    return row != tree.body() && tree[row].parent != tree.body();
}

/// The element with the class in the whole page. The row was copied with its chain of ancestors.
NodeId rowOnPage(const Tree& page, const FoundRow& found) {
    NodeId at = found.pageRow;
    for (NodeId kept = found.kept.row; kept != found.classElement && at != noNode;
         kept = found.kept.tree[kept].parent)
        at = page[at].parent;
    return at == noNode ? found.pageRow : at;
}

/// Puts the root size and, if `container`, the container of a theme into a page.
void setPage(const ThemePage& around, bool container, project::Page& page, Report& report) {
    around.into(page, container);
    report.found.push_back(wording::say("Root font size: %1.", {units::px(around.rootSize())}));
    // A row without the elements around it says nothing about its container, so the project's stays.
    if (container) report.found.push_back(around.containerSentence());
}

std::string measuringPageFor(const project::Project& project, const Tree& page, NodeId row,
                             const std::vector<PageSheet>& sheets) {
    return measuringPage(page, row, sheets, static_cast<int>(std::ceil(project.leastWidth)),
                         static_cast<int>(std::floor(project.mostWidth)));
}

/// Measures the page in a browser and corrects what was read from its CSS.
void measure(ThemePage& around, const std::string& html, const Browse& browse, Report& report) {
    const std::optional<std::string> posted = browse(html);
    const auto measured = posted ? readMeasured(*posted) : std::nullopt;
    if (!measured) {
        report.cautions.push_back(
            wording::say("The page could not be measured in a browser. What the CSS says was imported."));
        return;
    }
    if (correct(around, *measured)) return;
    around.cautions.clear();
    around.notes.clear();
    around.unread.clear();
    report.found.push_back(wording::say(
        "A browser confirms the container and the root font size at every whole viewport width."));
}

}  // namespace

std::shared_ptr<const Tree> treeOf(const PageToAdopt& page, project::Problems& problems) {
    if (page.tree) return page.tree;
    const std::string file = page.file.string();
    std::optional<Tree> tree = parse(charactersOf(page.bytes, file, problems).utf8, file, problems);
    return tree ? std::make_shared<const Tree>(std::move(*tree)) : nullptr;
}

std::optional<Adopted> adopt(const project::Project& project, const PageToAdopt& page,
                             project::Problems& problems) {
    const std::string file = page.file.string();
    project::Problems ignored;  // treeOf() has them
    const Characters characters = charactersOf(page.bytes, file, ignored);
    const std::shared_ptr<const Tree> tree = treeOf(page, problems);
    if (!tree) return std::nullopt;
    const Tree whole = cleaned(*tree);
    Report report;
    std::vector<PageSheet> sheets;
    if (page.theme)
        sheets.push_back({*page.theme, page.themeName, {}, {}, page.themeName, {}});
    else
        sheets = sheetsOf(*tree, page.file, report.cautions);
    const PageStyles styles(sheets);
    std::optional<FoundRow> found = findRow(whole, project, file, page.choices, styles.sheet(), problems);
    if (!found) return std::nullopt;
    if (characters.encoding != "UTF-8")
        report.found.push_back(wording::say("Encoding: %1.", {characters.encoding}));
    const Tree keptTree = found->kept.tree;
    const NodeId classElement = found->classElement;
    const std::string theme = styles.affecting(whole, found->pageRow);
    std::optional<ThemePage> around;
    // A whole page says where its row is, even if none of its rules affects the row.
    if (!theme.empty() || (!page.theme && !sheets.empty()))
        around = themePage(whole, rowOnPage(whole, *found), styles.sheet(), project.leastWidth,
                           project.mostWidth, styles.places());
    std::string measuring;
    if (around && (page.browse || page.wantsMeasuringPage))
        measuring = measuringPageFor(project, whole, rowOnPage(whole, *found), sheets);
    if (around && page.browse) measure(*around, measuring, page.browse, report);
    std::optional<Adopted> adopted = Adopter(project, page, std::move(*found), report, problems).adopted();
    if (!adopted) return std::nullopt;
    project::Given& given = *adopted->project.row().given;
    if (page.theme || !theme.empty()) given.theme = theme;
    given.unread = around ? around->unread : std::vector<wording::Sentence>();
    if (given.unread.size() > project::mostUnread) given.unread.resize(project::mostUnread);
    if (theme.empty()) {
        // A row without its stylesheets says nothing about its theme, so the project's theme stays.
        report.found.push_back(
            given.theme.empty()
                ? wording::say("Theme: no CSS that affects the row was found.")
                : wording::say("Theme: the page has no CSS that affects the row; the theme in "
                               "the project stays."));
        if (page.theme && !isBlank(*page.theme))
            report.cautions.push_back(
                wording::say("No rule of the theme's CSS affects the row. Check that it is the right CSS."));
    }
    if (around) {
        setPage(*around, !page.theme || hasContainer(keptTree, classElement), adopted->project.page, report);
        for (const wording::Sentence& sentence : around->cautions)
            report.cautions.push_back(sentence.worded());
        report.cautions.insert(report.cautions.end(), around->notes.begin(), around->notes.end());
    }
    adopted->report = report.lines();
    if (page.wantsMeasuringPage) adopted->measuringPage = std::move(measuring);
    return adopted;
}

}  // namespace tenter::markup
