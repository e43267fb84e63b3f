// Every variant of the project, looked at as the one in view is.
#pragma once

#include <memory>
#include <vector>

#include "document/viewing.h"

namespace tenter::desktop {

/// Each has a row and a layout of its own, so that a width is laid out in all of them without making any row
/// ready anew.
class Sisters {
public:
    explicit Sisters(Viewing& viewing) : viewing_(viewing) {}
    /// Variant `variant` at the width, under the profile and with the project that is in view; for the
    /// variant in view that view itself. Stays sound until variants are fewer.
    const Viewing& of(std::size_t variant);

private:
    Viewing& viewing_;
    std::vector<std::unique_ptr<Viewing>> all_;  // by variant; empty where nobody asked
};

}  // namespace tenter::desktop
