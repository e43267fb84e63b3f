// What a verb returns, and how it tells what is wrong.
#pragma once

#include <string>

#include "project/problem.h"

namespace tenter::command {

inline constexpr int done = 0;
inline constexpr int hasFindings = 1;  ///< done, and there is something to fix
inline constexpr int wrongInput = 2;

/// One line on standard error.
void tell(const project::Problem& problem);
void tell(const project::Problems& problems);

/// Tells what is wrong with an argument and how to fix it; returns `wrongInput`.
int refuse(const std::string& argument, const std::string& what, const std::string& fix);

}  // namespace tenter::command
