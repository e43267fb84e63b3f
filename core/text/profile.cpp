#include "text/profile.h"

#include <map>
#include <mutex>
#include <utility>

namespace tenter::text {

namespace {

std::vector<const BreakProfile*>& allProfiles() {
    static std::vector<const BreakProfile*> all{
#define TENTER_PROFILE(profile) &profile(),
#include "text/profiles/profiles.def"
#undef TENTER_PROFILE
    };
    return all;
}

}  // namespace

const std::vector<const BreakProfile*>& profiles() {
    return allProfiles();
}

const BreakProfile& defaultProfile() {
    return *profiles().front();
}

const BreakProfile* profileOfBrowser(std::string_view title) {
    for (const BreakProfile* one : profiles())
        if (one->title() == title) return one;
    return nullptr;
}

AddedProfile::AddedProfile(const BreakProfile& profile) {
    allProfiles().push_back(&profile);
}

AddedProfile::~AddedProfile() {
    allProfiles().pop_back();
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
