#include "outcome.h"

#include <iostream>

#include "request.h"

namespace tenter::command {

void printProblem(const project::Problem& problem) {
    if (Request* request = currentRequest()) {
        request->problems.push_back(problem);
    } else {
        std::cerr << problem.line() << '\n';
    }
}

void printProblems(const project::Problems& problems) {
    for (const project::Problem& problem : problems)
        printProblem(problem);
}

int refuse(const std::string& argument, const std::string& what, const std::string& fix) {
    printProblem(project::Problem{argument, "", what, fix});
    return wrongInput;
}

}  // namespace tenter::command
