#include <cmath>

#include "draw/row_drawing.h"
#include "draw/row_picture.h"
#include "draw/svg_painter.h"
#include "units/number.h"

namespace tenter::draw {

std::string svgPicture(const LaidOutRow& row, PictureSource& pictures, text::ParagraphStore& store) {
    constexpr double pictureScale = 2;
    SvgPainter painter(pictures, store, SvgText::Paths, pictureScale);
    const std::string elements = painter.paint(drawRow(row), row.layout, DeviceGrid{});
    const std::string width = units::number(std::max(1.0, std::round(row.layout.width)), 0);
    const std::string height = units::number(std::max(1.0, std::round(row.layout.pageHeight)), 0);
    std::string out = "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + width + "\" height=\"" + height;
    out.append("\" viewBox=\"0 0 ").append(width).append(" ").append(height).append("\">\n");
    if (!painter.definitions().empty())
        out.append("<defs>\n").append(painter.definitions()).append("</defs>\n");
    return out.append(elements).append("</svg>\n");
}

}  // namespace tenter::draw
