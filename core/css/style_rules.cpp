// Finding the rules for an element.
#include <algorithm>
#include <limits>

#include "css/ascii.h"
#include "css/cascade.h"
#include "css/media.h"

namespace tenter::css {

namespace {

/// What an element must have for the last compound of a selector to match it.
const Simple* required(const Complex& selector, SimpleKind kind) {
    const std::vector<Simple>& simples = selector.compounds.back().simples;
    const auto found = std::ranges::find(simples, kind, &Simple::kind);
    return found == simples.end() ? nullptr : &*found;
}

std::vector<std::string> wordsOf(std::string_view text) {
    std::vector<std::string> words;
    std::string word;
    for (const char c : text) {
        if (!isSpace(c)) {
            word += c;
        } else if (!word.empty()) {
            words.push_back(std::move(word));
            word.clear();
        }
    }
    if (!word.empty()) words.push_back(std::move(word));
    return words;
}

bool isFor(const Complex& selector, std::string_view pseudo) {
    const std::vector<PseudoElement>& elements = selector.pseudoElements();
    return elements.empty() ? pseudo.empty() : elements.front().name == pseudo;
}

}  // namespace

StyleRules::StyleRules(const Elements& elements, const Sheet& browser, const Sheet& page)
    : elements_(elements), browser_(browser), page_(page) {
    sort(browser, Origin::Browser);
    sort(page, Origin::Page);
}

void StyleRules::sort(const Sheet& sheet, Origin origin) {
    for (std::size_t r = 0; r < sheet.rules.size(); ++r) {
        for (std::size_t s = 0; s < sheet.rules[r].selectors.size(); ++s) {
            const Complex& selector = sheet.rules[r].selectors[s];
            const Entry entry{origin, r, s};
            if (const Simple* id = required(selector, SimpleKind::Id))
                byId_[id->name].push_back(entry);
            else if (const Simple* name = required(selector, SimpleKind::Class))
                byClass_[name->name].push_back(entry);
            else if (const Simple* tag = required(selector, SimpleKind::Type))
                byTag_[lowered(tag->name)].push_back(entry);
            else
                others_.push_back(entry);
        }
    }
}

template <class Found>
void StyleRules::forCandidates(Elements::Element element, Found found) const {
    const auto all = [&](const auto& map, const std::string& key) {
        if (const auto entries = map.find(key); entries != map.end())
            for (const Entry& entry : entries->second)
                found(entry);
    };
    if (const auto id = elements_.attribute(element, "id")) all(byId_, std::string(*id));
    std::vector<std::string> classes = wordsOf(elements_.attribute(element, "class").value_or(""));
    std::ranges::sort(classes);
    classes.erase(std::unique(classes.begin(), classes.end()), classes.end());
    for (const std::string& name : classes)
        all(byClass_, name);
    all(byTag_, lowered(elements_.tag(element)));
    for (const Entry& entry : others_)
        found(entry);
}

// CSS Cascade 5 § 6.1: origin and importance, then style attributes, then layers.
long StyleRules::rankOf(const Applying& applying) const {
    const long layers = static_cast<long>(page_.layers.size());
    if (applying.origin == Origin::Browser) return applying.declaration->important ? 5 + 2 * layers : 0;
    if (applying.origin == Origin::Attribute)
        return applying.declaration->important ? 4 + 2 * layers : 2 + layers;
    const long layer = applying.rule->layer ? static_cast<long>(*applying.rule->layer) : layers;
    return applying.declaration->important ? 3 + 2 * layers - layer : 1 + layer;
}

std::vector<Applying> StyleRules::applyingTo(Elements::Element element, std::string_view pseudo,
                                             ActivePseudoClasses active) const {
    // A rule counts once, with its most specific selector that matches.
    std::map<std::pair<Origin, std::size_t>, Specificity> matched;
    forCandidates(element, [&](const Entry& entry) {
        const StyleRule& rule = sheetOf(entry.origin).rules[entry.rule];
        const Complex& selector = rule.selectors[entry.selector];
        if (!isFor(selector, pseudo) || !matches(selector, elements_, element, active)) return;
        const Specificity specificity = specificityOf(selector);
        const auto [known, isNew] = matched.try_emplace({entry.origin, entry.rule}, specificity);
        if (!isNew && known->second < specificity) known->second = specificity;
    });
    std::vector<Applying> found;
    const auto add = [&](const Declaration& declaration, const StyleRule* rule, Origin origin,
                         Specificity specificity) {
        Applying one{&declaration, rule, origin, specificity, 0, found.size()};
        one.rank = rankOf(one);
        found.push_back(one);
    };
    for (const auto& [key, specificity] : matched) {
        const StyleRule& rule = sheetOf(key.first).rules[key.second];
        for (const Declaration& declaration : rule.declarations)
            add(declaration, &rule, key.first, specificity);
    }
    const auto style = elements_.attribute(element, "style");
    if (!pseudo.empty() || !style) return found;
    auto attribute = attributes_.find(element);
    if (attribute == attributes_.end()) {
        Problems ignored;
        attribute = attributes_.emplace(element, readDeclarations(*style, ignored)).first;
    }
    for (const Declaration& declaration : attribute->second)
        add(declaration, nullptr, Origin::Attribute, {});
    return found;
}

const std::vector<Applying>& StyleRules::atRest(Elements::Element element) const {
    auto known = known_.find(element);
    if (known == known_.end()) known = known_.emplace(element, applyingTo(element)).first;
    return known->second;
}

std::set<std::size_t> StyleRules::pageRulesFor(Elements::Element element, ActivePseudoClasses active) const {
    std::set<std::size_t> found;
    forCandidates(element, [&](const Entry& entry) {
        if (entry.origin != Origin::Page || found.contains(entry.rule)) return;
        if (matches(page_.rules[entry.rule].selectors[entry.selector], elements_, element, active))
            found.insert(entry.rule);
    });
    return found;
}

/// The largest number of declarations, of all elements and intervals together. Common pages have some
/// thousand declarations and twenty intervals.
constexpr std::size_t mostReadings = 2'000'000;

std::vector<double> intervalEnds(const StyleRules& rules, const std::vector<Elements::Element>& elements,
                                 double least, double most) {
    std::set<const Condition*> conditions;
    std::size_t declarations = 0;
    for (const Elements::Element element : elements) {
        declarations += rules.atRest(element).size();
        for (const Applying& applying : rules.atRest(element))
            if (applying.rule != nullptr)
                for (const Condition* condition : rules.sheetOf(applying.origin).conditionsOf(*applying.rule))
                    if (condition->kind == ConditionKind::Media) conditions.insert(condition);
    }
    // The distance to the next width below a breakpoint of `min-width`. Chromium 156 compares the widths of
    // media conditions to 1/64 px: at 576 px `max-width: 575.99px` holds, `max-width: 575.98px` does not.
    constexpr double below = 0.02;
    std::set<double> ends;
    for (const Condition* condition : conditions) {
        for (const double width : mediaWidths(condition->text)) {
            const bool there = holdsOnScreen(condition->text, width);
            if (holdsOnScreen(condition->text, width - below) != there) ends.insert(width - below);
            if (holdsOnScreen(condition->text, width + below) != there) ends.insert(width);
        }
    }
    std::vector<double> inside;
    for (const double end : ends)
        if (end > least && end < most) inside.push_back(end);
    // Each interval reads the declarations again.
    const std::size_t limit =
        std::clamp<std::size_t>(mostReadings / (declarations + 1), 10, mostIntervalEnds);
    if (inside.size() <= limit) return inside;
    // Those left are spread over all of them.
    std::vector<double> spread;
    spread.reserve(limit);
    for (std::size_t i = 0; i < limit; ++i)
        spread.push_back(inside[i * inside.size() / limit]);
    return spread;
}

}  // namespace tenter::css
