// Any bytes as a stylesheet, a page or a font size that Tenter wrote, and as a stylesheet of other origin.
#include <cmath>

#include "fuzz.h"
#include "intake/own_project.h"
#include "intake/size_reading.h"
#include "project/file.h"
#include "start/sheet_project.h"

namespace {

using namespace tenter;

void requireAnswer(const std::optional<intake::OwnProject>& result, const project::Problems& problems) {
    fuzz::requireReadable(problems);
    if (!result) {
        fuzz::require(!problems.empty(), "there is a project, or there are problems");
        return;
    }
    project::Problems again;
    fuzz::require(project::parse(project::write(result->project), "written", {}, again) && again.empty(),
                  "the project is valid");
}

}  // namespace

void tenter::fuzz::test(const std::uint8_t* data, std::size_t size) {
    const std::string_view bytes = fuzz::textOf(data, size);
    const intake::OwnSource source{bytes, "/nowhere/source", "/nowhere"};
    project::Problems problems;
    requireAnswer(intake::projectOfSheet(source, problems), problems);
    problems.clear();
    requireAnswer(intake::projectOfPage(source, problems), problems);
    problems.clear();
    static text::Fonts fonts;
    static text::ParagraphStore store(fonts);
    const auto other = start::importSheet(bytes, "/nowhere/source.css", 16, store, problems);
    requireAnswer(other ? std::optional(intake::OwnProject{other->project, other->report}) : std::nullopt,
                  problems);
    problems.clear();
    const auto reading = intake::readSize(bytes, {}, problems);
    fuzz::requireReadable(problems);
    if (reading) {
        fuzz::require(std::isfinite(reading->largestError) && reading->largestError >= 0,
                      "an error is a number");
        for (const double width : {320.0, 1000.0, 1920.0})
            fuzz::require(reading->ramp.sizeAt(width) > 0 && std::isfinite(reading->ramp.sizeAt(width)),
                          "a size is above 0");
    } else {
        fuzz::require(!problems.empty(), "there is a size, or there are problems");
    }
}
