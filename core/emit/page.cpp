#include "emit/page.h"

#include "emit/data_address.h"
#include "emit/escape.h"
#include "emit/given_markup.h"
#include "emit/markup_writer.h"
#include "emit/page_fonts.h"
#include "emit/page_scaffold.h"
#include "emit/stylesheet.h"

namespace tenter::emit {

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
    out += "<title>" + html(pageTitle(project, variant)) + "</title>\n<style>\n";
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
