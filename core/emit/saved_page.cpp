#include "emit/saved_page.h"

#include <algorithm>
#include <set>
#include <utility>

#include "emit/data_address.h"
#include "emit/given_markup.h"
#include "emit/page_fonts.h"
#include "emit/stylesheet.h"
#include "markup/copy.h"
#include "markup/encoding.h"
#include "markup/keep.h"
#include "markup/picture_file.h"
#include "markup/print.h"
#include "markup/theme.h"
#include "project/address.h"

namespace tenter::emit {

namespace {

using markup::NodeId;
using markup::Space;
using markup::Tree;

/// The features by which an element is recognised without our class: its tag, its other classes, its text.
struct ElementFeatures {
    std::string tag;
    std::multiset<std::string> classes;
    std::string text;

    ElementFeatures(const Tree& tree, NodeId node, const project::Project& project) : tag(tree[node].name) {
        for (const std::string_view name : tree[node].classes())
            if (!project.row().findVariant(std::string(name))) classes.emplace(name);
        const std::string written = tree.textOf(node);
        std::ranges::copy_if(written, std::back_inserter(text), [](char c) { return !markup::isSpace(c); });
    }
    [[nodiscard]] bool hasLook(const ElementFeatures& other) const {
        return tag == other.tag && classes == other.classes;
    }
};

/// Adds the class of the given variant to the row of a page that has no such class. False if no element, or
/// more than one, can be the row.
bool addClass(Tree& page, const project::Project& project, const markup::GivenRow& given) {
    const ElementFeatures wanted(given.tree, given.classElement, project);
    std::vector<NodeId> same;
    std::vector<NodeId> alike;
    for (NodeId at = 0; at < page.size(); ++at) {
        if (page[at].isText() || page[at].name != wanted.tag) continue;
        const ElementFeatures one(page, at, project);
        if (!one.hasLook(wanted)) continue;
        alike.push_back(at);
        if (one.text == wanted.text) same.push_back(at);
    }
    const std::vector<NodeId>& found = same.empty() ? alike : same;
    if (found.size() != 1) return false;
    const std::string* classes = page[found.front()].find("class");
    const std::string now =
        (classes == nullptr ? "" : *classes + " ") + project.row().variants[given.variant].className;
    std::erase_if(page[found.front()].attributes,
                  [](const markup::Attribute& each) { return each.name == "class"; });
    page[found.front()].attributes.push_back({"class", now});
    return true;
}

/// Embeds the pictures that are saved with the page, and removes the addresses of others.
class PictureEmbedder {
public:
    PictureEmbedder(Tree& page, const SavedPage& saved, const project::Project& project,
                    const std::filesystem::path& folder)
        : page_(page), saved_(saved), project_(project), folder_(folder) {}

    void embed() {
        for (NodeId at = 0; at < page_.size(); ++at) {
            if (page_[at].isHtml("source")) drop(at, {"srcset", "src"});
            if (page_[at].isHtml("img")) embedOne(at);
        }
    }

private:
    void drop(NodeId node, std::initializer_list<std::string_view> names) {
        std::erase_if(page_[node].attributes, [&](const markup::Attribute& each) {
            return std::ranges::find(names, each.name) != names.end();
        });
    }

    void embedOne(NodeId node) {
        std::string address;
        const project::PicturePart picture = markup::picturePartOf(page_, node, address);
        const std::string* source = page_[node].find("src");
        const bool isEmbedded = source != nullptr && project::addressScheme(*source) == "data";
        std::string content = isEmbedded ? *source : embedded(address);
        if (content.empty()) content = ofProject(node);
        if (content.empty()) content = emptyPicture(picture.width, picture.height);
        drop(node, {"src", "srcset", "sizes", "loading"});
        page_[node].attributes.push_back({"src", content});
    }

    [[nodiscard]] std::string embedded(const std::string& address) const {
        const std::filesystem::path beside = saved_.file.parent_path();
        const markup::PictureFile file = markup::pictureFile(address, saved_.file, beside);
        return file.isThere ? embedPicture(beside / file.name).address : std::string();
    }

