#include "sheet/html.h"

#include <algorithm>
#include <cmath>

#include "checks/phrases.h"
#include "draw/svg_painter.h"
#include "emit/escape.h"
#include "sheet/html_style.h"
#include "sheet/plot_layout.h"
#include "sheet/shelves.h"
#include "units/number.h"
#include "wording/language.h"
#include "wording/say.h"

namespace tenter::sheet {

namespace {

// CSS px: the width of the text, and the tallest thumbnail.
constexpr double contentWidth = 928;
constexpr double mostHeight = 760;
constexpr double leastPlace = 150;
constexpr double shelfGap = 24;

std::string number(double value) {
    return units::number(value, 2);
}

const char* colourOf(Ink ink) {
    switch (ink) {
        case Ink::Text:
            return "var(--text)";
        case Ink::Quiet:
            return "var(--quiet)";
        case Ink::Line:
            return "var(--line)";
        case Ink::Faint:
            return "var(--faint)";
        case Ink::Accent:
            return "var(--accent)";
    }
    return "";
}

std::string plotSvg(const Plot& plot) {
    const PlotLayout laid = layOutPlot(plot, 440, 260, 11);
    std::string out =
        "<svg viewBox=\"0 0 440 260\" role=\"img\" aria-label=\"" + emit::html(plot.alt) + "\">\n";
    for (const PlotLine& line : laid.lines) {
        out += "<polyline fill=\"none\" stroke=\"";
        out.append(colourOf(line.ink)).append("\" stroke-width=\"").append(number(line.width));
        out += "\" stroke-linejoin=\"round\"";
        if (!line.dashes.empty()) {
            out += " stroke-dasharray=\"";
            for (const double dash : line.dashes)
                out += number(dash) + " ";
            out.back() = '"';
        }
        out += " points=\"";
        for (const PlotPoint& point : line.points)
            out.append(number(point.x)).append(",").append(number(point.y)).append(" ");
        out += "\"/>\n";
    }
    for (const PlotLabel& label : laid.labels) {
        out.append("<text x=\"").append(number(label.at.x)).append("\" y=\"").append(number(label.at.y));
        out.append("\" fill=\"").append(colourOf(label.ink)).append("\"");
        if (label.anchor != Anchor::Start)
            out += label.anchor == Anchor::End ? " text-anchor=\"end\"" : " text-anchor=\"middle\"";
        out += ">" + emit::html(label.text) + "</text>\n";
    }
    return out + "</svg>\n";
}

/// Writes the blocks of a sheet in order.
class Writer {
public:
    Writer(const Sheet& sheet, draw::PictureSource& pictures, text::ParagraphStore& store)
        : sheet_(sheet), painter_(pictures, store, draw::SvgText::Shared, 1.5) {}

    std::string write() {
        for (const Block& block : sheet_.blocks)
            std::visit(*this, block);
        std::string out = "<!doctype html>\n<html lang=\"" + std::string(wording::languageInUse()) +
                          "\">\n<head>\n<meta charset=\"utf-8\">\n";
        out +=
            "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
            "<link rel=\"icon\" href=\"data:,\">\n<title>";
        out += emit::html(wording::say("%1: spec sheet", {sheet_.title})) + "</title>\n<style>";
        out.append(htmlStyle()).append("</style>\n</head>\n<body>\n");
        if (!painter_.definitions().empty())
            out +=
                "<svg width=\"0\" height=\"0\" style=\"position: absolute\" aria-hidden=\"true\"><defs>\n" +
                painter_.definitions() + "</defs></svg>\n";
        out += "<main>\n" + head();
        return out + body_ + "</main>\n</body>\n</html>\n";
    }

    void operator()(const Heading& heading) {
        const std::string tag = "h" + std::to_string(heading.level);
        body_ += "<" + tag + ">" + named(heading.text);
        if (!heading.detail.empty()) body_ += " <small>" + emit::html(heading.detail) + "</small>";
        body_ += "</" + tag + ">\n";
    }

    void operator()(const Paragraph& paragraph) {
        const char* const kind = paragraph.kind == Paragraph::Kind::Caution ? " class=\"caution\""
                                 : paragraph.kind == Paragraph::Kind::Note  ? " class=\"note\""
                                                                            : "";
        body_ += "<p" + std::string(kind) + ">" + emit::html(paragraph.text) + "</p>\n";
    }

