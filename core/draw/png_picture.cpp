#include <cmath>

#include "draw/cairo_painter.h"
#include "draw/row_drawing.h"
#include "draw/row_picture.h"
#include "units/quantities.h"

namespace tenter::draw {

namespace {

cairo_status_t append(void* out, const unsigned char* bytes, unsigned count) {
    static_cast<std::string*>(out)->append(reinterpret_cast<const char*>(bytes), count);
    return CAIRO_STATUS_SUCCESS;
}

}  // namespace

std::string pngPicture(const LaidOutRow& row, double ratio, PictureSource& pictures,
                       text::ParagraphStore& store, project::Problems& problems) {
    const DeviceGrid grid{ratio, 0, 0};
    const double width = std::max(1.0, std::round(row.layout.width * ratio));
    const double height = std::max(1.0, std::round(row.layout.pageHeight * ratio));
    if (width > mostPictureSide || height > mostPictureSide) {
        problems.push_back({"", "",
                            "The picture would be " + units::figure(width, 0) + " × " + units::px(height, 0) +
                                "; a PNG picture can have " + units::px(mostPictureSide, 0) + " on a side.",
                            "Use a smaller width or pixel ratio, or SVG."});
        return {};
    }
    const CairoSurface surface(
        cairo_image_surface_create(CAIRO_FORMAT_RGB24, static_cast<int>(width), static_cast<int>(height)));
    const CairoContext context(cairo_create(surface.get()));
    CairoPainter painter(pictures, store);
    painter.paint(context.get(), drawRow(row), row.layout, grid);
    std::string out;
    if (cairo_status(context.get()) == CAIRO_STATUS_SUCCESS &&
        cairo_surface_write_to_png_stream(surface.get(), append, &out) == CAIRO_STATUS_SUCCESS)
        return out;
    problems.push_back({"", "", "There is not enough memory for the picture.",
                        "Use a smaller width or pixel ratio, or SVG."});
    return {};
}

}  // namespace tenter::draw
