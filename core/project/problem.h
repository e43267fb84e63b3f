// What is wrong with an input, where, and how to mend it.
#pragma once

#include <string>
#include <vector>

namespace tenter::project {

struct Problem {
    std::string file;
    std::string place;  ///< `line 3, column 14`, or a JSON pointer such as `/variants/0/class`
    std::string what;   ///< what is wrong
    std::string mend;   ///< what to do about it
    /// `FILE: PLACE: WHAT; MEND` on one line, control characters made visible.
    [[nodiscard]] std::string line() const;
};

using Problems = std::vector<Problem>;

}  // namespace tenter::project
