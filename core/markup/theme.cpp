#include "markup/theme.h"

#include <algorithm>
#include <optional>
#include <set>

#include "css/ascii.h"
#include "css/cascade.h"
#include "markup/encoding.h"
#include "markup/matching.h"
#include "markup/picture_file.h"
#include "project/file_bytes.h"
#include "project/wording.h"
#include "wording/say.h"

namespace tenter::markup {

namespace {

// The size in bytes of the largest linked stylesheet that is read.

const char* wordFor(css::ConditionKind kind) {
    if (kind == css::ConditionKind::Media) return "@media ";
    return kind == css::ConditionKind::Supports ? "@supports " : "@container ";
}

// The name of a layer with those of its parents. A layer without a name gets one, so that its rules stay in
// one layer when they are printed one by one.
std::string layerName(const css::Sheet& sheet, std::size_t layer) {
    std::string name;
    for (std::optional<std::size_t> each = layer; each; each = sheet.layers[*each].parent) {
        std::string own = sheet.layers[*each].name;
        if (own.empty()) own = "unnamed-" + std::to_string(*each);
        if (!name.empty()) own.append(".").append(name);
        name = std::move(own);
    }
    return name;
}

// The at-rules around a rule, outermost first: `@media (min-width: 700px) {`.
std::vector<std::string> contextOf(const css::Sheet& sheet, const css::StyleRule& rule) {
    std::vector<std::string> context;
    if (rule.layer) context.push_back("@layer " + layerName(sheet, *rule.layer) + " {");
    for (const css::Condition* condition : sheet.conditionsOf(rule))
        context.push_back(wordFor(condition->kind) + condition->text + " {");
    return context;
}

std::string printedRule(const css::StyleRule& rule, const std::vector<std::string>& context) {
    std::string text;
    for (const std::string& opening : context)
        text += opening + " ";
    for (const char c : rule.selectorText)
        text += css::isNewline(c) ? ' ' : c;
    text += " {";
    for (const css::Declaration& declaration : rule.declarations) {
        text += " " + declaration.property + ": ";
        for (const char c : declaration.value)
            text += css::isNewline(c) ? ' ' : c;
        text += declaration.important ? " !important;" : ";";
    }
    text += " }";
    for (std::size_t i = 0; i < context.size(); ++i)
        text += " }";
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

/// Reads the sheets of a page and those that they import.
class SheetCollector {
public:
    SheetCollector(const std::filesystem::path& page, std::vector<std::string>& cautions)
        : page_(page), cautions_(cautions) {}

    std::vector<PageSheet> of(const Tree& page) {
        for (NodeId at = 0; at < page.size(); ++at) {
            const Node& node = page[at];
            const std::string media = valueOf(node, "media");
            PageSheet sheet;
            if (!isBlank(media)) sheet.conditions.emplace_back(css::ConditionKind::Media, media);
            if (node.isHtml("style")) {
                sheet.css = page.textOf(at);
                sheet.origin = page_.filename().string();
                const NodeId text = node.firstChild;
                if (text != noNode && page[text].line > 0) sheet.start = {page[text].line, page[text].column};
                add(std::move(sheet), page_, 0);
            } else if (isSheetLink(node)) {
                addFile(valueOf(node, "href"), page_, std::move(sheet), 0);
            }
        }
        return std::move(sheets_);
    }

private:
    static constexpr int deepest = 16;
    static constexpr std::size_t mostSheets = 200;

    void addFile(const std::string& address, const std::filesystem::path& from, PageSheet sheet, int depth) {
        if (++files_ > mostSheets) {
            if (files_ == mostSheets + 1)
                cautions_.push_back(
                    wording::say("The page has more than %1 stylesheets. The others are not read. Give the "
                                 "CSS of the theme.",
                                 {std::to_string(mostSheets)}));
            return;
        }
        const PictureFile found = pictureFile(address, from, from.parent_path());
        const std::filesystem::path file = from.parent_path() / found.name;
        const std::optional<std::string> bytes =
            found.isThere ? project::fileBytes(file, css::longestSheet) : std::nullopt;
        if (!bytes) {
            // The sheet stays as an empty one: a saved page keeps the number of its sheets.
            cautions_.push_back(
                wording::say("The stylesheet %1 is not saved with the page, so its rules for the row are not "
                             "known. Save the page with its files, or give the CSS of the theme.",
                             {project::inQuotes(address)}));
            return;
        }
        project::Problems ignored;
        sheet.css = charactersOf(*bytes, file.string(), ignored).utf8;
        sheet.name = sheet.origin = file.filename().string();
        add(std::move(sheet), file, depth);
    }

    // Imported rules come before those of the sheet. CSS Cascade 5 § 2.
    void add(PageSheet sheet, const std::filesystem::path& file, int depth) {
        if (sheet.css.size() > css::longestSheet - length_) {
            cautions_.push_back(wording::say(
                "The stylesheets of the page are together larger than %1 MB, so not all rules for the row "
                "are known. Give the CSS of the theme alone.",
                {std::to_string(css::longestSheet >> 20U)}));
            sheet.css.clear();
        }
        length_ += sheet.css.size();
        std::string_view before;
        const std::vector<css::Import> imports = css::importsOf(sheet.css, before);
        if (!imports.empty() && depth < deepest && files_ <= mostSheets) {
            // The layers that the sheet names before its imports are weaker than theirs.
            PageSheet names = sheet;
            names.css = before;
            sheets_.push_back(std::move(names));
            for (const css::Import& import : imports) {
                if (files_ > mostSheets) break;
                PageSheet inner;
                inner.name = sheet.name;
                inner.conditions = sheet.conditions;
                inner.layers = sheet.layers;
                if (!isBlank(import.media))
                    inner.conditions.emplace_back(css::ConditionKind::Media, import.media);
                if (!import.supports.empty())
                    inner.conditions.emplace_back(css::ConditionKind::Supports, asCondition(import.supports));
                if (import.layer) inner.layers.push_back(*import.layer);
                addFile(import.address, file, std::move(inner), depth + 1);
            }
        }
        sheets_.push_back(std::move(sheet));
    }

    // `supports(display: grid)` of an import is `(display: grid)` of `@supports`.
    static std::string asCondition(const std::string& supports) {
        const bool isDeclaration = supports.find(':') != std::string::npos && supports.front() != '(';
        return isDeclaration ? "(" + supports + ")" : supports;
    }

    const std::filesystem::path& page_;
    std::vector<std::string>& cautions_;
    std::vector<PageSheet> sheets_;
    std::size_t length_ = 0;  // of their CSS, in bytes
    std::size_t files_ = 0;   // linked and imported
};

/// The places of rules in their files, for rules in the order of their sources: each text is read once.
class RulePlaces {
public:
    css::Place of(const PageSheet& sheet, const css::StyleRule& rule) {
        if (&sheet != sheet_ || rule.offset < offset_) {
            sheet_ = &sheet;
            offset_ = 0;
            place_ = sheet.start;
        }
        for (; offset_ < std::min(rule.offset, sheet.css.size()); ++offset_) {
            const char c = sheet.css[offset_];
            const bool isSecond = c == '\n' && offset_ > 0 && sheet.css[offset_ - 1] == '\r';
            if (isSecond) continue;
            if (css::isNewline(c)) {
                ++place_.line;
                place_.column = 1;
            } else if ((static_cast<unsigned char>(c) & 0xC0U) != 0x80U) {
                ++place_.column;
            }
        }
        return place_;
    }

private:
    const PageSheet* sheet_ = nullptr;
    std::size_t offset_ = 0;
    css::Place place_;
};

css::Sheet sheetFrom(const std::vector<PageSheet>& sheets) {
    std::vector<css::SheetSource> sources;
    sources.reserve(sheets.size());
    for (const PageSheet& sheet : sheets)
        sources.push_back({sheet.css, sheet.conditions, sheet.layers});
    return css::readSheets(sources);
}

}  // namespace

std::string PageSheet::whole() const {
    std::string text;
    std::size_t open = 0;
    for (const auto& [kind, condition] : conditions) {
        text += wordFor(kind) + condition + " {\n";
        ++open;
    }
    for (const std::string& layer : layers) {
        text += "@layer " + layer + (layer.empty() ? "{\n" : " {\n");
        ++open;
    }
    text += css;
    if (open > 0) text += '\n';
    for (; open > 0; --open)
        text += "}";
    return text;
}

std::vector<PageSheet> sheetsOf(const Tree& page, const std::filesystem::path& file,
                                std::vector<std::string>& cautions) {
    return SheetCollector(file, cautions).of(page);
}

PageStyles::PageStyles(std::vector<PageSheet> sheets)
    : sheets_(std::move(sheets)), sheet_(sheetFrom(sheets_)) {}

std::vector<SheetPlace> PageStyles::places() const {
    std::vector<SheetPlace> places;
    places.reserve(sheets_.size());
    for (const PageSheet& sheet : sheets_)
        places.push_back({sheet.origin, sheet.start.line});
    return places;
}

std::string PageStyles::affecting(const Tree& page, NodeId row) const {
    const TreeElements elements(page);
    const css::Sheet none;
    const css::StyleRules rules(elements, none, sheet_);
    std::set<std::size_t> affecting;
    const auto add = [&](NodeId node) {
        if (!page[node].isText()) affecting.merge(rules.pageRulesFor(node, dynamicPseudoClasses));
    };
    for (NodeId at = page[row].parent; at != noNode; at = page[at].parent)
        add(at);
    for (NodeId at = row; at != noNode; at = page.following(at, row))
        add(at);
    std::string text;
    RulePlaces places;
    bool layered = false;
    for (const std::size_t index : affecting) {
        const css::StyleRule& rule = sheet_.rules[index];
        if (rule.declarations.empty()) continue;
        layered = layered || rule.layer.has_value();
        text += printedRule(rule, contextOf(sheet_, rule));
        const PageSheet& sheet = sheets_[rule.source];
        const css::Place place = places.of(sheet, rule);
        text.append(" /* ").append(sheet.origin).append(":").append(std::to_string(place.line));
        text.append(":").append(std::to_string(place.column)).append(" */\n");
    }
    std::string start;
    // The order of layers is that in which they are named first, so all are named, weakest first.
    if (layered) {
        start = "@layer ";
        for (std::size_t layer = 0; layer < sheet_.layers.size(); ++layer)
            start += (layer > 0 ? ", " : "") + layerName(sheet_, layer);
        start += ";\n";
    }
    if (!text.empty())
        for (const css::RegisteredProperty& property : sheet_.properties)
            if (text.find(property.name) != std::string::npos)
                start += "@property " + property.name +
                         " { syntax: \"*\"; inherits: " + (property.inherits ? "true" : "false") +
                         (property.initialValue ? "; initial-value: " + *property.initialValue : "") +
                         "; }\n";
    return start + text;
}

std::string_view originOfRule(std::string_view theme, std::size_t line) {
    std::size_t begin = 0;
    for (std::size_t i = 1; i < line; ++i) {
        const std::size_t end = theme.find('\n', begin);
        if (end == std::string_view::npos) return {};
        begin = end + 1;
    }
    const std::string_view text = theme.substr(begin, theme.find('\n', begin) - begin);
    constexpr std::string_view opening = "} /* ";
    constexpr std::string_view closing = " */";
    const std::size_t at = text.rfind(opening);
    if (at == std::string_view::npos || !text.ends_with(closing)) return {};
    const std::size_t start = at + opening.size();
    return text.substr(start, text.size() - closing.size() - start);
}

std::string placeInWords(std::string_view origin) {
    if (!origin.starts_with(':')) return std::string(origin);
    const std::size_t colon = origin.find(':', 1);
    const std::string line(origin.substr(1, colon - 1));
    if (colon == std::string_view::npos) return wording::say("line %1 of the pasted text", {line});
    return wording::say("line %1, column %2 of the pasted text", {line, origin.substr(colon + 1)});
}

std::string withPlacesInWords(std::string_view theme) {
    std::string out;
    for (std::size_t at = 0; at < theme.size();) {
        const std::size_t end = std::min(theme.find('\n', at), theme.size());
        const std::string_view line = theme.substr(at, end - at);
        const std::string_view origin = originOfRule(line, 1);
        if (origin.starts_with(':')) {
            out.append(line.substr(0, static_cast<std::size_t>(origin.data() - line.data())));
            out.append(placeInWords(origin)).append(" */");
        } else {
            out.append(line);
        }
        if (end < theme.size()) out += '\n';
        at = end + 1;
    }
    return out;
}

}  // namespace tenter::markup
