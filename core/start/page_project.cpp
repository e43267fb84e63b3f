#include "start/page_project.h"

#include <algorithm>

#include "markup/class_words.h"
#include "markup/given.h"
#include "markup/picture_file.h"
#include "project/cascade.h"
#include "project/file.h"
#include "project/validate.h"
#include "project/wording.h"
#include "solve/columns.h"
#include "start/new_row.h"
#include "start/page_look.h"
#include "wording/say.h"

namespace tenter::start {

namespace {

using markup::NodeId;
using markup::Tree;

/// A class that no page has.
const char* const placeholderClass = "row-to-import";

project::Project emptyProject(const std::string& className) {
    project::Project project;
    project.name = wording::say("Imported row");
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

/// The title of the page, else its first heading before the row, else the name of its file or folder.
std::string nameOfPage(const Tree& page, const std::filesystem::path& file) {
    for (const char* tag : {"title", "h1", "h2"})
        for (NodeId at = 0; at < page.size(); ++at)
            if (page[at].isHtml(tag))
                if (std::string text = title(page.textOf(at)); !text.empty()) return text;
    return markup::nameOfFile(file);
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

/// The layer and the path in it that a JSON pointer names; empty if it names no setting.
std::optional<std::pair<project::Settings*, std::string>> settingNamed(project::Project& project,
                                                                       const std::string& pointer) {
    const auto after = [&](const std::string& start) {
        return pointer.starts_with(start) ? std::optional(pointer.substr(start.size())) : std::nullopt;
    };
    if (const auto path = after("/style/")) return std::pair{&project.row().style, *path};
    std::vector<project::Band>& bands = project.row().variants.front().bands;
    for (std::size_t i = 0; i < bands.size(); ++i)
        if (const auto path = after("/variants/0/bands/" + std::to_string(i) + "/set/"))
            return std::pair{&bands[i].set, *path};
    return std::nullopt;
}

/// Unsets the settings that a project cannot have, each with a sentence. False if that is not enough.
bool isSoundWithout(PageProject& made) {
    constexpr int mostRounds = 200;
    for (int round = 0; round < mostRounds; ++round) {
        const project::Problems refused = project::validate(made.project);
        if (refused.empty()) return true;
        const auto named = settingNamed(made.project, refused.front().place);
        project::Problems ignored;
        if (!named || !project::setSetting(*named->first, named->second, nullptr, ignored)) return false;
        made.notes.push_back({project::warning(wording::say("%1 of the page is not in the project. %2",
                                                            {named->second, refused.front().what})),
                              std::nullopt});
    }
    return false;
}

}  // namespace

std::vector<std::string> PageProject::report() const {
    std::vector<std::string> sentences;
    sentences.reserve(notes.size());
    for (const PageNote& note : notes)
        sentences.push_back(note.says);
    return sentences;
}

PageProject projectForPage(const markup::PageToAdopt& given, text::ParagraphStore& store) {
    PageProject made{emptyProject(placeholderClass), {}, {}};
    project::Project& project = made.project;
    project::Problems ignored;
    markup::PageToAdopt page = given;
    page.tree = markup::treeOf(page, ignored);
    const auto adopted = page.tree ? markup::adopt(project, page, ignored) : std::nullopt;
    const auto row = adopted ? markup::givenRow(adopted->project, ignored) : std::nullopt;
    if (!row) return {emptyProject("cards"), {}, {}};
    const markup::Tree* const tree = page.tree.get();

    if (std::string name = nameOfPage(*tree, page.file); !name.empty()) project.name = std::move(name);
    std::string className = classOfRow(*tree, row->tree[row->row]);
    project.row().name = className.empty() ? rowNameOf(project.name) : rowNameOf(className);
    if (className.empty()) className = project.row().name;
    project::Variant& variant = project.row().variants.front();
    const std::string theme = adopted->project.row().given->theme;
    if (!theme.empty()) {
        PageLook look = pageLook(*row, theme, adopted->project.page, project.leastWidth, project.mostWidth,
                                 store.fonts());
        project.row().style = std::move(look.style);
        if (!look.bands.empty()) variant.bands = std::move(look.bands);
        made.notes = std::move(look.notes);
        made.found = std::move(look.found);
    } else if (const int columns = likelyColumns(adopted->project.row().cards.size()); columns > 1) {
        // Breakpoints follow from the cards.
        project::Project whole = adopted->project;
        whole.row().given.reset();
        variant = solve::withColumns(whole, 0, columns, className, store);
    }
    variant.className = className;
    if (isSoundWithout(made)) return made;
    PageProject usual{emptyProject(className), {}, std::move(made.found)};
    usual.project.name = project.name;
    usual.project.row().name = project.row().name;
    usual.notes.push_back(
        {project::warning(
             wording::say("The settings of the page were not imported, because a project cannot have them.")),
         std::nullopt});
    return usual;
}

std::optional<Imported> importPage(const markup::PageToAdopt& given, text::ParagraphStore& store,
                                   project::Problems& problems) {
    markup::PageToAdopt page = given;
    page.tree = markup::treeOf(page, problems);
    if (!page.tree) return std::nullopt;
    PageProject made = projectForPage(page, store);
    std::optional<markup::Adopted> adopted = markup::adopt(made.project, page, problems);
    if (!adopted) return std::nullopt;
    std::vector<std::string> report = withLook(std::move(adopted->report), made.report());
    return Imported{std::move(adopted->project), std::move(report), std::move(made.notes),
                    std::move(made.found)};
}

std::optional<markup::Adopted> newProjectFrom(const markup::PageToAdopt& given, text::ParagraphStore& store,
                                              project::Problems& problems) {
    markup::PageToAdopt page = given;
    page.tree = markup::treeOf(page, problems);
    if (!page.tree) return std::nullopt;
    const PageProject made = projectForPage(page, store);
    std::optional<markup::Adopted> adopted = markup::adopt(made.project, page, problems);
    if (adopted) adopted->report = withLook(std::move(adopted->report), made.report());
    return adopted;
}

std::vector<std::string> withLook(std::vector<std::string> report, const std::vector<std::string>& look) {
    const auto isFinding = [](const std::string& line) { return !project::isWarning(line); };
    report.insert(std::ranges::find_if(report, isFinding), look.begin(), look.end());
    return report;
}

}  // namespace tenter::start
