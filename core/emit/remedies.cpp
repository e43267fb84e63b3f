#include "emit/remedies.h"

#include "emit/escape.h"
#include "emit/table.h"
#include "remedy/wording.h"
#include "wording/say.h"

namespace tenter::emit {

namespace {

std::string nameOf(std::size_t finding, std::size_t index) {
    return std::to_string(finding) + "." + std::to_string(index + 1);
}

std::string changesJson(const project::Project& project, const std::vector<remedy::Change>& changes) {
    std::string out = "[";
    for (const remedy::Change& change : changes)
        out += (out.size() == 1 ? "" : ", ") + jsonString(remedy::sentenceOf(project, change));
    return out + "]";
}

}  // namespace

std::string remediesJson(const project::Project& project, std::size_t number,
                         const std::vector<remedy::Remedy>& remedies) {
    std::string out = "[";
    for (std::size_t i = 0; i < remedies.size(); ++i) {
        const remedy::Remedy& one = remedies[i];
        out += (i > 0 ? ", {" : "{");
        out += "\"remedy\": " + jsonString(nameOf(number, i)) + ", \"label\": " + jsonString(one.label) +
               ", \"where\": " + jsonString(one.where) +
               ", \"removes\": " + (one.removes ? "true" : "false") +
               ", \"shareAfter\": " + jsonNumber(one.shareAfter) +
               ", \"lost\": " + changesJson(project, one.lost) +
               ", \"gained\": " + changesJson(project, one.gained) +
               ", \"grown\": " + changesJson(project, one.grown) +
               ", \"moves\": " + jsonNumber(one.move.distance);
        if (one.move.distance > 0) out += ", \"movesAt\": " + jsonNumber(one.move.width);
        out += "}";
    }
    return out + "]";
}

std::vector<std::string> remedyLines(const project::Project& project, std::size_t number,
                                     const std::vector<remedy::Remedy>& remedies,
                                     const std::string& shareOf) {
    std::vector<std::string> lines;
    for (std::size_t i = 0; i < remedies.size(); ++i) {
        //: The number of a remedy, what it changes, and its effect
        lines.push_back(
            wording::say("Remedy %1: %2. %3", {nameOf(number, i), oneLine(remedy::titleOf(remedies[i])),
                                               remedy::effectOf(remedies[i], shareOf)}));
        for (const std::string& change : remedy::changesOf(project, remedies[i]))
            lines.push_back("  " + oneLine(change));
    }
    return lines;
}

}  // namespace tenter::emit
