// Sums of lengths by viewport width, and words of CSS values, for the layout around a row.
#pragma once

#include <algorithm>
#include <initializer_list>
#include <string_view>

#include "css/piecewise.h"

namespace tenter::markup {

inline css::Line operator+(const css::Line& one, const css::Line& other) {
    return {one.atZero + other.atZero, one.perPx + other.perPx};
}
inline css::Line operator-(const css::Line& one, const css::Line& other) {
    return {one.atZero - other.atZero, one.perPx - other.perPx};
}
inline css::Line operator*(double factor, const css::Line& line) {
    return {factor * line.atZero, factor * line.perPx};
}

inline bool isIn(std::string_view word, std::initializer_list<std::string_view> words) {
    return std::ranges::find(words, word) != words.end();
}

}  // namespace tenter::markup
