#include "new_row/look_tile.h"

#include <QPainter>

#include "controls/inks.h"

namespace tenter::desktop::new_row {

namespace {

constexpr int frame = 4;  // px around the picture for the marks of choice and focus

}  // namespace

LookTile::LookTile(const QString& title, const QString& description, QWidget* parent)
    : QAbstractButton(parent) {
    setText(title);
    setCheckable(true);
    setAccessibleName(QObject::tr("Look: %1").arg(title));
    setAccessibleDescription(description);
    setToolTip(description);
    setFocusPolicy(Qt::StrongFocus);
    setAttribute(Qt::WA_Hover);
    setFixedSize(sizeHint());
}

QSize LookTile::sizeHint() const {
    return {imageWidth + 2 * frame, imageHeight + 2 * frame + fontMetrics().lineSpacing() + 2};
}

void LookTile::setImage(const QImage& image) {
    if (!image.isNull()) image_ = image;
    update();
}

void LookTile::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const QRect picture(frame, frame, imageWidth, imageHeight);
    if (underMouse()) painter.fillRect(rect(), palette().color(QPalette::Button));
    if (image_.isNull()) {
        painter.fillRect(picture, palette().color(QPalette::Base));
    } else {
        painter.setRenderHint(QPainter::SmoothPixmapTransform);
        painter.drawImage(picture, image_);
    }
    painter.setPen(controls::hairline(palette()));
    painter.drawRect(QRectF(picture).adjusted(0.5, 0.5, -0.5, -0.5));
    if (isChecked()) {
        painter.setPen(QPen(palette().color(QPalette::Highlight), 2));
        painter.drawRect(picture.adjusted(-1, -1, 1, 1));
    }
    QFont own = font();
    if (isChecked()) own.setWeight(QFont::DemiBold);
    painter.setFont(own);
    painter.setPen(palette().color(QPalette::WindowText));
    painter.drawText(QRect(frame, picture.bottom() + 4, imageWidth, height() - picture.bottom() - 4),
                     Qt::AlignLeft | Qt::AlignVCenter, text());
    if (hasFocus()) {
        painter.setPen(QPen(palette().color(QPalette::Highlight), 2));
        painter.drawRect(rect().adjusted(1, 1, -1, -1));
    }
}

}  // namespace tenter::desktop::new_row
