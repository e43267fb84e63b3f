#include "session/memory_pools.h"

#include <malloc.h>

namespace tenter::desktop {

void shareMemoryPools() {
#ifdef M_ARENA_MAX
    // One for the window, one for its workers: more is not faster, and takes 1 MB for each.
    mallopt(M_ARENA_MAX, 2);
#endif
}

}  // namespace tenter::desktop
