// What the help of every verb has in common: its look, its two examples and its exit codes.
#pragma once

#include <CLI/App.hpp>
#include <CLI/Config.hpp>
#include <CLI/Formatter.hpp>
#include <initializer_list>
#include <string>
#include <string_view>

namespace tenter::command {

/// An exit code that a verb can give and what it means for that verb.
struct ExitCode {
    int code = 0;
    std::string meaning;
};

/// The two exit codes that every verb can give.
ExitCode exitDone();
ExitCode exitWrongInput();

/// Sets the end of a verb's help: `notes` (a paragraph; may be empty), two examples and the exit codes.
/// Examples are the arguments after `tenter-cli`. They must work in a folder with these files:
/// row.tenter.json, changed.tenter.json, imported.tenter.json, row.css, page.html, theme.css, visits.csv,
/// requests.jsonl, and site, a page folder; the tests run them there.
void setHelpEnd(CLI::App& verb, std::string_view notes, std::initializer_list<std::string_view> examples,
                std::initializer_list<ExitCode> exitCodes);

/// The end of the help of tenter-cli itself: where results go, the words that Tenter uses, two examples.
std::string mainHelpEnd();

/// Text broken into lines of at most `columns` characters (code points) at its spaces. Line feeds stay.
std::string wrapped(std::string_view text, std::size_t columns);

/// The look of help: options and what they take in the left column, wrapped descriptions in the right one.
class HelpFormatter : public CLI::Formatter {
public:
    HelpFormatter();
    std::string make_description(const CLI::App* app) const override;
    std::string make_option_opts(const CLI::Option* option) const override;
    std::string make_option_desc(const CLI::Option* option) const override;
};

/// A check for an option that takes a number from `least` to `most`, for CLI::Option::check.
CLI::Validator numberFrom(double least, double most);
/// The same for a whole number.
CLI::Validator wholeNumberFrom(int least, int most);

}  // namespace tenter::command
