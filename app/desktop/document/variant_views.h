// One view per variant, so that several variants can be shown at the same width.
#pragma once

#include <memory>
#include <vector>

#include "document/viewing.h"

namespace tenter::desktop {

/// Keeps a prepared row and a layout for each variant, so that a new width is laid out in all of them without
/// preparing a row again.
class VariantViews {
public:
    explicit VariantViews(Viewing& viewing) : viewing_(viewing) {}
    /// The view of variant `variant`, with the width, profile and project of the current view. For the
    /// current variant this is the current view itself. The reference is valid until a variant is removed.
    const Viewing& of(std::size_t variant);

private:
    Viewing& viewing_;
    std::vector<std::unique_ptr<Viewing>> all_;  // by variant; null until `of` is called for it
};

}  // namespace tenter::desktop
