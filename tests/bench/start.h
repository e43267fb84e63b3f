// From starting a process to the first paint of the window with a sample in it, and the memory it then holds.
#pragma once

namespace tenter::bench {

/// The child's part: opens a sample, paints, prints one line of figures. Returns the exit code.
int startOnce(int argc, char** argv);

}  // namespace tenter::bench
