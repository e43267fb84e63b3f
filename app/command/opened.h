// The arguments that all verbs share, and opening the project that they name.
#pragma once

#include <CLI/App.hpp>
#include <CLI/Config.hpp>
#include <CLI/Formatter.hpp>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>

#include "project/project.h"
#include "request.h"
#include "text/paragraph_store.h"

namespace tenter::command {

/// The shared arguments as given; empty: not given.
struct Arguments {
    std::string project;
    std::string variant;
    std::string engine{text::defaultProfile().name()};
    std::string out;
    std::string trial;
};

/// Adds PROJECT and --out.
void addFiles(CLI::App& verb, Arguments& arguments);
/// Adds --out, for verbs with other input files than PROJECT; `notThese` names them.
void addOut(CLI::App& verb, Arguments& arguments, const std::string& notThese);
/// Adds --variant.
CLI::Option* addVariant(CLI::App& verb, Arguments& arguments);
/// Adds --engine. Its default is the engine of `arguments`, or every engine if that is empty.
void addEngine(CLI::App& verb, Arguments& arguments);
/// Adds --try, for verbs that print results about the row, not the row.
CLI::Option* addTrial(CLI::App& verb, Arguments& arguments);

/// Adds --language, for verbs that print sentences.
CLI::Option* addLanguage(CLI::App& verb, std::string& language);
/// Prints sentences in `language` from now on. False if there is no catalogue of it; a message has been
/// printed.
bool useLanguage(const std::string& language);

/// A project and what verbs need to compute with it.
struct Opened {
    project::Project project;
    std::shared_ptr<const project::Project>
        untried;  ///< the project without its text test; null if there is no text test
    std::filesystem::path folder;
    std::size_t variant = 0;
    const text::BreakProfile* profile = nullptr;
    std::shared_ptr<Workshop> workshop;
    text::Fonts& fonts{workshop->fonts};
    text::ParagraphStore& store{workshop->store};

    explicit Opened(std::shared_ptr<Workshop> used) : workshop(std::move(used)) {}
};

/// True if --out names `file`, a project file. A message has been printed then.
bool wouldOverwrite(const Arguments& arguments, const std::string& file);

/// Reads the project of the arguments. Null if anything is wrong; a message has been printed.
std::unique_ptr<Opened> openProject(const Arguments& arguments);

/// Says for each picture file in `files` that it cannot be read and what is shown instead.
void printMissingPictures(const Arguments& arguments, const std::vector<std::string>& files);

/// The size in bytes above which no kind of input is read.
inline constexpr std::size_t largestInput = 64U << 20U;

/// The content of a file, or of the text that stands in for it in a request; empty if it does not exist,
/// cannot be read or is no regular file. Of a file that is larger than `largestInput`, its start, one byte
/// longer than that.
std::optional<std::string> fileText(const std::string& file);

/// Prints `content` to standard output, or replaces the file of --out by it. Returns the exit code.
int deliver(const Arguments& arguments, const std::string& content);

/// The same for content in pieces: `produce` is called with a function that accepts the pieces.
using Sink = std::function<void(const std::string&)>;
int deliver(const Arguments& arguments, const std::function<void(const Sink&)>& produce);

}  // namespace tenter::command
