// Decoding the bytes of a page.
#pragma once

#include <string>
#include <string_view>

#include "project/problem.h"

namespace tenter::markup {

/// The text of a page, and the encoding that it was read in, by its name in WHATWG Encoding § 4.2.
struct Characters {
    std::string utf8;
    std::string encoding;
};

/// The text of a page: decoded by its byte order mark, else by a `meta` element in the first 1024 bytes, else
/// as UTF-8 if the bytes are valid UTF-8, else as windows-1252. HTML § 13.2.3.2. Invalid bytes become U+FFFD.
/// An unknown encoding is a problem; the page is then read as if it named none.
Characters charactersOf(std::string_view bytes, const std::string& file, project::Problems& problems);

}  // namespace tenter::markup
