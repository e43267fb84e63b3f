#include "emit/allowed.h"

#include "emit/escape.h"
#include "units/number.h"

namespace tenter::emit {

namespace {

std::string curvesJson(const std::vector<sweep::Curve>& curves) {
    std::string out = "[";
    for (const sweep::Curve& curve : curves) {
        out += out.size() == 1 ? "[" : ", [";
        for (std::size_t i = 0; i < curve.size(); ++i)
            out += (i > 0 ? ", [" : "[") + units::number(curve[i].width) + ", " +
                   units::number(curve[i].value) + "]";
        out += "]";
    }
    return out + "]";
}

}  // namespace

std::string allowedJson(const std::vector<std::pair<std::string, solve::Allowed>>& roles) {
    std::string out = "{";
    for (const auto& [role, allowed] : roles)
        out += (out.size() == 1 ? "\n " : ",\n ") + jsonString(role) +
               ": {\"most\": " + curvesJson(allowed.most) + ", \"least\": " + curvesJson(allowed.least) + "}";
    return out + "\n}\n";
}

}  // namespace tenter::emit
