// The font size of the root element, to which the unit rem refers.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "units/linear.h"

namespace tenter::units {

/// The text size in the settings of a browser that nobody has changed, CSS px.
inline constexpr double usualReaderSize = 16;

/// `html { font-size }` of a page. CSS Values 4 § 6.1.1.
///
/// A number of px and a percentage follow the text size that the reader sets in the browser; a number is the
/// size where that is 16 px. A calculation of px and vw does not follow it, as in browsers.
class RootSize {
public:
    /// `px + vw`, limited to the range from `least` to `most`. All in CSS px, except `vw`: hundredths of the
    /// viewport width.
    struct Calculation {
        double px = 0;
        double vw = 0;
        std::optional<double> least = {};
        std::optional<double> most = {};
        friend bool operator==(const Calculation&, const Calculation&) = default;
    };

    constexpr RootSize() = default;  ///< 16 px
    /// `px` CSS px where the reader's text size is 16 px. Implicit: most root sizes are plain numbers.
    constexpr RootSize(double px) : value_(px) {}  // NOLINT(google-explicit-constructor)
    /// A percentage of the reader's text size.
    static RootSize percent(double value);
    /// The root size written in `text`: a percentage, a length in px, a calculation of px and vw such as
    /// `calc(14px + 0.3vw)`, or one with limits in px such as `clamp(15px, 14px + 0.3vw, 18px)`, with `max()`
    /// for the smallest or `min()` for the largest size. Empty for any other text.
    static std::optional<RootSize> parse(std::string_view text);
    /// A calculation, its numbers rounded to the decimals that a stylesheet prints.
    static RootSize of(const Calculation& calculation);

    [[nodiscard]] bool isPercent() const { return kind_ == Kind::Percent; }
    /// The percentage; of any other root size, its number.
    [[nodiscard]] double number() const { return value_; }
    /// The calculation; null for a number or a percentage.
    [[nodiscard]] const Calculation* calculation() const {
        return kind_ == Kind::Calculation ? &calculation_ : nullptr;
    }
    [[nodiscard]] bool isNumber() const { return kind_ == Kind::Number; }
    /// True if the size depends on the viewport width.
    [[nodiscard]] bool isFluid() const { return kind_ == Kind::Calculation && calculation_.vw != 0; }

    /// Root font size in CSS px. `readerSize` is the reader's text size in CSS px; `vw` is 100 vw in CSS px;
    /// `reduction`, in CSS px, is subtracted from the size of the term in vw.
    template <class Number = double>
    [[nodiscard]] Number resolve(double readerSize, const Number& vw, double reduction = 0) const;
    /// The amount in CSS px by which the term in vw shrinks in an engine that truncates it to multiples of
    /// `step` CSS px (0: it does not). `vw` is 100 vw in CSS px. Exact at one width; over a range of widths
    /// the mean, so that the size stays linear.
    [[nodiscard]] double truncation(double vw, double step) const;
    [[nodiscard]] double truncation(const Linear& /*vw*/, double step) const {
        return isFluid() ? step / 2 : 0;
    }
    /// CSS text that `parse` reads; of a number, its length in px.
    [[nodiscard]] std::string css() const;
    /// CSS text with the same size where the reader's text size is `readerSize` CSS px and the browser's is
    /// 16 px.
    [[nodiscard]] std::string cssFor(double readerSize) const;

    friend bool operator==(const RootSize&, const RootSize&) = default;

private:
    enum class Kind { Number, Percent, Calculation };
    Kind kind_ = Kind::Number;
    double value_ = usualReaderSize;
    Calculation calculation_;
};

template <class Number>
Number RootSize::resolve(double readerSize, const Number& vw, double reduction) const {
    if (kind_ == Kind::Number) return value_ * readerSize / usualReaderSize;
    if (kind_ == Kind::Percent) return value_ / 100 * readerSize;
    const double reduced = calculation_.vw > 0 ? reduction : calculation_.vw < 0 ? -reduction : 0;
    Number size = Number(calculation_.px - reduced) + calculation_.vw / 100 * vw;
    if (calculation_.most) size = units::min(size, Number(*calculation_.most));
    return units::max(Number(calculation_.least.value_or(0)), size);
}

}  // namespace tenter::units
