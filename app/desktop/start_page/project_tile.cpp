#include "start_page/project_tile.h"

#include <QGuiApplication>
#include <QKeyEvent>
#include <QPainter>
#include <cmath>

#include "controls/inks.h"

namespace tenter::desktop::start_page {

namespace {

constexpr int frame = 4;  // px around the tile for the focus ring
constexpr int space = 8;  // px between image and text

}  // namespace

ProjectTile::ProjectTile(const QString& title, const QString& description, QWidget* parent)
    : QAbstractButton(parent), description_(description) {
    setText(title);
    setAccessibleName(title);
    setAccessibleDescription(description);
    // A title in a language of the other direction does not turn the description.
    const QChar mark(QGuiApplication::isRightToLeft() ? 0x200F : 0x200E);
    setToolTip(mark + title + '\n' + mark + description);
    setFocusPolicy(Qt::StrongFocus);
    setAttribute(Qt::WA_Hover);
    setFixedSize(sizeHint());
}

QSize ProjectTile::sizeHint() const {
    QFont strong = font();
    strong.setWeight(QFont::DemiBold);
    const int lines = QFontMetrics(strong).lineSpacing() + fontMetrics().lineSpacing();
    return {imageWidth + 2 * frame, imageHeight + space + lines + 2 * frame};
}

void ProjectTile::setImage(const QImage& image) {
    image_ = image;
    isMissing_ = image.isNull();
    update();
}

void ProjectTile::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    if (underMouse()) painter.fillRect(rect(), palette().color(QPalette::Button));
    const QRect picture(frame, frame, imageWidth, imageHeight);
    if (image_.isNull()) {
        painter.fillRect(picture, palette().color(QPalette::Window));
        painter.setPen(controls::quiet(palette()));
        painter.drawText(picture, Qt::AlignCenter,
                         isMissing_ ? QObject::tr("This project cannot be read") : QString());
    } else {
        painter.setRenderHint(QPainter::SmoothPixmapTransform);
        painter.drawImage(picture, image_);
    }
    painter.setPen(controls::hairline(palette()));
    painter.drawRect(QRectF(picture).adjusted(0.5, 0.5, -0.5, -0.5));
    QFont strong = font();
    strong.setWeight(QFont::DemiBold);
    painter.setFont(strong);
    painter.setPen(palette().color(QPalette::WindowText));
    QRect line(frame, picture.bottom() + 1 + space, imageWidth, painter.fontMetrics().lineSpacing());
    painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter,
                     painter.fontMetrics().elidedText(text(), Qt::ElideRight, imageWidth));
    line.moveTop(line.bottom() + 1);
    painter.setFont(font());
    painter.setPen(controls::quiet(palette()));
    painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter,
                     painter.fontMetrics().elidedText(
                         description_, elidesStart_ ? Qt::ElideLeft : Qt::ElideRight, imageWidth));
    if (hasFocus()) {
        painter.setPen(QPen(palette().color(QPalette::Highlight), 2));
        painter.drawRect(rect().adjusted(1, 1, -1, -1));
    }
}

void ProjectTile::keyPressEvent(QKeyEvent* event) {
    // Arrow keys move to the nearest tile in their direction.
    QPoint way;
    if (event->key() == Qt::Key_Left) way = {-1, 0};
    if (event->key() == Qt::Key_Right) way = {1, 0};
    if (event->key() == Qt::Key_Up) way = {0, -1};
    if (event->key() == Qt::Key_Down) way = {0, 1};
    if (way.isNull()) {
        QAbstractButton::keyPressEvent(event);
        return;
    }
    const QPoint from = mapTo(window(), rect().center());
    ProjectTile* best = nullptr;
    int nearest = 0;
    for (auto* other : window()->findChildren<ProjectTile*>()) {
        if (other == this || !other->isVisible()) continue;
        const QPoint to = other->mapTo(window(), other->rect().center()) - from;
        const int along = to.x() * way.x() + to.y() * way.y();
        const int across = std::abs(to.x() * way.y()) + std::abs(to.y() * way.x());
        if (along <= 0 || (way.y() == 0 && across > imageHeight / 2)) continue;
        if (best == nullptr || along + 2 * across < nearest) {
            best = other;
            nearest = along + 2 * across;
        }
    }
    if (best != nullptr) best->setFocus(Qt::TabFocusReason);
}

}  // namespace tenter::desktop::start_page
