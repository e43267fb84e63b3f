#include "css/match.h"

#include <algorithm>
#include <iterator>
#include <unordered_set>
#include <vector>

#include "css/ascii.h"
#include "css/attribute_match.h"

namespace tenter::css {

namespace {

using Element = Elements::Element;
using Step = std::optional<Element> (Elements::*)(Element) const;

class Matcher {
public:
    Matcher(const Elements& elements, ActivePseudoClasses active)
        : elements_(elements), active_(active), optimistic_(elements.assumesSiblings()) {}

    // Goes from the subject to the left with the set of all elements that a compound can match. Trying one
    // element at a time would take exponential time for many combinators.
    [[nodiscard]] bool is(Element element, const Complex& selector) const {
        if (!is(element, selector.compounds.back())) return false;
        std::vector<Element> candidates = {element};
        // Elements beside which the tree may lack one that matches. Its ancestors are theirs.
        std::vector<Element> besideMissing;
        for (std::size_t i = selector.compounds.size() - 1; i > 0; --i) {
            if (candidates.size() == 1 && besideMissing.empty() && hasOnlyDescendants(selector, i))
                return hasAncestors(candidates.front(), selector, i);
            const Combinator combinator = selector.compounds[i].combinator;
            if (isBeside(combinator)) {
                if (optimistic_)
                    std::ranges::copy_if(candidates, std::back_inserter(besideMissing),
                                         [&](Element one) { return !elements_.knowsSiblings(one); });
            } else {
                candidates.insert(candidates.end(), besideMissing.begin(), besideMissing.end());
                besideMissing.clear();
            }
            candidates = before(candidates, combinator);
            keepThose(candidates, selector.compounds[i - 1]);
            if (candidates.empty() && besideMissing.empty()) return false;
        }
        return true;
    }

    [[nodiscard]] bool is(Element element, const SelectorList& list) const {
        return std::ranges::any_of(list, [&](const Complex& selector) { return is(element, selector); });
    }

private:
    static bool isBeside(Combinator combinator) {
        return combinator == Combinator::NextSibling || combinator == Combinator::SubsequentSibling;
    }

    /// True if compound `end` and those before it are joined by the descendant combinator only.
    static bool hasOnlyDescendants(const Complex& selector, std::size_t end) {
        const auto first = selector.compounds.begin();
        return std::all_of(
            first + 1, first + static_cast<std::ptrdiff_t>(end) + 1,
            [](const Compound& compound) { return compound.combinator == Combinator::Descendant; });
    }

    /// True if ancestors of `element` match the compounds before `end`, in their order. The nearest ancestor
    /// that matches leaves the most for the others.
    [[nodiscard]] bool hasAncestors(Element element, const Complex& selector, std::size_t end) const {
        std::optional<Element> ancestor = element;
        while (end-- > 0) {
            do {
                ancestor = elements_.parent(*ancestor);
                if (!ancestor) return false;
            } while (!is(*ancestor, selector.compounds[end]));
        }
        return true;
    }

    void keepThose(std::vector<Element>& candidates, const Compound& compound) const {
        std::erase_if(candidates, [&](Element each) { return !is(each, compound); });
    }

    // The elements reached from `from` by `step`, taken once or repeatedly; each element once.
    [[nodiscard]] std::vector<Element> along(const std::vector<Element>& from, Step step, bool once) const {
        std::vector<Element> met;
        std::unordered_set<Element> known;
        for (const Element start : from) {
            std::optional<Element> next = (elements_.*step)(start);
            while (next && known.insert(*next).second) {
                met.push_back(*next);
                if (once) break;
                next = (elements_.*step)(*next);
            }
        }
        return met;
    }

    [[nodiscard]] std::vector<Element> before(const std::vector<Element>& from, Combinator combinator) const {
        const bool once = combinator == Combinator::Child || combinator == Combinator::NextSibling;
        const bool up = combinator == Combinator::Child || combinator == Combinator::Descendant;
        return along(from, up ? &Elements::parent : &Elements::previousSibling, once);
    }

    [[nodiscard]] std::vector<Element> childrenOf(const std::vector<Element>& from) const {
        std::vector<Element> children = along(from, &Elements::firstChild, true);
        const std::vector<Element> further = along(children, &Elements::nextSibling, false);
        children.insert(children.end(), further.begin(), further.end());
        return children;
    }

    [[nodiscard]] std::vector<Element> descendantsOf(const std::vector<Element>& from) const {
        std::vector<Element> met;
        std::unordered_set<Element> known;
        std::vector<Element> level = from;
        while (!level.empty()) {
            std::vector<Element> next;
            for (const Element child : childrenOf(level)) {
                if (known.insert(child).second) next.push_back(child);
            }
            met.insert(met.end(), next.begin(), next.end());
            level = std::move(next);
        }
        return met;
    }

    [[nodiscard]] std::vector<Element> after(const std::vector<Element>& from, Combinator combinator) const {
        switch (combinator) {
            case Combinator::Descendant:
                return descendantsOf(from);
            case Combinator::Child:
                return childrenOf(from);
            case Combinator::NextSibling:
                return along(from, &Elements::nextSibling, true);
            case Combinator::SubsequentSibling:
                break;
        }
        return along(from, &Elements::nextSibling, false);
    }

    // :has(): the same in the other direction.
    [[nodiscard]] bool has(Element element, const Complex& selector) const {
        std::vector<Element> candidates = {element};
        for (const Compound& compound : selector.compounds) {
            candidates = after(candidates, compound.combinator);
            keepThose(candidates, compound);
            if (candidates.empty()) return false;
        }
        return true;
    }

