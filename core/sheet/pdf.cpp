#include "sheet/pdf.h"

#include <cairo-pdf.h>

#include <algorithm>
#include <cmath>

#include "checks/phrases.h"
#include "draw/cairo_painter.h"
#include "sheet/pdf_table.h"
#include "sheet/pdf_text.h"
#include "sheet/pdf_update.h"
#include "sheet/pdf_writer.h"
#include "sheet/plot_layout.h"
#include "sheet/shelves.h"
#include "wording/say.h"

namespace tenter::sheet {

namespace {

constexpr double gutter = 18;        // between columns of the page, pt
constexpr double leastCaption = 92;  // of a caption of a thumbnail, pt
constexpr double thumbnailGap = 14;  // between thumbnails, pt
constexpr double shelfSpace = 14;    // below a line of thumbnails, pt
constexpr double leastShelf = 0.42;  // height of a line of thumbnails as a share of the page
constexpr double mostShelf = 0.64;
constexpr double plotHeight = 168;     // pt
constexpr double picturePixels = 2.4;  // px of a picture per pt: 170 dpi

units::Colour inkOf(Ink ink) {
    switch (ink) {
        case Ink::Text:
            return look::text;
        case Ink::Quiet:
            return look::quiet;
        case Ink::Line:
            return look::line;
        case Ink::Faint:
            return look::faint;
        case Ink::Accent:
            return look::accent;
    }
    return look::text;
}

/// Sets the blocks of a sheet one below the other.
class Setter {
public:
    Setter(const Sheet& sheet, PdfWriter& out, draw::PictureSource& pictures, text::ParagraphStore& store)
        : sheet_(sheet), out_(out), painter_(pictures, store, &out.glyphs()) {}

    void cover() {
        const draw::TextBlock kind =
            out_.block(wording::say("Spec sheet"), look::body(look::accent, 600), out_.width());
        draw::BlockStyle right = look::body(look::quiet);
        right.align = draw::TextAlign::End;
        const draw::TextBlock date = out_.block(sheet_.date, right, out_.width());
        out_.text("P", kind, 0, out_.y());
        out_.text("P", date, 0, out_.y());
        out_.advance(kind.height() + 4);
        out_.paragraph("H1", out_.block(sheet_.title, look::title(), out_.width()));
        out_.advance(12);
        out_.rule(look::text, 1.5);
        out_.advance(12);
        facts();
    }

    void operator()(const Heading& heading) { out_.heading(heading.level, heading.text, heading.detail); }

    void operator()(const Paragraph& paragraph) {
        const bool isCaution = paragraph.kind == Paragraph::Kind::Caution;
        const double inset = isCaution ? 12 : 0;
        const draw::BlockStyle style =
            paragraph.kind == Paragraph::Kind::Note ? look::note() : look::body(look::text);
        const draw::TextBlock block =
            out_.block(paragraph.text, style, std::min(look::mostMeasure, out_.width() - 2 * inset));
        out_.begin(block.height() + (isCaution ? 16 : 0));
        if (isCaution) {
            out_.advance(8);
            out_.fill(0, out_.y() - 8, 2.5, block.height() + 16, look::accent);
            out_.fill(2.5, out_.y() - 8, out_.width() - 2.5, block.height() + 16, look::tint);
        }
        out_.text("P", block, inset, out_.y());
        out_.advance(block.height() + (isCaution ? 8 : 0) + 8);
    }

    void operator()(const Table& table) { setTable(out_, table); }

    void operator()(const Thumbnails& thumbnails) {
        const double around = 2 * look::noteHeight * 2 + 4 + shelfSpace;
        const double page = out_.bottom() - out_.top();
        // Somewhat smaller thumbnails rather than most of a page left empty above them.
        const double room = out_.room();
        const double tallest = room > leastShelf * page ? std::min(room, mostShelf * page) : mostShelf * page;
        const Shelves shelves =
            shelvesOf(thumbnails, out_.width(), tallest - around, leastCaption, thumbnailGap);
        for (const Shelf& shelf : shelves.shelves)
            set(thumbnails, shelf, shelves.scale);
    }

