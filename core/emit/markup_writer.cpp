#include "emit/markup_writer.h"

#include "emit/address.h"
#include "emit/class_names.h"
#include "emit/escape.h"
#include "emit/page.h"
#include "emit/usage.h"
#include "emit/values.h"
#include "project/address.h"
#include "units/number.h"

namespace tenter::emit {

using project::PicturePart;
using project::Run;
using project::TextPart;

namespace {

std::string attribute(const std::string& name, const std::string& value) {
    return " " + name + "=\"" + html(value) + "\"";
}

class MarkupWriter {
public:
    MarkupWriter(const project::Project& project, const MarkupOptions& options, project::Problems& problems)
        : project_(project), options_(options), problems_(problems), stands_(positionsNeedClasses(project)) {}

    [[nodiscard]] std::string pictureAt(const project::PartRef& place) const {
        const project::Card& card = project_.row().cards[place.card];
        return picture(std::get<PicturePart>(card.parts[place.part]), picturePosition(card, place.part), {},
                       {}, sourcesOf(place.card, place.part));
    }

    std::string row(const std::string& className) {
        std::string opening =
            "<section" + attribute("class", className) + attribute("lang", project_.language);
        if (project_.rightToLeft) opening += attribute("dir", "rtl");
        line(0, opening + (options_.marked ? " data-tenter-row>" : ">"));
        for (std::size_t i = 0; i < project_.row().cards.size(); ++i)
            card(i);
        line(0, "</section>");
        return text_;
    }

private:
    void line(int depth, const std::string& content) {
        text_.append(static_cast<std::size_t>(depth + options_.depth) * 2, ' ');
        text_ += content;
        text_ += '\n';
    }

    [[nodiscard]] std::string partClass(const std::string& part) const {
        return emit::partClass(project_, part);
    }

    void card(std::size_t index) {
        const project::Card& card = project_.row().cards[index];
        std::string opening = "<article" + attribute("class", partClass("card"));
        if (options_.marked) opening += attribute("data-tenter-card", std::to_string(index));
        line(1, opening + ">");
        for (std::size_t i = 0; i < card.parts.size(); ++i) {
            const std::string place = "/cards/" + std::to_string(index) + "/parts/" + std::to_string(i);
            std::string mark;
            if (options_.marked)
                mark = attribute("data-tenter-part", std::to_string(index) + "." + std::to_string(i));
            if (const auto* shown = std::get_if<PicturePart>(&card.parts[i])) {
                line(2, picture(*shown, picturePosition(card, i), place, mark, sourcesOf(index, i)));
            } else {
                text(std::get<TextPart>(card.parts[i]), place, mark);
            }
        }
        line(1, "</article>");
    }

    [[nodiscard]] std::optional<PictureSources> sourcesOf(std::size_t card, std::size_t part) const {
        return options_.sources ? options_.sources(card, part) : std::nullopt;
    }

    [[nodiscard]] std::string picture(const PicturePart& part, const PicturePosition& stand,
                                      const std::string& place, const std::string& mark,
                                      const std::optional<PictureSources>& sources) const {
        std::string classes = partClass("picture");
        if (stands_) classes += " " + partClass("picture-" + stand.word());
        std::string out = "<img" + attribute("class", classes);
        double width = part.width;
        double height = part.height;
        if (sources) {
            out += attribute("srcset", sources->srcset) + attribute("sizes", sources->sizes) +
                   attribute("src", sources->src);
            width = sources->size.width;
            height = sources->size.height;
        } else {
            out += attribute("src", options_.address(part, place));
        }
        out += attribute("alt", part.alt);
        if (width > 0 && height > 0)
            out +=
                attribute("width", units::number(width, 0)) + attribute("height", units::number(height, 0));
        std::string style;
        std::string own = ownRatio(part);
        if (own.empty() && sources) own = sources->ratio;
        if (!own.empty()) style = "aspect-ratio: " + own;
        if (const std::string focus = ownPosition(part); !focus.empty())
            style += (style.empty() ? "object-position: " : "; object-position: ") + focus;
        if (!style.empty()) out += attribute("style", style);
        out += mark + ">";
        return sources ? amongAlternatives(out, *sources) : out;
    }

