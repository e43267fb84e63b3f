#include "row/row_picture.h"

#include <QPainter>
#include <algorithm>
#include <cmath>
#include <set>

#include "checks/key_widths.h"
#include "document/wording.h"
#include "row/row_painter.h"

namespace tenter::desktop::row {

namespace {

constexpr double scale = 0.5;
constexpr int space = 32;    // px around and between the rows
constexpr int caption = 40;  // px above each row
constexpr std::size_t wanted = 6;
constexpr int mostHeight = 16000;
constexpr int mostWait = 10000;  // ms to wait for pictures

QImage rowAt(const LaidOutRow& row, Pictures& pictures, RowPainter& painter) {
    const layout::Layout& layout = row.layout;
    Canvas canvas;
    canvas.scale = scale;
    canvas.image = QImage(static_cast<int>(std::ceil(layout.width * scale)),
                          std::clamp(static_cast<int>(std::ceil(layout.pageHeight * scale)), 1, mostHeight),
                          QImage::Format_RGB32);
    painter.paint(canvas, row, {}, Qt::white);
    pictures.waitUntilIdle(mostWait);
    painter.paint(canvas, row, {}, Qt::white);
    return canvas.image;
}

}  // namespace

std::vector<double> keyWidths(const project::Project& project, std::size_t variant) {
    const double least = project.leastWidth;
    std::set<double> widths{least, project.mostWidth};
    for (const checks::KeyWidth& key : checks::keyWidths(project, variant))
        if (widths.size() < wanted) widths.insert(key.width);
    // Add the middle of the largest gap until there are enough widths.
    while (widths.size() < wanted) {
        double from = least;
        double gap = 0;
        double middle = least;
        for (const double width : widths) {
            if (width - from > gap) {
                gap = width - from;
                middle = std::round((width + from) / 2);
            }
            from = width;
        }
        if (!widths.insert(middle).second) break;
    }
    return {widths.begin(), widths.end()};
}

QImage rowPicture(const LayoutCache& layouts, const Document& document, const std::vector<double>& widths) {
    Pictures pictures;
    RowPainter painter(document, pictures);
    std::vector<QImage> rows;
    std::vector<QString> captions;
    int across = space;
    int tallest = 0;
    for (const double width : widths) {
        const layout::Layout layout = layout::layOutDrawn(layouts.row(), width);
        const LaidOutRow row{layouts.project(), layouts.row(), layout};
        rows.push_back(rowAt(row, pictures, painter));
        const int columns = row.settings().row.columns.value_or(1);
        captions.push_back(pixels(width) + ", " + columnsTitle(columns));
        across += std::max(rows.back().width(), 2 * 80) + space;
        tallest = std::max(tallest, rows.back().height());
    }
    QImage sheet(across, caption + tallest + 2 * space, QImage::Format_RGB32);
    sheet.fill(QColor(0xe9, 0xe9, 0xe7));
    QPainter onto(&sheet);
    QFont font = onto.font();
    font.setPixelSize(15);
    onto.setFont(font);
    onto.setPen(QColor(0x26, 0x2b, 0x2d));
    int x = space;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        onto.drawText(QRect(x, space, std::max(rows[i].width(), 2 * 80) + space, caption),
                      Qt::AlignLeft | Qt::AlignTop, captions[i]);
        onto.drawImage(x, space + caption, rows[i]);
        x += std::max(rows[i].width(), 2 * 80) + space;
    }
    return sheet;
}

}  // namespace tenter::desktop::row
