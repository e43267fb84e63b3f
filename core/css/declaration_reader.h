// Reading one declaration. CSS Syntax 3 § 5.5.6.
#pragma once

#include <string_view>

#include "css/rules.h"
#include "css/token_cursor.h"

namespace tenter::css {

/// The result of reading a declaration.
enum class DeclarationOutcome {
    Read,
    Dropped,  ///< an invalid declaration; there is a problem
    NotOne,   ///< not a declaration; the cursor has not moved
};

/// Reads a declaration. Stops before the semicolon, the end, or (if `inBlock`) the closing brace.
DeclarationOutcome readDeclaration(TokenCursor& cursor, std::string_view source, bool inBlock,
                                   Declaration& declaration, Problems& problems);

/// Adds a problem, unless there are a thousand already.
void addProblem(Problems& problems, std::size_t offset, std::string what, std::string fix);

}  // namespace tenter::css
