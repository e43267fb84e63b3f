#include "emit/allowed.h"

#include "emit/escape.h"
#include "units/number.h"

namespace tenter::emit {

namespace {

std::string runsJson(const std::vector<sweep::Curve>& runs) {
    std::string out = "[";
    for (const sweep::Curve& run : runs) {
        out += out.size() == 1 ? "[" : ", [";
        for (std::size_t i = 0; i < run.size(); ++i)
            out += (i > 0 ? ", [" : "[") + units::number(run[i].width) + ", " + units::number(run[i].value) +
                   "]";
        out += "]";
    }
    return out + "]";
}

}  // namespace

std::string allowedJson(const std::vector<std::pair<std::string, solve::Allowed>>& roles) {
    std::string out = "{";
    for (const auto& [role, allowed] : roles)
        out += (out.size() == 1 ? "\n " : ",\n ") + jsonString(role) +
               ": {\"most\": " + runsJson(allowed.most) + ", \"least\": " + runsJson(allowed.least) + "}";
    return out + "\n}\n";
}

}  // namespace tenter::emit
