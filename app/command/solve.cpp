#include "solve/solve.h"

#include <memory>
#include <numeric>

#include "opened.h"
#include "outcome.h"
#include "project/file.h"
#include "solve/notation.h"
#include "verbs.h"

namespace tenter::command {

namespace {

struct SolveArguments : Arguments {
    std::vector<std::string> wishes;
    bool all = false;
};

int runSolve(SolveArguments arguments) {
    const bool both = arguments.engine.empty();
    if (both) arguments.engine = text::blink().name();
    const std::unique_ptr<Opened> opened = openProject(arguments);
    if (!opened) return wrongInput;
    project::Project& project = opened->project;
    project::Wishes said;
    project::Problems problems;
    for (const std::string& wish : arguments.wishes)
        solve::addWish(wish, project, said, problems);
    tell(problems);
    if (!problems.empty()) return wrongInput;
    if (!arguments.wishes.empty())
        project.wishes = project.wishes ? project::laidOn(*project.wishes, said) : said;

    std::vector<std::size_t> variants{opened->variant};
    if (arguments.all) {
        variants.resize(project.variants.size());
        std::iota(variants.begin(), variants.end(), std::size_t{0});
    }
    solve::Options options;
    if (!both) options.profile = opened->profile;
    const solve::Answer answer = solve::solve(project, variants, opened->store, options);
    for (const std::string& sentence : solve::sentences(project, answer))
        std::fprintf(stderr, "%s\n", sentence.c_str());
    if (!answer.solved) return hasFindings;
    return deliver(arguments, project::write(*answer.solved));
}

}  // namespace

void addSolve(CLI::App& app, Action& action) {
    auto arguments = std::make_shared<SolveArguments>();
    arguments->engine.clear();
    CLI::App* verb =
        app.add_subcommand("solve", "Print the project with sizes that keep its wishes at every width");
    addFiles(*verb, *arguments);
    CLI::Option* one = addVariant(*verb, *arguments);
    verb->add_flag("--all-variants", arguments->all,
                   "Solve every variant at once; sizes that the style says stay common to them")
        ->excludes(one);
    verb->add_option("--engine", arguments->engine,
                     "Whose rules for line breaks: blink or gecko (both if left out)")
        ->type_name("ENGINE");
    verb->add_option("WISHES", arguments->wishes,
                     "Wishes on top of the project's, such as heading.lines=2 body.measure=35-75 "
                     "body.size=15- heading.ratio=body*1.25- heading.lines=3@-600 reserve=20% grid=0.5px "
                     "aim=largest")
        ->type_name("WISH");
    verb->footer(
        "Which wishes decide, and by which word, is told on standard error. Exit code 1: the wishes cannot\n"
        "be kept together; which of them, and what would help, is told and nothing is printed.");
    verb->callback([&action, arguments] { action = [arguments] { return runSolve(*arguments); }; });
}

}  // namespace tenter::command
