#include "intake/own_project.h"

#include <algorithm>
#include <cmath>
#include <regex>
#include <set>

#include "css/longhands.h"
#include "emit/stylesheet.h"
#include "intake/own_page.h"
#include "intake/own_settings.h"
#include "intake/sheet_values.h"
#include "markup/copy.h"
#include "markup/encoding.h"
#include "markup/picture_file.h"
#include "markup/theme.h"
#include "markup/tree.h"
#include "project/cascade.h"
#include "project/titles.h"
#include "project/validate.h"
#include "project/wording.h"
#include "units/number.h"
#include "wording/say.h"

namespace tenter::intake {

using markup::NodeId;
using markup::Tree;

namespace {

/// The address of the last candidate of `srcset`, which Tenter writes by rising width: the picture that lacks
/// nothing the others have. Empty without candidates.
std::string widestCandidate(const markup::Node& image) {
    const std::string* const list = image.find("srcset");
    if (list == nullptr) return {};
    const std::size_t comma = list->rfind(", ");
    const std::string last = comma == std::string::npos ? *list : list->substr(comma + 2);
    return last.substr(0, last.find(' '));
}

/// A viewport width above all breakpoints, CSS px.
constexpr double widest = 100000;

/// Name and range of widths in the first comment of a stylesheet.
void readHead(std::string_view css, project::Project& project) {
    const std::string head(css.substr(0, 1000));
    static const std::regex form(
        R"(/\* (?:([^\n]*): )?[Rr]ow of cards with the class[^\n]*, for viewports from ([0-9.]+) to ([0-9.]+) px wide)");
    std::smatch found;
    if (!std::regex_search(head, found, form)) return;
    project.name = found[1];
    project.leastWidth = std::stod(found[2]);
    project.mostWidth = std::stod(found[3]);
}

/// Placeholder text for each role.
project::Card placeholderCard(const std::vector<std::string>& roles) {
    project::Card card;
    for (const std::string& role : roles) {
        project::TextPart part;
        part.role = role;
        part.copy = {
            {project::Run::Kind::Plain, wording::say("Text of this %1", {project::roleName(role)}), ""}};
        if (role == "button") part.link = "#";
        card.parts.emplace_back(std::move(part));
    }
    return card;
}

bool hasRem(const RowValues& values) {
    return std::ranges::any_of(values, [](const auto& element) {
        const auto size = element.second.find("font-size");
        return !element.first.empty() && element.first != "card" && size != element.second.end() &&
               size->second.find("rem") != std::string::npos;
    });
}

class Assembler {
public:
    Assembler(const OwnSheet& sheet, OwnProject& out) : sheet_(sheet), out_(out) {}

    /// Adds style and variants. The cards, the direction and the page must be there.
    void addSettings() {
        project::Project& project = out_.project;
        project.row().name = sheet_.rowName();
        project.unit = units::Unit::Px;
        for (const std::string& className : sheet_.classes())
            addVariant(className);
        // The style is that of the widest band of the first variant.
        const project::Settings defaults = project::resolve(project, project::Variant{}, 0);
        project.row().style = project::difference(defaults, read_.front().back());
        for (std::size_t v = 0; v < read_.size(); ++v) {
            project::Variant& variant = project.row().variants[v];
            const project::Settings under = project::resolve(project, project::Variant{}, 0);
            for (std::size_t band = 0; band < variant.bands.size(); ++band)
                variant.bands[band].set = project::difference(under, read_[v][band]);
        }
        std::ranges::sort(unread_);
        unread_.erase(std::unique(unread_.begin(), unread_.end()), unread_.end());
        for (const std::string& sentence : unread_)
            out_.report.push_back(project::warning(sentence));
    }

private:
    void addVariant(const std::string& className) {
        project::Project& project = out_.project;
        project::Variant variant;
        variant.className = className;
        std::vector<project::Settings> bands;
        std::vector<double> ends = sheet_.breakpoints(className);
        ends.push_back(widest);
        for (const double end : ends) {
            const RowValues values = sheet_.at(className, end);
            if (hasRem(values)) project.unit = units::Unit::Rem;
            const double rem = project.page.at(end).rootSize.resolve(units::usualReaderSize, end);
            bands.push_back(settingsOf(values, {sheet_.roles(), rem, project.rightToLeft}, unread_));
            project::Band band;
            if (end < widest) band.upTo = end;
            variant.bands.push_back(std::move(band));
        }
        read_.push_back(std::move(bands));
        project.row().variants.push_back(std::move(variant));
    }

