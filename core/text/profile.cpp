#include "text/profile.h"

#include <map>
#include <mutex>
#include <utility>

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

const BreakProfile& atRatio(const BreakProfile& profile, double ratio) {
    if (ratio == 1) return profile;
    static std::mutex guard;
    static std::map<std::pair<const BreakProfile*, double>, std::unique_ptr<BreakProfile>> kept;
    const std::lock_guard<std::mutex> lock(guard);
    std::unique_ptr<BreakProfile>& made = kept[{&profile, ratio}];
    if (!made) made = profile.withRatio(ratio);
    return *made;
}

}  // namespace tenter::text
