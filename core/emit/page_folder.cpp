#include "emit/page_folder.h"

#include <algorithm>
#include <map>
#include <set>

#include "emit/address.h"
#include "emit/data_address.h"
#include "emit/escape.h"
#include "emit/given_markup.h"
#include "emit/late_fonts.h"
#include "emit/markup_writer.h"
#include "emit/page_fonts.h"
#include "emit/page_scaffold.h"
#include "project/titles.h"
#include "text/embedding.h"
#include "units/ascii.h"
#include "units/number.h"
#include "units/quantities.h"

namespace tenter::emit {

namespace fs = std::filesystem;

namespace {

/// Names of files that differ from each other even where case does not count.
class FreeNames {
public:
    /// `stem.ending`, or with a number from 2 on before the ending.
    std::string take(const std::string& folder, const std::string& stem, const std::string& ending) {
        for (int count = 1;; ++count) {
            std::string name = folder;
            name.append("/").append(stem);
            if (count > 1) name.append("-").append(std::to_string(count));
            name += ending;
            if (taken_.insert(units::lowered(name)).second) return name;
        }
    }

private:
    std::set<std::string> taken_;
};

/// A family name in lower-case letters, digits and hyphens.
std::string fileStem(const std::string& family) {
    const std::string out = units::hyphenated(
        units::lowered(family), [](char c) { return units::isLowerLetter(c) || units::isDigit(c); });
    return out.empty() ? "font" : out;
}

/// Headings above the row that nobody sees, so that the levels of headings have no gap. WCAG 2.2, technique
/// G141.
std::string hiddenHeadings(const project::Project& project, std::size_t variant) {
    const project::Row& row = project.row();
    const int last = row.given && row.given->levelBefore ? *row.given->levelBefore : row.headingLevel - 1;
    std::string out;
    for (int level = 1; level <= last; ++level) {
        const std::string tag = "h" + std::to_string(level);
        const std::string text =
            level == 1 && !project.name.empty() ? project.name : project::titleOf(row.variants[variant]);
        out.append("  <").append(tag).append(" class=\"unseen\">").append(html(text));
        out.append("</").append(tag).append(">\n");
    }
    return out;
}

constexpr const char* unseenRule =
    "\n.unseen {\n  position: absolute;\n  width: 1px;\n  height: 1px;\n  margin: 0;\n  overflow: hidden;\n"
    "  clip-path: inset(50%);\n  white-space: nowrap;\n}\n";

class FolderMaker {
public:
    FolderMaker(const project::Project& project, const fs::path& folder, const PageFolderOptions& options,
                text::ParagraphStore& store, project::Problems& problems)
        : project_(project),
          folder_(folder),
          options_(options),
          store_(store),
          problems_(problems),
          fonts_(pageFonts(project, options.variant, store)) {}

    std::optional<PageFolder> make() {
        // Families keep their lists unless a font has a name that only this page knows.
        const bool renamed = options_.fonts && std::ranges::any_of(fonts_.faces, &FaceRule::renamed);
        project::Project styled = renamed ? fonts_.project : project_;
        StylesheetOptions sheet = options_.sheet;
        sheet.variants = {options_.variant};
        if (options_.lateFonts) {
            const LateFonts late = lateFonts(project_, sheet.variants, store_);
            addFallbackNames(styled, late.fallbacks);
            sheet.fontRules = lateFontRules(late, sheet.form.comments, sheet.form.minified);
        }
        std::optional<std::string> css;
        if (project_.row().given) {
            project::Problems known;  // the same problems as those of the stylesheet
            given_ = markup::givenRow(project_, known);
            css = givenStylesheet(styled, sheet, problems_);
        } else {
            css = stylesheet(styled, sheet);
        }
        if (!css) return std::nullopt;
        const std::string container = containerClass(project_);
        const std::string fonts = fontRules();
        std::string index = page(container, !fonts.empty());
        add("index.html", std::move(index));
        add("row.css", std::move(*css));
        add("page.css", scaffold(project_.page, container) + unseenRule);
        if (!fonts.empty()) add("fonts.css", fonts);
        for (project::FolderFile& file : copied_)
            out_.files.push_back(std::move(file));
        return std::move(out_);
    }

private:
    void add(const std::string& name, std::string content) {
        out_.files.push_back({name, std::move(content), {}});
    }

    /// The rules for the fonts of the folder; empty if it has none.
    std::string fontRules() {
        std::string rules;
        for (const FaceRule& face : fonts_.faces) {
            ShippedFont font{face.face->family(), "", ""};
            const text::Embedding embedding = text::embeddingOf(*face.face);
            if (!options_.fonts) {
                font.reason = "is left out, as asked";
            } else if (embedding != text::Embedding::Installable) {
                font.reason = text::words(embedding);
            } else {
                FontFile file = fontFile(*face.face);
                std::string stem = fileStem(font.family) + "-" + units::number(face.face->minWeight(), 0);
                if (face.face->italic()) stem += "-italic";
                font.file = names_.take("fonts", stem, "." + file.extension);
                rules += (rules.empty() ? "" : "\n") +
                         face.css("url(\"" + pathAddress(font.file) + "\") format(\"" + file.format + "\")",
                                  "  font-display: swap;\n");
                copied_.push_back({font.file, std::move(file.bytes), {}});
            }
            out_.fonts.push_back(std::move(font));
        }
        return rules;
    }