    void operator()(const Plots& plots) {
        const double width = (out_.width() - gutter) / 2;
        for (std::size_t i = 0; i < plots.list.size(); i += 2) {
            out_.begin(plotHeight + look::bodyHeight + 6);
            for (std::size_t k = i; k < std::min(plots.list.size(), i + 2); ++k)
                set(plots.list[k], static_cast<double>(k - i) * (width + gutter), width);
            out_.advance(look::bodyHeight + 4 + plotHeight + 10);
        }
    }

    void operator()(const Findings& findings) {
        constexpr double severityWidth = 52;
        const double width = std::min(look::mostMeasure + 40, out_.width() - severityWidth);
        bool isFirst = true;
        for (const FindingItem& item : findings.list) {
            const std::string severity = checks::capitalised(checks::title(item.severity));
            std::vector<draw::TextBlock> blocks;
            blocks.reserve(4);
            blocks.push_back(out_.block(item.title, look::body(look::text, 600), width));
            blocks.push_back(out_.block(item.says, look::body(look::text), width));
            if (!item.widths.empty())
                blocks.push_back(
                    out_.block(wording::say("All affected widths: %1", {item.widths}), look::note(), width));
            blocks.push_back(out_.block(wording::say("Basis: %1", {item.source}), look::note(), width));
            double height = 11;
            for (const draw::TextBlock& block : blocks)
                height += block.height();
            const bool isNewPage = out_.begin(height);
            if (isFirst || isNewPage) out_.open("L");
            out_.rule(isFirst ? look::text : look::faint, 0.5);
            out_.advance(5);
            out_.open("LI");
            out_.text("Lbl", out_.block(severity, look::body(look::text, 700), severityWidth), 0, out_.y());
            out_.open("LBody");
            for (const draw::TextBlock& block : blocks) {
                out_.text("P", block, severityWidth, out_.y());
                out_.advance(block.height());
            }
            out_.close();
            out_.close();
            out_.advance(6);
            isFirst = false;
        }
        out_.closeList();
    }

private:
    void facts() {
        constexpr std::size_t perLine = 3;
        const double width = (out_.width() - 2 * gutter) / 3;
        for (std::size_t i = 0; i < sheet_.facts.size(); i += perLine) {
            double tallest = 0;
            for (std::size_t k = i; k < std::min(sheet_.facts.size(), i + perLine); ++k) {
                const double x = static_cast<double>(k - i) * (width + gutter);
                const draw::TextBlock label = out_.block(sheet_.facts[k].label, look::note(), width);
                out_.text("P", label, x, out_.y());
                double height = label.height();
                for (const draw::TextBlock& value : valuesOf(sheet_.facts[k], width)) {
                    out_.text("P", value, x, out_.y() + height);
                    height += value.height();
                }
                tallest = std::max(tallest, height);
            }
            out_.advance(tallest + 8);
        }
    }

    /// As many values on each line as fit. A value that fits on a line is not broken, such as a class at its
    /// hyphens.
    [[nodiscard]] std::vector<draw::TextBlock> valuesOf(const Fact& fact, double width) {
        const draw::BlockStyle style = look::body(look::text, 600);
        std::vector<std::string> lines;
        lines.reserve(fact.values.size());
        for (std::size_t i = 0; i < fact.values.size(); ++i) {
            const std::string value = fact.values[i] + (i + 1 == fact.values.size() ? "" : ",");
            const std::string longer = lines.empty() ? value : lines.back() + " " + value;
            if (!lines.empty() && out_.block(longer, style, 2 * out_.width()).width() <= width)
                lines.back() = longer;
            else
                lines.push_back(value);
        }
        std::vector<draw::TextBlock> blocks;
        blocks.reserve(lines.size());
        for (const std::string& line : lines)
            blocks.push_back(out_.block(line, style, width));
        return blocks;
    }

