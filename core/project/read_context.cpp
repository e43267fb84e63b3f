#include "project/read_context.h"

#include <algorithm>

#include "project/wording.h"
#include "units/ascii.h"

namespace tenter::project {

namespace {

constexpr std::size_t mostProblems = 100;

bool isIndex(std::string_view step) {
    return !step.empty() && std::ranges::all_of(step, units::isDigit);
}

/// A step of a JSON pointer as the key it stands for. RFC 6901 § 4.
std::string keyOf(std::string_view step) {
    std::string key;
    for (std::size_t i = 0; i < step.size(); ++i) {
        if (step[i] != '~' || i + 1 == step.size()) {
            key += step[i];
            continue;
        }
        key += step[++i] == '1' ? '/' : '~';
    }
    return key;
}

}  // namespace

ReadContext::Step::Step(ReadContext& context, std::string_view key)
    : context_(context), length_(context.place_.size()) {
    context.place_ += '/';
    for (const char c : key) {
        if (c == '~') {
            context.place_ += "~0";
        } else if (c == '/') {
            context.place_ += "~1";
        } else {
            context.place_ += c;
        }
    }
}

bool ReadContext::wrong(std::string what, std::string fix) {
    return wrongAt(place_.empty() ? "/" : place_, std::move(what), std::move(fix));
}

bool ReadContext::wrongAt(std::string place, std::string what, std::string fix) {
    if (problems_.size() < before_ + mostProblems)
        problems_.push_back({file_, std::move(place), std::move(what), std::move(fix)});
    return false;
}

bool ReadContext::mustBe(const std::string& rule, const std::string& actual, std::string fix) {
    return wrong(subject() + " must be " + rule + "; it is " + actual + ".", std::move(fix));
}

std::string ReadContext::subject() const {
    std::string_view path = place_;
    bool isEntry = false;
    while (!path.empty()) {
        const std::size_t slash = path.rfind('/');
        const std::string_view step = path.substr(slash + 1);
        if (!isIndex(step)) return (isEntry ? "An entry of " : "") + inQuotes(keyOf(step));
        isEntry = true;
        path = path.substr(0, slash);
    }
    return "The file";
}

}  // namespace tenter::project