    /// The project's file for a picture of the row, embedded.
    [[nodiscard]] std::string ofProject(NodeId node) const {
        const std::string* mark = page_[node].find("data-tenter-part");
        for (std::size_t c = 0; mark != nullptr && c < project_.row().cards.size(); ++c) {
            const std::vector<project::Part>& parts = project_.row().cards[c].parts;
            for (std::size_t p = 0; p < parts.size(); ++p) {
                const auto* picture = std::get_if<project::PicturePart>(&parts[p]);
                if (picture != nullptr && *mark == std::to_string(c) + "." + std::to_string(p))
                    return embedPicture(folder_ / std::filesystem::path(picture->file)).address;
            }
        }
        return {};
    }

    Tree& page_;
    const SavedPage& saved_;
    const project::Project& project_;
    const std::filesystem::path& folder_;
};

/// CSS without text that would end the style element. HTML § 13.1.2.6; CSS Syntax 3 § 4.3.7: `\/` means `/`.
std::string withoutEndTags(std::string css) {
    for (std::size_t at = css.find("</"); at != std::string::npos; at = css.find("</", at + 2))
        css.insert(at + 1, "\\");
    return css;
}

void fillHead(Tree& page, const std::vector<markup::PageSheet>& sheets, const std::string& css) {
    const NodeId head = page[0].firstChild;
    page.addElement(head, "meta", Space::Html, {{"charset", "utf-8"}});
    page.addElement(
        head, "meta", Space::Html,
        {{"http-equiv", "Content-Security-Policy"},
         {"content", "default-src 'none'; style-src 'unsafe-inline'; img-src data:; font-src data:"}});
    page.addElement(head, "meta", Space::Html,
                    {{"name", "viewport"}, {"content", "width=device-width, initial-scale=1"}});
    page.addText(page.addElement(head, "title", Space::Html, {}),
                 "Saved page with the stylesheet of the row");
    for (const markup::PageSheet& sheet : sheets) {
        if (sheet.css.empty()) continue;
        const bool onlyMedia = sheet.layers.empty() && sheet.conditions.size() == 1 &&
                               sheet.conditions.front().first == css::ConditionKind::Media;
        std::vector<markup::Attribute> attributes;
        if (onlyMedia) attributes.push_back({"media", sheet.conditions.front().second});
        page.addText(page.addElement(head, "style", Space::Html, std::move(attributes)),
                     withoutEndTags(onlyMedia ? sheet.css : sheet.whole()));
    }
    page.addText(page.addElement(head, "style", Space::Html, {}), withoutEndTags(css));
}

}  // namespace

std::string savedPageWithStylesheet(const project::Project& project, std::size_t variant,
                                    const std::filesystem::path& folder, const SavedPage& saved,
                                    text::ParagraphStore& store, project::Problems& problems) {
    if (variant >= project.row().variants.size()) return {};
    const PageFonts fonts = pageFonts(project, variant, store);
    StylesheetOptions options;
    options.variants = {variant};
    options.unit = project.unit;
    const std::optional<std::string> sheet = givenStylesheet(fonts.project, options, problems);
    if (!sheet) return {};
    std::string css;
    for (const FaceRule& face : fonts.faces)
        css += face.css() + "\n";
    css += *sheet;

    const std::string file = saved.file.string();
    const markup::Characters characters = markup::charactersOf(saved.bytes, file, problems);
    const std::optional<Tree> tree = markup::parse(characters.utf8, file, problems);
    if (!tree) return {};
    std::vector<std::string> ignored;  // missing sheets, which the import has reported
    const std::vector<markup::PageSheet> sheets = markup::sheetsOf(*tree, saved.file, ignored);
    Tree page = markup::cleaned(*tree);
    std::size_t has = 0;
    if (markup::classElementOf(page, project, has) == markup::noNode) {
        project::Problems known;  // the same problems as those of the stylesheet
        const std::optional<markup::GivenRow> given = markup::givenRow(project, known);
        if (!given || !addClass(page, project, *given)) {
            problems.push_back({file, "", "No element of the page has the class of a variant.",
                                "Add the class " + project.row().variants[variant].className +
                                    " to the row in the CMS, and save the page again."});
            return {};
        }
    }
    const std::optional<markup::GivenRow> row = markup::givenRowIn(std::move(page), project, problems);
    if (!row) return {};
    Tree marked = markedPage(project, variant, *row, problems);
    PictureEmbedder(marked, saved, project, folder).embed();
    fillHead(marked, sheets, css);
    return "<!doctype html>\n" + markup::printed(marked) + "\n";
}

}  // namespace tenter::emit
