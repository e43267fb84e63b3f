// Reads one declaration. CSS Syntax 3 § 5.5.6.
#pragma once

#include <string_view>

#include "css/rules.h"
#include "css/token_cursor.h"

namespace tenter::css {

enum class DeclarationOutcome {
    Read,
    Dropped,  ///< a declaration, but a wrong one, which has been told
    NotOne,   ///< the cursor stands where it stood
};

/// Reads up to the semicolon, the end, or, if `inBlock`, the closing brace, none of which it takes.
DeclarationOutcome readDeclaration(TokenCursor& cursor, std::string_view source, bool inBlock,
                                   Declaration& declaration, Problems& problems);

/// Adds a problem unless there are a thousand.
void tellOf(Problems& problems, std::size_t offset, std::string what, std::string mend);

}  // namespace tenter::css
