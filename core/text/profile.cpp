#include "text/profile.h"

namespace tenter::text {

const std::vector<const BreakProfile*>& profiles() {
    static const std::vector<const BreakProfile*> all{&blink(), &gecko()};
    return all;
}

const BreakProfile* profile(std::string_view name) {
    for (const BreakProfile* one : profiles())
        if (one->name() == name) return one;
    return nullptr;
}

}  // namespace tenter::text
