#include "described_program.h"

#include <CLI/Option.hpp>
#include <algorithm>
#include <regex>
#include <stdexcept>

namespace tenter::describe {

namespace {

constexpr std::string_view spaces = " ";

std::string trimmed(std::string_view text) {
    const std::size_t from = std::min(text.find_first_not_of(spaces), text.size());
    const std::size_t to = text.find_last_not_of(spaces);
    return to == std::string_view::npos ? "" : std::string(text.substr(from, to + 1 - from));
}

bool isTitle(const std::string& line) {
    return line.size() > 1 && line[0] != ' ' && line.back() == ':';
}

std::size_t indentOf(const std::string& line) {
    return std::min(line.find_first_not_of(' '), line.size());
}

/// Adds the paragraphs and sections of `lines` to `program`.
void addEnd(Program& program, const std::vector<std::string>& lines) {
    Section* open = nullptr;
    for (const std::string& line : lines) {
        if (isTitle(line)) {
            open = &program.sections.emplace_back();
            open->title = line.substr(0, line.size() - 1);
        } else if (line.empty()) {
            open = nullptr;
        } else if (open != nullptr) {
            open->lines.push_back(line.substr(std::min<std::size_t>(2, line.size())));
        } else {
            program.notes += (program.notes.empty() ? "" : " ") + trimmed(line);
        }
    }
}

Argument fromOption(const CLI::Option& option) {
    Argument argument;
    for (const std::string& name : option.get_snames())
        argument.names.push_back("-" + name);
    for (const std::string& name : option.get_lnames())
        argument.names.push_back("--" + name);
    if (argument.names.empty()) argument.names.push_back(option.get_name());
    if (argument.isOption() && option.get_type_size() != 0) argument.takes = option.get_type_name();
    argument.description = option.get_description();
    argument.isRequired = option.get_required();
    argument.isRepeated = option.get_items_expected_max() > 1;
    return argument;
}

/// An entry of help: `  -h, --help          Print this help and exit.`
Argument fromEntry(const std::string& term) {
    Argument argument;
    std::string rest = term;
    std::ranges::replace(rest, ',', ' ');
    std::size_t at = 0;
    while (at < rest.size()) {
        const std::size_t from = rest.find_first_not_of(' ', at);
        if (from == std::string::npos) break;
        at = std::min(rest.find(' ', from), rest.size());
        const std::string word = rest.substr(from, at - from);
        const bool isValue = !argument.names.empty() && word[0] != '-';
        isValue ? argument.takes = word : argument.names.emplace_back(word);
    }
    return argument;
}

}  // namespace

std::string Program::page() const {
    std::string name;
    for (const std::string& word : words)
        name += (name.empty() ? "" : "-") + word;
    return name;
}

std::vector<std::string> linesOf(std::string_view text) {
    std::vector<std::string> lines;
    for (std::size_t at = 0; at <= text.size();) {
        const std::size_t end = std::min(text.find('\n', at), text.size());
        lines.emplace_back(text.substr(at, end - at));
        at = end + 1;
    }
    return lines;
}

Program fromParser(const CLI::App& app) {
    Program program;
    if (app.get_parent() != nullptr) program.words = {app.get_parent()->get_name()};
    program.words.push_back(app.get_name());
    program.summary = app.get_description();
    for (const CLI::Option* option : app.get_options())
        program.arguments.push_back(fromOption(*option));
    addEnd(program, linesOf(app.get_footer()));
    for (const CLI::App* verb : app.get_subcommands([](const CLI::App*) { return true; }))
        program.verbs.push_back(fromParser(*verb));
    return program;
}

Program fromHelp(std::string_view help) {
    std::vector<std::string> lines = linesOf(help);
    const std::string usage = "Usage: ";
    if (lines.size() < 4 || !lines[2].starts_with(usage))
        throw std::runtime_error("this is no help of a program");
    Program program;
    program.summary = lines[0];
    program.words = {lines[2].substr(usage.size(), lines[2].find(' ', usage.size()) - usage.size())};
    // Entries come before the first section that has other lines.
    std::size_t at = 3;
    for (; at < lines.size() && !lines[at].starts_with("Examples:"); ++at) {
        const std::string& line = lines[at];
        if (line.empty() || isTitle(line)) continue;
        const std::string text = trimmed(line);
        if (indentOf(line) > 2) {
            if (program.arguments.empty())
                throw std::runtime_error("no entry comes before this line: " + line);
            std::string& description = program.arguments.back().description;
            description += (description.empty() ? "" : " ") + text;
            continue;
        }
        const std::size_t gap = std::min(text.find("  "), text.size());
        program.arguments.push_back(fromEntry(text.substr(0, gap)));
        program.arguments.back().description = trimmed(text.substr(gap));
    }
    addEnd(program, {lines.begin() + static_cast<std::ptrdiff_t>(at), lines.end()});
    return program;
}

std::vector<std::string> choicesIn(std::string_view description) {
    static const std::regex explanation(R"( \([^)]*\))");
    static const std::regex list(R"(: ([a-z][a-z0-9-]*(?:, [a-z][a-z0-9-]*)* or [a-z][a-z0-9-]*)\.(?: |$))");
    static const std::regex word(R"([a-z][a-z0-9-]*)");
    const std::string plain = std::regex_replace(std::string(description), explanation, "");
    std::smatch found;
    if (!std::regex_search(plain, found, list)) return {};
    const std::string words = found[1];
    std::vector<std::string> choices;
    for (std::sregex_iterator at(words.begin(), words.end(), word); at != std::sregex_iterator(); ++at)
        if (at->str() != "or") choices.push_back(at->str());
    return choices;
}

}  // namespace tenter::describe
