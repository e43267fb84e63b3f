#include "start/sheet_project.h"

#include <algorithm>

#include "project/cascade.h"
#include "project/titles.h"
#include "project/utf8.h"
#include "project/validate.h"
#include "project/wording.h"
#include "start/new_row.h"
#include "start/sheet_page.h"
#include "units/ascii.h"
#include "units/number.h"
#include "wording/say.h"

namespace tenter::start {

namespace {

/// The columns of the widest layout.
std::size_t mostColumnsOf(const project::Project& project) {
    int most = 1;
    for (const project::Variant& variant : project.row().variants)
        for (std::size_t band = 0; band < variant.bands.size(); ++band)
            most = std::max(most, *project::resolve(project, variant, band).row.columns);
    return static_cast<std::size_t>(most);
}

/// A role at the start of a sentence, in the language in use.
std::string titled(const std::string& role) {
    std::string name = role == "container" ? wording::say("container") : project::roleName(role);
    if (!name.empty() && units::isLowerLetter(name.front()))
        name.front() = static_cast<char>(name.front() - 'a' + 'A');
    return name;
}

/// The first cards with placeholder texts instead of those of the markup, without pictures.
void setPlaceholders(project::Project& project) {
    std::vector<project::Card>& cards = project.row().cards;
    cards.resize(std::min(cards.size(), mostColumnsOf(project)));
    for (project::Card& card : cards) {
        std::erase_if(card.parts, [](const project::Part& part) {
            return std::holds_alternative<project::PicturePart>(part);
        });
        for (project::Part& part : card.parts) {
            auto& text = std::get<project::TextPart>(part);
            text.copy = {{project::Run::Kind::Plain,
                          wording::say("Text of this %1", {project::roleName(text.role)}), ""}};
        }
    }
}

}  // namespace

std::optional<Imported> importSheet(std::string_view css, const std::filesystem::path& file, double rootSize,
                                    text::ParagraphStore& store, project::Problems& problems) {
    const auto refuse = [&](std::string what) {
        problems.push_back(
            {file.string(), "", std::move(what),
             wording::say("Import the page instead, or its HTML together with the stylesheet.")});
        return std::nullopt;
    };
    if (css.size() > css::longestSheet)
        return refuse("The stylesheet is larger than " + std::to_string(css::longestSheet >> 20U) + " MB.");
    if (project::firstBadByte(css)) return refuse(wording::say("The file is not text in UTF-8."));
    std::string missing;
    const std::optional<SheetPage> made = pageForSheet(css, missing);
    if (!made) return refuse(missing);
    markup::PageToAdopt page;
    page.bytes = made->html;
    page.file = file;
    page.projectFolder = ".";
    page.choices = made->choices;
    page.theme = std::string(css);
    // Behind the text, so that the places of its rules stay. Any selector of the root is stronger.
    if (rootSize != 16) *page.theme += "\n:where(html) { font-size: " + units::number(rootSize) + "px }";
    page.themeName = file.filename().string();
    project::Problems ignored;
    std::optional<Imported> imported = importPage(page, store, ignored);
    if (!imported) return refuse(wording::say("The row of the stylesheet cannot be laid out."));
    project::Project& project = imported->project;
    const std::string name = file.empty() ? made->rowClass : file.stem().string();
    if (!name.empty()) project.name = name;
    project.row().given.reset();
    setPlaceholders(project);
    for (FoundElement& element : imported->found) {
        const auto of =
            std::ranges::find(made->found, element.role, &std::pair<std::string, std::string>::first);
        element.selector = of == made->found.end() ? std::string() : of->second;
        element.count = project.row().cards.size();
        if (element.role == "row") element.count = 1;
    }
    // What adopt reports is about the markup, which nobody has.
    imported->report.clear();
    for (const PageNote& note : imported->notes)
        imported->report.push_back(note.says);
    if (!made->countIsKnown)
        imported->report.push_back(project::warning(wording::say(
            "The columns are as many as the cards, and a stylesheet has no cards. The project has %1.",
            {std::to_string(mostColumnsOf(project))})));
    for (const auto& [role, selector] : made->found)
        imported->report.push_back(
            wording::say("%1: recognised by the rules for %2.", {titled(role), selector}));
    imported->report.push_back(
        wording::say("The stylesheet has no texts and pictures: the cards have placeholder texts."));
    const project::Problems refused = project::validate(project);
    if (refused.empty()) return imported;
    problems.insert(problems.end(), refused.begin(), refused.end());
    return std::nullopt;
}

}  // namespace tenter::start
