// The short notation of a kind of wish: `ROLE.NAME=VALUE`.
#pragma once

#include <string_view>

#include "solve/notation_reader.h"

namespace tenter::solve {

struct WishKey {
    std::string_view name;     ///< `measure`
    std::string_view example;  ///< a value: `35-75`
    std::string_view help;     ///< what the value means and its range, one line
    /// Reads `value` into `entry`, an entry of a project's `wishes`; false if it is invalid, with a problem.
    bool (*read)(NotationReader& reader, const std::string& value, project::Json& entry);
};

}  // namespace tenter::solve
