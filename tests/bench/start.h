// Time from the start of the process to the first paint of a window with a sample, and the memory in use.
#pragma once

namespace tenter::bench {

/// Runs in the child process: opens a sample, paints it, prints the time in ms and the memory in MB on one
/// line. Returns the exit code.
int startOnce(int argc, char** argv);

}  // namespace tenter::bench
