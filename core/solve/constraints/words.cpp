// No word wider than its box. This wish always applies.
#include "checks/word_overflow.h"
#include "solve/bound_finder.h"
#include "solve/constraint.h"
#include "solve/violations.h"
#include "solve/wish_list.h"
#include "wording/say.h"

namespace tenter::solve::constraints {

namespace {

class WordsConstraint : public BoundConstraint {
public:
    WordsConstraint()
        : BoundConstraint({.name = "words", .toleranceStep = 0.0025, .isLimitedByWord = true}) {}

    void addWishes(WishList& list, const std::string& role) const override { list.add(*this, role); }

    [[nodiscard]] std::string condition(const Wish& /*wish*/) const override {
        return wording::say("no word wider than its box");
    }
    [[nodiscard]] std::string ofRole(const Wish& wish, const std::string& role) const override {
        return withCondition(role, condition(wish));
    }
    [[nodiscard]] std::optional<std::string> advice() const override {
        return wording::say("Put a soft hyphen into the word, or use a shorter word");
    }

    void addBounds(BoundFinder& finder) const override {
        const LinearRange& range = finder.range();
        finder.forEachText(wordsOf, [&](const BoundFinder::Text& text) {
            finder.add(true, range.from, range.to, finder.upperBound(text, finder.widening(), range.from),
                       finder.upperBound(text, finder.widening(), range.to));
        });
    }

    void verifyText(const VerifiedText& text, Violations& violations) const override {
        for (const checks::WordOverflow& wide :
             checks::wordOverflows(text.sizes, text.place, violations.range.from, violations.range.to))
            violations.note(wide.widths);
    }
};

}  // namespace

const Constraint& words() {
    static const WordsConstraint kind;
    return kind;
}

}  // namespace tenter::solve::constraints
