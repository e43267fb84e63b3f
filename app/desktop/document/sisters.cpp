#include "document/sisters.h"

namespace tenter::desktop {

const Viewing& Sisters::of(std::size_t variant) {
    if (variant == viewing_.variant()) return viewing_;
    if (variant >= all_.size()) all_.resize(variant + 1);
    std::unique_ptr<Viewing>& sister = all_[variant];
    if (!sister) sister = std::make_unique<Viewing>(viewing_.document());
    sister->lookLike(viewing_, variant);
    return *sister;
}

}  // namespace tenter::desktop
