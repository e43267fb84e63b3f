#include "emit/differences.h"

#include "emit/escape.h"
#include "emit/table.h"

namespace tenter::emit {

using project::Difference;

std::string differencesList(const std::vector<Difference>& differences) {
    if (differences.empty()) return "The projects do not differ.\n";
    std::string out;
    for (const Difference& difference : differences)
        out.append(oneLine(difference.says)).append("\n");
    const std::size_t count = differences.size();
    return out + std::to_string(count) + (count == 1 ? " difference.\n" : " differences.\n");
}

std::string differencesJson(const std::vector<Difference>& differences) {
    std::string out = "[";
    for (const Difference& difference : differences) {
        out += out.size() == 1 ? "\n " : ",\n ";
        out += "{\"kind\": " + jsonString(project::word(difference.kind));
        const auto member = [&](const char* key, const std::string& json) {
            out.append(", \"").append(key).append("\": ").append(json);
        };
        if (!difference.oldPlace.empty()) member("old", jsonString(difference.oldPlace));
        if (!difference.newPlace.empty()) member("new", jsonString(difference.newPlace));
        if (!difference.before.is_null()) member("before", project::compactJson(difference.before));
        if (!difference.after.is_null()) member("after", project::compactJson(difference.after));
        member("says", jsonString(difference.says));
        out += "}";
    }
    return out + (differences.empty() ? "]\n" : "\n]\n");
}

}  // namespace tenter::emit
