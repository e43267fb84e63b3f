// Which numbers and lengths a project file may hold where.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "units/length.h"

namespace tenter::project {

/// Roles a project may have.
inline constexpr std::size_t mostRoles = 100;

struct NumberRule {
    std::string_view where;  ///< the end of a JSON pointer; `*` is any one step
    double least = 0;
    double most = 0;
    bool whole = false;
};

struct LengthRule {
    std::string_view where;
    unsigned units = 0;  ///< a bit for each unit or keyword
    double least = 0;
    double most = 0;
    [[nodiscard]] bool allows(units::Unit unit) const {
        return (units >> static_cast<unsigned>(unit) & 1U) != 0;
    }
    /// The units and keywords as words.
    [[nodiscard]] std::vector<std::string> words() const;
};

/// The rule for the value at JSON pointer `place`.
const NumberRule& numberRule(std::string_view place);
const LengthRule& lengthRule(std::string_view place);

/// True if `place` ends with the steps of `pattern`.
bool endsWith(std::string_view place, std::string_view pattern);

bool isClassName(std::string_view text);  ///< [A-Za-z][A-Za-z0-9_-]*
bool isRoleName(std::string_view text);   ///< [a-z][a-z0-9-]*, not `card`, `picture` or `x-…`
bool isLanguage(std::string_view text);   ///< the shape of a language tag, RFC 5646 § 2.1

}  // namespace tenter::project
