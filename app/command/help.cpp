#include "help.h"

#include <charconv>
#include <cmath>
#include <optional>

#include "units/number.h"

namespace tenter::command {

namespace {

constexpr std::size_t leftColumn = 26;
constexpr std::size_t lineWidth = 96;

std::size_t characters(std::string_view text) {
    std::size_t count = 0;
    for (const char c : text)
        if ((static_cast<unsigned char>(c) & 0xC0U) != 0x80U) ++count;
    return count;
}

std::optional<double> numberIn(const std::string& text) {
    double value = 0;
    const char* const end = text.data() + text.size();
    const auto [rest, error] = std::from_chars(text.data(), end, value);
    if (error != std::errc() || rest != end || !std::isfinite(value)) return std::nullopt;
    return value;
}

CLI::Validator numberCheck(double least, double most, bool whole) {
    const std::string must = std::string("The value must be a ") + (whole ? "whole number" : "number") +
                             " from " + units::number(least) + " to " + units::number(most);
    // Without a description of its own: the option's says the range already.
    return {[=](std::string& text) {
                const std::optional<double> value = numberIn(text);
                const bool fits =
                    value && *value >= least && *value <= most && (!whole || *value == std::floor(*value));
                return fits ? std::string() : must + "; it is \"" + text + "\".";
            },
            ""};
}

/// Adds a line, broken so that none has more than `columns` characters. Two or more spaces end a term: the
/// lines after the first are indented to its explanation.
void addWrapped(std::string& out, std::string_view line, std::size_t columns) {
    std::size_t used = 0;
    std::size_t indent = 0;
    while (!line.empty()) {
        const std::size_t gap = std::min(line.find_first_not_of(' '), line.size());
        const std::size_t end = std::min(line.find(' ', gap), line.size());
        const std::string_view word = line.substr(gap, end - gap);
        line.remove_prefix(end);
        if (gap > 1 && used > 0) indent = used + gap;
        if (used > indent && used + gap + characters(word) > columns) {
            out += '\n' + std::string(indent, ' ');
            used = indent;
        } else {
            out.append(gap, ' ');
            used += gap;
        }
        out += word;
        used += characters(word);
    }
}

}  // namespace

ExitCode exitDone() {
    return {0, "Done."};
}

ExitCode exitWrongInput() {
    return {2, "The input or an argument is wrong. Standard error says where and how to fix it."};
}

void setHelpEnd(CLI::App& verb, std::string_view notes, std::initializer_list<std::string_view> examples,
                std::initializer_list<ExitCode> exitCodes) {
    std::string end;
    if (!notes.empty()) end += wrapped(notes, lineWidth) + "\n\n";
    end += "Examples:\n";
    for (const std::string_view example : examples)
        end += "  tenter-cli " + std::string(example) + "\n";
    end += "\nExit codes:";
    for (const ExitCode& exit : exitCodes)
        end += "\n  " + std::to_string(exit.code) + "  " + exit.meaning;
    verb.footer(end);
}

std::string mainHelpEnd() {
    return "Terms:\n"
           "  band        a range of viewport widths between two breakpoints, with its own columns,\n"
           "              spacing and sizes\n"
           "  variant     the same cards with another column count, its own class and its own sizes\n"
           "  ramp        a font size that changes in a straight line between two widths and is\n"
           "              constant outside them\n"
           "  wrap point  a viewport width at which the line count of a text changes\n"
           "  slack       the smallest change of the text width, as a share of that width, that\n"
           "              moves a line break; below 0.25\u00A0% another browser may break the line\n"
           "              differently\n"
           "  wish        a condition that solve satisfies, such as \"heading in at most 2 lines\"\n"
           "\n"
           "Examples:\n"
           "  tenter-cli check row.tenter.json\n"
           "  tenter-cli stylesheet row.tenter.json --all-variants --out row.css\n"
           "\n"
           "Results go to standard output, messages to standard error.\n"
           "\"tenter-cli VERB --help\" describes the verb's arguments and exit codes.";
}

std::string wrapped(std::string_view text, std::size_t columns) {
    std::string out;
    while (true) {
        const std::size_t end = text.find('\n');
        addWrapped(out, text.substr(0, end), columns);
        if (end == std::string_view::npos) return out;
        out += '\n';
        text.remove_prefix(end + 1);
    }
}

HelpFormatter::HelpFormatter() {
    column_width(leftColumn);
    label("Positionals", "Arguments");
    label("SUBCOMMAND", "VERB");
}

std::string HelpFormatter::make_description(const CLI::App* app) const {
    return app->get_description() + "\n\n";
}

std::string HelpFormatter::make_option_opts(const CLI::Option* option) const {
    if (option->get_positional() || option->get_type_size() == 0) return "";
    return " " + option->get_type_name();
}

std::string HelpFormatter::make_option_desc(const CLI::Option* option) const {
    return wrapped(option->get_description(), lineWidth - leftColumn);
}

CLI::Validator numberFrom(double least, double most) {
    return numberCheck(least, most, false);
}

CLI::Validator wholeNumberFrom(int least, int most) {
    return numberCheck(least, most, true);
}

}  // namespace tenter::command