    /// The element inside `<picture>`, which makes no box, so that the image stays a child of the card's box.
    static std::string amongAlternatives(const std::string& image, const PictureSources& sources) {
        if (sources.alternatives.empty()) return image;
        std::string out = "<picture style=\"display: contents\">";
        for (const PictureSources::Alternative& one : sources.alternatives)
            out += "<source" + attribute("type", one.type) + attribute("srcset", one.srcset) +
                   attribute("sizes", sources.sizes) + ">";
        return out + image + "</picture>";
    }

    void text(const TextPart& part, const std::string& place, const std::string& mark) {
        const bool button = part.role == "button";
        std::string tag = "p";
        if (button) tag = "a";
        if (part.role == "heading") tag = "h" + std::to_string(project_.row().headingLevel);
        std::string link;
        if (isWholeLink(part)) link = attribute("href", address(part.link, place + "/link"));
        // Only links and buttons can have an accessible name that differs from their text. WAI-ARIA 1.2
        // § 5.2.8.6.
        if (isWholeLink(part) && !part.name.empty()) link += attribute("aria-label", part.name);
        std::string out = "<" + tag + attribute("class", partClass(part.role));
        if (button) out += link;
        out += mark + ">";
        // A heading that is a link stays a heading.
        const bool inner = isWholeLink(part) && !button;
        if (inner) out += "<a" + link + ">";
        for (std::size_t i = 0; i < part.copy.size(); ++i)
            out += run(part.copy[i], isWholeLink(part), place + "/copy/" + std::to_string(i) + "/to");
        if (inner) out += "</a>";
        line(2, out + "</" + tag + ">");
    }

    /// A run as HTML. A link inside a link is not allowed. HTML § 4.5.1.
    std::string run(const Run& run, bool withinLink, const std::string& place) {
        switch (run.kind) {
            case Run::Kind::Break:
                return "<br>";
            case Run::Kind::Strong:
                return "<strong>" + html(run.text) + "</strong>";
            case Run::Kind::Emphasis:
                return "<em>" + html(run.text) + "</em>";
            case Run::Kind::Link:
                if (withinLink) break;
                return "<a" + attribute("href", address(run.to, place)) + ">" + html(run.text) + "</a>";
            case Run::Kind::Plain:
                break;
        }
        return html(run.text);
    }

    std::string address(const std::string& said, const std::string& place) {
        if (said.empty()) return "#";
        if (project::isSafeAddress(said)) return said;
        problems_.push_back({"", place,
                             "The link address \"" + said + "\" is not allowed; the page has # instead.",
                             "Use http, https, mailto, tel, a relative address or #…."});
        return "#";
    }

    const project::Project& project_;
    const MarkupOptions& options_;
    project::Problems& problems_;
    bool stands_;
    std::string text_;
};

}  // namespace

std::string writeMarkup(const project::Project& project, std::size_t variant, const MarkupOptions& options,
                        project::Problems& problems) {
    return MarkupWriter(project, options, problems).row(project.row().variants.at(variant).className);
}

std::string pictureElement(const project::Project& project, const project::PartRef& place,
                           const MarkupOptions& options) {
    project::Problems ignored;
    return MarkupWriter(project, options, ignored).pictureAt(place);
}

std::string markup(const project::Project& project, std::size_t variant, const CutPictures& cut) {
    if (variant >= project.row().variants.size()) return {};
    MarkupOptions options;
    options.address = [](const PicturePart& part, const std::string&) { return pathAddress(part.file); };
    if (cut.listing != nullptr) options.sources = sourcesIn(project, variant, cut);
    project::Problems ignored;
    return writeMarkup(project, variant, options, ignored);
}

std::string pictureElements(const project::Project& project, std::size_t variant, const CutPictures& cut) {
    const std::string& className = project.row().variants.at(variant).className;
    MarkupOptions options;
    options.address = [](const PicturePart& part, const std::string&) { return pathAddress(part.file); };
    options.sources = sourcesIn(project, variant, cut);
    std::string out;
    for (const pictures::ListedPicture& picture : cut.listing->pictures) {
        if (picture.variant != className || !options.sources(picture.card, picture.part)) continue;
        out += "<!-- " + html(className) + ", card " + std::to_string(picture.card + 1) + " -->\n";
        out += pictureElement(project, {picture.card, picture.part}, options) + "\n";
    }
    return out;
}

}  // namespace tenter::emit
