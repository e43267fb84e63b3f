#include "intake/size_reading.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "css/math.h"
#include "css/places.h"
#include "intake/font_size_value.h"
#include "intake/nearest_ramp.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::intake {

namespace {

using project::Follow;
using units::px;

std::string inWords(const SizeReading& reading, const SizeContext& context, const css::UnitsUsed& used) {
    const units::Ramp& ramp = reading.ramp;
    const std::string what =
        reading.follow == Follow::Card ? wording::say("the card") : wording::say("the viewport");
    std::string text =
        ramp.isFlat()
            ? wording::say("%1 at every width.", {px(ramp.from().size)})
            : wording::say(
                  "%1 where %2 is %3 wide, %4 where it is %5 wide. Between these widths the size changes "
                  "in a straight line; outside them it is constant.",
                  {px(ramp.from().size), what, px(ramp.from().width), px(ramp.to().size),
                   px(ramp.to().width)});
    const auto add = [&](const std::string& sentence) { text.append(" ").append(sentence); };
    if (!reading.exact)
        add(wording::say(
            "The pasted size is not exactly this ramp: the difference is at most %1, where %2 is %3 "
            "wide.",
            {px(reading.largestError), what, px(reading.errorAt)}));
    const std::string em = px(context.em.value_or(context.root));
    const bool isRoot = !context.em;
    if (used.em)
        add(isRoot ? wording::say("Assumed: 1em is %1, the root size.", {em})
                   : wording::say("Assumed: 1em is %1.", {em}));
    if (used.percentage)
        add(isRoot ? wording::say("Assumed: 100\u00A0% is %1, the root size.", {em})
                   : wording::say("Assumed: 100\u00A0% is %1.", {em}));
    if (used.root && context.root != 16) add(wording::say("Assumed: 1rem is %1.", {px(context.root)}));
    return text;
}

// CSS Fonts 4 § 2.5: a calculated size below 0 is 0.
css::PiecewiseLinear notNegative(const css::PiecewiseLinear& sizes) {
    const auto& vertices = sizes.vertices();
    return sizes.most(css::PiecewiseLinear({}, vertices.front().width, vertices.back().width));
}

class SizeReader {
public:
    SizeReader(std::string_view pasted, const SizeContext& context, project::Problems& problems)
        : pasted_(pasted), context_(context), problems_(problems) {}

    std::optional<SizeReading> read() {
        if (!contextIsSound()) return std::nullopt;
        css::Problems own;
        const std::optional<FontSizeValue> found = findFontSize(pasted_, own);
        if (!found) return wrong(own.back());
        const std::optional<css::Calculated> value = css::calculate(found->text, basis(), own, found->offset);
        if (!value) return wrong(own.back());
        if (value->isNumber)
            return wrong({found->offset, "The font size is a number without a unit.",
                          "Add a unit, such as px or rem."});
        if (value->used.viewport && value->used.container)
            return wrong({found->offset, "The size follows both the viewport and the card.",
                          "Use only vw or only cqi."});
        const css::PiecewiseLinear sizes = notNegative(value->length);
        const std::optional<NearestRamp> nearest = nearestRamp(sizes, context_.negligible);
        if (!nearest) return outOfRange(sizes, found->offset);
        SizeReading reading;
        reading.ramp = nearest->ramp;
        reading.follow = value->used.container ? Follow::Card : Follow::Viewport;
        reading.largestError = nearest->largestError;
        reading.errorAt = nearest->errorAt;
        reading.exact = nearest->largestError <= 0.01;
        reading.says = inWords(reading, context_, value->used);
        return reading;
    }

private:
    bool contextIsSound() {
        const auto isSize = [](double size) { return std::isfinite(size) && size > 0 && size <= 1e4; };
        const bool widths = std::isfinite(context_.least) && std::isfinite(context_.most) &&
                            context_.least >= 0 && context_.least < context_.most && context_.most <= 1e5;
        if (!widths)
            problems_.push_back(
                {"", "", "The range of widths is not valid.",
                 "Make the smallest width less than the largest, both from 0 to 100000\u00A0px."});
        if (!isSize(context_.root) || !isSize(context_.em.value_or(context_.root))) {
            problems_.push_back({"", "", "The font size of the root or the parent is not valid.",
                                 "It must be above 0 and at most 10000\u00A0px."});
            return false;
        }
        return widths;
    }

    [[nodiscard]] css::CalculationBasis basis() const {
        css::CalculationBasis basis;
        basis.least = context_.least;
        basis.most = context_.most;
        basis.root = {context_.root, 0};
        basis.em = {context_.em.value_or(context_.root), 0};
        basis.percentage = basis.em;
        basis.container = css::Line{0, 1};
        return basis;
    }

    std::nullopt_t wrong(css::Problem problem) {
        const css::Place place = css::Lines(pasted_).placeOf(problem.offset);
        problems_.push_back({"", std::to_string(place.line) + ":" + std::to_string(place.column),
                             std::move(problem.what), std::move(problem.fix)});
        return std::nullopt;
    }

    std::nullopt_t outOfRange(const css::PiecewiseLinear& sizes, std::size_t offset) {
        const auto& vertices = sizes.vertices();
        const auto [least, most] = std::ranges::minmax_element(vertices, {}, &css::Vertex::value);
        const css::Vertex& worst = least->value <= 0 ? *least : *most;
        return wrong({offset, "The size is " + px(worst.value) + " at a width of " + px(worst.width) + ".",
                      "It must be above 0 and at most 10000\u00A0px at every width."});
    }

    std::string_view pasted_;
    const SizeContext& context_;
    project::Problems& problems_;
};

}  // namespace

std::optional<SizeReading> readSize(std::string_view pasted, const SizeContext& context,
                                    project::Problems& problems) {
    return SizeReader(pasted, context, problems).read();
}

}  // namespace tenter::intake
