// The values of elements in an interval of widths.
#include <algorithm>
#include <array>
#include <cmath>

#include "css/ascii.h"
#include "css/cascade.h"
#include "css/longhands.h"
#include "css/media.h"
#include "css/token_cursor.h"

namespace tenter::css {

namespace {

using Element = Elements::Element;

constexpr std::size_t longestValue = 100'000;
/// The largest number of variables and fallbacks inside each other; a value with more is invalid.
constexpr int deepestSubstitution = 100;
/// The most bytes that are read to substitute the variables of a value. Each function in it reads the text of
/// all functions inside it again.
constexpr std::size_t mostReading = 200'000;
constexpr double initialSize = 16;

/// The largest number of functions inside each other, counted by parentheses, strings included.
std::size_t deepestNesting(std::string_view text) {
    std::size_t depth = 0;
    std::size_t deepest = 0;
    for (const char c : text) {
        if (c == '(') deepest = std::max(deepest, ++depth);
        if (c == ')' && depth > 0) --depth;
    }
    return deepest;
}

/// CSS Fonts 4 § 2.5, of the initial size; the others are relative to the parent's size.
double keywordSize(std::string_view word) {
    constexpr std::array<std::pair<std::string_view, double>, 8> sizes{{{"xx-small", 9},
                                                                        {"x-small", 10},
                                                                        {"small", 13},
                                                                        {"medium", 16},
                                                                        {"large", 18},
                                                                        {"x-large", 24},
                                                                        {"xx-large", 32},
                                                                        {"xxx-large", 48}}};
    const auto* const found = std::ranges::find(sizes, word, &std::pair<std::string_view, double>::first);
    return found == sizes.end() ? 0 : found->second;
}

/// False for values of other browsers than Chromium and Firefox, which these drop: with a prefix, or with a
/// hack for older ones at the end.
bool isUnderstood(const Declaration& declaration) {
    if (declaration.property.starts_with("--")) return true;
    const std::string value = lowered(declaration.value);
    for (const char* foreign : {"-ms-", "-moz-", "-o-", "\\9", "\\0", "expression("})
        if (value.find(foreign) != std::string::npos) return false;
    return value.find("-webkit-") == std::string::npos || declaration.property == "display";
}

Line times(const Line& line, double factor) {
    return {line.atZero * factor, line.perPx * factor};
}

}  // namespace

Styles::Styles(const StyleRules& rules, double least, double most, bool rightToLeft,
               ActivePseudoClasses active)
    : rules_(rules), least_(least), most_(most), rightToLeft_(rightToLeft), active_(active) {}

bool Styles::holds(const Sheet& sheet, std::size_t condition, Element element) {
    const Condition& one = sheet.conditions[condition];
    bool holds = false;
    if (one.kind == ConditionKind::Container) {
        holds = holdsInContainer(one.text, element);
    } else {
        const auto known = conditions_.find({&sheet, condition});
        holds = known != conditions_.end()         ? known->second
                : one.kind == ConditionKind::Media ? holdsOnScreen(one.text, most_)
                                                   : isSupported(one.text);
        conditions_[{&sheet, condition}] = holds;
    }
    return holds && (!one.parent || this->holds(sheet, *one.parent, element));
}

bool Styles::applies(const Applying& applying, Element element) {
    if (applying.rule == nullptr || !applying.rule->condition) return true;
    return holds(rules_.sheetOf(applying.origin), *applying.rule->condition, element);
}

/// The width of the nearest query container around an element, with that name if it is not empty. Empty if
/// there is none, or if its width is not known.
std::optional<Line> Styles::containerOf(Element element, const std::string& name) {
    for (std::optional<Element> at = rules_.elements().parent(element); at;
         at = rules_.elements().parent(*at)) {
        const auto known = containers_.find(*at);
        if (known == containers_.end()) continue;
        const std::vector<std::string> names = valueParts(value(*at, "container-name"));
        if (name.empty() || std::ranges::find(names, name) != names.end()) return known->second;
    }
    return std::nullopt;
}

bool Styles::holdsInContainer(const std::string& condition, Element element) {
    // `name (inline-size > 400px)` as the media condition `(width > 400px)`, in horizontal text.
    std::string text = lowered(trimmed(condition));
    std::string name;
    if (const std::size_t end = text.find_first_of(" \t\n("); end != std::string::npos && isLetter(text[0])) {
        name = text.substr(0, end);
        if (name == "not")
            name.clear();
        else
            text = trimmed(text.substr(end));
    }
    for (std::size_t at = text.find("inline-size"); at != std::string::npos; at = text.find("inline-size"))
        text.replace(at, std::string_view("inline-size").size(), "width");
    const std::optional<Line> width = containerOf(element, name);
    if (!width) return false;
    const auto widthAt = [&](double viewport) { return width->atZero + width->perPx * viewport; };
    // An interval has its upper end, but not its lower one.
    constexpr double below = 0.02;
    if (std::abs(width->perPx) > 1e-9)
        for (const double limit : mediaWidths(text)) {
            const double at = (limit - width->atZero) / width->perPx;
            const Truth there = mediaHolds(text, limit);
            const bool differsBelow = mediaHolds(text, limit - below * width->perPx) != there;
            const double bend = differsBelow ? at - below : at;
            if (bend > least_ && bend < most_) bends_.insert(bend);
        }
    return mediaHolds(text, widthAt((least_ + most_) / 2)) == Truth::True;
}

const Applying* Styles::winner(Element element, const std::string& property) {
    for (std::optional<Element> at = element; at; at = rules_.elements().parent(*at)) {
        const auto& byProperty = of(*at).byProperty;
        const auto list = byProperty.find(property);
        if (list != byProperty.end() && !list->second.empty()) return &list->second.front();
        if (!isInherited(property)) return nullptr;
    }
    return nullptr;
}

Styles::Element Styles::rootOf(Element element) const {
    while (const std::optional<Element> parent = rules_.elements().parent(element))
        element = *parent;
    return element;
}

/// What 1ch, 1ex, 1cap or 1ic is for an element, or for the root with `r` before the unit.
std::optional<Line> Styles::fontUnit(Element element, std::string_view unit) {
    if (!fonts) return std::nullopt;
    double FontMeasures::*measure = nullptr;
    const std::string_view own = unit.starts_with("r") ? unit.substr(1) : unit;
    if (own == "ch") measure = &FontMeasures::zero;
    if (own == "ex") measure = &FontMeasures::xHeight;
    if (own == "cap") measure = &FontMeasures::capHeight;
    if (own == "ic") measure = &FontMeasures::ideograph;
    if (measure == nullptr) return std::nullopt;
    usedFonts_ = true;
    if (own != unit) element = rootOf(element);
    const std::optional<FontMeasures> found =
        fonts(value(element, "font-family"), value(element, "font-weight"), value(element, "font-style"));
    return found ? std::optional(times(fontSize(element), (*found).*measure)) : std::nullopt;
}

const Styles::Longhands& Styles::of(Element element) {
    const auto [known, isNew] = longhands_.try_emplace(element);
    Longhands& longhands = known->second;
    if (!isNew) return longhands;
    std::vector<Applying> withActive;
    if (!active_.empty()) withActive = rules_.applyingTo(element, {}, active_);
    for (const Applying& applying : active_.empty() ? rules_.atRest(element) : withActive) {
        if (!applies(applying, element) || !isUnderstood(*applying.declaration)) continue;
        const Declaration& declaration = *applying.declaration;
        if (declaration.property.starts_with("--")) {
            longhands.byProperty[declaration.property].push_back(applying);
            continue;
        }
        for (const Longhand& longhand :
             physicalLonghands(declaration.property, declaration.value, rightToLeft_))
            longhands.byProperty[longhand.property].push_back(applying);
    }
    const auto all = longhands.byProperty.find("all");
    for (auto& [property, list] : longhands.byProperty) {
        if (all != longhands.byProperty.end() && property != "all" && !property.starts_with("--") &&
            property != "direction")
            list.insert(list.end(), all->second.begin(), all->second.end());
        std::ranges::sort(list,
                          [](const Applying& one, const Applying& other) { return other.isWeakerThan(one); });
    }
    return longhands;
}

std::optional<Styles::Source> Styles::source(Element element, const std::string& property) {
    const bool custom = property.starts_with("--");
    const auto inherited = [&]() -> std::optional<Source> {
        const std::optional<Element> parent = rules_.elements().parent(element);
        return parent ? source(*parent, property) : std::nullopt;
    };
    const Longhands& longhands = of(element);
    auto list = longhands.byProperty.find(property);
    if (list == longhands.byProperty.end() && !custom) list = longhands.byProperty.find("all");
    const std::vector<Applying> none;
    const std::vector<Applying>& strongestFirst = list == longhands.byProperty.end() ? none : list->second;
    for (std::size_t i = 0; i < strongestFirst.size(); ++i) {
        const Applying& winner = strongestFirst[i];
        std::optional<std::string> text = winner.declaration->value;
        if (!custom) {
            text = substituted(element, *text);
            if (text && winner.declaration->property != property && winner.declaration->property != "all") {
                std::optional<std::string> own;
                for (const Longhand& longhand :
                     physicalLonghands(winner.declaration->property, *text, rightToLeft_))
                    if (longhand.property == property) own = longhand.value;
                text = own;
            }
        }
        // Invalid at computed-value time. CSS Variables 1 § 3.1.
        const std::string word = text ? lowered(trimmed(*text)) : "unset";
        if (word == "inherit") return inherited();
        if (word == "initial") return std::nullopt;
        if (word == "unset") return isInherited(property) ? inherited() : std::nullopt;
        if (word == "revert" || word == "revert-layer") {
            const bool layer = word == "revert-layer";
            while (i + 1 < strongestFirst.size() && (layer ? strongestFirst[i + 1].rank == winner.rank
                                                           : strongestFirst[i + 1].origin != Origin::Browser))
                ++i;
            continue;
        }
        return Source{std::move(*text), element};
    }
    return isInherited(property) ? inherited() : std::nullopt;
}

// CSS Variables 1 § 2 and § 3. A variable in a cycle is invalid.
std::optional<std::string> Styles::variable(Element element, const std::string& name) {
    const std::pair key(element, name);
    if (const auto known = variables_.find(key); known != variables_.end()) return known->second;
    if (!open_.insert(key).second) return std::nullopt;
    std::optional<std::string> value;
    const auto& registered = rules_.page().properties;
    const auto property = std::ranges::find(registered, name, &RegisteredProperty::name);
    const bool isRegistered = property != registered.end();
    std::optional<Source> found;
    if (isRegistered && !property->inherits) {
        const Longhands& longhands = of(element);
        if (longhands.byProperty.contains(name)) found = source(element, name);
        if (found && found->element != element) found.reset();
    } else {
        found = source(element, name);
    }
    if (found && found->element != element)
        value = variable(found->element, name);
    else if (found)
        value = substituted(element, found->text);
    if (!value && isRegistered) value = property->initialValue;
    open_.erase(key);
    variables_[key] = value;
    return value;
}

std::optional<std::string> Styles::substituted(Element element, std::string_view text) {
    const std::string low = lowered(text);
    if (low.find("var(") == std::string::npos && low.find("env(") == std::string::npos &&
        low.find("light-dark(") == std::string::npos)
        return std::string(text);
    if (text.size() > longestValue || text.size() * deepestNesting(text) > mostReading) return std::nullopt;
    // Each variable in the value of another one, and each fallback in another one, is a level deeper.
    struct Level {
        explicit Level(int& count) : depth(++count) {}
        ~Level() { --depth; }
        Level(const Level&) = delete;
        Level& operator=(const Level&) = delete;
        int& depth;
    };
    const Level level(substitutions_);
    if (substitutions_ > deepestSubstitution) return std::nullopt;
    std::string out;
    TokenCursor cursor(text);
    while (!cursor.is(TokenKind::End)) {
        const Token token = cursor.token();
        const bool isVariable = token.isFunction("var") || token.isFunction("env");
        if (!isVariable && !token.isFunction("light-dark")) {
            out.append(text.substr(token.begin, token.end - token.begin));
            if (out.size() > longestValue) return std::nullopt;
            cursor.step();
            continue;
        }
        cursor.step();
        cursor.skipSpaces();
        const std::size_t begin = cursor.token().begin;
        std::string name = cursor.token().text;
        std::optional<std::size_t> comma;
        cursor.skipUntil([&](const Token& inside) {
            if (inside.is(TokenKind::Comma) && !comma) comma = inside.begin;
            return inside.is(TokenKind::CloseRound);
        });
        const std::size_t end = cursor.token().begin;
        cursor.step();
        const std::string_view rest = comma ? text.substr(*comma + 1, end - *comma - 1) : std::string_view();
        std::optional<std::string> value;
        if (token.isFunction("var")) {
            value = variable(element, name);
            if (!value && comma) value = substituted(element, rest);
        } else if (token.isFunction("env")) {
            value = comma ? substituted(element, rest) : std::string("0px");
        } else {
            value = substituted(element, text.substr(begin, comma.value_or(end) - begin));
        }
        if (!value) return std::nullopt;
        out += *value;
        if (out.size() > longestValue) return std::nullopt;
    }
    return out;
}

std::string Styles::value(Element element, const std::string& property) {
    const std::optional<Source> found = source(element, property);
    return found ? lowered(trimmed(found->text)) : std::string();
}

Line Styles::first(const PiecewiseLinear& value) {
    const std::vector<Vertex>& vertices = value.vertices();
    for (std::size_t i = 1; i + 1 < vertices.size(); ++i)
        bends_.insert(vertices[i].width);
    if (vertices.size() < 2) return {vertices.front().value, 0};
    const Vertex& from = vertices[0];
    const Vertex& to = vertices[1];
    const double slope = (to.value - from.value) / (to.width - from.width);
    return {from.value - slope * from.width, slope};
}

CalculationBasis Styles::basisFor(Element element) {
    CalculationBasis basis;
    basis.least = least_;
    basis.most = most_;
    basis.allUnits = true;
    basis.em = fontSize(element);
    basis.root = fontSize(rootOf(element));
    basis.container = containerOf(element, {}).value_or(Line{0, 1});
    basis.fontUnit = [this, element](std::string_view unit) { return fontUnit(element, unit); };
    return basis;
}

std::optional<Line> Styles::lengthOf(Element element, const std::string& text,
                                     std::optional<Line> percentage) {
    CalculationBasis basis = basisFor(element);
    basis.percentage = percentage;
    if (lowered(text).find("lh") != std::string::npos) {
        basis.line = lineHeight(element);
        basis.rootLine = lineHeight(rootOf(element));
    }
    const std::optional<Calculated> value = calculate(text, basis, problems);
    if (!value) return std::nullopt;
    if (value->isNumber && value->number != 0) {
        problems.push_back({0, "The length " + text + " has no unit.", ""});
        return std::nullopt;
    }
    return value->isNumber ? Line{} : first(value->length);
}

std::optional<Line> Styles::length(Element element, const std::string& property,
                                   std::optional<Line> percentage, const std::string& fallback) {
    const std::optional<Source> found = source(element, property);
    const std::string text = found ? lowered(trimmed(found->text)) : fallback;
    const bool isWord =
        !text.empty() && std::ranges::all_of(text, [](char c) { return isLetter(c) || c == '-'; });
    if (text.empty() || isWord) return std::nullopt;
    return lengthOf(found ? found->element : element, text, percentage);
}

Line Styles::fontSize(Element element) {
    if (const auto known = fontSizes_.find(element); known != fontSizes_.end()) return known->second;
    fontSizes_[element] = {initialSize, 0};
    const std::optional<Source> found = source(element, "font-size");
    Line size{initialSize, 0};
    if (found && found->element != element) {
        size = fontSize(found->element);
    } else if (found) {
        const std::optional<Element> parent = rules_.elements().parent(element);
        const Line outer = parent ? fontSize(*parent) : Line{initialSize, 0};
        const std::string word = lowered(trimmed(found->text));
        if (word == "smaller") {
            size = times(outer, 1 / 1.2);
        } else if (word == "larger") {
            size = times(outer, 1.2);
        } else if (const double fixed = keywordSize(word); fixed > 0) {
            size = {fixed, 0};
        } else {
            CalculationBasis basis;
            basis.least = least_;
            basis.most = most_;
            basis.allUnits = true;
            basis.em = outer;
            basis.percentage = outer;
            const Element root = rootOf(element);
            if (root != element) basis.root = fontSize(root);
            basis.container = containerOf(element, {}).value_or(Line{0, 1});
            // Font units of font-size are those of the parent. CSS Values 4 § 6.1.1.
            basis.fontUnit = [this, element = parent.value_or(element)](std::string_view unit) {
                return fontUnit(element, unit);
            };
            const std::optional<Calculated> value = calculate(word, basis, problems);
            // 0 is a length without a unit. CSS Values 4 § 6.
            const bool isZero = value && value->isNumber && value->number == 0;
            size = isZero ? Line{} : value && !value->isNumber ? first(value->length) : outer;
        }
    }
    fontSizes_[element] = size;
    return size;
}

std::optional<Line> Styles::lineHeight(Element element) {
    const std::optional<Source> found = source(element, "line-height");
    const std::string text = found ? lowered(trimmed(found->text)) : "normal";
    if (text == "normal") return std::nullopt;
    CalculationBasis basis = basisFor(found->element);
    basis.percentage = basis.em;
    if (text.find("lh") != std::string::npos) {
        const std::optional<Element> parent = rules_.elements().parent(found->element);
        if (parent) basis.line = lineHeight(*parent);
    }
    const std::optional<Calculated> value = calculate(text, basis, problems);
    if (!value) return std::nullopt;
    return value->isNumber ? times(fontSize(element), value->number) : first(value->length);
}

Line Styles::smaller(const Line& one, const Line& other) {
    return first(PiecewiseLinear(one, least_, most_).least(PiecewiseLinear(other, least_, most_)));
}

Line Styles::larger(const Line& one, const Line& other) {
    return first(PiecewiseLinear(one, least_, most_).most(PiecewiseLinear(other, least_, most_)));
}

}  // namespace tenter::css
