#include "solve/solve.h"

#include <algorithm>
#include <memory>

#include "emit/allowed.h"
#include "emit/follow.h"
#include "opened.h"
#include "outcome.h"
#include "project/card_scale.h"
#include "project/file.h"
#include "project/rules.h"
#include "project/wording.h"
#include "solve/card_scale.h"
#include "solve/columns.h"
#include "solve/leeway.h"
#include "solve/notation.h"
#include "verbs.h"

namespace tenter::command {

namespace {

struct SolveArguments : Arguments {
    std::vector<std::string> wishes;
    bool all = false;
    bool allowed = false;
    std::string leeway;
    std::string follow;
    int columns = 0;
    std::string className;
};

const std::vector<std::pair<std::string, solve::Varied>> variable{{"breakpoint", solve::Varied::Breakpoint},
                                                                  {"gap", solve::Varied::ColumnGap},
                                                                  {"padding", solve::Varied::CardPadding},
                                                                  {"row-width", solve::Varied::RowWidth}};

int tellLeeway(const SolveArguments& arguments, Opened& opened, const solve::Options& options) {
    const auto varied =
        std::ranges::find(variable, arguments.leeway, &std::pair<std::string, solve::Varied>::first);
    std::string out;
    for (std::size_t band = 0; band < opened.project.variants[opened.variant].bands.size(); ++band) {
        const auto leeway =
            solve::leewayOf(opened.project, opened.variant, band, varied->second, opened.store, options);
        if (leeway)
            out += solve::sentenceOf(opened.project, opened.variant, band, varied->second, *leeway) + "\n";
    }
    return deliver(arguments, out);
}

/// Adds the variant that is asked for, which is then the one to be solved; false if there is one of that
/// class.
bool addColumns(const SolveArguments& arguments, Opened& opened) {
    project::Project& project = opened.project;
    const std::string name =
        arguments.className.empty()
            ? solve::classFor(project.variants[opened.variant].className, arguments.columns)
            : arguments.className;
    if (!project::isClassName(name)) {
        refuse("--class", project::inQuotes(name) + " is no class name",
               "use letters, digits, hyphens and underscores, a letter first");
        return false;
    }
    if (project.findVariant(name)) {
        refuse("--columns", "there is a variant with the class " + name,
               "solve that one with --variant, or name another class with --class");
        return false;
    }
    project.variants.push_back(
        solve::inColumns(project, opened.variant, arguments.columns, name, opened.store));
    opened.variant = project.variants.size() - 1;
    return true;
}

/// Turns every ramp of every variant, and tells what that changes; false if it cannot be.
bool turn(const SolveArguments& arguments, Opened& opened) {
    project::Problems problems;
    const auto tellOfFile = [&] {
        for (project::Problem& problem : problems)
            problem.file = arguments.project;
        tell(problems);
    };
    if (arguments.follow == "card") {
        auto scale = solve::inCardScale(opened.project, opened.store, problems);
        tellOfFile();
        if (!scale) return false;
        for (const std::string& sentence : solve::sentences(opened.project, *scale))
            std::fprintf(stderr, "%s\n", sentence.c_str());
        opened.project = std::move(scale->project);
        return true;
    }
    opened.project =
        emit::following(opened.project, project::Follow::Viewport, project::everyVariant(opened.project),
                        opened.store, *opened.profile, problems);
    tellOfFile();
    return true;
}

int runSolve(SolveArguments arguments) {
    const bool both = arguments.engine.empty();
    if (both) arguments.engine = text::blink().name();
    if (!arguments.leeway.empty() &&
        std::ranges::none_of(variable, [&](const auto& one) { return one.first == arguments.leeway; }))
        return refuse("--leeway", "\"" + arguments.leeway + "\" cannot be varied",
                      "use breakpoint, gap, padding or row-width");
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

    if (!arguments.follow.empty() && arguments.follow != "viewport" && arguments.follow != "card")
        return refuse("--follow", "\"" + arguments.follow + "\" is nothing sizes can follow",
                      "use viewport or card");
    if (!arguments.follow.empty() && !turn(arguments, *opened)) return wrongInput;
    if (arguments.columns > 0 && !addColumns(arguments, *opened)) return wrongInput;
    std::vector<std::size_t> variants{opened->variant};
    // A ramp by the card is every variant's.
    if (arguments.all || arguments.follow == "card") variants = project::everyVariant(project);
    solve::Options options;
    if (!both) options.profile = opened->profile;
    if (!arguments.leeway.empty()) return tellLeeway(arguments, *opened, options);
    if (arguments.allowed) {
        std::vector<std::pair<std::string, solve::Allowed>> roles;
        for (const std::string& role : project::usedRoles(project))
            roles.emplace_back(role,
                               solve::allowedSizes(project, opened->variant, role, opened->store, options));
        return deliver(arguments, emit::allowedJson(roles));
    }
    const solve::Answer answer = solve::solve(project, variants, opened->store, options);
    for (const std::string& sentence : solve::sentences(project, answer))
        std::fprintf(stderr, "%s\n", sentence.c_str());
    if (!answer.solved) return hasFindings;
    const int delivered = deliver(arguments, project::write(*answer.solved));
    return delivered == done && !answer.unkept.empty() ? hasFindings : delivered;
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
    CLI::Option* columns =
        verb->add_option("--columns", arguments->columns,
                         "Add a variant of so many columns, made after the one of --variant, and solve it")
            ->type_name("COUNT")
            ->check(CLI::Range(1, 12));
    verb->add_option("--class", arguments->className,
                     "The new variant's class (after the other's if left out)")
        ->type_name("CLASS")
        ->needs(columns);
    verb->add_option("--follow", arguments->follow,
                     "First let sizes follow the width of the card, one ramp a role for every number of "
                     "columns, as near to the sizes there are as can be; or that of the viewport again, band "
                     "by band. In all variants: card solves them all")
        ->type_name("WHAT");
    verb->add_flag("--allowed", arguments->allowed,
                   "Print, instead, the sizes that the wishes allow each role at each width, as JSON");
    verb->add_option("--leeway", arguments->leeway,
                     "Print, instead, for which values the wishes hold with sizes as they are, band by band: "
                     "breakpoint, gap, padding or row-width")
        ->type_name("WHAT");
    verb->add_option("--engine", arguments->engine,
                     "Whose rules for line breaks: blink or gecko (both if left out)")
        ->type_name("ENGINE");
    verb->add_option("WISHES", arguments->wishes,
                     "Wishes on top of the project's, such as heading.lines=2 body.measure=35-75 "
                     "body.size=15- heading.ratio=body*1.25- heading.lines=3@-600 heading.variants=same "
                     "reserve=20% grid=0.5px aim=largest")
        ->type_name("WISH");
    verb->footer(
        "Which wishes decide, and by which word, is told on standard error. Exit code 1: the wishes cannot\n"
        "be kept together; which of them, and what would help, is told and nothing is printed. A role that "
        "is\n"
        "to have the same size in every variant has all of them solved, whichever is named.");
    verb->callback([&action, arguments] { action = [arguments] { return runSolve(*arguments); }; });
}

}  // namespace tenter::command
