#include "emit/sentences.h"

#include "units/number.h"

namespace tenter::emit {

std::string capitalised(const std::string& role) {
    std::string out = role;
    if (!out.empty() && out[0] >= 'a' && out[0] <= 'z') out[0] = static_cast<char>(out[0] - 'a' + 'A');
    return out;
}

std::string rampSentence(const std::string& role, const units::Ramp& ramp, project::Follow follow) {
    if (ramp.isFlat()) return {};
    const std::string what = follow == project::Follow::Card ? "the card's content" : "the viewport";
    const auto px = [](double value) { return units::number(value, 2) + " px"; };
    return capitalised(role) + ": " + px(ramp.from().size) + " where " + what + " is " +
           px(ramp.from().width) + " wide, " + px(ramp.to().size) + " where it is " + px(ramp.to().width) +
           ".";
}

std::string classList(const project::Project& project, const std::vector<std::size_t>& variants) {
    std::string out;
    for (std::size_t i = 0; i < variants.size(); ++i) {
        if (i > 0) out += i + 1 == variants.size() ? " and " : ", ";
        out += "." + project.row().variants[variants[i]].className;
    }
    return out;
}

std::string headSentence(const project::Project& project, const std::vector<std::size_t>& variants) {
    const std::string of = variants.size() > 1 ? " with the classes " : " with the class ";
    return (project.name.empty() ? "Row of cards" : project.name + ": row of cards") + of +
           classList(project, variants) + ", for viewports from " + units::number(project.leastWidth) +
           " to " + units::number(project.mostWidth) + " px wide. Made with Tenter.";
}

}  // namespace tenter::emit
