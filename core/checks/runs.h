// Stretches that touch and say the same, as one.
#pragma once

#include <utility>

#include "sweep/pieces.h"

namespace tenter::checks {

/// Joins stretches, which come in order, as long as they say the same and are no further apart than `gap`
/// (CSS px); each run is given to `use`, a function of its widths and what it says. The last one by `finish`.
template <class What, class Use>
class Runs {
public:
    Runs(double gap, What none, Use use) : gap_(gap), what_(std::move(none)), use_(std::move(use)) {}

    void add(const sweep::Interval& stretch, const What& what) {
        if (what == what_ && stretch.from <= run_.to + gap_) {
            run_.to = stretch.to;
            return;
        }
        finish();
        run_ = stretch;
        what_ = what;
    }
    void finish() {
        if (run_.to > run_.from) use_(run_, what_);
        run_ = {};
    }

private:
    double gap_;
    sweep::Interval run_;
    What what_;
    Use use_;
};

}  // namespace tenter::checks
