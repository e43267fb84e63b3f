// Manual pages in mdoc, the semantic markup of mdoc(7).
#include <algorithm>
#include <cctype>

#include "writers.h"

namespace tenter::describe {

namespace {

/// Text in which no character has a meaning for roff.
std::string plain(std::string_view text) {
    std::string out;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text[i] == '\\') {
            out += "\\e";
        } else if (text[i] == '"') {
            out += "\\(dq";
        } else if (text.substr(i).starts_with("--")) {
            // Otherwise mandoc takes it for a dash.
            out += "\\-\\-";
            ++i;
        } else if (text.substr(i).starts_with("\u00A0")) {
            out += "\\~";
            ++i;
        } else {
            out += text[i];
        }
    }
    if (!out.empty() && (out[0] == '.' || out[0] == '\'')) out.insert(0, "\\&");
    return out;
}

/// One sentence in lines of at most 78 bytes. A line must not start with a character that has a meaning for
/// roff.
std::string sentence(std::string_view text) {
    std::string out;
    std::size_t used = 0;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find(' '), text.size());
        const std::string word = plain(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
        if (used > 0 && used + 1 + word.size() > 78) used = 0;
        if (!out.empty()) out += used == 0 ? '\n' : ' ';
        out += word;
        used += word.size() + 1;
    }
    return out;
}

/// Prose, each sentence on a line of its own: mdoc(7) sets the space between sentences.
std::string prose(std::string_view text) {
    std::string out;
    while (!text.empty()) {
        std::size_t end = 0;
        do {
            end = text.find_first_of(".?!:", end);
            end = end == std::string_view::npos ? text.size() : end + 1;
        } while (end < text.size() && (text[end] != ' ' || text[end - 1] == ':'));
        out += sentence(text.substr(0, end)) + "\n";
        text.remove_prefix(end);
        text.remove_prefix(std::min(text.find_first_not_of(' '), text.size()));
    }
    return out;
}

/// An item of a list with its explanation.
void addItem(std::string& out, const std::string& head, const std::string& text) {
    out += ".It " + head + "\n" + text;
}

/// A line of two columns, `ROLE.lines=2    at most 2 lines`, or one without them.
struct Columns {
    std::string term;
    std::string text;
};

Columns columnsOf(const std::string& line) {
    const std::size_t gap = line.find("  ");
    if (gap == std::string::npos || gap == 0) return {"", line};
    return {line.substr(0, gap), line.substr(line.find_first_not_of(' ', gap))};
}

/// The lines of a description. Runs of lines with two columns become a list.
std::string described(const std::string& description) {
    std::string out;
    bool isList = false;
    const auto end = [&] {
        if (isList) out += ".El\n.Pp\n";
        isList = false;
    };
    for (const std::string& line : linesOf(description)) {
        const Columns columns = columnsOf(line);
        if (columns.term.empty()) {
            end();
            out += prose(columns.text);
            continue;
        }
        if (!isList) out += ".Pp\n.Bl -tag -width Ds -compact\n";
        isList = true;
        addItem(out, "Li " + plain(columns.term), prose(columns.text));
    }
    const bool atList = isList;
    end();
    // A paragraph must not end with an empty one.
    if (atList) out.erase(out.size() - std::string(".Pp\n").size());
    return out;
}

/// `Fl h , Fl -help`, `Fl -out Ar FILE`, `Ar PROJECT ...`
std::string headOf(const Argument& argument) {
    if (!argument.isOption()) return "Ar " + argument.names[0] + (argument.isRepeated ? " ..." : "");
    std::string head;
    for (const std::string& name : argument.names)
        head += (head.empty() ? "Fl " : " , Fl ") + name.substr(1);
    return argument.takes.empty() ? head : head + " Ar " + argument.takes;
}

std::string argumentList(const Program& program, bool options) {
    std::string out;
    for (const Argument& argument : program.arguments)
        if (argument.isOption() == options) addItem(out, headOf(argument), described(argument.description));
    return out.empty() ? out : ".Bl -tag -width Ds\n" + out + ".El\n";
}

/// A section of entries of two columns, whose explanations continue on indented lines.
std::string entryList(const Section& section) {
    std::vector<Columns> entries;
    for (const std::string& line : section.lines) {
        if (line.starts_with(' ') && !entries.empty()) {
            entries.back().text += " " + line.substr(line.find_first_not_of(' '));
        } else {
            entries.push_back(columnsOf(line));
        }
    }
    std::string out = ".Bl -tag -width Ds\n";
    for (const Columns& entry : entries)
        addItem(out, plain(entry.term), prose(entry.text));
    return out + ".El\n";
}

std::string examples(const Section& section) {
    std::string out;
    for (const std::string& line : section.lines)
        out += ".Dl " + plain(line) + "\n";
    return out;
}

std::string synopsis(const Program& program) {
    std::string out = ".Nm " + program.words[0] + "\n";
    if (program.words.size() > 1) out += ".Cm " + program.words[1] + "\n";
    out += ".Op Ar OPTIONS\n";
    for (const Argument& argument : program.arguments) {
        if (argument.isOption()) continue;
        out += (argument.isRequired ? ".Ar " : ".Op Ar ") + argument.names[0] +
               (argument.isRepeated ? " ..." : "") + "\n";
    }
    return program.verbs.empty() ? out : out + ".Ar VERB\n";
}

std::string lowerFirst(std::string text) {
    const bool isWord = text.size() > 1 && std::islower(static_cast<unsigned char>(text[1])) != 0;
    if (isWord) text[0] = static_cast<char>(std::tolower(static_cast<unsigned char>(text[0])));
    return text;
}

}  // namespace

std::string manualPage(const Program& program, const std::string& date,
                       const std::vector<std::string>& seeAlso) {
    std::string title = program.page();
    std::ranges::transform(title, title.begin(), [](unsigned char c) { return std::toupper(c); });
    std::string out = ".\\\" Made from the options of the program.\n";
    out += ".Dd " + date + "\n.Dt " + title + " 1\n.Os\n";
    out += ".Sh NAME\n.Nm " + program.page() + "\n.Nd " + plain(lowerFirst(program.summary)) + "\n";
    out += ".Sh SYNOPSIS\n" + synopsis(program);
    out += ".Sh DESCRIPTION\n" + prose(program.summary + ".");
    if (!program.notes.empty()) out += ".Pp\n" + prose(program.notes);
    if (const std::string list = argumentList(program, false); !list.empty()) out += ".Ss Arguments\n" + list;
    out += ".Ss Options\n" + argumentList(program, true);
    if (!program.verbs.empty()) out += ".Ss Verbs\n.Bl -tag -width Ds\n";
    for (const Program& verb : program.verbs)
        addItem(out, "Xr " + verb.page() + " 1", prose(verb.summary + "."));
    if (!program.verbs.empty()) out += ".El\n";
    for (const Section& section : program.sections)
        if (section.title == "Terms") out += ".Ss Terms\n" + entryList(section);
    for (const Section& section : program.sections)
        if (section.title == "Exit codes") out += ".Sh EXIT STATUS\n" + entryList(section);
    for (const Section& section : program.sections)
        if (section.title == "Examples") out += ".Sh EXAMPLES\n" + examples(section);
    if (!seeAlso.empty()) {
        out += ".Sh SEE ALSO\n";
        for (std::size_t i = 0; i < seeAlso.size(); ++i)
            out += ".Xr " + seeAlso[i] + " 1" + (i + 1 < seeAlso.size() ? " ,\n" : "\n");
    }
    return out;
}

}  // namespace tenter::describe
