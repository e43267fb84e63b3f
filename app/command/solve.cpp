#include "solve/solve.h"

#include <algorithm>
#include <initializer_list>
#include <memory>

#include "emit/allowed.h"
#include "emit/follow.h"
#include "help.h"
#include "opened.h"
#include "outcome.h"
#include "project/card_scale.h"
#include "project/file.h"
#include "project/rules.h"
#include "project/wording.h"
#include "remedy/wording.h"
#include "solve/answer_table.h"
#include "solve/card_scale.h"
#include "solve/columns.h"
#include "solve/leeway.h"
#include "solve/notation.h"
#include "solve/registry.h"
#include "solve/wish_key.h"
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

const std::vector<std::pair<std::string, solve::LeewaySetting>> leewaySettings{
    {"breakpoint", solve::LeewaySetting::Breakpoint},
    {"gap", solve::LeewaySetting::ColumnGap},
    {"padding", solve::LeewaySetting::CardPadding},
    {"row-width", solve::LeewaySetting::RowWidth}};

bool isOneOf(const std::string& word, std::initializer_list<const char*> words) {
    return std::ranges::find(words, word) != words.end();
}

int printLeeway(const SolveArguments& arguments, Opened& opened, const solve::Options& options) {
    const auto setting = std::ranges::find(leewaySettings, arguments.leeway,
                                           &std::pair<std::string, solve::LeewaySetting>::first);
    std::string out;
    for (std::size_t band = 0; band < opened.project.row().variants[opened.variant].bands.size(); ++band) {
        const auto leeway =
            solve::leewayOf(opened.project, opened.variant, band, setting->second, opened.store, options);
        if (leeway)
            out += solve::describe(opened.project, opened.variant, band, setting->second, *leeway) + "\n";
    }
    return deliver(arguments, out);
}

int printAllowed(const SolveArguments& arguments, Opened& opened, const solve::Options& options) {
    std::vector<std::pair<std::string, solve::Allowed>> roles;
    for (const std::string& role : project::usedRoles(opened.project))
        roles.emplace_back(role,
                           solve::allowedSizes(opened.project, opened.variant, role, opened.store, options));
    return deliver(arguments, emit::allowedJson(roles));
}

/// Adds the variant of --columns, and makes it the one to solve; false if its class is invalid or in use.
bool addColumns(const SolveArguments& arguments, Opened& opened) {
    project::Project& project = opened.project;
    const std::string name =
        arguments.className.empty()
            ? solve::classFor(project.row().variants[opened.variant].className, arguments.columns)
            : arguments.className;
    if (!project::isClassName(name)) {
        refuse("--class", project::inQuotes(name) + " is not a class name.",
               "It must start with a letter and have only letters, digits, hyphens and underscores.");
        return false;
    }
    if (project.row().findVariant(name)) {
        refuse("--columns", "the project already has a variant with the class " + name,
               "solve it with --variant " + name + ", or set another class with --class");
        return false;
    }
    project.row().variants.push_back(
        solve::withColumns(project, opened.variant, arguments.columns, name, opened.store));
    opened.variant = project.row().variants.size() - 1;
    return true;
}

/// Makes every ramp of every variant follow the width of --follow, and reports what changes; false if that is
/// not possible.
bool changeFollow(const SolveArguments& arguments, Opened& opened) {
    project::Problems problems;
    const auto report = [&] {
        for (project::Problem& problem : problems)
            problem.file = arguments.project;
        printProblems(problems);
    };
    if (arguments.follow == "card") {
        auto scale = solve::toCardScale(opened.project, opened.store, problems);
        report();
        if (!scale) return false;
        for (const std::string& sentence : solve::describe(opened.project, *scale))
            printNote(sentence);
        opened.project = std::move(scale->project);
        return true;
    }
    opened.project =
        emit::following(opened.project, project::Follow::Viewport, project::everyVariant(opened.project),
                        opened.store, *opened.profile, problems);
    report();
    return true;
}

/// Adds the wishes of the command line to those of the project; false if one is invalid.
bool addWishes(const SolveArguments& arguments, project::Project& project) {
    project::Wishes added;
    project::Problems problems;
    for (const std::string& wish : arguments.wishes)
        solve::addWish(wish, project, added, problems);
    printProblems(problems);
    if (!problems.empty()) return false;
    if (!arguments.wishes.empty())
        project.row().wishes = project.row().wishes ? project::overlaid(*project.row().wishes, added) : added;
    return true;
}

/// The findings that the solved sizes remove and add, as lines.
std::string findingsText(const project::Project& before, const project::Project& after,
                         const std::vector<std::size_t>& variants, Opened& opened,
                         const solve::Options& options) {
    checks::Options checking;
    checking.profile = options.profile;
    const remedy::Effects effects = remedy::effectsOf(before, after, variants, opened.store, checking);
    std::string text = "\nFindings:\n" + remedy::summaryOf(before, effects) + "\n";
    for (const std::string& change : remedy::changesOf(before, effects))
        text += "  " + change + "\n";
    return text;
}

