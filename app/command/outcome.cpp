#include "outcome.h"

#include <iostream>

namespace tenter::command {

void tell(const project::Problem& problem) {
    std::cerr << problem.line() << '\n';
}

void tell(const project::Problems& problems) {
    for (const project::Problem& problem : problems)
        tell(problem);
}

int refuse(const std::string& argument, const std::string& what, const std::string& fix) {
    tell(project::Problem{argument, "", what, fix});
    return wrongInput;
}

}  // namespace tenter::command
