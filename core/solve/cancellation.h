// Cancelling long work of the solver.
#pragma once

#include <stop_token>

namespace tenter::solve {

/// Thrown inside the solver when its caller asks it to stop. `solve`, `leewayOf` and `allowedSizes` catch it:
/// it never leaves `core`.
struct Cancelled {};

/// Throws `Cancelled` if a stop was requested. Long loops call it at least every 50 ms.
inline void throwIfStopped(const std::stop_token& cancellation) {
    if (cancellation.stop_requested()) throw Cancelled();
}

}  // namespace tenter::solve
