#include "emit/length_sum.h"

#include <algorithm>

#include "units/number.h"

namespace tenter::emit {

using units::Unit;

namespace {

/// The order of terms: units relative to the box or to the type come first.
constexpr std::array<Unit, 6> order{Unit::Percent, Unit::Em, Unit::Rem, Unit::Px, Unit::Vw, Unit::Cqi};

}  // namespace

LengthSum& LengthSum::add(const units::Length& length, double factor) {
    if (!length.isKeyword()) values_[static_cast<std::size_t>(length.unit())] += factor * length.value();
    return *this;
}

LengthSum& LengthSum::add(const LengthSum& other, double factor) {
    for (std::size_t i = 0; i < values_.size(); ++i)
        values_[i] += factor * other.values_[i];
    return *this;
}

bool LengthSum::isZero() const {
    return std::ranges::all_of(values_, [](double value) { return units::rounded(value) == 0; });
}

std::string LengthSum::terms(int& count) const {
    std::string out;
    count = 0;
    for (const Unit unit : order) {
        const double value = units::rounded(of(unit));
        if (value == 0) continue;
        const bool first = count++ == 0;
        if (!first) out += value < 0 ? " - " : " + ";
        out += units::number(first || value > 0 ? value : -value);
        out += units::suffix(unit);
    }
    return count == 0 ? "0" : out;
}

std::string LengthSum::css() const {
    int count = 0;
    const std::string text = terms(count);
    return count > 1 ? "calc(" + text + ")" : text;
}

std::string LengthSum::term() const {
    int count = 0;
    const std::string text = terms(count);
    if (count == 0) return "0px";  // a bare 0 is a number, which cannot be added to lengths
    return count > 1 ? "(" + text + ")" : text;
}

}  // namespace tenter::emit
