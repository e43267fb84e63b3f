#include "solve/registry.h"

#include <algorithm>

namespace tenter::solve {

namespace constraints {

#define TENTER_CONSTRAINT(kind) const Constraint& kind();
#include "solve/constraints.def"
#undef TENTER_CONSTRAINT

}  // namespace constraints

const std::vector<const Constraint*>& registry() {
    static const std::vector<const Constraint*> all{
#define TENTER_CONSTRAINT(kind) &constraints::kind(),
#include "solve/constraints.def"
#undef TENTER_CONSTRAINT
    };
    return all;
}

const Constraint* constraintNamed(std::string_view name) {
    for (const Constraint* kind : registry())
        if (kind->traits.name == name) return kind;
    return nullptr;
}

std::vector<const WishKey*> wishKeys() {
    std::vector<const WishKey*> keys;
    for (const Constraint* kind : registry()) {
        const WishKey* key = kind->traits.key;
        if (key != nullptr && std::ranges::find(keys, key) == keys.end()) keys.push_back(key);
    }
    return keys;
}

}  // namespace tenter::solve
