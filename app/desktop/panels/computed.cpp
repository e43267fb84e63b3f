#include "panels/computed.h"

#include <nlohmann/json.hpp>

#include "row/lookup.h"

namespace tenter::desktop::panels {

namespace {

double inlinePadding(const project::Sides& padding, const units::LengthBasis& basis) {
    return padding.left.value_or(units::Length()).resolve(basis) +
           padding.right.value_or(units::Length()).resolve(basis);
}

bool startsWith(const std::string& text, const std::string& start) {
    return text.compare(0, start.size(), start) == 0;
}

std::string roleIn(const std::string& path) {
    if (!startsWith(path, "text/")) return {};
    return path.substr(5, path.find('/', 5) - 5);
}

units::LengthBasis basisOf(const LayoutCache& layouts, const std::string& path) {
    const project::Page& page = layouts.project().page;
    const layout::Layout& layout = layouts.layout();
    const double scrollbar = page.scrollbar.width;
    const bool shrinks = page.scrollbar.always && layouts.row().profile().vwExcludesSteadyScrollbar();
    units::LengthBasis basis;
    basis.rem = layouts.row().rem(layouts.width());
    basis.em = row::fontSizeHere(layouts.current(), roleIn(path)).value_or(basis.rem);
    basis.vw = layouts.width() - (shrinks ? scrollbar : 0);
    basis.cqi = layouts.row().cardWidth(layouts.width());
    basis.percent = basis.cqi;
    if (startsWith(path, "card/")) basis.percent = layout.cards.empty() ? 0 : layout.cards.front().box.width;
    if (startsWith(path, "row/")) {
        units::LengthBasis ofPage = basis;
        ofPage.percent = layouts.width() - scrollbar;
        const double content =
            layout.container.width - inlinePadding(page.at(layouts.width()).container.padding, ofPage);
        basis.percent = content;
        if (path == "row/columnGap") {
            const auto& padding = layouts.row().settings(layouts.band()).row.padding;
            basis.percent = layout.row.width - inlinePadding(padding, basis);
        }
    }
    return basis;
}

}  // namespace

std::optional<double> computedPixels(const LayoutCache& layouts, const std::string& path,
                                     const project::Json& value) {
    const bool lineHeight = path.size() > 10 && path.compare(path.size() - 10, 10, "lineHeight") == 0;
    if (lineHeight && value.is_number())
        return units::LineHeight::times(value.get<double>()).resolve(basisOf(layouts, path));
    if (!value.is_string()) return std::nullopt;
    const auto length = units::Length::parse(value.get<std::string>());
    if (!length || length->isKeyword()) return std::nullopt;
    return length->resolve(basisOf(layouts, path));
}

}  // namespace tenter::desktop::panels
