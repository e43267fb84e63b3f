#include "markup/theme.h"

#include <algorithm>
#include <fstream>
#include <iterator>

#include "css/ascii.h"
#include "css/match.h"
#include "css/rules.h"
#include "markup/encoding.h"
#include "markup/matching.h"
#include "markup/picture_file.h"
#include "project/wording.h"

namespace tenter::markup {

namespace {

// The size in bytes of the largest linked stylesheet that is read.
constexpr std::uintmax_t largestSheet = 20U << 20U;

bool affects(const css::StyleRule& rule, const Tree& kept) {
    const TreeElements elements(kept);
    for (NodeId at = 0; at < kept.size(); ++at)
        if (!kept[at].isText() && css::matches(rule.selectors, elements, at, dynamicPseudoClasses))
            return true;
    return false;
}

// The at-rules around a rule, outermost first: `@media (min-width: 700px) {`.
std::vector<std::string> contextOf(const css::Sheet& sheet, const css::StyleRule& rule) {
    std::vector<std::string> context;
    if (rule.layer) {
        std::string name;
        for (auto layer = rule.layer; layer; layer = sheet.layers[*layer].parent) {
            const std::string& own = sheet.layers[*layer].name;
            if (!own.empty()) name.insert(0, name.empty() ? own : own + ".");
        }
        context.push_back(name.empty() ? "@layer {" : "@layer " + name + " {");
    }
    for (const css::Condition* condition : sheet.conditionsOf(rule)) {
        const char* word = condition->kind == css::ConditionKind::Media      ? "@media "
                           : condition->kind == css::ConditionKind::Supports ? "@supports "
                                                                             : "@container ";
        context.push_back(word + condition->text + " {");
    }
    return context;
}

std::string printedRule(const css::StyleRule& rule, const std::vector<std::string>& context) {
    std::string text;
    for (const std::string& opening : context)
        text += opening + " ";
    text += rule.selectorText + " {";
    for (const css::Declaration& declaration : rule.declarations)
        text += " " + declaration.property + ": " + declaration.value +
                (declaration.important ? " !important;" : ";");
    text += " }";
    for (std::size_t i = 0; i < context.size(); ++i)
        text += " }";
    return text + "\n";
}

std::string affecting(std::string_view source, const std::string& media, const Tree& kept) {
    const css::Sheet sheet = css::readSheet(source);
    std::string text;
    for (const css::StyleRule& rule : sheet.rules) {
        if (rule.declarations.empty() || !affects(rule, kept)) continue;
        std::vector<std::string> context = contextOf(sheet, rule);
        if (!isBlank(media)) context.insert(context.begin(), "@media " + media + " {");
        text += printedRule(rule, context);
    }
    return text;
}

std::string valueOf(const Node& node, std::string_view attribute) {
    const std::string* value = node.find(attribute);
    return value == nullptr ? std::string() : *value;
}

bool isSheetLink(const Node& node) {
    if (!node.isHtml("link")) return false;
    const std::string rel = css::lowered(valueOf(node, "rel"));
    return rel.find("stylesheet") != std::string::npos && rel.find("alternate") == std::string::npos;
}

std::string linkedSheet(const std::string& address, const std::filesystem::path& page,
                        std::vector<std::string>& cautions) {
    const PictureFile found = pictureFile(address, page, page.parent_path());
    const std::filesystem::path file = page.parent_path() / found.name;
    std::error_code error;
    if (!found.isThere || std::filesystem::file_size(file, error) > largestSheet || error) {
        cautions.push_back(
            "The stylesheet " + project::inQuotes(address) +
            " is not saved with the page, so its rules for the row are not known. Save the page "
            "with its files, or give the CSS of the theme.");
        return {};
    }
    std::ifstream stream(file, std::ios::binary);
    const std::string bytes{std::istreambuf_iterator<char>(stream), {}};
    project::Problems ignored;
    return charactersOf(bytes, file.string(), ignored).utf8;
}

}  // namespace

std::string rulesAffecting(std::string_view css, const Tree& kept) {
    return affecting(css, {}, kept);
}

std::vector<PageSheet> sheetsOf(const Tree& page, const std::filesystem::path& file,
                                std::vector<std::string>& cautions) {
    std::vector<PageSheet> sheets;
    for (NodeId at = 0; at < page.size(); ++at) {
        const Node& node = page[at];
        if (node.isHtml("style"))
            sheets.push_back({page.textOf(at), valueOf(node, "media")});
        else if (isSheetLink(node))
            sheets.push_back({linkedSheet(valueOf(node, "href"), file, cautions), valueOf(node, "media")});
    }
    return sheets;
}

std::string themeOf(const Tree& page, const Tree& kept, const std::filesystem::path& file,
                    std::vector<std::string>& cautions) {
    std::string theme;
    for (const PageSheet& sheet : sheetsOf(page, file, cautions))
        theme += affecting(sheet.css, sheet.media, kept);
    return theme;
}

}  // namespace tenter::markup
