#include "axis/thumbnail.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

#include "document/wording.h"
#include "row/ink.h"

namespace tenter::desktop::axis {

namespace {

constexpr int around = 6;              // px left and right of the picture
constexpr double largestScale = 0.25;  // so that a narrow page is drawn smaller than a wide one

}  // namespace

Thumbnail::Thumbnail(const LayoutCache& layouts, const Document& document, QWidget* parent)
    : QAbstractButton(parent), layouts_(layouts), painter_(document, pictures_) {
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
    connect(&pictures_, &row::Pictures::arrived, this, &Thumbnail::redraw);
}

void Thumbnail::show(const checks::KeyWidth& keyWidth) {
    keyWidth_ = keyWidth;
    setAccessibleName(pixels(keyWidth.width) + ", " + QString::fromStdString(keyWidth.why));
    setToolTip(accessibleName());
    setVisible(true);
}

void Thumbnail::setCurrent(bool on) {
    if (on == current_) return;
    current_ = on;
    update();
}

void Thumbnail::redraw() {
    const double room = width() - 2 * around;
    if (room < 8 || keyWidth_.width <= 0) return;
    layout::layOutDrawn(layouts_.row(), keyWidth_.width, layout_);
    const double scale = std::min(largestScale, room / layout_.width);
    const double ratio = devicePixelRatioF();
    const double tall = std::ceil(layout_.pageHeight * scale);
    cropped_ = tall > pictureHeight;
    row::Canvas canvas;
    canvas.scale = scale * ratio;
    canvas.image =
        QImage(std::max(1, static_cast<int>(std::lround(layout_.width * scale * ratio))),
               std::max(1, static_cast<int>(std::lround(std::min<double>(tall, pictureHeight) * ratio))),
               QImage::Format_RGB32);
    pictures_.beginRound();
    painter_.paint(canvas, {layouts_.project(), layouts_.row(), layout_}, {}, Qt::white);
    image_ = canvas.image;
    image_.setDevicePixelRatio(ratio);
    update();
}

void Thumbnail::paintEvent(QPaintEvent*) {
    const row::Ink ink = row::Ink::of(palette());
    QPainter painter(this);
    const QSizeF size = image_.isNull() ? QSizeF(24, 24) : image_.deviceIndependentSize();
    const QRectF page(std::round((width() - size.width()) / 2), 1, size.width(), size.height());
    if (!image_.isNull()) painter.drawImage(page.topLeft(), image_);
    const QColor frame = current_ ? ink.accent : underMouse() ? ink.text : ink.line;
    painter.fillRect(QRectF(page.left() - 1, page.top() - 1, page.width() + 2, 1), frame);
    painter.fillRect(QRectF(page.left() - 1, page.top(), 1, page.height()), frame);
    painter.fillRect(QRectF(page.right(), page.top(), 1, page.height()), frame);
    // A cropped page has no bottom edge.
    if (!cropped_) painter.fillRect(QRectF(page.left() - 1, page.bottom(), page.width() + 2, 1), frame);
    const QRectF captions(2, pictureHeight + 4, width() - 4, captionHeight() - 4);
    painter.setPen(current_ ? ink.accentText : ink.text);
    painter.drawText(captions, Qt::AlignHCenter | Qt::AlignTop | Qt::TextWordWrap, accessibleName());
    if (hasFocus()) {
        painter.setPen(QPen(ink.accent, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(rect().adjusted(1, 1, -1, -1));
    }
}

void Thumbnail::resizeEvent(QResizeEvent*) {
    redraw();
}
void Thumbnail::enterEvent(QEnterEvent*) {
    update();
}
void Thumbnail::leaveEvent(QEvent*) {
    update();
}

}  // namespace tenter::desktop::axis
