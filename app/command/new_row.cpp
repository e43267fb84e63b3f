#include "start/new_row.h"

#include <algorithm>
#include <iostream>
#include <iterator>
#include <memory>

#include "help.h"
#include "opened.h"
#include "outcome.h"
#include "pictures/source.h"
#include "project/file.h"
#include "project/rules.h"
#include "project/utf8.h"
#include "project/wording.h"
#include "start/looks.h"
#include "start/page_project.h"
#include "verbs.h"

namespace tenter::command {

namespace {

struct NewArguments : Arguments {
    std::string text;
    int columns = 3;
    std::string look;
    std::string language;
    std::string direction;
    std::string format;
    std::string name;
    std::vector<std::string> pictures;
    std::string page;
    bool markdown = false;
};

std::string lookHelp() {
    std::string help = "Design of the row. ";
    for (const start::Look& look : start::looks())
        help += look.name + ": " + look.description + ". ";
    return help + "Default: " + start::looks().front().name + ".";
}

std::vector<std::string> lookNames() {
    std::vector<std::string> names;
    for (const start::Look& look : start::looks())
        names.push_back(look.name);
    return names;
}

/// Refuses a word that is not one of `known`. True if it is one, or empty.
bool isKnown(const char* option, const std::string& word, const std::vector<std::string>& known) {
    if (word.empty() || std::ranges::find(known, word) != known.end()) return true;
    refuse(option, "The value must be " + project::either(known) + "; it is " + project::inQuotes(word) + ".",
           "");
    return false;
}

/// The text of the arguments; empty if it cannot be read; a message has been printed.
std::optional<std::string> givenText(const std::string& file) {
    if (file.empty()) return std::string();
    if (file == "-" && currentRequest() != nullptr) {
        refuse("text", "A request has no standard input.", "Name a file.");
        return std::nullopt;
    }
    if (file == "-") return std::string{std::istreambuf_iterator<char>(std::cin), {}};
    std::optional<std::string> text = fileText(file);
    if (!text) refuse(file, "The text cannot be read.", "Check its name, its folder and its permissions.");
    return text;
}

/// The name of a file as a project in the folder of `out` has it; empty `out`: in this folder.
std::string fromProject(const std::string& file, const std::string& out) {
    const auto folder = std::filesystem::absolute(out).parent_path();
    return std::filesystem::absolute(file)
        .lexically_proximate(out.empty() ? std::filesystem::current_path() : folder)
        .generic_string();
}

void printNotes(const std::vector<std::string>& notes) {
    for (const std::string& note : notes)
        printNote(project::visible(note));
}

/// Prints a project with the row of an HTML page: `adopt` without a project.
int printRowOfPage(const NewArguments& arguments) {
    const std::optional<std::string> bytes = fileText(arguments.page);
    if (!bytes)
        return refuse(arguments.page, "The page cannot be read.",
                      "Check its name, its folder and its permissions.");
    markup::PageToAdopt page;
    page.bytes = *bytes;
    page.file = arguments.page;
    page.pictureSize = pictures::sizeOfFile;
    page.projectFolder = std::filesystem::absolute(arguments.out.empty() ? "x" : arguments.out).parent_path();
    text::Fonts fonts;
    text::ParagraphStore store(fonts);
    project::Problems problems;
    std::optional<markup::Adopted> adopted = start::newProjectFrom(page, store, problems);
    printProblems(problems);
    if (!adopted) return wrongInput;
    if (!arguments.name.empty()) adopted->project.name = arguments.name;
    printNotes(adopted->report);
    return deliver(arguments, project::write(adopted->project));
}

int runNew(const NewArguments& arguments) {
    if (!isKnown("--look", arguments.look, lookNames()) ||
        !isKnown("--format", arguments.format, start::textFormatNames()) ||
        !isKnown("--direction", arguments.direction, {"ltr", "rtl"}))
        return wrongInput;
    if (!arguments.language.empty() && !project::isLanguage(arguments.language))
        return refuse("--language",
                      "The value must be a language tag, such as en or pt-BR; it is " +
                          project::inQuotes(arguments.language) + ".",
                      "");
    if (!arguments.page.empty()) return printRowOfPage(arguments);
    const std::optional<std::string> text = givenText(arguments.text);
    if (!text) return wrongInput;
    start::NewRow row;
    row.columns = arguments.columns;
    row.look = arguments.look;
    row.language = arguments.language;
    row.name = arguments.name;
    if (!arguments.direction.empty()) row.rightToLeft = arguments.direction == "rtl";
    row.text = start::readPasted(*text, start::textFormatOf(arguments.format));
    if (arguments.markdown) {
        printNotes(row.text.notes);
        return deliver(arguments, start::markdownOf(row.text));
    }
    for (const std::string& file : arguments.pictures) {
        if (!fileText(file))
            return refuse(file, "The picture cannot be read.",
                          "Check its name, its folder and its permissions.");
        row.pictures.emplace_back().file = fromProject(file, arguments.out);
    }
    text::Fonts fonts;
    text::ParagraphStore store(fonts);
    const start::MadeRow made = start::newRow(row, store);
    printNotes(made.notes);
    return deliver(arguments, project::write(made.project));
}

}  // namespace

void addNew(CLI::App& app, Action& action) {
    auto arguments = std::make_shared<NewArguments>();
    CLI::App* verb =
        app.add_subcommand("new", "Print a new project: a row of cards with your text and a look");
    verb->add_option("TEXT", arguments->text,
                     "File with the text of the cards: plain lines, Markdown, HTML or a table; - reads "
                     "standard input. Default: example text.")
        ->type_name("FILE");
    verb->add_option("--columns", arguments->columns,
                     "Number of columns on wide screens, from 1 to " + std::to_string(start::mostNewColumns) +
                         ". Narrower screens get fewer. Default: 3.")
        ->type_name("COUNT")
        ->check(wholeNumberFrom(1, start::mostNewColumns));
    verb->add_option("--look", arguments->look, lookHelp())->type_name("LOOK");
    verb->add_option("--language", arguments->language,
                     "Language of the text, such as en or pt-BR. Default: the language of an HTML text, or "
                     "the main language of the script that most letters have.")
        ->type_name("TAG");
    verb->add_option("--direction", arguments->direction,
                     "Direction of the text: ltr or rtl. Default: that of the language.")
        ->type_name("DIRECTION");
    verb->add_option("--format", arguments->format,
                     "How to read TEXT: plain, markdown, html or table (tabs, commas, semicolons or bars "
                     "between cells; the first row can name the columns). Default: Tenter guesses it.")
        ->type_name("FORMAT");
    verb->add_option("--name", arguments->name,
                     "Name of the project. Default: the title of the text, or its first heading.")
        ->type_name("NAME");
    verb->add_option("--picture", arguments->pictures,
                     "Picture file of a card. Can be given once for each card, in the order of the cards. "
                     "Default: no pictures.")
        ->type_name("FILE")
        ->expected(1)
        ->take_all();
    verb->add_option(
            "--page", arguments->page,
            "HTML page with a row of cards to import, instead of TEXT: markup, name, class, columns, "
            "breakpoints, sizes, spacing and colours are those of the page. Default: no page.")
        ->type_name("FILE");
    verb->add_flag("--markdown", arguments->markdown,
                   "Print the cards as they were understood, as Markdown, instead of the project.");
    verb->add_option("--out", arguments->out,
                     "Write to this file instead of standard output. If writing fails, the old file stays "
                     "unchanged.")
        ->type_name("FILE");
    setHelpEnd(
        *verb,
        "In plain text, an empty line starts a card: its first line is the heading, a short last line is the "
        "button. In Markdown and HTML, each heading starts a card. In a table, each row is a card: heading, "
        "text, button, address. The sizes satisfy the wishes of a new project at every width. Standard error "
        "lists what to check.",
        {"new page.html --columns 3 --look lantern --out new.tenter.json",
         "new --columns 2 --look folio --language ar"},
        {exitDone(), exitWrongInput()});
    verb->callback([&action, arguments] { action = [arguments] { return runNew(*arguments); }; });
}

}  // namespace tenter::command
