// The arguments every verb has, and the project they name.
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
#include "text/paragraph_store.h"

namespace tenter::command {

struct Arguments {
    std::string project;
    std::string variant;
    std::string engine = "blink";
    std::string out;
    std::string trial;
};

/// Adds PROJECT and --out.
void addFiles(CLI::App& verb, Arguments& arguments);
CLI::Option* addVariant(CLI::App& verb, Arguments& arguments);
void addEngine(CLI::App& verb, Arguments& arguments);
/// For verbs that look at a row and hand nothing over.
void addTrial(CLI::App& verb, Arguments& arguments);

/// A project ready to be worked with.
struct Opened {
    project::Project project;
    std::shared_ptr<const project::Project> untried;  ///< null: the project is tried with nothing
    std::filesystem::path folder;
    std::size_t variant = 0;
    const text::BreakProfile* profile = nullptr;
    text::Fonts fonts;
    text::ParagraphStore store{fonts};
};

/// Reads the project; null if anything is wrong, which has been told.
std::unique_ptr<Opened> openProject(const Arguments& arguments);

/// All of a file; empty if there is none or it may not be read.
std::optional<std::string> fileText(const std::string& file);

/// Prints `content`, or replaces the file of --out by it.
int deliver(const Arguments& arguments, const std::string& content);

/// The same for content that comes piece by piece: `produce` is handed a function that takes the pieces.
using Sink = std::function<void(const std::string&)>;
int deliver(const Arguments& arguments, const std::function<void(const Sink&)>& produce);

}  // namespace tenter::command
