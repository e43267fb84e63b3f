#include "given/row_reading.h"

#include <algorithm>
#include <utility>

#include "markup/choose.h"

namespace tenter::desktop::given {

namespace {

markup::PageToAdopt pageOfRequest(const RowRequest& request, std::vector<markup::RoleChoice> choices) {
    markup::PageToAdopt page;
    page.bytes = {request.bytes.constData(), static_cast<std::size_t>(request.bytes.size())};
    page.file = request.file;
    page.projectFolder = request.projectFolder;
    page.choices = std::move(choices);
    page.theme = request.theme;
    return page;
}

RowReading readWith(const RowRequest& request, const std::vector<markup::RoleChoice>& choices) {
    RowReading reading;
    reading.choices = choices;
    reading.adopted = markup::adopt(*request.project, pageOfRequest(request, choices), reading.problems);
    if (reading.adopted) reading.row = markup::givenRow(reading.adopted->project, reading.problems);
    if (!reading.row) reading.adopted.reset();
    return reading;
}

/// The choices with the change; empty, with problems, if there can be none.
std::optional<std::vector<markup::RoleChoice>> changedChoices(const RowRequest& request,
                                                              project::Problems& problems) {
    if (const auto* pick = std::get_if<Pick>(&request.change))
        return markup::choose(*request.project, pageOfRequest(request, request.choices), pick->node,
                              pick->role, problems);
    std::vector<markup::RoleChoice> choices = request.choices;
    const auto& typed = std::get<markup::RoleChoice>(request.change);
    const auto known = std::ranges::find(choices, typed.role, &markup::RoleChoice::role);
    if (known == choices.end())
        choices.push_back(typed);
    else
        known->selector = typed.selector;
    return choices;
}

}  // namespace

RowReading readRow(const RowRequest& request) {
    if (std::holds_alternative<std::monostate>(request.change)) return readWith(request, request.choices);
    project::Problems refused;
    if (const auto choices = changedChoices(request, refused)) {
        RowReading changed = readWith(request, *choices);
        if (changed.adopted && changed.problems.empty()) return changed;
        refused = std::move(changed.problems);
    }
    RowReading reading = readWith(request, request.choices);
    reading.refused = std::move(refused);
    return reading;
}

}  // namespace tenter::desktop::given
