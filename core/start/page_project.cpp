#include "start/page_project.h"

#include <algorithm>

#include "markup/class_words.h"
#include "markup/encoding.h"
#include "markup/given.h"
#include "project/cascade.h"
#include "project/validate.h"
#include "solve/columns.h"
#include "start/new_row.h"
#include "start/page_style.h"

namespace tenter::start {

namespace {

using markup::NodeId;
using markup::Tree;

/// A class that no page has.
const char* const placeholderClass = "row-to-import";

project::Project emptyProject(const std::string& className) {
    project::Project project;
    project.name = "Imported row";
    project::Variant variant;
    variant.className = className;
    variant.bands.emplace_back();
    variant.bands.front().set.row.columns = 1;
    project.row().variants.push_back(std::move(variant));
    return project;
}

/// Text with white space collapsed, at most 60 bytes up to the end of a word.
std::string title(const std::string& text) {
    std::string out;
    for (const char c : text) {
        if (!markup::isSpace(c))
            out += c;
        else if (!out.empty() && out.back() != ' ')
            out += ' ';
    }
    if (out.size() > 60) out.resize(std::min(out.rfind(' ', 60), out.size()));
    while (!out.empty() && out.back() == ' ')
        out.pop_back();
    return out;
}

/// The title of the page, else its first heading before the row, else the name of its file.
std::string nameOfPage(const Tree& page, const std::filesystem::path& file) {
    for (const char* tag : {"title", "h1", "h2"})
        for (NodeId at = 0; at < page.size(); ++at)
            if (page[at].isHtml(tag))
                if (std::string text = title(page.textOf(at)); !text.empty()) return text;
    return file.stem().string();
}

/// The class of the row that the fewest other elements of the page have; empty if it has none that lasts.
std::string classOfRow(const Tree& page, const markup::Node& row) {
    std::string best;
    std::size_t fewest = 0;
    for (const std::string_view name : row.classes()) {
        if (name == placeholderClass || !markup::isStable(name)) continue;
        std::size_t count = 0;
        for (NodeId at = 0; at < page.size(); ++at)
            count += page[at].hasClass(name) ? 1 : 0;
        if (best.empty() || count < fewest) {
            best = name;
            fewest = count;
        }
    }
    return best;
}

int likelyColumns(std::size_t cards) {
    return cards <= 4 ? std::max(static_cast<int>(cards), 1) : cards % 4 == 0 ? 4 : 3;
}

}  // namespace

project::Project projectForPage(const markup::PageToAdopt& page, text::ParagraphStore& store) {
    project::Project project = emptyProject(placeholderClass);
    project::Problems ignored;
    const auto adopted = markup::adopt(project, page, ignored);
    const auto characters = markup::charactersOf(page.bytes, page.file.string(), ignored);
    const auto tree = markup::parse(characters.utf8, page.file.string(), ignored);
    const auto row = adopted ? markup::givenRow(adopted->project, ignored) : std::nullopt;
    if (!adopted || !tree || !row) return emptyProject("cards");

    if (std::string name = nameOfPage(*tree, page.file); !name.empty()) project.name = std::move(name);
    std::string className = classOfRow(*tree, row->tree[row->row]);
    project.row().name = className.empty() ? rowNameOf(project.name) : rowNameOf(className);
    if (className.empty()) className = project.row().name;
    const std::string theme = adopted->project.row().given->theme;
    project.row().style = pageStyle(*row, theme, project.mostWidth);
    const int stated = pageColumns(*row, theme, project.mostWidth);
    const int columns = stated > 0 ? stated : likelyColumns(adopted->project.row().cards.size());

    // Breakpoints follow from the cards and the container of the page.
    project::Project whole = adopted->project;
    whole.row().style = project.row().style;
    whole.row().given.reset();
    if (columns > 1) project.row().variants.front() = solve::withColumns(whole, 0, columns, className, store);
    project.row().variants.front().className = className;
    // What the theme states may be out of the range of a project.
    if (!project::validate(project).empty()) project.row().style = {};
    return project::validate(project).empty() ? project : emptyProject(className);
}

}  // namespace tenter::start
