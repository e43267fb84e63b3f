#include "start/sheet_elements.h"

#include <algorithm>

#include "css/ascii.h"
#include "markup/class_words.h"

namespace tenter::start {

namespace {

using Chain = std::vector<ElementKey>;

constexpr std::size_t mostElements = 4000;
constexpr std::size_t longestChain = 12;

void addTo(ElementKey& key, const ElementKey& other) {
    if (key.tag.empty()) key.tag = other.tag;
    key.classes.insert(key.classes.end(), other.classes.begin(), other.classes.end());
    std::ranges::sort(key.classes);
    key.classes.erase(std::unique(key.classes.begin(), key.classes.end()), key.classes.end());
}

Chain chainOf(const css::Complex& selector, int depth);

/// Adds what a simple selector says to the element, and the elements around it to the chain.
void addSimple(const css::Simple& simple, ElementKey& key, Chain& chain, int depth) {
    constexpr int deepest = 8;
    if (simple.kind == css::SimpleKind::Type) {
        key.tag = css::lowered(simple.name);
    } else if (simple.kind == css::SimpleKind::Class) {
        addTo(key, {"", {simple.name}});
    } else if (simple.kind == css::SimpleKind::PseudoClass && !simple.arguments.empty() && depth < deepest &&
               (simple.name == "is" || simple.name == "where")) {
        Chain inner = chainOf(simple.arguments.front(), depth + 1);
        if (inner.empty()) return;
        addTo(key, inner.back());
        inner.pop_back();
        chain.insert(chain.end(), inner.begin(), inner.end());
    }
}

/// The elements that a selector names, outermost first; siblings are left out.
Chain chainOf(const css::Complex& selector, int depth) {
    Chain chain;
    for (const css::Compound& compound : selector.compounds) {
        ElementKey key;
        Chain around;
        for (const css::Simple& simple : compound.simples)
            addSimple(simple, key, around, depth);
        const bool isBeside = compound.combinator == css::Combinator::NextSibling ||
                              compound.combinator == css::Combinator::SubsequentSibling;
        if (isBeside && !chain.empty()) chain.pop_back();
        chain.insert(chain.end(), around.begin(), around.end());
        chain.push_back(std::move(key));
    }
    const bool hasSubject = !chain.empty() && !chain.back().isEmpty();
    if (!hasSubject) return {};
    const ElementKey subject = chain.back();
    std::erase_if(chain, [](const ElementKey& key) {
        return key.isEmpty() || (key.classes.empty() && (key.tag == "html" || key.tag == "body"));
    });
    if (chain.empty() || chain.back() != subject || chain.size() > longestChain) return {};
    return chain;
}

}  // namespace

std::string ElementKey::selector() const {
    std::string text = tag;
    for (const std::string& name : classes)
        text.append(".").append(name);
    return text;
}

namespace {

bool holds(const std::map<std::string, std::set<std::string>>& values, const std::string& property,
           std::string_view part) {
    const auto found = values.find(property);
    return found != values.end() && std::ranges::any_of(found->second, [&](const std::string& value) {
               return value.find(part) != std::string::npos;
           });
}

}  // namespace

bool SheetElement::has(const std::string& property, std::string_view part) const {
    return holds(values, property, part);
}

bool SheetElement::alwaysHas(const std::string& property, std::string_view part) const {
    return holds(always, property, part);
}

bool SheetElement::isWithin(const ElementKey& other) const {
    return std::ranges::find(around, other) != around.end();
}

std::vector<SheetElement> elementsOf(const css::Sheet& sheet) {
    std::vector<SheetElement> all;
    std::map<ElementKey, std::size_t> known;
    for (const css::StyleRule& rule : sheet.rules)
        for (const css::Complex& selector : rule.selectors) {
            if (!selector.pseudoElements().empty()) continue;
            Chain chain = chainOf(selector, 0);
            if (chain.empty()) continue;
            ElementKey key = std::move(chain.back());
            chain.pop_back();
            const auto [found, isNew] = known.try_emplace(key, all.size());
            if (isNew) {
                if (all.size() >= mostElements) return all;
                SheetElement element{key, {}, {}, {}, {}};
                for (const std::string& name : key.classes)
                    for (std::string& word : markup::wordsOf(name))
                        element.words.push_back(std::move(word));
                all.push_back(std::move(element));
            }
            SheetElement& element = all[found->second];
            if (chain.size() > element.around.size()) element.around = std::move(chain);
            for (const css::Declaration& declaration : rule.declarations) {
                std::string value = css::lowered(declaration.value);
                if (!rule.condition) element.always[declaration.property].insert(value);
                element.values[declaration.property].insert(std::move(value));
            }
        }
    return all;
}

}  // namespace tenter::start
