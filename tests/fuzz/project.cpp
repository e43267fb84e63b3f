// Any bytes as a project file: a project or problems, and a project that is written is read again as the same
// one.
#include "fuzz.h"
#include "project/file.h"

void tenter::fuzz::test(const std::uint8_t* data, std::size_t size) {
    using namespace tenter;
    project::Problems problems;
    const auto project = project::parse(std::string(fuzz::textOf(data, size)), "input", {}, problems);
    fuzz::require(project.has_value() == problems.empty(), "there is a project, or there are problems");
    fuzz::requireReadable(problems);
    if (!project) return;
    const std::string written = project::write(*project);
    const auto again = project::parse(written, "written", {}, problems);
    fuzz::require(again && problems.empty(), "a written project is valid");
    fuzz::require(project::write(*again) == written, "a project is written in the same way again");
    fuzz::require(*again == *project, "a written project is read as the same project");
}
