#include "opened.h"

#include <algorithm>
#include <cstdio>
#include <fstream>
#include <iterator>
#include <system_error>

#include "checks/registry.h"
#include "outcome.h"
#include "project/file.h"
#include "project/trial.h"
#include "project/wording.h"
#include "wording/language.h"

namespace tenter::command {

namespace {

std::vector<std::string> languageCodes() {
    std::vector<std::string> codes{"en"};
    for (const std::string_view code : wording::languages())
        codes.emplace_back(code);
    return codes;
}

std::string classes(const project::Project& project) {
    std::string out;
    for (const project::Variant& variant : project.row().variants)
        out += (out.empty() ? "" : ", ") + variant.className;
    return out;
}

/// Reads a project file, or the text that stands in for it.
std::optional<project::Project> readProject(const std::string& file, project::Problems& problems) {
    const Request* request = currentRequest();
    if (request == nullptr || !request->files.contains(file))
        return project::read(file, problems, checks::isCheckName);
    return project::parse(request->files.at(file), file, std::filesystem::path(file).parent_path(), problems,
                          checks::isCheckName);
}

bool printAll(const std::string& content) {
    if (Request* request = currentRequest()) {
        request->result += content;
        return true;
    }
    return std::fwrite(content.data(), 1, content.size(), stdout) == content.size();
}

int printed(bool sound) {
    if (sound && (currentRequest() != nullptr || std::fflush(stdout) == 0)) return done;
    return refuse("standard output", "It could not be written completely.",
                  "Free some space, or name a file with --out.");
}

}  // namespace

void addFiles(CLI::App& verb, Arguments& arguments) {
    verb.add_option("PROJECT", arguments.project, "Project file, *.tenter.json.")
        ->required()
        ->type_name("FILE");
    addOut(verb, arguments, "PROJECT");
}

void addOut(CLI::App& verb, Arguments& arguments, const std::string& notThese) {
    verb.add_option("--out", arguments.out,
                    "Write to this file instead of standard output. If writing fails, the old file stays "
                    "unchanged. The file to write must not be " +
                        notThese + ".")
        ->type_name("FILE");
}

CLI::Option* addVariant(CLI::App& verb, Arguments& arguments) {
    return verb
        .add_option("--variant", arguments.variant,
                    "Class of the variant, without the dot. Default: the project's first variant.")
        ->type_name("CLASS");
}

void addEngine(CLI::App& verb, Arguments& arguments) {
    std::vector<std::string> engines;
    for (const text::BreakProfile* profile : text::profiles())
        engines.push_back(std::string(profile->name()) + " (" + std::string(profile->browsers()) + ")");
    const std::string all = engines.size() == 2 ? "both" : "all";
    verb.add_option("--engine", arguments.engine,
                    "Line-breaking rules: " + project::either(engines) +
                        ". Default: " + (arguments.engine.empty() ? all : arguments.engine) + ".")
        ->type_name("ENGINE");
}

CLI::Option* addTrial(CLI::App& verb, Arguments& arguments) {
    return verb
        .add_option("--try", arguments.trial,
                    "Text test: use the row with other text or cards; the project does not change. One of " +
                        project::trialWords() + ". Default: no text test.")
        ->type_name("TEST");
}

CLI::Option* addLanguage(CLI::App& verb, std::string& language) {
    return verb
        .add_option("--language", language,
                    "Language of the sentences: " + project::either(languageCodes()) + ". Default: en.")
        ->type_name("CODE");
}

bool useLanguage(const std::string& language) {
    if (wording::useLanguage(language)) return true;
    refuse("--language",
           "The language must be " + project::either(languageCodes()) + "; it is \"" + language + "\".", "");
    return false;
}

std::optional<std::string> fileText(const std::string& file) {
    const Request* request = currentRequest();
    if (request != nullptr && request->files.contains(file)) return request->files.at(file);
    std::error_code error;
    // A pipe or a device could have no end.
    if (!std::filesystem::is_regular_file(file, error)) return std::nullopt;
    std::ifstream stream(file, std::ios::binary);
    std::string text(std::min<std::uintmax_t>(std::filesystem::file_size(file, error), largestInput) + 1,
                     '\0');
    if (error) return std::nullopt;
    stream.read(text.data(), static_cast<std::streamsize>(text.size()));
    if (!stream.is_open() || stream.bad()) return std::nullopt;
    text.resize(static_cast<std::size_t>(stream.gcount()));
    return text;
}

bool wouldOverwrite(const Arguments& arguments, const std::string& file) {
    std::error_code error;
    if (arguments.out.empty() || !std::filesystem::equivalent(file, arguments.out, error)) return false;
    refuse("--out", "This is the project file; --out would overwrite it.", "Choose another file.");
    return true;
}

std::unique_ptr<Opened> openProject(const Arguments& arguments) {
    const text::BreakProfile* profile = text::profile(arguments.engine);
    if (profile == nullptr) {
        std::vector<std::string> engines;
        for (const text::BreakProfile* one : text::profiles())
            engines.emplace_back(one->name());
        refuse("--engine",
               "The engine must be " + project::either(engines) + "; it is \"" + arguments.engine + "\".",
               "");
        return nullptr;
    }
    const std::optional<project::Trial> trial = project::trialOf(arguments.trial);
    if (!arguments.trial.empty() && !trial) {
        refuse("--try", "There is no text test \"" + arguments.trial + "\".",
               "Use " + project::trialWords() + ".");
        return nullptr;
    }
    if (wouldOverwrite(arguments, arguments.project)) return nullptr;
    project::Problems problems;
    std::optional<project::Project> project = readProject(arguments.project, problems);
    printProblems(problems);
    if (!project) return nullptr;
    const std::filesystem::path folder = std::filesystem::path(arguments.project).parent_path();
    auto opened = std::make_unique<Opened>(workshopFor(*project, folder));
    if (trial) {
        opened->untried = std::make_shared<project::Project>(std::move(*project));
        opened->project = project::tried(*opened->untried, *trial);
    } else {
        opened->project = std::move(*project);
    }
    opened->profile = profile;
    opened->folder = folder;
    if (!arguments.variant.empty()) {
        const std::optional<std::size_t> found = opened->project.row().findVariant(arguments.variant);
        if (!found) {
            printProblem(project::Problem{arguments.project, "/variants",
                                          "No variant has the class \"" + arguments.variant + "\".",
                                          "Use one of " + classes(opened->project) + "."});
            return nullptr;
        }
        opened->variant = *found;
    }
    return opened;
}

void printMissingPictures(const Arguments& arguments, const std::vector<std::string>& files) {
    for (const std::string& file : files)
        printProblem(project::Problem{arguments.project, "",
                                      "The picture file \"" + file +
                                          "\" cannot be read; an empty place with its name is shown instead.",
                                      "Put the file there, or choose another."});
}

int deliver(const Arguments& arguments, const std::string& content) {
    return deliver(arguments, [&](const Sink& sink) { sink(content); });
}

int deliver(const Arguments& arguments, const std::function<void(const Sink&)>& produce) {
    if (arguments.out.empty()) {
        bool sound = true;
        produce([&](const std::string& piece) { sound = sound && printAll(piece); });
        return printed(sound);
    }
    std::string whole;
    produce([&](const std::string& piece) { whole += piece; });
    project::Problems problems;
    if (project::replaceFile(arguments.out, whole, problems)) return done;
    printProblems(problems);
    return wrongInput;
}

}  // namespace tenter::command
