// What is wrong with an input, where, and how to fix it.
#pragma once

#include <string>
#include <vector>

namespace tenter::project {

/// One thing that is wrong with an input.
struct Problem {
    std::string file;
    /// `LINE:COLUMN` or `LINE`, both from 1, or a JSON pointer such as `/variants/0/class`. Empty: the whole
    /// file.
    std::string place;
    std::string what;  ///< what is wrong: `"columns" must be a whole number from 1 to 12; it is 0.`
    std::string fix;   ///< how to fix it; empty where `what` already names what is allowed
    /// `LINE:COLUMN` of a `place` that is a JSON pointer. Empty: the text of the file is not at hand.
    std::string position = {};

    /// `WHAT. FIX.`: full sentences on one line, control characters made visible.
    [[nodiscard]] std::string sentence() const;
    /// `Line 3, column 14: WHAT. FIX.`, for a reader who has the text in view.
    [[nodiscard]] std::string sentenceWithPlace() const;
    /// `FILE:LINE:COLUMN: WHAT. FIX.`, or `FILE: POINTER: WHAT. FIX.` where the line is not known.
    [[nodiscard]] std::string line() const;
};

using Problems = std::vector<Problem>;

}  // namespace tenter::project
