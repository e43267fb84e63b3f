#include "emit/page.h"

#include "emit/data_address.h"
#include "emit/escape.h"
#include "emit/given_markup.h"
#include "emit/markup_writer.h"
#include "emit/page_fonts.h"
#include "emit/stylesheet.h"
#include "emit/values.h"
#include "project/titles.h"
#include "units/number.h"

namespace tenter::emit {

namespace {

/// A class name for the container that no variant has.
std::string containerClass(const project::Project& project) {
    std::string name = "container";
    while (project.row().findVariant(name))
        name += "-";
    return name;
}

/// The declarations of the page's root size and container, one on each line.
struct PageDeclarations {
    std::string root;
    std::vector<std::string> container;
};

std::string marginOf(project::ContainerPlace place) {
    if (place == project::ContainerPlace::Center) return "margin: 0 auto";
    return place == project::ContainerPlace::Start ? "margin-inline: 0 auto" : "margin-inline: auto 0";
}

PageDeclarations declarationsOf(const project::PageSettings& page, double readerSize) {
    const project::Container& container = page.container;
    return {"font-size: " + page.rootSize.cssFor(readerSize),
            {"width: " + container.width.css(), "max-width: " + container.maxWidth.css(),
             marginOf(container.place), "padding: " + sides(container.padding),
             "background: " + container.background.css()}};
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

/// The rules that a theme would have for the page around the row.
std::string scaffold(const project::Page& page, const std::string& container) {
    const bool isOpen = !page.ranges.empty() && !page.ranges.back().upTo;
    std::size_t range = page.ranges.size() - (isOpen ? 1 : 0);
    PageDeclarations wider = declarationsOf(page.settings(range), page.readerSize);
    std::string out = "html {\n  " + wider.root + ";\n";
    if (page.scrollbar.always) out += "  overflow-y: scroll;\n";
    out += "}\n\nbody {\n  margin: 0;\n}\n\n." + cssIdentifier(container) + " {\n  box-sizing: border-box;\n";
    for (const std::string& declaration : wider.container)
        out += "  " + declaration + ";\n";
    out += "}\n";
    while (range-- > 0) {
        PageDeclarations here = declarationsOf(page.settings(range), page.readerSize);
        out += rangeQuery(*page.ranges[range].upTo, here, wider, container);
        wider = std::move(here);
    }
    return out;
}

std::string title(const project::Project& project, std::size_t variant) {
    const std::string second = project::titleOf(project.row().variants[variant]);
    return project.name.empty() ? second : project.name + ", " + second;
}

}  // namespace

std::string page(const project::Project& project, std::size_t variant, const std::filesystem::path& folder,
                 text::ParagraphStore& store, project::Problems& problems) {
    if (variant >= project.row().variants.size()) return {};
    const PageFonts fonts = pageFonts(project, variant, store);
    const std::string container = containerClass(project);
    StylesheetOptions options;
    options.variants = {variant};
    options.unit = project.unit;

    std::string out = "<!doctype html>\n<html lang=\"" + html(project.language) + "\"" +
                      (project.rightToLeft ? " dir=\"rtl\"" : "") + ">\n<head>\n";
    out +=
        "<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width, "
        "initial-scale=1\">\n";
    out += "<title>" + html(title(project, variant)) + "</title>\n<style>\n";
    for (const FaceRule& face : fonts.faces)
        out += face.css() + "\n";
    std::optional<markup::GivenRow> given;
    std::optional<std::string> sheet;
    if (project.row().given) {
        project::Problems known;  // the same problems as those of the stylesheet
        given = markup::givenRow(project, known);
        sheet = givenStylesheet(fonts.project, options, problems);
    } else {
        sheet = stylesheet(fonts.project, options);
    }
    if (!sheet) return {};
    out += scaffold(project.page, container) + "\n" + *sheet + "</style>\n</head>\n";

    MarkupOptions marked;
    marked.marked = true;
    marked.depth = 1;
    marked.address = [&](const project::PicturePart& part, const std::string& place) {
        const EmbeddedPicture picture = embedPicture(folder / std::filesystem::path(part.file));
        if (picture.trouble.empty()) return picture.address;
        problems.push_back({"", place + "/picture",
                            "The picture file \"" + part.file + "\" " + picture.trouble +
                                "; the page shows an empty picture instead.",
                            "Put the file there, or choose another."});
        return emptyPicture(part.width, part.height);
    };
    out += "<body>\n<div class=\"" + html(container) + "\">\n";
    out += given ? writeGivenMarkup(project, variant, *given, marked, problems)
                 : writeMarkup(project, variant, marked, problems);
    return out + "</div>\n</body>\n</html>\n";
}

}  // namespace tenter::emit
