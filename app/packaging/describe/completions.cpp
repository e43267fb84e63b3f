// Completions for bash, zsh and fish. Each file works by itself, without functions of other packages.
#include <algorithm>
#include <cctype>

#include "writers.h"

namespace tenter::describe {

namespace {

bool endsWith(const std::string& text, std::string_view end) {
    return text.ends_with(end);
}

/// Text in single quotes for a POSIX shell or zsh.
std::string quoted(const std::string& text) {
    std::string out = "'";
    for (const char c : text)
        out += c == '\'' ? std::string("'\\''") : std::string(1, c);
    return out + "'";
}

/// Text in single quotes for fish, which escapes inside of them.
std::string fishQuoted(const std::string& text) {
    std::string out = "'";
    for (const char c : text) {
        if (c == '\'' || c == '\\') out += '\\';
        out += c;
    }
    return out + "'";
}

/// Descriptions in zsh's `_arguments`: brackets and colons have a meaning there.
std::string zshEscaped(const std::string& text) {
    std::string out;
    for (const char c : text) {
        if (c == '[' || c == ']' || c == ':' || c == '\\') out += '\\';
        out += c;
    }
    return out;
}

std::string joined(const std::vector<std::string>& words) {
    std::string out;
    for (const std::string& word : words)
        out += (out.empty() ? "" : " ") + word;
    return out;
}

std::string functionName(const Program& program) {
    std::string name = "_" + program.words[0];
    std::ranges::replace(name, '-', '_');
    return name;
}

std::string optionNames(const Program& program) {
    std::vector<std::string> names;
    for (const Argument& argument : program.arguments)
        if (argument.isOption()) names.insert(names.end(), argument.names.begin(), argument.names.end());
    return joined(names);
}

/// What bash completes a value by.
std::string bashValue(const Argument& argument) {
    if (const auto choices = choicesIn(argument.description); !choices.empty())
        return "words " + quoted(joined(choices));
    switch (kindOf(argument)) {
        case ValueKind::Project:
            return "files .tenter.json";
        case ValueKind::File:
            return "files ''";
        case ValueKind::Folder:
            return "folders";
        case ValueKind::Word:
            break;
    }
    return "return";
}

/// The `case` of one verb: by the option before the word, then by the word itself.
std::string bashCase(const Program& program, const std::string& indent) {
    std::string out = indent + "case $before in\n";
    for (const Argument& argument : program.arguments) {
        if (!argument.isOption() || argument.takes.empty()) continue;
        std::string names = joined(argument.names);
        std::ranges::replace(names, ' ', '|');
        out += indent + "    " + names + ") " + bashValue(argument) + "; return ;;\n";
    }
    out += indent + "esac\n";
    out += indent + "if [[ $word == -* ]]; then words " + quoted(optionNames(program)) + "; return; fi\n";
    for (const Argument& argument : program.arguments)
        if (!argument.isOption()) return out + indent + bashValue(argument) + "\n";
    return out;
}

std::string zshValue(const Argument& argument) {
    if (const auto choices = choicesIn(argument.description); !choices.empty())
        return "(" + joined(choices) + ")";
    switch (kindOf(argument)) {
        case ValueKind::Project:
            return "_files -g \"*.tenter.json\"";
        case ValueKind::File:
            return "_files";
        case ValueKind::Folder:
            return "_files -/";
        case ValueKind::Word:
            break;
    }
    return " ";
}

/// The specifications of `_arguments` for one program or verb.
std::string zshArguments(const Program& program, const std::string& indent) {
    std::string out;
    for (const Argument& argument : program.arguments) {
        const std::string about = zshEscaped(firstSentence(argument.description));
        if (!argument.isOption()) {
            const std::string many = argument.isRepeated ? "*" : "";
            out += " \\\n" + indent + quoted(many + ":" + argument.names[0] + ":" + zshValue(argument));
            continue;
        }
        for (const std::string& name : argument.names) {
            const std::string value =
                argument.takes.empty() ? "" : ":" + argument.takes + ":" + zshValue(argument);
            out += " \\\n" + indent +
                   quoted("(" + joined(argument.names) + ")" + name + "[" + about + "]" + value);
        }
    }
    return out;
}

/// A line of fish for an option; `when`: the condition, such as `-n '…'`.
std::string fishOption(const std::string& program, const std::string& when, const Argument& argument) {
    std::string out = "complete -c " + program + when;
    for (const std::string& name : argument.names)
        out += name.starts_with("--") ? " -l " + name.substr(2) : " -s " + name.substr(1);
    out += " -d " + fishQuoted(firstSentence(argument.description));
    if (argument.takes.empty()) return out + "\n";
    if (const auto choices = choicesIn(argument.description); !choices.empty())
        return out + " -x -a " + fishQuoted(joined(choices)) + "\n";
    switch (kindOf(argument)) {
        case ValueKind::Word:
            return out + " -x\n";
        case ValueKind::Folder:
            return out + " -x -a '(__fish_complete_directories)'\n";
        case ValueKind::Project:
        case ValueKind::File:
            break;
    }
    return out + " -r -F\n";
}

std::string fishArguments(const std::string& name, const std::string& when, const Program& program) {
    std::string out;
    for (const Argument& argument : program.arguments) {
        if (argument.isOption()) {
            out += fishOption(name, when, argument);
        } else if (kindOf(argument) == ValueKind::Project) {
            out += "complete -c " + name + when + " -k -x -a '(__fish_complete_suffix .tenter.json)'\n";
        } else if (kindOf(argument) == ValueKind::File) {
            out += "complete -c " + name + when + " -F\n";
        }
    }
    return out;
}

}  // namespace

ValueKind kindOf(const Argument& argument) {
    const std::string& name = argument.isOption() ? argument.takes : argument.names[0];
    if (name == "PROJECT" || name == "OLD" || name == "NEW") return ValueKind::Project;
    if (endsWith(name, "FOLDER")) return ValueKind::Folder;
    const bool isFile = name.find("FILE") != std::string::npos || name.find("PAGE") != std::string::npos ||
                        name.find('.') != std::string::npos;
    // An argument without a name says in its description that it is a file.
    const bool saysFile = !argument.isOption() && argument.description.find("file") != std::string::npos;
    return isFile || saysFile ? ValueKind::File : ValueKind::Word;
}

std::string firstSentence(const std::string& description) {
    std::size_t end = 0;
    do {
        end = description.find_first_of(".\n", end);
        end = end == std::string::npos ? description.size() : end + 1;
    } while (end < description.size() && description[end - 1] != '\n' && description[end] != ' ' &&
             description[end] != '\n');
    std::string sentence = description.substr(0, end);
    while (!sentence.empty() && (sentence.back() == '.' || sentence.back() == '\n'))
        sentence.pop_back();
    return sentence;
}

std::string bashCompletion(const Program& program) {
    const std::string name = functionName(program);
    std::string out =
        "# Completion of " + program.words[0] + " for bash. Made from the options of the program.\n" + name +
        "() {\n"
        "    local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]} verb='' at\n"
        "    words() { mapfile -t COMPREPLY < <(compgen -W \"$1\" -- \"$word\"); }\n"
        "    folders() { compopt -o filenames; mapfile -t COMPREPLY < <(compgen -d -- \"$word\"); }\n"
        "    files() {\n"
        "        compopt -o filenames\n"
        "        mapfile -t COMPREPLY < <(compgen -d -- \"$word\"; compgen -f -X \"!*$1\" -- \"$word\")\n"
        "    }\n";
    if (program.verbs.empty()) {
        out += bashCase(program, "    ");
    } else {
        std::vector<std::string> verbs;
        for (const Program& verb : program.verbs)
            verbs.push_back(verb.words.back());
        out +=
            "    for ((at = 1; at < COMP_CWORD; ++at)); do\n"
            "        [[ ${COMP_WORDS[at]} == -* ]] || { verb=${COMP_WORDS[at]}; break; }\n"
            "    done\n"
            "    case $verb in\n"
            "        '') words " +
            quoted(joined(verbs) + " " + optionNames(program)) + " ;;\n";
        for (const Program& verb : program.verbs)
            out +=
                "        " + verb.words.back() + ")\n" + bashCase(verb, "            ") + "            ;;\n";
        out += "    esac\n";
    }
    return out + "}\ncomplete -F " + name + " " + program.words[0] + "\n";
}

std::string zshCompletion(const Program& program) {
    const std::string name = functionName(program);
    std::string out = "#compdef " + program.words[0] + "\n# Made from the options of the program.\n";
    if (program.verbs.empty()) return out + "_arguments -s" + zshArguments(program, "    ") + "\n";
    out += name + "() {\n    local state line\n    local -a verbs\n    verbs=(\n";
    for (const Program& verb : program.verbs)
        out += "        " + quoted(zshEscaped(verb.words.back()) + ":" + zshEscaped(verb.summary)) + "\n";
    out += "    )\n    _arguments -C" + zshArguments(program, "        ") +
           " \\\n        '1: :->verb' '*:: :->rest'\n"
           "    case $state in\n"
           "        verb) _describe verb verbs ;;\n"
           "        rest)\n"
           "            case $line[1] in\n";
    for (const Program& verb : program.verbs)
        out += "                " + verb.words.back() + ") _arguments" +
               zshArguments(verb, "                    ") + " ;;\n";
    return out + "            esac ;;\n    esac\n}\n" + name + " \"$@\"\n";
}

std::string fishCompletion(const Program& program) {
    const std::string& name = program.words[0];
    std::string out = "# Completion of " + name + " for fish. Made from the options of the program.\n";
    if (program.verbs.empty()) return out + fishArguments(name, "", program);
    out += "complete -c " + name + " -f\n";
    const std::string first = " -n __fish_use_subcommand";
    out += fishArguments(name, first, program);
    for (const Program& verb : program.verbs)
        out += "complete -c " + name + first + " -a " + verb.words.back() + " -d " +
               fishQuoted(verb.summary) + "\n";
    for (const Program& verb : program.verbs)
        out += fishArguments(name, " -n '__fish_seen_subcommand_from " + verb.words.back() + "'", verb);
    return out;
}

}  // namespace tenter::describe