    const OwnSheet& sheet_;
    OwnProject& out_;
    std::vector<std::vector<project::Settings>> read_;  ///< by variant and band
    std::vector<std::string> unread_;
};

/// Adds a sentence for each value of the sheet that the stylesheet of the project does not have.
void reportDifferences(const OwnSheet& sheet, OwnProject& out) {
    constexpr std::size_t most = 50;
    const project::Project& project = out.project;
    const std::optional<OwnSheet> again =
        OwnSheet::read(emit::stylesheet(project, {project::everyVariant(project), project.unit, {}, {}}));
    if (!again) return;
    std::set<std::string> said;
    for (const std::string& className : sheet.classes()) {
        std::vector<double> ends = sheet.breakpoints(className);
        ends.push_back(widest);
        for (const double end : ends) {
            const RowValues before = sheet.at(className, end);
            const RowValues after = again->at(className, end);
            for (const auto& [element, values] : before) {
                // Pictures and links without any in the cards have no rules.
                const auto own = after.find(element);
                if (own == after.end()) continue;
                for (const auto& [property, value] : values) {
                    // Sizes and families are read on their own; fallback fonts are no setting.
                    if (property.starts_with("--") || property.starts_with("font-")) continue;
                    // These follow from the parts of cards, which a stylesheet alone does not have.
                    if (property == "container-type" || property == "position" ||
                        property.starts_with("grid-row"))
                        continue;
                    const auto found = own->second.find(property);
                    const std::string now = found == own->second.end() ? "not set" : found->second;
                    if (now == value || said.size() >= most) continue;
                    const std::string of = project::roleName(element.empty() ? "row" : element);
                    std::string says = project::warning(
                        found == own->second.end()
                            ? wording::say("The value “%1” of %2 of the %3 is not set in the project.",
                                           {value, property, of})
                            : wording::say("The value “%1” of %2 of the %3 is “%4” in the project.",
                                           {value, property, of, now}));
                    std::string key = element;
                    key.append(" ").append(property);
                    if (said.insert(std::move(key)).second) out.report.push_back(std::move(says));
                }
            }
        }
    }
}

std::nullopt_t refuse(project::Problems& problems, const OwnSource& source, const std::string& what) {
    problems.push_back({source.file.string(), "", what,
                        "Use tenter-cli adopt for pages and stylesheets that Tenter did not write."});
    return std::nullopt;
}

std::optional<OwnProject> checked(OwnProject out, const OwnSource& source, project::Problems& problems) {
    project::Problems found = project::validate(out.project);
    if (found.empty()) return out;
    for (project::Problem& problem : found)
        problem.file = source.file.string();
    problems.insert(problems.end(), found.begin(), found.end());
    return std::nullopt;
}

/// The number after `name:` in a style attribute, as its parts.
std::vector<std::string> styleParts(const markup::Node& node, const std::string& name) {
    const std::string* style = node.find("style");
    if (style == nullptr) return {};
    css::Problems ignored;
    for (const css::Declaration& declaration : css::readDeclarations(*style, ignored))
        if (declaration.property == name) return css::valueParts(declaration.value);
    return {};
}

double numberOf(const std::string& text, double usual) {
    try {
        return std::stod(text);
    } catch (const std::exception&) {
        return usual;
    }
}

class PageReader {
public:
    PageReader(const Tree& tree, const OwnSheet& sheet, const OwnSource& source, OwnProject& out)
        : tree_(tree), sheet_(sheet), source_(source), out_(out) {}

    /// The element with the class of a variant; `noNode` if there is none.
    [[nodiscard]] NodeId row() const {
        for (NodeId at = 0; at < tree_.size(); ++at)
            for (const std::string& name : sheet_.classes())
                if (!tree_[at].isText() && tree_[at].hasClass(name)) return at;
        return markup::noNode;
    }

    void readCards(NodeId row) {
        project::Project& project = out_.project;
        if (const std::string* language = tree_[row].find("lang")) project.language = *language;
        const std::string* direction = tree_[row].find("dir");
        project.rightToLeft = direction != nullptr && *direction == "rtl";
        for (const NodeId card : tree_.elementChildren(row)) {
            project::Card read;
            for (const NodeId part : tree_.elementChildren(card))
                addPart(part, read);
            project.row().cards.push_back(std::move(read));
        }
    }

private:
    void addPart(NodeId node, project::Card& card) {
        const markup::Node& element = tree_[node];
        if (element.isHtml("img")) return addPicture(node, card);
        for (const std::string& role : sheet_.roles()) {
            if (!element.hasClass(sheet_.rowName() + "-" + role)) continue;
            project::TextPart part = markup::textPartOf(tree_, node, role);
            if (role == "heading" && element.name.size() == 2 && element.name[0] == 'h')
                out_.project.row().headingLevel = element.name[1] - '0';
            card.parts.emplace_back(std::move(part));
            return;
        }
    }

