// What manual pages and completions say about a program: its verbs, options and arguments.
#pragma once

#include <CLI/App.hpp>
#include <CLI/Config.hpp>
#include <CLI/Formatter.hpp>
#include <string>
#include <string_view>
#include <vector>

namespace tenter::describe {

/// An option, or an argument without a name.
struct Argument {
    std::vector<std::string>
        names;                ///< such as `-h` and `--help`; of an argument such as `PROJECT` only that
    std::string takes;        ///< what an option takes, such as `FILE`; empty: nothing
    std::string description;  ///< line feeds separate lines that stay apart
    bool isRequired = false;
    bool isRepeated = false;

    [[nodiscard]] bool isOption() const { return names.front().starts_with('-'); }
};

/// A section of help with a title, such as Examples: its lines without their indent.
struct Section {
    std::string title;
    std::vector<std::string> lines;
};

struct Program {
    std::vector<std::string> words;  ///< how it is called: `tenter-cli`, then the verb if there is one
    std::string summary;
    std::string notes;  ///< a paragraph; may be empty
    std::vector<Argument> arguments;
    std::vector<Section> sections;  ///< Examples, Exit codes, Terms
    std::vector<Program> verbs;

    /// `tenter-cli-check`, the name of its manual page.
    [[nodiscard]] std::string page() const;
};

/// A program as its parser defines it.
Program fromParser(const CLI::App& app);

/// A program as the text of its `--help` describes it: a summary, `Usage: NAME …`, entries of two columns,
/// sections with titles. Throws std::runtime_error if the text has another form.
Program fromHelp(std::string_view help);

/// The words that a description offers as values after a colon, such as `Severity: note, warning or error.`;
/// empty if it offers none. Explanations in parentheses do not matter.
std::vector<std::string> choicesIn(std::string_view description);

/// Text broken at line feeds.
std::vector<std::string> linesOf(std::string_view text);

}  // namespace tenter::describe
