#include "row/row_painter.h"

#include <QFileInfo>
#include <cmath>

#include "draw/device_ring.h"
#include "row/boxes.h"
#include "row/ink.h"
#include "row/lookup.h"

namespace tenter::desktop::row {

namespace {

QColor over(const QColor& under, const QColor& colour) {
    return mixed(under, colour, colour.alphaF());
}

// A placeholder for a missing picture: the slot with a diagonal cross, and the file name.
void missingPicture(QPainter& painter, const QRect& rect, const std::string& file, double scale) {
    const QColor ground = colourOf(draw::placeholderGround);
    painter.save();
    painter.setClipRect(rect, Qt::IntersectClip);
    painter.fillRect(rect, ground);
    painter.setRenderHint(QPainter::Antialiasing, true);
    painter.setPen(QPen(colourOf(draw::placeholderLine), scale));
    painter.drawLine(rect.topLeft(), rect.bottomRight());
    painter.drawLine(rect.topRight(), rect.bottomLeft());
    QFont font = painter.font();
    font.setPixelSize(std::max(1, static_cast<int>(std::lround(draw::placeholderSize * scale))));
    painter.setFont(font);
    const QString label = QString::fromStdString(draw::placeholderText(file));
    const QRect place =
        painter.fontMetrics().boundingRect(rect, Qt::AlignCenter | Qt::TextWrapAnywhere, label);
    painter.fillRect(place.adjusted(-8, -4, 8, 4), ground);
    painter.setPen(colourOf(draw::placeholderInk));
    painter.drawText(rect, Qt::AlignCenter | Qt::TextWrapAnywhere, label);
    painter.restore();
}

}  // namespace

std::optional<std::size_t> hoverTarget(const LaidOutRow& row, const QPointF& page) {
    const layout::Layout& layout = row.layout;
    const bool linked = row.settings().card.linked.value_or(false);
    if (linked) {
        if (const auto card = cardAt(layout, page)) {
            const layout::LaidCard& laid = layout.cards[*card];
            for (std::uint32_t i = 0; i < laid.partCount; ++i)
                if (kindOf(row, layout.parts[laid.firstPart + i]) == "button") return laid.firstPart + i;
        }
    }
    return partAt(layout, page);
}

QColor groundOf(const LaidOutRow& row) {
    const project::Settings& settings = row.settings();
    QColor ground = over(Qt::white, colourOf(row.page().container.background));
    if (settings.row.background) ground = over(ground, colourOf(*settings.row.background));
    if (settings.card.background) ground = over(ground, colourOf(*settings.card.background));
    return ground;
}

/// One painting of the row's drawing.
struct RowPainter::Painting {
    RowPainter& owner;
    QPainter& painter;
    Canvas& canvas;
    const layout::Layout& layout;

    [[nodiscard]] bool shows(const QRect& rect, double reach = 0) const {
        return canvas.shows(QRectF(rect).adjusted(-reach, -reach, reach, reach));
    }

    void operator()(const draw::FillBox& fill) const {
        const QRect rect = canvas.snapped(fill.box);
        if (shows(rect)) fillBox(painter, rect, fill.corners.scaled(canvas.scale), colourOf(fill.colour));
    }

    void operator()(const draw::StrokeBox& stroke) const {
        const QRect rect = canvas.snapped(stroke.box);
        if (shows(rect))
            strokeBox(painter, rect, stroke.corners.scaled(canvas.scale), canvas.borderWidth(stroke.width),
                      colourOf(stroke.colour));
    }

    void operator()(const draw::OutlineBox& outline) const {
        const draw::DeviceRing around = draw::ringOf(outline, canvas);
        strokeBox(painter, Canvas::rectOf(around.box), around.corners, around.width,
                  colourOf(outline.colour));
    }

    void operator()(const draw::CastShadow& shadow) const {
        if (shows(canvas.snapped(shadow.box), shadow.reach() * canvas.scale))
            owner.shadows_.paint(painter, canvas, shadow);
    }

    void operator()(const draw::ShowPicture& shown) const {
        const QRect rect = canvas.snapped(shown.box);
        if (rect.isEmpty() || !shows(rect)) return;
        if (shown.file.empty()) {
            missingPicture(painter, rect, {}, canvas.scale);
            return;
        }
        const QString file = QString::fromStdString((owner.document_.folder() / shown.file).string());
        const Pictures::Found found = owner.pictures_.find(file, {rect.size(), shown.focusX, shown.focusY});
        const Corners corners = shown.corners.scaled(canvas.scale);
        if (found.state == Pictures::State::Missing)
            missingPicture(painter, rect, shown.file, canvas.scale);
        else if (found.state == Pictures::State::Loading)
            fillBox(painter, rect, corners, QColor(0x80, 0x80, 0x80, 0x30));
        else
            fillBox(painter, rect, corners, found.image);
    }

    void operator()(const draw::ShowText& text) const {
        const layout::LaidPart& part = layout.parts[text.part];
        // Text can extend beyond its box.
        const QRect rect = canvas.snapped(part.box);
        const double beyond = 48 * canvas.scale;
        if (canvas.shows(QRectF(rect).adjusted(-rect.width(), -beyond, rect.width(), beyond)))
            owner.text_.paint(canvas, layout, part, text);
    }
};

void RowPainter::paint(Canvas& canvas, const LaidOutRow& row, const Attention& attention,
                       const QColor& desk) {
    const double height = (canvas.image.height() - canvas.top) / canvas.scale + 1;
    draw::drawRow(row, attention, height, drawing_);
    QPainter painter(&canvas.image);
    painter.fillRect(canvas.image.rect(), desk);
    painter.setClipRect(canvas.snapped({0, 0, row.layout.width, std::max(row.layout.pageHeight, height)}));
    const Painting painting{*this, painter, canvas, row.layout};
    for (const draw::Operation& operation : drawing_)
        std::visit(painting, operation.what);
    text_.trim();
}

}  // namespace tenter::desktop::row