    void operator()(const Table& table) {
        body_ += "<div class=\"scroll\" tabindex=\"0\" role=\"region\" aria-label=\"" +
                 emit::html(table.title) + "\">\n<table>\n<caption>" + emit::html(table.title) +
                 "</caption>\n<thead><tr>";
        const auto cell = [&](const char* tag, std::size_t column, const std::string& text,
                              const char* scope) {
            const bool isNumber = table.columns[column].isNumber && column > 0;
            body_ += std::string("<") + tag + scope + (isNumber ? " class=\"n\">" : ">") + emit::html(text) +
                     "</" + tag + ">";
        };
        for (std::size_t i = 0; i < table.columns.size(); ++i)
            cell("th", i, table.columns[i].title, " scope=\"col\"");
        body_ += "</tr></thead>\n<tbody>\n";
        for (const std::vector<std::string>& row : table.rows) {
            body_ += "<tr>";
            for (std::size_t i = 0; i < row.size(); ++i)
                cell(i == 0 ? "th" : "td", i, row[i], i == 0 ? " scope=\"row\"" : "");
            body_ += "</tr>\n";
        }
        body_ += "</tbody>\n</table>\n</div>\n";
        if (!table.note.empty()) body_ += "<p class=\"note\">" + emit::html(table.note) + "</p>\n";
    }

    void operator()(const Thumbnails& thumbnails) {
        const Shelves shelves = shelvesOf(thumbnails, contentWidth, mostHeight, leastPlace, shelfGap);
        painter_.setPictureScale(std::min(1.5, 1.5 * shelves.scale));
        for (const Shelf& shelf : shelves.shelves) {
            body_ += "<div class=\"shelf\">\n";
            for (const ShelfItem& item : shelf.items)
                figure(thumbnails.list[item.index], item, shelves.scale);
            body_ += "</div>\n";
        }
    }

    void operator()(const Plots& plots) {
        body_ += "<div class=\"plots\">\n";
        for (const Plot& plot : plots.list)
            body_ += "<figure><figcaption><strong>" + emit::html(plot.title) + "</strong></figcaption>\n" +
                     plotSvg(plot) + "</figure>\n";
        body_ += "</div>\n";
    }

    void operator()(const Findings& findings) {
        body_ += "<ul class=\"findings\">\n";
        for (const FindingItem& item : findings.list) {
            const std::string severity = checks::capitalised(checks::title(item.severity));
            body_ += "<li><p class=\"severity\">" + emit::html(severity) + "</p>\n<div><p><strong>" +
                     emit::html(item.title) + "</strong></p>\n<p>" + emit::html(item.says) + "</p>\n";
            if (!item.widths.empty())
                body_ += "<p class=\"note\">" +
                         emit::html(wording::say("All affected widths: %1", {item.widths})) + "</p>\n";
            body_ += "<p class=\"note\">" + emit::html(wording::say("Basis: %1", {item.source})) +
                     "</p></div></li>\n";
        }
        body_ += "</ul>\n";
    }

private:
    /// A name of the project, in its language and direction.
    [[nodiscard]] std::string named(const std::string& text) const {
        return "<bdi lang=\"" + emit::html(sheet_.language) + "\">" + emit::html(text) + "</bdi>";
    }

    [[nodiscard]] std::string head() const {
        std::string out =
            "<header>\n<p>" + emit::html(wording::say("Spec sheet")) + "</p>\n<p class=\"date\">";
        out +=
            "<time datetime=\"" + emit::html(sheet_.date) + "\">" + emit::html(sheet_.date) + "</time></p>\n";
        out += "<h1>" + named(sheet_.title) + "</h1>\n</header>\n<dl class=\"facts\">\n";
        for (const Fact& fact : sheet_.facts) {
            out += "<div><dt>" + emit::html(fact.label) + "</dt><dd>";
            for (std::size_t i = 0; i < fact.values.size(); ++i) {
                const bool isLast = i + 1 == fact.values.size();
                out += "<span>" + emit::html(fact.values[i]) + (isLast ? "</span>" : ",</span> ");
            }
            out += "</dd></div>\n";
        }
        return out + "</dl>\n";
    }

    void figure(const Thumbnail& thumbnail, const ShelfItem& item, double scale) {
        const std::string width = number(item.width);
        const std::string height = number(item.height);
        body_ += "<figure style=\"max-width: " + number(item.place) + "px\">\n<figcaption><strong>" +
                 emit::html(thumbnail.title) + "</strong> <span>" + emit::html(whyOf(thumbnail, item)) +
                 "</span></figcaption>\n";
        body_ += "<svg width=\"" + width + "\" height=\"" + height + "\" viewBox=\"0 0 " +
                 number(item.width / scale) + " " + number(item.height / scale) +
                 "\" role=\"img\" aria-label=\"" + emit::html(thumbnail.alt) + "\">\n";
        body_ += painter_.paint(thumbnail.drawing, thumbnail.layout, draw::DeviceGrid{}) + "</svg>\n";
        body_ += "</figure>\n";
    }

    const Sheet& sheet_;
    draw::SvgPainter painter_;
    std::string body_;
};

}  // namespace

std::string htmlSheet(const Sheet& sheet, draw::PictureSource& pictures, text::ParagraphStore& store) {
    return Writer(sheet, pictures, store).write();
}

}  // namespace tenter::sheet
