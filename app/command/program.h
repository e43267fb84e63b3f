// tenter-cli as a whole: its verbs and options, and running it.
#pragma once

#include <memory>

#include "verbs.h"

namespace tenter::command {

/// All verbs with their options. If arguments are parsed, `action`, which must live as long, becomes the
/// action of their verb. Help, manual pages and completions are made from it.
std::unique_ptr<CLI::App> makeProgram(Action& action);

/// Parses the arguments and runs their verb. Returns the exit code; messages have been printed.
int run(int argc, char** argv);

}  // namespace tenter::command
