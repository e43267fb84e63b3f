// The cascade: the declarations that apply to an element, and its values at a viewport width. CSS Cascade 5 §
// 6, § 7; CSS Variables 1.
#pragma once

#include <functional>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <tuple>
#include <unordered_map>
#include <vector>

#include "css/elements.h"
#include "css/match.h"
#include "css/math.h"
#include "css/rules.h"

namespace tenter::css {

/// The origin of a declaration: the browser's own stylesheet, a stylesheet of the page, or a style attribute.
enum class Origin { Browser, Page, Attribute };

/// A declaration for an element. It applies where the conditions of its rule are true.
struct Applying {
    const Declaration* declaration = nullptr;
    const StyleRule* rule = nullptr;  ///< null for a style attribute
    Origin origin = Origin::Page;
    Specificity specificity;
    long rank = 0;  ///< order of origin, importance and layer; the highest wins. CSS Cascade 5 § 6.1
    std::size_t order = 0;
    /// True if `other` wins over this one where both apply.
    [[nodiscard]] bool isWeakerThan(const Applying& other) const {
        return std::tie(rank, specificity, order) < std::tie(other.rank, other.specificity, other.order);
    }
};

/// The style rules of a page, sorted by what their selectors require, so that the rules for one element are
/// found fast.
class StyleRules {
public:
    /// `elements`, `browser` and `page` must outlive the object.
    StyleRules(const Elements& elements, const Sheet& browser, const Sheet& page);

    /// The declarations of rules and of the style attribute that match the element, in the order of their
    /// sources. `pseudo`: for its pseudo-element of that name; empty: for the element itself.
    [[nodiscard]] std::vector<Applying> applyingTo(Elements::Element element, std::string_view pseudo = {},
                                                   ActivePseudoClasses active = {}) const;
    /// The indices of the rules of the page that match the element or a pseudo-element of it.
    [[nodiscard]] std::set<std::size_t> pageRulesFor(Elements::Element element,
                                                     ActivePseudoClasses active) const;

    [[nodiscard]] const Elements& elements() const { return elements_; }
    [[nodiscard]] const Sheet& page() const { return page_; }
    [[nodiscard]] const Sheet& sheetOf(Origin origin) const {
        return origin == Origin::Browser ? browser_ : page_;
    }
    /// The declarations for the element itself without dynamic pseudo-classes.
    [[nodiscard]] const std::vector<Applying>& atRest(Elements::Element element) const;

private:
    struct Entry {
        Origin origin = Origin::Page;
        std::size_t rule = 0;
        std::size_t selector = 0;
    };
    void sort(const Sheet& sheet, Origin origin);
    template <class Found>
    void forCandidates(Elements::Element element, Found found) const;
    [[nodiscard]] long rankOf(const Applying& applying) const;

    const Elements& elements_;
    const Sheet& browser_;
    const Sheet& page_;
    std::unordered_map<std::string, std::vector<Entry>> byId_, byClass_, byTag_;
    std::vector<Entry> others_;
    /// Declarations of style attributes by element.
    mutable std::unordered_map<Elements::Element, std::vector<Declaration>> attributes_;
    mutable std::unordered_map<Elements::Element, std::vector<Applying>> known_;
};

/// True if browsers of today support what a condition of `@supports` asks for. CSS Conditional 4 § 2.
bool isSupported(std::string_view condition);

/// Lengths of the first font of a family list, in em. CSS Values 4 § 6.1.1.
struct FontMeasures {
    double zero = 0.5;       ///< 1ch: the advance of 0
    double xHeight = 0.5;    ///< 1ex
    double capHeight = 0.7;  ///< 1cap
    double ideograph = 1;    ///< 1ic: the advance of the water ideograph
    double space = 0.25;     ///< the advance of a space
};

/// Finds them for values of font-family, font-weight and font-style; an empty value is the initial one. Empty
/// if they are not known.
using FontLookup = std::function<std::optional<FontMeasures>(
    const std::string& families, const std::string& weight, const std::string& style)>;

/// The values of elements in an interval of viewport widths in which no media condition changes. Its upper
/// end belongs to it, its lower end does not.
class Styles {
public:
    using Element = Elements::Element;
    /// The interval from `least` to `most` in CSS px, finite. `rightToLeft`: the direction of the page.
    /// `active`: the dynamic pseudo-classes that match every element; their names must outlive the object.
    Styles(const StyleRules& rules, double least, double most, bool rightToLeft,
           ActivePseudoClasses active = {});

