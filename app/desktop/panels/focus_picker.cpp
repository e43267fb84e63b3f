#include "panels/focus_picker.h"

#include <QImageReader>
#include <QKeyEvent>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "controls/inks.h"
#include "document/wording.h"

namespace tenter::desktop::panels {

namespace {

constexpr int previewSide = 480;  // px: enough for the preview at 200 %

}  // namespace

FocusPicker::FocusPicker(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setCursor(Qt::CrossCursor);
    setAccessibleName(QObject::tr("Focal point"));
    setToolTip(QObject::tr(
        "This point stays visible when the slot crops the picture. Click to set it, or use the arrow keys."));
}

void FocusPicker::preview(const QString& file, double x, double y, double ratio) {
    if (file != file_) {
        file_ = file;
        QImageReader reader(file);
        reader.setAutoTransform(true);
        const QSize size = reader.size();
        if (size.isValid() && std::max(size.width(), size.height()) > previewSide)
            reader.setScaledSize(size.scaled(previewSide, previewSide, Qt::KeepAspectRatio));
        image_ = reader.read();
    }
    x_ = x;
    y_ = y;
    ratio_ = ratio;
    setAccessibleDescription(QObject::tr("%1 from the left, %2 from the top").arg(percent(x), percent(y)));
    update();
}

QRectF FocusPicker::frame() const {
    if (image_.isNull()) return QRectF(rect()).adjusted(1, 1, -1, -1);
    const QSizeF size =
        QSizeF(image_.size()).scaled(QSizeF(rect().size()) - QSizeF(4, 4), Qt::KeepAspectRatio);
    return {2, (height() - size.height()) / 2, size.width(), size.height()};
}

void FocusPicker::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    const QRectF box = frame();
    if (image_.isNull()) {
        painter.setPen(QPen(controls::quiet(palette()), 1, Qt::DashLine));
        painter.drawRect(box);
        painter.drawText(box.adjusted(12, 0, -12, 0), Qt::AlignCenter | Qt::TextWordWrap,
                         file_.isEmpty() ? QObject::tr("No picture")
                                         : QObject::tr("The file cannot be read as a picture."));
    } else {
        painter.drawImage(box, image_);
        // CSS Images 3 § 5.5: object-fit cover, positioned at the focal point.
        const double own = box.width() / box.height();
        QSizeF cut = box.size();
        if (ratio_ > own)
            cut.setHeight(box.width() / ratio_);
        else
            cut.setWidth(box.height() * ratio_);
        const QRectF kept(box.x() + (box.width() - cut.width()) * x_,
                          box.y() + (box.height() - cut.height()) * y_, cut.width(), cut.height());
        QPainterPath veil;
        veil.addRect(box);
        QPainterPath window;
        window.addRect(kept);
        painter.fillPath(veil.subtracted(window), QColor(0, 0, 0, 140));
        const QPointF point(box.x() + box.width() * x_, box.y() + box.height() * y_);
        for (const auto& [colour, weight] :
             {std::pair(QColor(Qt::black), 4.0), std::pair(QColor(Qt::white), 2.0)}) {
            painter.setPen(QPen(colour, weight));
            painter.setBrush(Qt::NoBrush);
            painter.drawEllipse(point, 8, 8);
            painter.drawPoint(point);
        }
    }
    if (hasFocus()) {
        painter.setPen(QPen(palette().color(QPalette::Highlight), 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(box.adjusted(-1, -1, 1, 1));
    }
}

void FocusPicker::put(double x, double y) {
    x = std::clamp(std::round(x * 100) / 100, 0.0, 1.0);
    y = std::clamp(std::round(y * 100) / 100, 0.0, 1.0);
    if (image_.isNull() || (x == x_ && y == y_)) return;
    x_ = x;
    y_ = y;
    update();
    Q_EMIT moved();
}

void FocusPicker::moveTo(const QPointF& position) {
    const QRectF box = frame();
    put((position.x() - box.x()) / box.width(), (position.y() - box.y()) / box.height());
}

void FocusPicker::mousePressEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton) moveTo(event->position());
}

void FocusPicker::mouseMoveEvent(QMouseEvent* event) {
    if (event->buttons().testFlag(Qt::LeftButton)) moveTo(event->position());
}

void FocusPicker::mouseReleaseEvent(QMouseEvent*) {
    Q_EMIT released();
}

void FocusPicker::keyPressEvent(QKeyEvent* event) {
    const double step = event->modifiers().testFlag(Qt::ShiftModifier) ? 0.1 : 0.01;
    switch (event->key()) {
        case Qt::Key_Left:
            put(x_ - step, y_);
            return;
        case Qt::Key_Right:
            put(x_ + step, y_);
            return;
        case Qt::Key_Up:
            put(x_, y_ - step);
            return;
        case Qt::Key_Down:
            put(x_, y_ + step);
            return;
        default:
            QWidget::keyPressEvent(event);
    }
}

}  // namespace tenter::desktop::panels