    std::string page(const std::string& container, bool hasFonts) {
        std::string out = "<!doctype html>\n<html lang=\"" + html(project_.language) + "\"" +
                          (project_.rightToLeft ? " dir=\"rtl\"" : "") + ">\n<head>\n";
        out +=
            "<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width, "
            "initial-scale=1\">\n";
        out += "<title>" + html(pageTitle(project_, options_.variant)) + "</title>\n";
        // Without it browsers ask a server for an icon.
        out += "<link rel=\"icon\" href=\"data:,\">\n";
        for (const char* sheet : {"fonts.css", "page.css", "row.css"})
            if (hasFonts || std::string_view(sheet) != "fonts.css")
                out.append("<link rel=\"stylesheet\" href=\"").append(sheet).append("\">\n");
        out += "</head>\n<body>\n<main class=\"" + html(container) + "\">\n" +
               hiddenHeadings(project_, options_.variant);
        MarkupOptions marked;
        marked.depth = 1;
        if (options_.cuts != nullptr) {
            addCuts(*options_.cuts);
            marked.sources = sourcesIn(project_, options_.variant, {&options_.cuts->listing(), "pictures/"});
        }
        marked.address = [&](const project::PicturePart& part, const std::string& place) {
            return picture(part, place);
        };
        out += given_ ? writeGivenMarkup(project_, options_.variant, *given_, marked, problems_)
                      : writeMarkup(project_, options_.variant, marked, problems_);
        return out + "</main>\n</body>\n</html>\n";
    }

    /// The cut files, and what is wrong with pictures that could not be cut.
    void addCuts(const FolderCuts& cuts) {
        for (const pictures::CutPicture& picture : cuts.plan().pictures)
            for (const pictures::CutFile& file : picture.files) {
                const fs::path name = file.name;
                copied_.push_back({names_.take("pictures", name.stem().string(), name.extension().string()),
                                   "", cuts.file(file.name)});
            }
        // What the page itself reports is more: it says what is shown instead.
        for (const project::Problem& trouble : cuts.troubles()) {
            const auto* part = pictureAt(trouble.place);
            if (part == nullptr || pictureTrouble(folder_ / fs::path(part->file)).empty())
                problems_.push_back(trouble);
        }
    }

    /// The picture with the place `/cards/C/parts/P/picture`.
    [[nodiscard]] const project::PicturePart* pictureAt(const std::string& place) const {
        const std::vector<project::Card>& cards = project_.row().cards;
        for (std::size_t c = 0; c < cards.size(); ++c)
            for (std::size_t p = 0; p < cards[c].parts.size(); ++p)
                if (place == "/cards/" + std::to_string(c) + "/parts/" + std::to_string(p) + "/picture")
                    return std::get_if<project::PicturePart>(&cards[c].parts[p]);
        return nullptr;
    }

    /// The address of a picture, which is copied into the folder once.
    std::string picture(const project::PicturePart& part, const std::string& place) {
        const auto known = pictures_.find(part.file);
        if (known != pictures_.end()) return known->second;
        const fs::path source = folder_ / fs::path(part.file);
        if (const std::string trouble = pictureTrouble(source); !trouble.empty()) {
            problems_.push_back({"", place + "/picture",
                                 "The picture file \"" + part.file + "\" " + trouble +
                                     "; the page shows an empty picture instead.",
                                 "Put the file there, or choose another."});
            return emptyPicture(part.width, part.height);
        }
        const fs::path name = source.filename();
        const std::string file = names_.take("pictures", name.stem().string(), name.extension().string());
        copied_.push_back({file, "", source});
        return pictures_[part.file] = pathAddress(file);
    }

    const project::Project& project_;
    const fs::path& folder_;
    const PageFolderOptions& options_;
    text::ParagraphStore& store_;
    project::Problems& problems_;
    PageFonts fonts_;
    std::optional<markup::GivenRow> given_;
    FreeNames names_;
    std::map<std::string, std::string> pictures_;  ///< addresses by the file name in the project
    std::vector<project::FolderFile> copied_;
    PageFolder out_;
};

std::string sizeWords(std::uintmax_t bytes) {
    const auto size = static_cast<double>(bytes);
    if (bytes < 1000) return std::to_string(bytes) + "\u00A0bytes";
    return size < 1e6 ? units::figure(size / 1e3, 1) + "\u00A0kB" : units::figure(size / 1e6, 1) + "\u00A0MB";
}

}  // namespace

std::optional<PageFolder> pageFolder(const project::Project& project, const fs::path& folder,
                                     const PageFolderOptions& options, text::ParagraphStore& store,
                                     project::Problems& problems) {
    if (options.variant >= project.row().variants.size()) return std::nullopt;
    return FolderMaker(project, folder, options, store, problems).make();
}

std::string folderList(const PageFolder& folder) {
    std::string out;
    for (const project::FolderFile& file : folder.files)
        out.append(file.name).append("  ").append(sizeWords(file.size())).append("\n");
    bool shipped = false;
    for (const ShippedFont& font : folder.fonts) {
        shipped = shipped || !font.file.empty();
        if (!font.reason.empty()) out += "Without the font " + font.family + ": it " + font.reason + ".\n";
    }
    if (shipped)
        out += "Fonts are included if their files allow it. Check their licences before you publish them.\n";
    return out;
}

}  // namespace tenter::emit
