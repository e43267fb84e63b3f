#include "checks/finding.h"

#include <algorithm>
#include <array>

#include "checks/phrases.h"
#include "project/wording.h"
#include "wording/say.h"

namespace tenter::checks {

namespace {

constexpr std::array<std::pair<std::string_view, Severity>, 3> severities{
    {{"note", Severity::Note}, {"warning", Severity::Warning}, {"error", Severity::Error}}};

}  // namespace

std::string_view word(Severity severity) {
    for (const auto& [name, each] : severities)
        if (each == severity) return name;
    return {};
}

std::string title(Severity severity) {
    switch (severity) {
        case Severity::Error:
            return wording::say("error");
        case Severity::Warning:
            return wording::say("warning");
        case Severity::Note:
            break;
    }
    return wording::say("note");
}

std::optional<Severity> severityOf(std::string_view word) {
    for (const auto& [name, each] : severities)
        if (name == word) return each;
    return std::nullopt;
}

std::string textOf(const Statement& statement, const Profiles& profiles) {
    std::vector<std::string> browsers;
    for (const text::BreakProfile* profile : profiles)
        browsers.emplace_back(profile->title());
    std::string text = browsers.empty()
                           ? capitalised(statement.what)
                           : wording::say("%1 only: %2", {project::listed(browsers), statement.what});
    for (const std::string& sentence : {statement.why, statement.fix})
        if (!sentence.empty()) text += ". " + sentence;
    return text + ".";
}

}  // namespace tenter::checks
