// CSS lengths, percentages and the keywords `auto` and `none`.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace tenter::units {

enum class Unit { Px, Rem, Em, Percent, Vw, Cqi, Auto, None };

/// The sizes that relative lengths refer to, in CSS px. CSS Values 4 § 6, CSS Containment 3 § 7.
template <class Number>
struct LengthBasisOf {
    Number em = 16;      ///< the element's own font size
    Number rem = 16;     ///< the root's font size
    Number percent = 0;  ///< 100 % of the size that the property refers to
    Number vw = 0;       ///< 100 vw
    Number cqi = 0;      ///< 100 cqi: the content width of the nearest container
};
using LengthBasis = LengthBasisOf<double>;

/// A CSS length, percentage, `auto` or `none`. The value is finite and rounded to the decimals that the
/// stylesheet prints, so that layout and stylesheet use the same number. A zero of any unit is stored as 0
/// px.
class Length {
public:
    constexpr Length() = default;  ///< 0 px
    static Length px(double value);
    static Length rem(double value);
    static Length em(double value);
    static Length percent(double value);
    static Length vw(double value);
    static Length cqi(double value);
    /// `value` in `unit`; in px if `unit` is a keyword.
    static Length in(double value, Unit unit);
    static Length ofAuto();
    static Length ofNone();
    /// The length written in `text`, such as `12px`, `0`, `1.5em`, `5%`, `auto` or `none`. Empty for any
    /// other text, a number that is not finite, or one beyond ±1e6.
    static std::optional<Length> parse(std::string_view text);

    [[nodiscard]] double value() const { return value_; }
    [[nodiscard]] Unit unit() const { return unit_; }
    [[nodiscard]] bool isAuto() const { return unit_ == Unit::Auto; }
    [[nodiscard]] bool isNone() const { return unit_ == Unit::None; }
    [[nodiscard]] bool isKeyword() const { return isAuto() || isNone(); }
    /// True for a zero of any unit.
    [[nodiscard]] bool isZero() const { return !isKeyword() && value_ == 0; }
    /// The length in CSS px, with relative units resolved against `basis`; 0 for keywords.
    template <class Number = double>
    [[nodiscard]] Number resolve(const LengthBasisOf<Number>& basis) const;
    /// `factor` times the length, rounded as a stylesheet prints it; a keyword is unchanged.
    [[nodiscard]] Length times(double factor) const {
        return isKeyword() ? *this : of(factor * value_, unit_);
    }
    /// CSS text, such as `0`, `12px`, `1.5em` or `auto`.
    [[nodiscard]] std::string css() const;

    friend bool operator==(const Length&, const Length&) = default;

private:
    constexpr Length(double value, Unit unit) : value_(value), unit_(unit) {}
    static Length of(double value, Unit unit);
    double value_ = 0;
    Unit unit_ = Unit::Px;
};

template <class Number>
Number Length::resolve(const LengthBasisOf<Number>& basis) const {
    switch (unit_) {
        case Unit::Px:
            return value_;
        case Unit::Rem:
            return value_ * basis.rem;
        case Unit::Em:
            return value_ * basis.em;
        case Unit::Percent:
            return value_ / 100 * basis.percent;
        case Unit::Vw:
            return value_ / 100 * basis.vw;
        case Unit::Cqi:
            return value_ / 100 * basis.cqi;
        case Unit::Auto:
        case Unit::None:
            return 0;
    }
    return 0;
}

/// The CSS text of a unit, such as `px`; of a keyword, the keyword itself.
std::string_view suffix(Unit unit);

/// A CSS `line-height`: a number (a multiple of the font size) or a length, never `normal`, which differs
/// between browsers. CSS Inline 3 § 5.2.
class LineHeight {
public:
    static LineHeight times(double number);
    static LineHeight of(Length length);
    /// The line height written in `text`, such as `1.4`, `24px` or `1.5rem`. Empty for any other text, a
    /// percentage or a negative value.
    static std::optional<LineHeight> parse(std::string_view text);

    [[nodiscard]] bool isNumber() const { return isNumber_; }
    [[nodiscard]] double number() const { return number_; }
    [[nodiscard]] Length length() const { return length_; }
    /// Line height in CSS px; `basis.em` is the element's font size.
    [[nodiscard]] double resolve(const LengthBasis& basis) const;
    [[nodiscard]] std::string css() const;
    friend bool operator==(const LineHeight&, const LineHeight&) = default;

private:
    bool isNumber_ = true;
    double number_ = 1.4;
    Length length_;
};

}  // namespace tenter::units
