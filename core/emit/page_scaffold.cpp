#include "emit/page_scaffold.h"

#include <algorithm>
#include <vector>

#include "emit/escape.h"
#include "emit/values.h"
#include "project/titles.h"
#include "units/number.h"

namespace tenter::emit {

namespace {

/// The declarations of the page's root size and container, one on each line.
struct PageDeclarations {
    std::string root;
    std::vector<std::string> container;
};

std::string marginOf(project::ContainerPlace place) {
    if (place == project::ContainerPlace::Center) return "margin: 0 auto";
    return place == project::ContainerPlace::Start ? "margin-inline: 0 auto" : "margin-inline: auto 0";
}

bool isShifted(const project::Page& page) {
    return !page.container.shift.isZero() ||
           std::ranges::any_of(page.ranges, [](const project::PageRange& range) {
               return range.container.shift && !range.container.shift->isZero();
           });
}

/// `shifted`: whether the container is beside its place at some width.
PageDeclarations declarationsOf(const project::PageSettings& page, double readerSize, bool shifted) {
    const project::Container& container = page.container;
    const auto widened = [&](const units::Length& width) {
        if (container.addedWidth == 0 || width.isNone()) return width.css();
        return "calc(" + width.css() + " + " + units::number(container.addedWidth) + "px)";
    };
    PageDeclarations out{"font-size: " + page.rootSize.cssFor(readerSize),
                         {"width: " + widened(container.width), "max-width: " + widened(container.maxWidth),
                          marginOf(container.place), "padding: " + sides(container.padding),
                          "background: " + container.background.css()}};
    if (shifted)
        out.container.push_back("position: relative; left: calc(" + units::number(container.shift.percent) +
                                "% + " + units::number(container.shift.px) + "px)");
    return out;
}

/// The media query of a page range: only what differs from the next wider viewports.
std::string rangeQuery(double upTo, const PageDeclarations& here, const PageDeclarations& wider,
                       const std::string& container) {
    std::string out;
    if (here.root != wider.root) out += "  html {\n    " + here.root + ";\n  }\n";
    std::string changed;
    for (std::size_t i = 0; i < here.container.size(); ++i)
        if (here.container[i] != wider.container[i]) changed += "    " + here.container[i] + ";\n";
    if (!changed.empty()) {
        if (!out.empty()) out += "\n";
        out += "  ." + cssIdentifier(container) + " {\n" + changed + "  }\n";
    }
    return out.empty() ? out : "\n@media (max-width: " + units::number(upTo) + "px) {\n" + out + "}\n";
}

}  // namespace

std::string containerClass(const project::Project& project) {
    std::string name = "container";
    while (project.row().findVariant(name))
        name += "-";
    return name;
}

std::string scaffold(const project::Page& page, const std::string& container) {
    const bool isOpen = !page.ranges.empty() && !page.ranges.back().upTo;
    std::size_t range = page.ranges.size() - (isOpen ? 1 : 0);
    PageDeclarations wider = declarationsOf(page.settings(range), page.readerSize, isShifted(page));
    std::string out = "html {\n  " + wider.root + ";\n";
    if (page.scrollbar.always) out += "  overflow-y: scroll;\n";
    out += "}\n\nbody {\n  margin: 0;\n}\n\n." + cssIdentifier(container) + " {\n  box-sizing: border-box;\n";
    for (const std::string& declaration : wider.container)
        out += "  " + declaration + ";\n";
    out += "}\n";
    while (range-- > 0) {
        PageDeclarations here = declarationsOf(page.settings(range), page.readerSize, isShifted(page));
        out += rangeQuery(*page.ranges[range].upTo, here, wider, container);
        wider = std::move(here);
    }
    return out;
}

std::string pageTitle(const project::Project& project, std::size_t variant) {
    const std::string second = project::titleOf(project.row().variants[variant]);
    return project.name.empty() ? second : project.name + ", " + second;
}

}  // namespace tenter::emit
