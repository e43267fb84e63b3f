#include "checks/finding.h"

#include <algorithm>
#include <array>

#include "checks/phrases.h"
#include "project/wording.h"

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

std::optional<Severity> severityOf(std::string_view word) {
    for (const auto& [name, each] : severities)
        if (name == word) return each;
    return std::nullopt;
}

std::string textOf(const Statement& statement, const Profiles& profiles) {
    std::vector<std::string> browsers;
    for (const text::BreakProfile* profile : profiles)
        browsers.emplace_back(profile->title());
    std::string text = browsers.empty() ? capitalised(statement.what)
                                        : project::listed(browsers) + " only: " + statement.what;
    for (const std::string& sentence : {statement.why, statement.fix})
        if (!sentence.empty()) text += ". " + sentence;
    return text + ".";
}

}  // namespace tenter::checks
