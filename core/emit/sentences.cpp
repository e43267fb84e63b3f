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
    const std::string_view what = follow == project::Follow::Card ? "the card's text" : "the page";
    std::string out = capitalised(role) + ": " + units::number(ramp.from().size) + " px where ";
    out += what;
    out += " is " + units::number(ramp.from().width) + " px wide, " + units::number(ramp.to().size) +
           " px where it is " + units::number(ramp.to().width);
    return out;
}

std::string columnWords(int columns) {
    return std::to_string(columns) + (columns == 1 ? " column" : " columns");
}

std::string classList(const project::Project& project, const std::vector<std::size_t>& variants) {
    std::string out;
    for (std::size_t i = 0; i < variants.size(); ++i) {
        if (i > 0) out += i + 1 == variants.size() ? " and " : ", ";
        out += "." + project.variants[variants[i]].className;
    }
    return out;
}

std::string headSentence(const project::Project& project, const std::vector<std::size_t>& variants) {
    std::string out = project.name.empty() ? "A row of cards" : project.name + ": a row of cards";
    out += ", " + classList(project, variants) + ", for pages " + units::number(project.leastWidth) + " to " +
           units::number(project.mostWidth) + " px wide. Made with Tenter.";
    return out;
}

}  // namespace tenter::emit