    [[nodiscard]] bool is(Element element, const Compound& compound) const {
        return std::ranges::all_of(compound.simples,
                                   [&](const Simple& simple) { return is(element, simple); });
    }

    [[nodiscard]] bool is(Element element, const Simple& simple) const {
        switch (simple.kind) {
            case SimpleKind::Universal:
                return true;
            case SimpleKind::Type:
                return sameIgnoringCase(elements_.tag(element), simple.name);
            case SimpleKind::Id:
                return elements_.attribute(element, "id") == simple.name;
            case SimpleKind::Class:
                return hasWord(elements_.attribute(element, "class").value_or(""), simple.name);
            case SimpleKind::Attribute: {
                const std::optional<std::string_view> actual = elements_.attribute(element, simple.name);
                return actual && attributeMatches(simple, *actual);
            }
            case SimpleKind::PseudoClass:
                break;
        }
        if (simple.dynamic) return std::ranges::find(active_, simple.name) != active_.end();
        return isPseudoClass(element, simple);
    }

    [[nodiscard]] bool isPseudoClass(Element element, const Simple& simple) const {
        const std::string& name = simple.name;
        if (name == "is" || name == "where" || name == "-webkit-any") return is(element, simple.arguments);
        if (name == "not") {
            optimistic_ = !optimistic_;
            const bool matched = is(element, simple.arguments);
            optimistic_ = !optimistic_;
            return !matched;
        }
        if (name == "has") {
            const std::optional<Element> child = elements_.firstChild(element);
            return std::ranges::any_of(simple.arguments,
                                       [&](const Complex& selector) { return has(element, selector); }) ||
                   (optimistic_ && child && !elements_.knowsSiblings(*child));
        }
        if (name == "root" || name == "scope") return !elements_.parent(element);
        if (name == "empty") return elements_.isEmpty(element);
        if (name == "link" || name == "any-link" || name == "-webkit-any-link") return isLink(element);
        if (name == "lang") return isOfLanguage(element, simple.words);
        if (name == "dir") return sameIgnoringCase(directionOf(element), simple.words.front());
        if (name == "defined") return true;
        if (name.starts_with("host")) return false;
        return isPlaced(element, simple);
    }

    // § 13.3 to § 13.5.
    [[nodiscard]] bool isPlaced(Element element, const Simple& simple) const {
        const std::string& name = simple.name;
        if (!elements_.knowsSiblings(element)) return optimistic_;
        const auto isFirst = [&](Step step) { return alike(element, step, simple) == 0; };
        if (name.starts_with("first-")) return isFirst(&Elements::previousSibling);
        if (name.starts_with("last-")) return isFirst(&Elements::nextSibling);
        if (name.starts_with("only-"))
            return isFirst(&Elements::previousSibling) && isFirst(&Elements::nextSibling);
        if (!simple.arguments.empty() && !is(element, simple.arguments)) return false;
        const bool fromEnd = name.starts_with("nth-last-");
        const Step step = fromEnd ? &Elements::nextSibling : &Elements::previousSibling;
        const long index = alike(element, step, simple) + 1;
        const long past = index - simple.nth.offset;
        if (simple.nth.step == 0) return past == 0;
        return past % simple.nth.step == 0 && past / simple.nth.step >= 0;
    }

    // The number of siblings on one side that count.
    [[nodiscard]] long alike(Element element, Step step, const Simple& simple) const {
        const bool ofType = simple.name.ends_with("-of-type");
        long count = 0;
        for (std::optional<Element> each = (elements_.*step)(element); each;
             each = (elements_.*step)(*each)) {
            if (ofType && !sameIgnoringCase(elements_.tag(*each), elements_.tag(element))) continue;
            if (simple.arguments.empty() || is(*each, simple.arguments)) ++count;
        }
        return count;
    }

    // HTML, pseudo-classes: hyperlinks.
    [[nodiscard]] bool isLink(Element element) const {
        const std::string_view tag = elements_.tag(element);
        return (sameIgnoringCase(tag, "a") || sameIgnoringCase(tag, "area")) &&
               elements_.attribute(element, "href");
    }

    [[nodiscard]] std::string_view inherited(Element element, std::string_view name) const {
        for (std::optional<Element> each = element; each; each = elements_.parent(*each)) {
            if (const auto value = elements_.attribute(*each, name)) return *value;
        }
        return {};
    }

    [[nodiscard]] std::string_view directionOf(Element element) const {
        const std::string_view direction = inherited(element, "dir");
        return direction.empty() ? "ltr" : direction;
    }

    // § 8.2, without `*` inside a range.
    [[nodiscard]] bool isOfLanguage(Element element, const std::vector<std::string>& ranges) const {
        const std::string_view language = inherited(element, "lang");
        return std::ranges::any_of(ranges, [&](std::string_view range) {
            if (range == "*") return !language.empty();
            if (!sameIgnoringCase(language.substr(0, range.size()), range)) return false;
            return language.size() == range.size() || (!range.empty() && language[range.size()] == '-');
        });
    }

    const Elements& elements_;
    ActivePseudoClasses active_;
    /// Whether a condition on siblings that are not known is true; not so inside `:not()`.
    mutable bool optimistic_ = true;
};

}  // namespace

bool matches(const Complex& selector, const Elements& elements, Elements::Element element,
             ActivePseudoClasses active) {
    return Matcher(elements, active).is(element, selector);
}

bool matches(const SelectorList& list, const Elements& elements, Elements::Element element,
             ActivePseudoClasses active) {
    return Matcher(elements, active).is(element, list);
}

}  // namespace tenter::css
