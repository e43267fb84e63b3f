#include "controls/glyphs.h"

#include <QGuiApplication>
#include <QIconEngine>
#include <QPainter>
#include <QPainterPath>
#include <QPalette>

namespace tenter::desktop::controls {

namespace {

void line(QPainterPath& path, std::initializer_list<QPointF> points) {
    bool first = true;
    for (const QPointF& point : points) {
        if (first)
            path.moveTo(point);
        else
            path.lineTo(point);
        first = false;
    }
}

class GlyphEngine : public QIconEngine {
public:
    explicit GlyphEngine(Glyph glyph) : glyph_(glyph) {}

    void paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State) override {
        const auto group = mode == QIcon::Disabled ? QPalette::Disabled : QPalette::Active;
        const auto role = mode == QIcon::Selected ? QPalette::HighlightedText : QPalette::ButtonText;
        const double side = std::min(rect.width(), rect.height());
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        painter->translate(rect.x() + (rect.width() - side) / 2, rect.y() + (rect.height() - side) / 2);
        painter->scale(side / 16, side / 16);
        const double weight = glyph_ == Glyph::Strong ? 2.2 : 1.4;
        painter->setPen(QPen(QGuiApplication::palette().color(group, role), weight, Qt::SolidLine,
                             Qt::FlatCap, Qt::MiterJoin));
        painter->drawPath(glyphPath(glyph_));
        painter->restore();
    }

    QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override {
        QPixmap pixmap(size);
        pixmap.fill(Qt::transparent);
        QPainter painter(&pixmap);
        paint(&painter, QRect(QPoint(0, 0), size), mode, state);
        return pixmap;
    }

    [[nodiscard]] QIconEngine* clone() const override { return new GlyphEngine(glyph_); }

private:
    Glyph glyph_;
};

}  // namespace

QPainterPath glyphPath(Glyph glyph) {
    QPainterPath path;
    switch (glyph) {
        case Glyph::Add:
            line(path, {{8, 3}, {8, 13}});
            line(path, {{3, 8}, {13, 8}});
            break;
        case Glyph::Remove:
            line(path, {{4, 4}, {12, 12}});
            line(path, {{12, 4}, {4, 12}});
            break;
        case Glyph::Up:
            line(path, {{4, 10}, {8, 6}, {12, 10}});
            break;
        case Glyph::Down:
            line(path, {{4, 6}, {8, 10}, {12, 6}});
            break;
        case Glyph::Left:
            line(path, {{10, 4}, {6, 8}, {10, 12}});
            break;
        case Glyph::Right:
            line(path, {{6, 4}, {10, 8}, {6, 12}});
            break;
        case Glyph::Reset:
            path.arcMoveTo(QRectF(3.5, 3.5, 9, 9), 150);
            path.arcTo(QRectF(3.5, 3.5, 9, 9), 150, -285);
            line(path, {{3.4, 2.6}, {3.6, 6.4}, {7.4, 6.2}});
            break;
        case Glyph::Strong:
            path.moveTo(5, 3);
            path.lineTo(5, 13);
            path.lineTo(8.6, 13);
            path.cubicTo(12.6, 13, 12.6, 7.8, 8.6, 7.8);
            path.lineTo(5, 7.8);
            path.moveTo(8.2, 7.8);
            path.cubicTo(11.6, 7.8, 11.6, 3, 8.2, 3);
            path.lineTo(5, 3);
            break;
        case Glyph::Emphasis:
            line(path, {{6.5, 3}, {12, 3}});
            line(path, {{4, 13}, {9.5, 13}});
            line(path, {{9.5, 3}, {6.5, 13}});
            break;
        case Glyph::Link:
            path.addRoundedRect(QRectF(1.5, 5.5, 7, 5), 2.5, 2.5);
            path.addRoundedRect(QRectF(7.5, 5.5, 7, 5), 2.5, 2.5);
            break;
        case Glyph::LineBreak:
            line(path, {{12.5, 3}, {12.5, 9.5}, {4, 9.5}});
            line(path, {{7, 6.5}, {4, 9.5}, {7, 12.5}});
            break;
        case Glyph::Copy:
            path.addRect(QRectF(3.5, 5.5, 7, 8));
            line(path, {{6, 5.5}, {6, 2.5}, {13, 2.5}, {13, 10.5}, {10.5, 10.5}});
            break;
        case Glyph::Search:
            path.addEllipse(QRectF(2.5, 2.5, 8, 8));
            line(path, {{9.5, 9.5}, {13.5, 13.5}});
            break;
    }
    return path;
}

QIcon glyph(Glyph glyph) {
    return QIcon(new GlyphEngine(glyph));
}

}  // namespace tenter::desktop::controls
