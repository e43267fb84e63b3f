// What the fuzz targets share. A target is the function `test` in a file of its own: any bytes are its input,
// and a broken invariant ends the program, which libFuzzer reports with the input.
#pragma once

#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <string_view>

#include "project/problem.h"

namespace tenter::fuzz {

/// Ends the program with `what` unless `holds`.
inline void require(bool holds, std::string_view what) {
    if (holds) return;
    std::fprintf(stderr, "Invariant broken: %.*s\n", static_cast<int>(what.size()), what.data());
    std::abort();
}

/// Requires that each problem is one line that says what is wrong.
inline void requireReadable(const project::Problems& problems) {
    for (const project::Problem& problem : problems) {
        require(!problem.what.empty(), "a problem says what is wrong");
        require(problem.line().find('\n') == std::string::npos, "a problem is one line");
    }
}

/// The input as text.
inline std::string_view textOf(const std::uint8_t* data, std::size_t size) {
    return {reinterpret_cast<const char*>(data), size};
}

/// Tests one input of `size` bytes. Each target defines it.
void test(const std::uint8_t* data, std::size_t size);

}  // namespace tenter::fuzz
