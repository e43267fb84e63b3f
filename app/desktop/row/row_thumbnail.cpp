#include "row/row_thumbnail.h"

#include <algorithm>

#include "document/document.h"
#include "layout/layout.h"
#include "row/row_painter.h"

namespace tenter::desktop::row {

namespace {

constexpr int longestWait = 4000;  // ms for pictures

QImage painted(Document& document, double width, const QSize& size) {
    const project::Project& project = document.project();
    const double at = std::clamp(width, project.leastWidth, project.mostWidth);
    const layout::PreparedRow prepared(project, 0, document.store(), text::defaultProfile());
    const layout::Layout layout = layout::layOutDrawn(prepared, at);
    const LaidOutRow row{project, prepared, layout};
    Canvas canvas;
    canvas.scale = size.width() / std::max(layout.width, 1.0);
    canvas.image = QImage(size, QImage::Format_RGB32);
    Pictures pictures;
    RowPainter painter(document, pictures);
    const units::Colour ground = row.page().container.background;
    const QColor desk = ground.isTransparent() ? QColor(Qt::white) : colourOf(ground);
    painter.paint(canvas, row, {}, desk);
    pictures.waitUntilIdle(longestWait);
    painter.paint(canvas, row, {}, desk);
    return canvas.image;
}

}  // namespace

QImage rowThumbnail(const project::Project& project, const std::filesystem::path& folder, double width,
                    const QSize& size) {
    Document document;
    document.startNew(project, folder);
    return painted(document, width, size);
}

QImage rowThumbnail(const std::filesystem::path& file, double width, const QSize& size) {
    Document document;
    project::Problems problems;
    return document.openAsNew(file, problems) ? painted(document, width, size) : QImage();
}

}  // namespace tenter::desktop::row