    /// The value of a longhand with variables replaced, of which a value has at most 100 inside each other:
    /// lower case, `inherit` and its like resolved. Empty if no declaration sets it, or if it has its initial
    /// value.
    [[nodiscard]] std::string value(Element element, const std::string& property);
    /// The same as a length by width; `percentage` is 100 %. Empty for keywords and for what is not read; the
    /// latter leaves a problem in `problems`. `fallback` is the value if none is set.
    [[nodiscard]] std::optional<Line> length(Element element, const std::string& property,
                                             std::optional<Line> percentage, const std::string& fallback);
    /// A length that is written in the context of an element.
    [[nodiscard]] std::optional<Line> lengthOf(Element element, const std::string& text,
                                               std::optional<Line> percentage);
    [[nodiscard]] Line fontSize(Element element);
    [[nodiscard]] std::optional<Line> lineHeight(Element element);

    [[nodiscard]] double least() const { return least_; }
    [[nodiscard]] double most() const { return most_; }
    /// The widths inside the interval at which a value changes its slope. Values are exact up to the first.
    [[nodiscard]] const std::set<double>& bends() const { return bends_; }
    /// The smaller and larger of two quantities, with a bend where they cross.
    [[nodiscard]] Line smaller(const Line& one, const Line& other);
    [[nodiscard]] Line larger(const Line& one, const Line& other);
    /// Sets the width of the content box of an element that is a query container. Elements in it are read
    /// after that. CSS Conditional 5 § 4.
    void setContainer(Element element, const Line& width) { containers_[element] = width; }
    /// The strongest declaration of a property of an element, or of the ancestor from which it inherits; null
    /// if there is none. Valid as long as the object.
    [[nodiscard]] const Applying* winner(Element element, const std::string& property);
    /// Finds the font for units that depend on one. Without it they are not read.
    FontLookup fonts;
    /// True if a length in such a unit was read.
    [[nodiscard]] bool usedFonts() const { return usedFonts_; }
    Problems problems;

private:
    struct Longhands {
        std::map<std::string, std::vector<Applying>> byProperty;  ///< strongest first
    };
    const Longhands& of(Element element);
    [[nodiscard]] bool applies(const Applying& applying, Element element);
    [[nodiscard]] bool holds(const Sheet& sheet, std::size_t condition, Element element);
    [[nodiscard]] bool holdsInContainer(const std::string& condition, Element element);
    [[nodiscard]] std::optional<Line> containerOf(Element element, const std::string& name);
    [[nodiscard]] Element rootOf(Element element) const;
    [[nodiscard]] std::optional<Line> fontUnit(Element element, std::string_view unit);
    std::optional<std::string> variable(Element element, const std::string& name);
    std::optional<std::string> substituted(Element element, std::string_view text);
    /// The winning text, and the element that set it.
    struct Source {
        std::string text;
        Element element = 0;
    };
    std::optional<Source> source(Element element, const std::string& property);
    [[nodiscard]] Line first(const PiecewiseLinear& value);
    [[nodiscard]] CalculationBasis basisFor(Element element);

    const StyleRules& rules_;
    double least_;
    double most_;
    bool rightToLeft_;
    ActivePseudoClasses active_;
    std::unordered_map<Element, Longhands> longhands_;
    std::map<std::pair<Element, std::string>, std::optional<std::string>> variables_;
    std::set<std::pair<Element, std::string>> open_;
    std::unordered_map<Element, Line> fontSizes_;
    std::map<std::pair<const Sheet*, std::size_t>, bool> conditions_;
    std::set<double> bends_;
    std::map<Element, Line> containers_;
    bool usedFonts_ = false;
    int substitutions_ = 0;  ///< values that are being substituted now, one inside the other
};

/// The largest number of ends of intervals. A project holds fewer.
inline constexpr std::size_t mostIntervalEnds = 250;

/// The ends of the intervals in which no media condition of declarations for `elements` changes, between
/// `least` and `most` (CSS px, both excluded), rising. An end belongs to the interval below it.
/// Of more than `mostIntervalEnds`, so many; fewer if very many declarations apply.
std::vector<double> intervalEnds(const StyleRules& rules, const std::vector<Elements::Element>& elements,
                                 double least, double most);

}  // namespace tenter::css
