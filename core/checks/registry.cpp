#include "checks/registry.h"

#include <algorithm>

namespace tenter::checks {

#define TENTER_CHECK(check) extern const Check check;
#include "checks/checks.def"
#undef TENTER_CHECK

const std::vector<const Check*>& registry() {
    static const std::vector<const Check*> all{
#define TENTER_CHECK(check) &(check),
#include "checks/checks.def"
#undef TENTER_CHECK
    };
    return all;
}

const std::vector<std::string_view>& checkNames() {
    static const std::vector<std::string_view> names = [] {
        std::vector<std::string_view> sorted;
        for (const Check* check : registry())
            sorted.push_back(check->name);
        std::ranges::sort(sorted);
        sorted.erase(std::unique(sorted.begin(), sorted.end()), sorted.end());
        return sorted;
    }();
    return names;
}

bool isCheckName(std::string_view name) {
    return std::ranges::binary_search(checkNames(), name);
}

}  // namespace tenter::checks
