// The exit codes of verbs, and the printing of messages.
#pragma once

#include <string>

#include "project/problem.h"

namespace tenter::command {

inline constexpr int done = 0;
inline constexpr int hasFindings = 1;  ///< done, and there is something to fix
inline constexpr int wrongInput = 2;

/// Prints a problem as one line on standard error, or adds it to the request.
void printProblem(const project::Problem& problem);
void printProblems(const project::Problems& problems);

/// Prints what is wrong with an argument, or with the file `argument`, and how to fix it. Returns
/// `wrongInput`.
int refuse(const std::string& argument, const std::string& what, const std::string& fix);

}  // namespace tenter::command
