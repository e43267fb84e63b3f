// How many memory pools the threads of the program share.
#pragma once

namespace tenter::desktop {

/// Lets all threads share two memory pools. By default the C library gives a pool of its own to each thread
/// that allocates, and each keeps what it once needed. Call it before the first thread starts. No effect on
/// other C libraries than glibc. Source: mallopt(3), M_ARENA_MAX.
void shareMemoryPools();

}  // namespace tenter::desktop
