#include "program.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <sstream>
#include <string>
#include <string_view>

#include "about/about.h"
#include "help.h"
#include "outcome.h"

namespace tenter::command {

namespace {

struct Verb {
    std::string_view name;
    void (*add)(CLI::App&, Action&);
};

/// Every verb, in the order of the help.
constexpr std::array verbs{Verb{"geometry", addGeometry},
                           Verb{"wraps", addWraps},
                           Verb{"check", addCheck},
                           Verb{"remedy", addRemedy},
                           Verb{"stylesheet", addStylesheet},
                           Verb{"markup", addMarkup},
                           Verb{"page", addPage},
                           Verb{"folder", addFolder},
                           Verb{"tokens", addTokens},
                           Verb{"diff", addDiff},
                           Verb{"pictures", addPictures},
                           Verb{"report", addReport},
                           Verb{"picture", addPicture},
                           Verb{"sheet", addSheet},
                           Verb{"new", addNew},
                           Verb{"adopt", addAdopt},
                           Verb{"intake", addIntake},
                           Verb{"size", addSize},
                           Verb{"solve", addSolve},
                           Verb{"serve", addServe}};

/// The names of all verbs, in the order of the help.
std::string verbNames(const CLI::App& app) {
    std::string out;
    for (const CLI::App* verb : app.get_subcommands([](const CLI::App*) { return true; }))
        out += (out.empty() ? "" : ", ") + verb->get_name();
    return out;
}

/// What is wrong with the arguments, as a sentence: the parser's own where that reads well.
std::string sentenceOf(const CLI::ParseError& error) {
    std::string what = error.what();
    std::ranges::replace(what, '\n', ' ');
    if (dynamic_cast<const CLI::ArgumentMismatch*>(&error) != nullptr)
        return what.substr(0, what.find(':')) + " takes one value and can be given once.";
    if (dynamic_cast<const CLI::ExtrasError*>(&error) != nullptr) {
        // The parser lists them after a colon, the last one first.
        std::istringstream words(what.substr(std::min(what.find(": ") + 2, what.size())));
        std::string all;
        for (std::string word; words >> word;)
            all = all.empty() ? word : word + " " + all;
        return "This verb has no argument \"" + all + "\".";
    }
    if (dynamic_cast<const CLI::ExcludesError*>(&error) != nullptr) {
        const std::string excludes = " excludes ";
        const std::size_t at = what.find(excludes);
        if (at != std::string::npos) what.replace(at, excludes.size(), " cannot be used together with ");
    }
    if (dynamic_cast<const CLI::RequiresError*>(&error) != nullptr) {
        const std::string needs = " requires ";
        const std::size_t at = what.find(needs);
        if (at != std::string::npos) what = what.replace(at, needs.size(), " can be used only with ") + ".";
    }
    return what;
}

/// Prints in one line what is wrong with the arguments and where they are listed. Returns the exit code.
int refuseArguments(const CLI::App& app, const CLI::ParseError& error, const std::string& first) {
    if (app.get_subcommands().empty()) {
        const bool word = !first.empty() && first[0] != '-';
        const std::string what = word ? "There is no verb \"" + first + "\"." : "A verb is missing.";
        return refuse("tenter-cli", what,
                      "Use one of " + verbNames(app) + ". tenter-cli --help describes them.");
    }
    const std::string verb = "tenter-cli " + app.get_subcommands().front()->get_name();
    // A value out of its range: the message says the range already.
    const bool saysRange = dynamic_cast<const CLI::ValidationError*>(&error) != nullptr;
    return refuse(verb, sentenceOf(error), saysRange ? "" : verb + " --help lists all arguments.");
}

}  // namespace

std::unique_ptr<CLI::App> makeProgram(Action& action, std::string_view only) {
    auto app = std::make_unique<CLI::App>("Compute and check a fluid row of cards at every viewport width",
                                          "tenter-cli");
    app->formatter(std::make_shared<HelpFormatter>());
    app->set_help_flag("-h,--help", "Print this help and exit.");
    app->set_version_flag(
        "-v,--version", [] { return about::versionText("tenter-cli"); },
        "Print the version, the commit and the versions of libraries, and exit.");
    app->require_subcommand(1);
    app->footer(mainHelpEnd());
    for (const Verb& verb : verbs)
        if (only.empty() || verb.name == only) verb.add(*app, action);
    for (CLI::App* verb : app->get_subcommands([](const CLI::App*) { return true; }))
        verb->group("Verbs");
    return app;
}

int runWith(CLI::App& program, const Action& action, std::vector<std::string> words) {
    const std::string first = words.empty() ? "" : words.front();
    // The parser takes them from the end.
    std::ranges::reverse(words);
    try {
        program.parse(std::move(words));
    } catch (const CLI::CallForVersion& asked) {
        // The parser would end the text with a second line feed.
        std::fputs(asked.what(), stdout);
        return done;
    } catch (const CLI::Success& asked) {
        return program.exit(asked);
    } catch (const CLI::ParseError& error) {
        return refuseArguments(program, error, first);
    }
    return action();
}

int run(int argc, char** argv) {
    Action action;
    const std::unique_ptr<CLI::App> program = makeProgram(action);
    return runWith(*program, action, {argv + std::min(argc, 1), argv + argc});
}

}  // namespace tenter::command
