#include "sheet/pdf_writer.h"

#include <cairo-pdf.h>

#include <algorithm>

#include "draw/cairo_painter.h"
#include "wording/language.h"
#include "wording/say.h"

namespace tenter::sheet {

namespace {

cairo_status_t append(void* out, const unsigned char* bytes, unsigned count) {
    static_cast<std::string*>(out)->append(reinterpret_cast<const char*>(bytes), count);
    return CAIRO_STATUS_SUCCESS;
}

}  // namespace

PdfWriter::PdfWriter(const Sheet& sheet, const Paper& paper, text::ParagraphStore& store)
    : sheet_(sheet),
      paper_(paper),
      store_(store),
      surface_(cairo_pdf_surface_create_for_stream(append, &bytes_, paper.width, paper.height)),
      context_(cairo_create(surface_.get())) {
    cairo_surface_t* const pdf = surface_.get();
    const std::string date = sheet.date + "T00:00:00Z";
    cairo_pdf_surface_set_metadata(pdf, CAIRO_PDF_METADATA_TITLE,
                                   wording::say("%1: spec sheet", {sheet.title}).c_str());
    cairo_pdf_surface_set_metadata(pdf, CAIRO_PDF_METADATA_CREATOR, "Tenter");
    cairo_pdf_surface_set_metadata(pdf, CAIRO_PDF_METADATA_CREATE_DATE, date.c_str());
    cairo_pdf_surface_set_metadata(pdf, CAIRO_PDF_METADATA_MOD_DATE, date.c_str());
    additions_.language = wording::languageInUse();
    cairo_tag_begin(context_.get(), "Document", nullptr);
}

void PdfWriter::newPage() {
    // A list or a table goes on as another one on the next page.
    closeList();
    footer();
    cairo_show_page(context_.get());
    ++page_;
    y_ = top_;
}

// Not tagged: it is no content.
void PdfWriter::footer() {
    const double y = paper_.height - 36;
    draw::BlockStyle style = look::note();
    const draw::TextBlock name =
        block(wording::say("%1 · Spec sheet · %2", {sheet_.title, sheet_.date}), style, width() - 40);
    style.align = draw::TextAlign::End;
    const draw::TextBlock number = block(std::to_string(page_), style, width());
    fill(0, y - 5, width(), 0.5, look::line);
    text_.showLine(context_.get(), name, 0, left_, y);
    text_.showLine(context_.get(), number, 0, left_, y);
}

double PdfWriter::heightOf(const Waiting& heading, bool isAtTop) {
    const double above = isAtTop ? 0 : heading.level == 2 ? 24 : 14;
    return above + block(heading.text, look::heading(heading.level), width()).height() +
           (heading.level == 2 ? 8 : 6);
}

double PdfWriter::room() {
    double left = bottom() - y_;
    for (std::size_t i = 0; i < waiting_.size(); ++i)
        left -= heightOf(waiting_[i], i == 0 && y_ == top_);
    return left;
}

bool PdfWriter::begin(double height) {
    const bool isNewPage = height > room() && y_ > top_;
    if (isNewPage) newPage();
    const std::vector<Waiting> headings = std::move(waiting_);
    waiting_.clear();
    for (const Waiting& heading : headings)
        set(heading);
    return isNewPage;
}

void PdfWriter::heading(int level, const std::string& text, const std::string& detail) {
    waiting_.push_back({level, text, detail});
}

void PdfWriter::set(const Waiting& heading) {
    if (y_ > top_) y_ += heading.level == 2 ? 24 : 14;
    const double start = y_;
    const draw::TextBlock title = block(heading.text, look::heading(heading.level), width());
    if (heading.level == 2) fill(0, start - 8, width(), 0.5, look::line);
    open(heading.level == 2 ? "H2" : "H3");
    text_.show(context_.get(), title, left_, start);
    close();
    if (!heading.detail.empty()) {
        const draw::TextBlock detail = block(heading.detail, look::body(look::quiet), width());
        const double x = title.lines().back().line.width + 10;
        const double baseline = start + title.lines().back().baseline;
        open("P");
        text_.showLine(context_.get(), detail, 0, left_ + x, baseline - detail.lines()[0].baseline);
        close();
    }
    y_ = start + title.height() + (heading.level == 2 ? 8 : 6);
}

void PdfWriter::text(const char* tag, const draw::TextBlock& block, double x, double y) {
    open(tag);
    text_.show(context_.get(), block, left_ + x, y);
    close();
}

void PdfWriter::paragraph(const char* tag, const draw::TextBlock& block) {
    text(tag, block, 0, y_);
    y_ += block.height();
}

void PdfWriter::label(const std::string& text, const units::Colour& colour, double size, double x, double y,
                      draw::TextAlign align) {
    draw::BlockStyle style = look::note(colour);
    style.size = size;
    const draw::TextBlock made = block(text, style, 1e4);
    double start = x;
    if (align != draw::TextAlign::Start) start -= made.width() * (align == draw::TextAlign::End ? 1 : 0.5);
    if (!made.lines().empty())
        text_.showLine(context_.get(), made, 0, left_ + start, y - made.lines()[0].baseline);
}

void PdfWriter::rule(const units::Colour& colour, double thickness) {
    fill(0, y_, width(), thickness, colour);
}

void PdfWriter::fill(double x, double y, double width, double height, const units::Colour& colour) {
    draw::setColour(context_.get(), colour);
    cairo_rectangle(context_.get(), left_ + x, y, width, height);
    cairo_fill(context_.get());
}

void PdfWriter::open(const char* tag) {
    open_.emplace_back(tag);
    cairo_tag_begin(context_.get(), tag, nullptr);
}

void PdfWriter::close() {
    cairo_tag_end(context_.get(), open_.back().c_str());
    open_.pop_back();
}

void PdfWriter::closeList() {
    while (!open_.empty())
        close();
}

cairo_t* PdfWriter::beginFigure(const std::string& alternativeText) {
    open("Figure");
    additions_.alternativeTexts.push_back(alternativeText);
    return context_.get();
}

std::string PdfWriter::finish() {
    begin(0);
    closeList();
    footer();
    cairo_tag_end(context_.get(), "Document");
    cairo_show_page(context_.get());
    const bool isSound = cairo_status(context_.get()) == CAIRO_STATUS_SUCCESS;
    context_.reset();
    cairo_surface_finish(surface_.get());
    if (!isSound || cairo_surface_status(surface_.get()) != CAIRO_STATUS_SUCCESS) return {};
    return withAdditions(std::move(bytes_), additions_).value_or("");
}

}  // namespace tenter::sheet
