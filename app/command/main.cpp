// tenter-cli: the computation behind arguments. Needs no display.
#include <algorithm>
#include <exception>
#include <string>

#include "outcome.h"
#include "verbs.h"

namespace {

using tenter::command::refuse;

std::string verbNames(const CLI::App& app) {
    std::string out;
    for (const CLI::App* verb : app.get_subcommands([](const CLI::App*) { return true; }))
        out += (out.empty() ? "" : ", ") + verb->get_name();
    return out;
}

/// What the argument parser said, in one line, and where the arguments are listed.
int refuseArguments(const CLI::App& app, const CLI::ParseError& error, const std::string& first) {
    if (app.get_subcommands().empty()) {
        const bool word = !first.empty() && first[0] != '-';
        const std::string what = word ? "there is no verb " + first : "a verb is missing";
        return refuse("tenter-cli", what,
                      "use one of " + verbNames(app) + "; tenter-cli --help tells what they do");
    }
    std::string what = error.what();
    std::ranges::replace(what, '\n', ' ');
    const std::string verb = "tenter-cli " + app.get_subcommands().front()->get_name();
    return refuse(verb, what, verb + " --help lists its arguments");
}

int run(int argc, char** argv) {
    CLI::App app("Computes a fluid row of cards at every viewport width.", "tenter-cli");
    app.require_subcommand(1);
    app.footer(
        "Results go to standard output, messages to standard error.\n"
        "Exit code 0: done. 1: done, and check has findings at or above --fail-on. 2: the input or the\n"
        "arguments are wrong.");
    tenter::command::Action action;
    tenter::command::addGeometry(app, action);
    tenter::command::addWraps(app, action);
    tenter::command::addCheck(app, action);
    tenter::command::addStylesheet(app, action);
    tenter::command::addPage(app, action);
    tenter::command::addReport(app, action);
    tenter::command::addAdopt(app, action);
    tenter::command::addSize(app, action);
    tenter::command::addSolve(app, action);
    app.get_formatter()->label("SUBCOMMAND", "VERB");
    for (CLI::App* verb : app.get_subcommands([](const CLI::App*) { return true; }))
        verb->group("Verbs");
    try {
        app.parse(argc, argv);
    } catch (const CLI::Success& asked) {
        return app.exit(asked);
    } catch (const CLI::ParseError& error) {
        return refuseArguments(app, error, argc > 1 ? argv[1] : "");
    }
    return action();
}

}  // namespace

int main(int argc, char** argv) {
    try {
        return run(argc, argv);
    } catch (const std::exception& error) {
        return refuse("tenter-cli", error.what(), "free some memory, or take a smaller project");
    }
}
