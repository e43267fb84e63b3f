#include "project/address.h"

#include <gtest/gtest.h>

namespace tenter::project {
namespace {

// URL § 4.4, basic URL parser: leading controls and spaces are dropped, tabs and line ends anywhere.
TEST(Address, WithASchemeOfItsOwnIsSafeOnlyIfItIsAWebOnesOrMailOrTelephone) {
    for (const char* safe :
         {"https://example.org/a?b=c", "http://example.org", "mailto:walks@example.org", "tel:+4455", "#book",
          "book/now", "/book", "../a:b", "?x=javascript:1", "", "12:30"})
        EXPECT_TRUE(isSafeAddress(safe)) << safe;
    for (const char* unsafe : {"javascript:alert(1)", "JaVaScRiPt:alert(1)", " \x01javascript:alert(1)",
                               "java\tscri\npt:alert(1)", "data:text/html,x", "vbscript:x", "file:///x"})
        EXPECT_FALSE(isSafeAddress(unsafe)) << unsafe;
}

}  // namespace
}  // namespace tenter::project
