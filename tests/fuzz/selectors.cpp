// Any bytes as selectors: valid ones lie inside the source, match in bounded time, and are the same if read
// again.
#include "../css/tree.h"
#include "css/match.h"
#include "css/nth.h"
#include "fuzz.h"

namespace {

using namespace tenter;

/// Elements with classes, ids, attributes and siblings, six deep.
css::Tree elements() {
    css::Tree tree;
    auto parent = tree.add({}, "html", {{"lang", "en"}, {"dir", "ltr"}});
    for (int depth = 0; depth < 5; ++depth) {
        parent = tree.add(
            parent, depth % 2 == 0 ? "div" : "a",
            {{"class", "a b"}, {"id", std::string(1, static_cast<char>('a' + depth))}, {"href", "#"}});
        tree.add(parent, "p", {{"class", "a"}});
        tree.addText(tree.add(parent, "p", {{"title", "x-y z"}}));
    }
    return tree;
}

}  // namespace

void tenter::fuzz::test(const std::uint8_t* data, std::size_t size) {
    static const css::Tree tree = elements();
    // Time grows with the length times the elements. The longest selectors of pages have some hundred bytes.
    const std::string_view source = fuzz::textOf(data, size < 4096 ? size : 4096);
    css::readNth(source);
    css::Problems problems;
    const auto list = css::readSelectors(source, problems);
    if (!list) {
        fuzz::require(!problems.empty(), "what is not valid has a problem");
        for (const css::Problem& problem : problems)
            fuzz::require(problem.offset <= source.size(), "a problem is inside the source");
        return;
    }
    fuzz::require(!list->empty(), "a list has a selector");
    for (const css::Complex& selector : *list) {
        fuzz::require(!selector.compounds.empty(), "a selector has a compound");
        fuzz::require(selector.begin < selector.end && selector.end <= source.size(),
                      "a selector is inside the source");
        const css::Specificity counts = css::specificityOf(selector);
        fuzz::require(counts.a >= 0 && counts.b >= 0 && counts.c >= 0, "counts are not negative");
        css::isDynamic(selector);
        css::Problems none;
        const auto again =
            css::readSelectors(source.substr(selector.begin, selector.end - selector.begin), none);
        // At the start of a text U+FEFF is a byte order mark, elsewhere a letter.
        if (source.substr(selector.begin).starts_with("\xEF\xBB\xBF")) continue;
        fuzz::require(again && again->size() == 1, "a selector alone is valid, too");
        fuzz::require(css::specificityOf(again->front()) == counts,
                      "a selector alone has the same specificity");
        for (css::Elements::Element at = 0; at < tree.size(); ++at)
            fuzz::require(css::matches(selector, tree, at) == css::matches(again->front(), tree, at),
                          "a selector alone matches the same elements");
    }
}
