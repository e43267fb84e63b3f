#include <gtest/gtest.h>

#include "preparing.h"
#include "text/paragraph_store.h"

namespace tenter::text {
namespace {

using test::plain;
using test::styleOf;

TEST(ParagraphStore, PreparesTheSameTextOnce) {
    ParagraphStore store(test::fonts());
    const ParagraphPtr first = store.get(plain("Low tide"), styleOf("Vollkorn"), blink());
    EXPECT_EQ(store.get(plain("Low tide"), styleOf("Vollkorn"), blink()), first);
    EXPECT_NE(store.get(plain("Low tide"), styleOf("Vollkorn"), gecko()), first);
    EXPECT_NE(store.get(plain("Low tide"), styleOf("Vollkorn", 700), blink()), first);
    EXPECT_NE(store.get(plain("Ebb tide"), styleOf("Vollkorn"), blink()), first);
    EXPECT_EQ(store.size(), 4);
}

// A key made of characters took one for the other: U+001F stood between its pieces.
TEST(ParagraphStore, KeepsTextsApartWhateverCharactersTheyHold) {
    ParagraphStore store(test::fonts());
    using project::Run;
    const project::Copy one{{Run::Kind::Link, "Ebb\x1f", "tide"}};
    const project::Copy other{{Run::Kind::Link, "Ebb", "\x1ftide"}};
    EXPECT_NE(store.get(one, styleOf("Vollkorn"), blink()), store.get(other, styleOf("Vollkorn"), blink()));
    const project::Copy split{{Run::Kind::Plain, "Ebb", ""}, {Run::Kind::Plain, "tide", ""}};
    const project::Copy whole{{Run::Kind::Plain,
                               "Ebb\x1f\x1f"
                               "0\x1ftide",
                               ""}};
    EXPECT_EQ(store.get(split, styleOf("Vollkorn"), blink())->utf8(0, 99), "Ebbtide");
    EXPECT_NE(store.get(whole, styleOf("Vollkorn"), blink())->utf8(0, 99), "Ebbtide");
}

TEST(ParagraphStore, StaysWithinItsCapacityWhileTextsChange) {
    constexpr std::size_t capacity = 256 << 10;
    ParagraphStore store(test::fonts(), capacity);
    const ParagraphPtr held = store.get(plain("Held by a row"), styleOf("Vollkorn"), blink());
    std::size_t most = 0;
    for (int i = 0; i < 2000; ++i) {
        store.get(plain("Walk number " + std::to_string(i)), styleOf("Vollkorn"), blink());
        // What is used stays.
        store.get(plain("The usual walk"), styleOf("Vollkorn"), blink());
        most = std::max(most, store.memory());
    }
    EXPECT_LE(most, capacity * 5 / 4);
    EXPECT_GT(store.size(), 20);
    EXPECT_LT(store.size(), 1000);
    // Neither what something else holds nor what is in use was prepared again.
    const std::size_t size = store.size();
    EXPECT_EQ(store.get(plain("Held by a row"), styleOf("Vollkorn"), blink()), held);
    store.get(plain("The usual walk"), styleOf("Vollkorn"), blink());
    EXPECT_EQ(store.size(), size);
}

TEST(ParagraphStore, ForgetsEverythingWhenItIsCleared) {
    ParagraphStore store(test::fonts());
    const ParagraphPtr first = store.get(plain("Low tide"), styleOf("Vollkorn"), blink());
    store.clear();
    EXPECT_EQ(store.size(), 0);
    EXPECT_EQ(store.memory(), 0);
    EXPECT_NE(store.get(plain("Low tide"), styleOf("Vollkorn"), blink()), first);
}

}  // namespace
}  // namespace tenter::text
