#include "project/reading.h"

namespace tenter::project {

namespace {
constexpr std::size_t mostProblems = 100;
}

Reading::Step::Step(Reading& reading, std::string_view key)
    : reading_(reading), length_(reading.place_.size()) {
    reading.place_ += '/';
    for (const char c : key) {
        if (c == '~') {
            reading.place_ += "~0";
        } else if (c == '/') {
            reading.place_ += "~1";
        } else {
            reading.place_ += c;
        }
    }
}

bool Reading::wrong(std::string what, std::string mend) {
    return wrongAt(place_.empty() ? "/" : place_, std::move(what), std::move(mend));
}

bool Reading::wrongAt(std::string place, std::string what, std::string mend) {
    if (problems_.size() < before_ + mostProblems)
        problems_.push_back({file_, std::move(place), std::move(what), std::move(mend)});
    return false;
}

}  // namespace tenter::project
