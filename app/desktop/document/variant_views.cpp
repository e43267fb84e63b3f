#include "document/variant_views.h"

namespace tenter::desktop {

const Viewing& VariantViews::of(std::size_t variant) {
    if (variant == viewing_.variant()) return viewing_;
    if (variant >= all_.size()) all_.resize(variant + 1);
    std::unique_ptr<Viewing>& view = all_[variant];
    if (!view) view = std::make_unique<Viewing>(viewing_.document());
    view->lookLike(viewing_, variant);
    return *view;
}

}  // namespace tenter::desktop