    void addPicture(NodeId node, project::Card& card) {
        std::string address;
        project::PicturePart part = markup::picturePartOf(tree_, node, address);
        if (const std::string candidate = widestCandidate(tree_[node]); !candidate.empty())
            address = candidate;
        if (address.empty()) {
            out_.report.push_back(project::warning(wording::say(
                "The picture “%1” is embedded in the page and was left out. Add it under Pictures.",
                {part.alt})));
            return;
        }
        const markup::PictureFile file = markup::pictureFile(address, source_.file, source_.projectFolder);
        part.file = file.name;
        if (!file.isThere)
            out_.report.push_back(project::warning(
                wording::say("The picture file %1 was not found beside the page.", {file.name})));
        const std::vector<std::string> ratio = styleParts(tree_[node], "aspect-ratio");
        if (ratio.size() == 3) part.ratio = project::Ratio{numberOf(ratio[0], 1), numberOf(ratio[2], 1)};
        const std::vector<std::string> focus = styleParts(tree_[node], "object-position");
        if (focus.size() == 2) {
            part.focusX = numberOf(focus[0], 50) / 100;
            part.focusY = numberOf(focus[1], 50) / 100;
        }
        card.parts.emplace_back(std::move(part));
    }

    const Tree& tree_;
    const OwnSheet& sheet_;
    const OwnSource& source_;
    OwnProject& out_;
};

/// The name of the project in the hidden heading that page folders have, else the title of the page, which
/// names the variant too, else the name of its file or folder.
std::string nameOf(const Tree& tree, const std::filesystem::path& file) {
    const auto textOf = [&](const auto& isWanted) {
        for (NodeId at = 0; at < tree.size(); ++at)
            if (isWanted(tree[at])) return tree.textOf(at);
        return std::string();
    };
    std::string name =
        textOf([](const markup::Node& node) { return node.isHtml("h1") && node.hasClass("unseen"); });
    if (name.empty()) name = textOf([](const markup::Node& node) { return node.isHtml("title"); });
    return name.empty() ? markup::nameOfFile(file) : name;
}

}  // namespace

std::optional<OwnProject> projectOfSheet(const OwnSource& source, project::Problems& problems) {
    if (source.bytes.size() > css::longestSheet) {
        problems.push_back(
            {source.file.string(), "",
             "The stylesheet is larger than " + std::to_string(css::longestSheet >> 20U) + " MB.",
             "Check that it is the right file."});
        return std::nullopt;
    }
    const std::optional<OwnSheet> sheet = OwnSheet::read(source.bytes);
    if (!sheet) return refuse(problems, source, "This is no stylesheet for Tenter's own markup.");
    OwnProject out;
    readHead(source.bytes, out.project);
    if (out.project.name.empty()) out.project.name = sheet->rowName();
    out.project.page.rootSize = source.rootSize;
    out.project.row().cards = {placeholderCard(sheet->roles())};
    Assembler(*sheet, out).addSettings();
    reportDifferences(*sheet, out);
    out.report.push_back(
        wording::say("The stylesheet has no texts and pictures: the card has placeholder texts."));
    return checked(std::move(out), source, problems);
}

std::optional<OwnProject> projectOfPage(const OwnSource& source, project::Problems& problems) {
    const std::string file = source.file.string();
    const markup::Characters characters = markup::charactersOf(source.bytes, file, problems);
    const std::optional<Tree> tree = markup::parse(characters.utf8, file, problems);
    if (!tree) return std::nullopt;
    OwnProject out;
    const std::vector<markup::PageSheet> sheets = markup::sheetsOf(*tree, source.file, out.report);
    std::string css;
    for (const markup::PageSheet& sheet : sheets)
        css += sheet.whole() + "\n";
    const std::optional<OwnSheet> sheet = OwnSheet::read(css);
    if (!sheet) return refuse(problems, source, "The page has no stylesheet for Tenter's own markup.");
    PageReader reader(*tree, *sheet, source, out);
    const NodeId row = reader.row();
    if (row == markup::noNode) return refuse(problems, source, "The page has no row in Tenter's own markup.");
    reader.readCards(row);
    for (const markup::PageSheet& one : sheets)
        readHead(one.css, out.project);
    if (out.project.name.empty()) out.project.name = nameOf(*tree, source.file);
    std::vector<std::string> around;
    if (const NodeId parent = (*tree)[row].parent; parent != markup::noNode)
        for (const std::string_view name : (*tree)[parent].classes())
            around.emplace_back(name);
    out.project.page = ownPage(css::readSheet(css), around);
    Assembler(*sheet, out).addSettings();
    reportDifferences(*sheet, out);
    return checked(std::move(out), source, problems);
}

std::vector<std::string> whyNotOwn(const project::Problems& problems) {
    std::vector<std::string> out;
    for (const project::Problem& problem : problems) {
        // Only values have a place in a project.
        if (!problem.place.starts_with('/')) continue;
        out.push_back(project::warning(wording::say(
            "This has Tenter’s own markup, but is read like a page of another author: %1", {problem.what})));
    }
    return out;
}

}  // namespace tenter::intake
