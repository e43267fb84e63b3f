#include "text/profile.h"

namespace tenter::text {

const BreakProfile* profile(std::string_view name) {
    if (name == blink().name()) return &blink();
    return nullptr;
}

}  // namespace tenter::text
