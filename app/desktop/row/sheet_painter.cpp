#include "row/sheet_painter.h"

#include <cmath>

#include "controls/text_scale.h"
#include "row/finding_mark.h"
#include "row/ink.h"
#include "row/lookup.h"

namespace tenter::desktop::row {

namespace {

void place(Canvas& canvas, const Projection& at, double ratio) {
    canvas.left = static_cast<int>(std::lround(at.left * ratio));
    canvas.top = static_cast<int>(std::lround(at.top * ratio));
}

}  // namespace

SheetPainter::SheetPainter(const Session& session, const SheetLayout& sheets, const OverlayActions& overlays,
                           const SheetMarks& marks, const QAbstractScrollArea& area, Pictures& pictures)
    : session_(session),
      sheets_(sheets),
      overlays_(overlays),
      marks_(marks),
      area_(area),
      pictures_(pictures),
      row_(session.document, pictures) {}

void SheetPainter::clear() {
    row_.clear();
    variantPainters_.clear();
}

RowPainter& SheetPainter::painterOf(std::size_t sheet) {
    if (sheet == sheets_.active()) return row_;
    if (sheet >= variantPainters_.size()) variantPainters_.resize(sheet + 1);
    std::unique_ptr<RowPainter>& painter = variantPainters_[sheet];
    if (!painter) painter = std::make_unique<RowPainter>(session_.document, pictures_);
    return *painter;
}

const QImage& SheetPainter::image(const AttentionTo& attention) {
    if (stale_ || canvas_.image.devicePixelRatio() != area_.viewport()->devicePixelRatioF())
        render(attention);
    return canvas_.image;
}

void SheetPainter::render(const AttentionTo& attention) {
    const QWidget* const view = area_.viewport();
    const double ratio = view->devicePixelRatioF();
    const QSize size(static_cast<int>(std::ceil(view->width() * ratio)),
                     static_cast<int>(std::ceil(view->height() * ratio)));
    if (canvas_.image.size() != size) canvas_.image = QImage(size, QImage::Format_RGB32);
    canvas_.image.setDevicePixelRatio(1);
    canvas_.scale = sheets_.zoom() * ratio;
    pictures_.beginRound();
    if (sheets_.showsAll()) {
        renderSheets(attention);
    } else {
        place(canvas_, sheets_.projection(), ratio);
        row_.paint(canvas_, session_.layouts.current(), attention(0), Ink::of(area_.palette()).desk);
    }
    canvas_.image.setDevicePixelRatio(ratio);
    if (sheets_.showsAll() || session_.checks.chosen() || overlays_.anyIsOn()) {
        QPainter painter(&canvas_.image);
        for (std::size_t i = 0; i < sheets_.count(); ++i)
            paintOver(painter, i);
    }
    stale_ = false;
}

// Each page is painted into an image that shares the memory of its part of the view.
void SheetPainter::renderSheets(const AttentionTo& attention) {
    const QColor desk = Ink::of(area_.palette()).desk;
    canvas_.image.fill(desk);
    const double ratio = area_.viewport()->devicePixelRatioF();
    for (std::size_t i = 0; i < sheets_.count(); ++i) {
        Canvas piece;
        piece.scale = canvas_.scale;
        place(piece, sheets_.projection(i), ratio);
        const LaidOutRow row = sheets_.rowOn(i);
        const QRect seen =
            piece.snapped({0, 0, row.layout.width, row.layout.pageHeight}).intersected(canvas_.image.rect());
        if (seen.isEmpty()) continue;
        const auto stride = canvas_.image.bytesPerLine();
        piece.image = QImage(canvas_.image.scanLine(seen.top()) + std::ptrdiff_t{4} * seen.left(),
                             seen.width(), seen.height(), stride, canvas_.image.format());
        piece.left -= seen.left();
        piece.top -= seen.top();
        painterOf(i).paint(piece, row, attention(i), desk);
    }
}

void SheetPainter::paintOver(QPainter& painter, std::size_t sheet) {
    QRectF seen(area_.viewport()->rect());
    if (sheets_.showsAll()) {
        marks_.paintCaption(painter, sheet);
        seen = seen.intersected(sheets_.inView()[sheet].page);
        if (seen.isEmpty()) return;
    }
    painter.save();
    painter.setClipRect(seen);
    painter.setFont(controls::smallFont(area_.font()));
    OverlayTools tools{painter,
                       session_.layouts,
                       sheets_.variantOn(sheet),
                       sheets_.rowOn(sheet),
                       sheets_.projection(sheet),
                       seen,
                       Ink::of(area_.palette())};
    if (const auto chosen = session_.checks.chosen(); chosen && sheet == sheets_.active())
        paintFinding(tools, session_.checks.findings()[*chosen]);
    overlays_.paint(tools);
    painter.restore();
}

}  // namespace tenter::desktop::row
