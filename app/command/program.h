// tenter-cli as a whole: its verbs and options, and running it.
#pragma once

#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "verbs.h"

namespace tenter::command {

/// All verbs with their options, or the verb `only`; without verbs if there is none of that name. If
/// arguments are parsed, `action`, which must live as long, becomes the action of their verb. Help, manual
/// pages and completions are made from it.
std::unique_ptr<CLI::App> makeProgram(Action& action, std::string_view only = {});

/// Parses `words`, a verb and its arguments, by `program` and runs the verb, whose action `program` puts into
/// `action`. Returns the exit code; messages have been printed.
int runWith(CLI::App& program, const Action& action, std::vector<std::string> words);

/// Parses the arguments and runs their verb. Returns the exit code; messages have been printed.
int run(int argc, char** argv);

}  // namespace tenter::command
