#include "intake/own_page.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "css/longhands.h"
#include "css/math.h"
#include "css/media.h"
#include "intake/sheet_values.h"

namespace tenter::intake {

using units::Length;

namespace {

/// A viewport width above all breakpoints, CSS px.
constexpr double aboveAll = 100000;

/// The values of the root element and of the container at one width.
struct PageValues {
    Values root;
    Values container;
};

class OwnPage {
public:
    OwnPage(const css::Sheet& sheet, const std::vector<std::string>& container) : sheet_(sheet) {
        for (const std::string& name : container)
            selectors_.insert("." + name);
    }

    project::Page read() const {
        project::Page page;
        const PageValues wide = at(aboveAll);
        page.rootSize = rootOf(wide, page.rootSize);
        page.scrollbar.always = wide.root.contains("overflow-y");
        page.container = containerOf(wide);
        for (const double end : breakpoints()) {
            const PageValues here = at(end);
            project::PageRange range;
            range.upTo = end;
            if (const units::RootSize root = rootOf(here, page.rootSize); root != page.rootSize)
                range.rootSize = root;
            range.container = changed(containerOf(here), page.container);
            page.ranges.push_back(std::move(range));
        }
        return page;
    }

private:
    [[nodiscard]] bool concernsPage(const css::StyleRule& rule) const {
        return rule.selectorText == "html" || selectors_.contains(rule.selectorText);
    }
    [[nodiscard]] std::set<double> breakpoints() const {
        std::set<double> widths;
        for (const css::StyleRule& rule : sheet_.rules)
            if (concernsPage(rule))
                for (const css::Condition* condition : sheet_.conditionsOf(rule))
                    for (const double width : css::mediaWidths(condition->text))
                        widths.insert(width);
        return widths;
    }
    [[nodiscard]] PageValues at(double width) const {
        PageValues values;
        for (const css::StyleRule& rule : sheet_.rules) {
            const auto conditions = sheet_.conditionsOf(rule);
            const bool holds = std::ranges::all_of(conditions, [&](const css::Condition* condition) {
                return css::mediaHolds(condition->text, width) == css::Truth::True;
            });
            if (!concernsPage(rule) || !holds) continue;
            Values& into = rule.selectorText == "html" ? values.root : values.container;
            for (const css::Declaration& declaration : rule.declarations) {
                // The shorthand of all sides sets those in the line, too.
                if (declaration.property == "margin") into.erase("margin-inline");
                into[declaration.property] = declaration.value;
            }
        }
        return values;
    }

    static std::string valueIn(const Values& values, const std::string& property, const std::string& usual) {
        const auto found = values.find(property);
        return found == values.end() ? usual : found->second;
    }
    static units::RootSize rootOf(const PageValues& values, const units::RootSize& usual) {
        return units::RootSize::parse(valueIn(values.root, "font-size", "16px")).value_or(usual);
    }
    /// The length before the px that a sum adds to it: `calc(50% + 90px)`.
    static std::optional<Length> lengthOf(const std::string& value, double& added) {
        const std::size_t plus = value.find(" + ");
        if (!value.starts_with("calc(") || plus == std::string::npos) return Length::parse(value);
        constexpr std::size_t opening = 5;
        const auto px = Length::parse(value.substr(plus + 3, value.rfind(')') - plus - 3));
        if (px && px->unit() == units::Unit::Px) added = px->value();
        return Length::parse(value.substr(opening, plus - opening));
    }
    /// The distance of the container from its place, as `left` has it: a part of the page's width and px.
    static project::Shift shiftOf(const Values& container) {
        css::CalculationBasis basis;
        basis.least = 0;
        basis.most = 1000;
        basis.percentage = css::Line{0, 1};
        css::Problems unread;
        const auto left = css::calculate(valueIn(container, "left", "0px"), basis, unread);
        project::Shift shift;
        if (!left || left->isNumber) return shift;
        const auto tidied = [](double value) { return std::round(value * 1e6) / 1e6; };
        shift.px = tidied(left->length.at(basis.least));
        shift.percent = tidied((left->length.at(basis.most) - shift.px) / (basis.most / 100));
        return shift;
    }
    static project::Container containerOf(const PageValues& values) {
        project::Container out;
        const Values& own = values.container;
        double ignored = 0;
        if (const auto width = lengthOf(valueIn(own, "width", "100%"), out.addedWidth)) out.width = *width;
        if (const auto most = lengthOf(valueIn(own, "max-width", "none"), ignored)) out.maxWidth = *most;
        const std::string inlineMargin = valueIn(own, "margin-inline", "");
        if (inlineMargin == "0 auto") out.place = project::ContainerPlace::Start;
        if (inlineMargin == "auto 0") out.place = project::ContainerPlace::End;
        out.shift = shiftOf(own);
        const std::vector<std::string> sides = css::valueParts(valueIn(own, "padding", "0"));
        const auto side = [&](std::size_t index) {
            // One to four values. CSS Box 4 § 4.2.
            const std::size_t opposite = index == 3 && sides.size() > 1 ? 1 : 0;
            const std::size_t from = index < sides.size() ? index : opposite;
            const auto length = Length::parse(sides.empty() ? "0" : sides[from]).value_or(Length());
            return length.isZero() ? std::optional<Length>() : std::optional<Length>(length);
        };
        out.padding = {side(0), side(1), side(2), side(3), {}};
        if (const auto colour = units::Colour::parse(valueIn(own, "background", "#fff")))
            out.background = *colour;
        return out;
    }
    static project::ContainerChange changed(const project::Container& here, const project::Container& page) {
        project::ContainerChange out;
        if (here.width != page.width) out.width = here.width;
        if (here.maxWidth != page.maxWidth) out.maxWidth = here.maxWidth;
        if (here.addedWidth != page.addedWidth) out.addedWidth = here.addedWidth;
        if (here.place != page.place) out.place = here.place;
        if (here.shift != page.shift) out.shift = here.shift;
        if (here.background != page.background) out.background = here.background;
        const auto side = [](const std::optional<Length>& now, const std::optional<Length>& usual) {
            return now == usual ? std::optional<Length>() : std::optional<Length>(now.value_or(Length()));
        };
        out.padding = {side(here.padding.top, page.padding.top),
                       side(here.padding.right, page.padding.right),
                       side(here.padding.bottom, page.padding.bottom),
                       side(here.padding.left, page.padding.left),
                       {}};
        return out;
    }

    const css::Sheet& sheet_;
    std::set<std::string> selectors_;
};

}  // namespace

project::Page ownPage(const css::Sheet& sheet, const std::vector<std::string>& container) {
    return OwnPage(sheet, container).read();
}

}  // namespace tenter::intake
