#include "solve/memory.h"

namespace tenter::solve {

void Memory::startRun() {
    std::erase_if(found_, [](const Found& each) { return !each.used; });
    for (Found& each : found_)
        each.used = false;
}

void Memory::forget() {
    found_.clear();
    rows_.reset();
    project_.reset();
}

project::Project Memory::withoutWishes(project::Project project) {
    for (project::Row& row : project.rows)
        row.wishes.reset();
    return project;
}

}  // namespace tenter::solve