int runSolve(SolveArguments arguments) {
    const bool bothEngines = arguments.engine.empty();
    if (bothEngines) arguments.engine = text::defaultProfile().name();
    if (!arguments.leeway.empty() &&
        !isOneOf(arguments.leeway, {"breakpoint", "gap", "padding", "row-width"}))
        return refuse(
            "--leeway",
            "The setting must be breakpoint, gap, padding or row-width; it is \"" + arguments.leeway + "\".",
            "");
    if (!arguments.follow.empty() && !isOneOf(arguments.follow, {"card", "viewport"}))
        return refuse("--follow", "The width must be card or viewport; it is \"" + arguments.follow + "\".",
                      "");
    const std::unique_ptr<Opened> opened = openProject(arguments);
    if (!opened) return wrongInput;
    project::Project& project = opened->project;
    if (!addWishes(arguments, project)) return wrongInput;
    if (!arguments.follow.empty() && !changeFollow(arguments, *opened)) return wrongInput;
    if (arguments.columns > 0 && !addColumns(arguments, *opened)) return wrongInput;
    std::vector<std::size_t> variants{opened->variant};
    // Ramps that follow the card are set for all variants.
    if (arguments.all || arguments.follow == "card") variants = project::everyVariant(project);
    solve::Options options;
    options.cancellation = cancellation();
    if (!bothEngines) options.profile = opened->profile;
    if (!arguments.leeway.empty()) return printLeeway(arguments, *opened, options);
    if (arguments.allowed) return printAllowed(arguments, *opened, options);
    const solve::Answer answer = solve::solve(project, variants, opened->store, options);
    const std::string report =
        solve::toText(project, solve::answerTable(project, answer, opened->store), !arguments.follow.empty());
    printNote(report);
    if (!answer.solved) return hasFindings;
    printNote(findingsText(project, *answer.solved, answer.variants, *opened, options));
    const int delivered = deliver(arguments, project::write(*answer.solved));
    return delivered == done && !answer.violated.empty() ? hasFindings : delivered;
}

/// `ROLE.lines=2           at most 2 lines`, a line for each key of wishes.
std::string roleWishHelp() {
    constexpr std::size_t column = 23;
    std::string help;
    for (const solve::WishKey* key : solve::wishKeys()) {
        std::string line = "ROLE." + std::string(key->name) + "=" + std::string(key->example) + " ";
        line.resize(std::max(line.size(), column), ' ');
        help += line + std::string(key->help) + "\n";
    }
    return help;
}

}  // namespace

void addSolve(CLI::App& app, Action& action) {
    auto arguments = std::make_shared<SolveArguments>();
    arguments->engine.clear();
    CLI::App* verb =
        app.add_subcommand("solve", "Print the project with sizes that satisfy its wishes at every width");
    addFiles(*verb, *arguments);
    CLI::Option* one = addVariant(*verb, *arguments);
    verb->add_flag(
            "--all-variants", arguments->all,
            "Solve every variant. If one size is set for all variants, it may change, but all variants "
            "still share it.")
        ->excludes(one);
    CLI::Option* columns =
        verb->add_option("--columns", arguments->columns,
                         "Add a variant with this many columns, from 1 to 12, and solve it. The new "
                         "variant is derived from --variant. Default: no new variant.")
            ->type_name("COUNT")
            ->check(wholeNumberFrom(1, 12));
    verb->add_option("--class", arguments->className,
                     "Class of the variant that --columns adds, such as walks-quartet. Default: derived from "
                     "the class of --variant.")
        ->type_name("CLASS")
        ->needs(columns);
    verb->add_option("--follow", arguments->follow,
                     "Width that the sizes follow; converts all variants before solving. card: one ramp per "
                     "role that follows the card width, near the current sizes; implies --all-variants. "
                     "viewport: one ramp per role and band that follows the viewport width. Default: no "
                     "conversion.")
        ->type_name("WIDTH");
    verb->add_flag(
        "--allowed", arguments->allowed,
        "Print the smallest and the largest size that the wishes allow for each role at each width, "
        "as JSON, instead of the project.");
    verb->add_option("--leeway", arguments->leeway,
                     "Print the leeway of a setting in each band, instead of the project: breakpoint, gap, "
                     "padding or row-width. Leeway: the range in which a value can change while all "
                     "wishes stay satisfied. Default: print the project.")
        ->type_name("SETTING");
    addEngine(*verb, *arguments);
    verb->add_option(
            "WISHES", arguments->wishes,
            std::string(
                "Wishes to add to those of the project. ROLE is heading, body, button or another role of "
                "the project.\n") +
                roleWishHelp() +
                "ROLE.lines=2@600-980   at most 2 lines at widths above 600 px and up to 980 px; "
                "@600-: above 600 px; @-980: up to 980 px\n"
                "aim=nearest            nearest to the current sizes; largest: largest sizes; "
                "calmest: least change over widths\n"
                "grid=0.5px             sizes are multiples of a length in px or rem\n"
                "reserve=20%            keep space for text that is 20% longer; up to 50%\n"
                "slack=1%               keep this share of each line free; up to 20%\n"
                "narrow-slack=2%        the same below 500 px viewport width\n"
                "without=1,3            numbers of the cards that the wishes ignore; the first card is 1\n"
                "Default: the wishes of the project.")
        ->type_name("WISH");
    setHelpEnd(*verb,
               "Wish: a condition that the sizes must satisfy. Band: a range of viewport widths between two "
               "breakpoints. Standard error lists the sizes before and after at both ends of each band, the "
               "wishes that limit each size, with the word that causes the limit, and the findings that come "
               "and go. If a role must have the same size in every variant, solve changes all variants.",
               {"solve row.tenter.json heading.lines=2 body.measure=35-75 --out solved.tenter.json",
                "solve row.tenter.json --leeway breakpoint"},
               {exitDone(),
                {1, "No sizes satisfy all wishes, or the printed project violates a wish at some widths."},
                exitWrongInput()});
    verb->callback([&action, arguments] { action = [arguments] { return runSolve(*arguments); }; });
}

}  // namespace tenter::command
