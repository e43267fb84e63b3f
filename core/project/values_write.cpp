#include <cmath>

#include "project/values.h"
#include "units/number.h"

namespace tenter::project {

Json written(double value) {
    // Whole numbers of this size are exact in both types.
    if (std::abs(value) < 1e15 && value == std::floor(value)) return static_cast<std::int64_t>(value);
    return value;
}

Json written(int value) {
    return value;
}
Json written(bool value) {
    return value;
}
Json written(const std::string& value) {
    return value;
}
Json written(const std::vector<std::string>& value) {
    return value;
}
Json written(const Length& value) {
    return value.css();
}
Json written(const Colour& value) {
    return value.css();
}

Json written(const LineHeight& value) {
    return value.isNumber() ? written(value.number()) : Json(value.css());
}

Json written(const Ramp& value) {
    if (value.from().width == value.to().width) return written(value.from().size);
    Json points = Json::array();
    for (const units::RampPoint& point : {value.from(), value.to()}) {
        points.push_back(Json::array({written(point.width), written(point.size)}));
    }
    return points;
}

Json written(const units::RootSize& value) {
    return value.isNumber() ? written(value.number()) : Json(value.css());
}

Json written(const Ratio& value) {
    return value.isOwn() ? "own" : units::number(value.width) + "/" + units::number(value.height);
}

}  // namespace tenter::project
