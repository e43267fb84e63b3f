// Which characters a page's bytes are.
#pragma once

#include <string>
#include <string_view>

#include "project/problem.h"

namespace tenter::markup {

/// A page's text, and by which encoding it was read, named as WHATWG Encoding § 4.2 does.
struct Characters {
    std::string utf8;
    std::string encoding;
};

/// Reads a page's bytes: by a byte order mark, else by what a `meta` element in the first 1024 bytes says,
/// else as UTF-8 if they are UTF-8, else as windows-1252. HTML § 13.2.3.2. What cannot be read becomes
/// U+FFFD. An encoding that is not known is noted as a problem, and the page read as if it said nothing.
Characters charactersOf(std::string_view bytes, const std::string& file, project::Problems& problems);

}  // namespace tenter::markup
