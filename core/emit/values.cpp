#include "emit/values.h"

#include <algorithm>
#include <string_view>

#include "emit/escape.h"
#include "text/generic_families.h"
#include "units/ascii.h"
#include "units/number.h"

namespace tenter::emit {

namespace {

std::string css(const std::optional<units::Length>& length) {
    return length.value_or(units::Length()).css();
}

}  // namespace

std::string sides(const std::string& top, const std::string& right, const std::string& bottom,
                  const std::string& left) {
    if (left != right) return top + " " + right + " " + bottom + " " + left;
    if (bottom != top) return top + " " + right + " " + bottom;
    if (right != top) return top + " " + right;
    return top;
}

std::string sides(const project::Sides& value) {
    return sides(css(value.top), css(value.right), css(value.bottom), css(value.left));
}

std::string border(const project::Border& value) {
    if (!value.width || value.width->isZero()) return "0";
    return value.width->css() + " solid " + value.colour.value_or(units::Colour{0, 0, 0, 0}).css();
}

std::string shadow(const project::Shadow& value) {
    const bool unseen = sumOf(value.x).isZero() && sumOf(value.y).isZero() && sumOf(value.blur).isZero() &&
                        sumOf(value.spread).isZero();
    if (unseen || !value.colour || value.colour->isTransparent()) return "none";
    std::string out = css(value.x) + " " + css(value.y) + " " + css(value.blur);
    if (!sumOf(value.spread).isZero()) out += " " + css(value.spread);
    return out + " " + value.colour->css();
}

std::string families(const std::vector<std::string>& list) {
    if (list.empty()) return "sans-serif";
    std::string out;
    for (const std::string& family : list) {
        if (!out.empty()) out += ", ";
        out += text::isGenericFamily(family) ? units::lowered(family) : cssString(family);
    }
    return out;
}

std::string ratio(const project::Ratio& value) {
    if (value.isOwn()) return "auto";
    return units::number(value.width) + " / " + units::number(value.height);
}

std::string ownRatio(const project::PicturePart& picture) {
    if (!picture.ratio) return {};
    return ratio(picture.ratio->isOwn() ? project::Ratio{picture.width, picture.height} : *picture.ratio);
}

std::string ownPosition(const project::PicturePart& picture) {
    if (picture.focusX == 0.5 && picture.focusY == 0.5) return {};
    return units::number(picture.focusX * 100) + "% " + units::number(picture.focusY * 100) + "%";
}

LengthSum sumOf(const std::optional<units::Length>& length) {
    return LengthSum(length.value_or(units::Length()));
}

}  // namespace tenter::emit
