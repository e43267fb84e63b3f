// Joins neighbouring spans with the same value.
#pragma once

#include <utility>

#include "sweep/pieces.h"

namespace tenter::checks {

/// Joins spans that are added in rising order, have the same value and are at most `gap` (CSS px) apart.
/// Calls `use(span, value)` for each joined span; for the last one only on `finish()`.
template <class Value, class Use>
class RunJoiner {
public:
    RunJoiner(double gap, Value none, Use use) : gap_(gap), value_(std::move(none)), use_(std::move(use)) {}

    void add(const sweep::Interval& span, const Value& value) {
        if (value == value_ && span.from <= run_.to + gap_) {
            run_.to = span.to;
            return;
        }
        finish();
        run_ = span;
        value_ = value;
    }
    void finish() {
        if (run_.to > run_.from) use_(run_, value_);
        run_ = {};
    }

private:
    double gap_;
    sweep::Interval run_;
    Value value_;
    Use use_;
};

}  // namespace tenter::checks
