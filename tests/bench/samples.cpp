#include "samples.h"

#include <cstdlib>
#include <iostream>

namespace tenter::bench {

project::Project sample(const std::string& name) {
    project::Problems problems;
    auto project = project::read(sampleFile(name), problems);
    for (const project::Problem& problem : problems)
        std::cerr << problem.line() << '\n';
    if (!project) std::exit(2);
    return *std::move(project);
}

}  // namespace tenter::bench
