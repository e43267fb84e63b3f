#include "css/selectors.h"

#include <algorithm>

namespace tenter::css {

namespace {

Specificity plus(Specificity one, Specificity other) {
    return {one.a + other.a, one.b + other.b, one.c + other.c};
}

Specificity mostOf(const SelectorList& list) {
    Specificity most;
    for (const Complex& selector : list)
        most = std::max(most, specificityOf(selector));
    return most;
}

Specificity specificityOfSimple(const Simple& simple) {
    switch (simple.kind) {
        case SimpleKind::Universal:
            return {};
        case SimpleKind::Type:
            return {0, 0, 1};
        case SimpleKind::Id:
            return {1, 0, 0};
        case SimpleKind::Class:
        case SimpleKind::Attribute:
            return {0, 1, 0};
        case SimpleKind::PseudoClass:
            break;
    }
    if (simple.name == "where") return {};
    const Specificity arguments = mostOf(simple.arguments);
    const bool isItsArguments =
        simple.name == "is" || simple.name == "not" || simple.name == "has" || simple.name == "-webkit-any";
    return isItsArguments ? arguments : plus({0, 1, 0}, arguments);
}

}  // namespace

Specificity specificityOf(const Complex& selector) {
    Specificity sum;
    for (const Compound& compound : selector.compounds) {
        for (const Simple& simple : compound.simples)
            sum = plus(sum, specificityOfSimple(simple));
        sum.c += static_cast<int>(compound.pseudoElements.size());
    }
    return sum;
}

bool isDynamic(const Complex& selector) {
    return std::ranges::any_of(selector.compounds, [](const Compound& compound) {
        return std::ranges::any_of(compound.simples, [](const Simple& simple) {
            return simple.dynamic || std::ranges::any_of(simple.arguments, isDynamic);
        });
    });
}

}  // namespace tenter::css