    void set(const Thumbnails& thumbnails, const Shelf& shelf, double scale) {
        struct Caption {
            draw::TextBlock title, why;
        };
        std::vector<Caption> captions;
        double captionHeight = 0;
        captions.reserve(shelf.items.size());
        for (const ShelfItem& item : shelf.items) {
            const Thumbnail& thumbnail = thumbnails.list[item.index];
            captions.push_back({out_.block(thumbnail.title, look::note(look::text, 600), item.place),
                                out_.block(whyOf(thumbnail, item), look::note(), item.place)});
            captionHeight =
                std::max(captionHeight, captions.back().title.height() + captions.back().why.height());
        }
        out_.begin(captionHeight + 4 + shelf.height());
        double x = 0;
        for (std::size_t i = 0; i < shelf.items.size(); ++i) {
            const ShelfItem& item = shelf.items[i];
            out_.text("P", captions[i].title, x, out_.y());
            out_.text("P", captions[i].why, x, out_.y() + captions[i].title.height());
            picture(thumbnails.list[item.index], item, scale, x, out_.y() + captionHeight + 4);
            x += item.place + thumbnailGap;
        }
        out_.advance(captionHeight + 4 + shelf.height() + shelfSpace);
    }

    void picture(const Thumbnail& thumbnail, const ShelfItem& item, double scale, double x, double y) {
        cairo_t* const context = out_.beginFigure(thumbnail.alt);
        cairo_save(context);
        cairo_translate(context, out_.left() + x, y);
        cairo_rectangle(context, 0, 0, item.width, item.height);
        cairo_clip(context);
        cairo_scale(context, scale, scale);
        draw::PaintOptions options;
        options.pictureScale = std::min(2.0, scale * picturePixels);
        options.shadowScale = std::min(1.0, scale * picturePixels / 3);
        options.encodePictures = true;
        painter_.paint(context, thumbnail.drawing, thumbnail.layout, draw::DeviceGrid{}, options);
        cairo_restore(context);
        draw::setColour(context, look::line);
        cairo_set_line_width(context, 0.5);
        cairo_rectangle(context, out_.left() + x, y, item.width, item.height);
        cairo_stroke(context);
        out_.endFigure();
    }

    void set(const Plot& plot, double x, double width) {
        out_.text("P", out_.block(plot.title, look::body(look::text, 600), width), x, out_.y());
        const double top = out_.y() + look::bodyHeight + 4;
        const PlotLayout laid = layOutPlot(plot, width, plotHeight, look::plotSize);
        cairo_t* const context = out_.beginFigure(plot.alt);
        cairo_save(context);
        cairo_translate(context, out_.left() + x, top);
        cairo_set_line_join(context, CAIRO_LINE_JOIN_ROUND);
        for (const PlotLine& line : laid.lines) {
            draw::setColour(context, inkOf(line.ink));
            cairo_set_line_width(context, line.width);
            cairo_set_dash(context, line.dashes.data(), static_cast<int>(line.dashes.size()), 0);
            for (const PlotPoint& point : line.points)
                cairo_line_to(context, point.x, point.y);
            cairo_stroke(context);
        }
        cairo_restore(context);
        for (const PlotLabel& label : laid.labels)
            out_.label(label.text, inkOf(label.ink), laid.textSize, x + label.at.x, top + label.at.y,
                       label.anchor == Anchor::Start    ? draw::TextAlign::Start
                       : label.anchor == Anchor::Middle ? draw::TextAlign::Center
                                                        : draw::TextAlign::End);
        out_.endFigure();
    }

    const Sheet& sheet_;
    PdfWriter& out_;
    draw::CairoPainter painter_;
};

}  // namespace

std::string pdfSheet(const Sheet& sheet, const Paper& paper, draw::PictureSource& pictures,
                     text::ParagraphStore& store, const std::function<bool()>& isStopped) {
    PdfWriter out(sheet, paper, store);
    Setter setter(sheet, out, pictures, store);
    setter.cover();
    for (const Block& block : sheet.blocks) {
        if (isStopped && isStopped()) return {};
        std::visit(setter, block);
    }
    return out.finish();
}

}  // namespace tenter::sheet
