#include "panels/dimension_drawing.h"

#include <QPainter>
#include <QPainterPath>

#include "controls/inks.h"
#include "controls/reading_order.h"
#include "controls/text_scale.h"
#include "document/wording.h"
#include "panels/computed.h"
#include "panels/row_parts.h"
#include "panels/setting_help.h"

namespace tenter::desktop::panels {

namespace {

constexpr int sideField = 56;  // width of the fields at left and right
constexpr int midField = 72;   // width of the fields at top and bottom
constexpr int fieldHeight = 28;
constexpr int stripHeight = 40;  // height of a top or bottom strip: a field and space around it
constexpr int stripWidth = 62;   // width of a left or right strip
constexpr int contentHeight = 56;
constexpr std::array sides{"top", "right", "bottom", "left"};

QString sideTitle(bool margin, std::size_t side) {
    switch (side) {
        case 0:
            return margin ? QObject::tr("Margin top") : QObject::tr("Padding top");
        case 1:
            return margin ? QObject::tr("Margin right") : QObject::tr("Padding right");
        case 2:
            return margin ? QObject::tr("Margin bottom") : QObject::tr("Padding bottom");
        default:
            return margin ? QObject::tr("Margin left") : QObject::tr("Padding left");
    }
}

/// Parallel lines at 45° between two rectangles.
void hatch(QPainter& painter, const QRect& outer, const QRect& inner) {
    QPainterPath band;
    band.addRect(outer);
    QPainterPath hole;
    hole.addRect(inner);
    painter.save();
    painter.setClipPath(band.subtracted(hole));
    for (int x = outer.left() - outer.height(); x < outer.right(); x += 8)
        painter.drawLine(x, outer.bottom(), x + outer.height(), outer.top());
    painter.restore();
}

}  // namespace

DimensionDrawing::DimensionDrawing(Context& context, const std::string& subject, QWidget* parent)
    : QWidget(parent), context_(context), subject_(subject) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    controls::keepOwnOrder(*this);
    for (std::size_t i = 0; i < fields_.size(); ++i) {
        const bool margin = i < 4;
        const std::string side = sides[i % 4];
        auto kind = controls::lengthKind({"em", "rem", "px", "%", "vw"}, {}, margin ? -1000 : 0, 1000);
        if (margin && side == "top" && subject_.empty()) kind.keywords = {"auto"};
        Field& field = fields_[i];
        field.editor = new controls::NumberEditor(kind, this);
        const QString title = sideTitle(margin, i % 4);
        field.binding =
            new Binding(context_, *field.editor, subject_, (margin ? "margin/" : "padding/") + side, title);
    }
}

std::string DimensionDrawing::subject() const {
    return subject_.empty() ? context_.target.subject() : subject_;
}

bool DimensionDrawing::hasMargin() const {
    const std::string about = subject();
    return about != "card" && about != "row";
}

bool DimensionDrawing::hasPadding() const {
    return subject() != "picture";
}

QSize DimensionDrawing::sizeHint() const {
    const int strips = (hasMargin() ? 2 : 0) + (hasPadding() ? 2 : 0);
    return {controls::scaled(280),
            strips * controls::scaled(stripHeight) + controls::scaled(contentHeight) + 2};
}

void DimensionDrawing::refresh() {
    for (std::size_t i = 0; i < fields_.size(); ++i) {
        const bool has = i < 4 ? hasMargin() : hasPadding();
        fields_[i].editor->setVisible(has);
        if (!has) continue;
        fields_[i].binding->refresh();
        const std::string about = subject();
        const bool isBox = about == "card" || about == "picture" || about == "row";
        setHelp(*fields_[i].editor, *fields_[i].editor, fields_[i].binding->title(),
                settingHelp((isBox ? about : "text") + (i < 4 ? "/margin/" : "/padding/") + sides[i % 4]));
        fields_[i].editor->setMarked(fields_[i].binding->held().setHere);
    }
    updateGeometry();
    setFixedHeight(sizeHint().height());
    place();
    update();
}

void DimensionDrawing::refreshPixels() {
    update();
}

DimensionDrawing::Boxes DimensionDrawing::boxes() const {
    Boxes boxes;
    boxes.margin = rect().adjusted(0, 0, -1, -1);
    const auto shrunk = [](const QRect& box, bool really) {
        return really ? box.adjusted(controls::scaled(stripWidth), controls::scaled(stripHeight),
                                     -controls::scaled(stripWidth), -controls::scaled(stripHeight))
                      : box;
    };
    boxes.border = shrunk(boxes.margin, hasMargin());
    boxes.content = shrunk(boxes.border, hasPadding());
    return boxes;
}

std::optional<double> DimensionDrawing::computed(int field) const {
    const Binding& binding = *fields_[static_cast<std::size_t>(field)].binding;
    return computedPixels(context_.session.layouts, binding.path(), binding.held().value);
}

void DimensionDrawing::place() {
    const Boxes at = boxes();
    for (std::size_t i = 0; i < fields_.size(); ++i) {
        const QRect outer = i < 4 ? at.margin : at.border;
        const QRect inner = i < 4 ? at.border : at.content;
        QPoint centre = inner.center();
        if (i % 4 == 0) centre.setY((outer.top() + inner.top()) / 2);
        if (i % 4 == 1) centre.setX((outer.right() + inner.right()) / 2 + 1);
        if (i % 4 == 2) centre.setY((outer.bottom() + inner.bottom()) / 2 + 1);
        if (i % 4 == 3) centre.setX((outer.left() + inner.left()) / 2);
        const int wide = i % 2 == 0 ? controls::scaled(midField) : controls::scaled(sideField);
        fields_[i].editor->setGeometry(centre.x() - wide / 2 + 1,
                                       centre.y() - controls::scaled(fieldHeight) / 2, wide,
                                       controls::scaled(fieldHeight));
    }
    QWidget* before = nullptr;
    for (const Field& field : fields_) {
        if (before) setTabOrder(before, field.editor);
        before = field.editor;
    }
}

void DimensionDrawing::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    place();
}

void DimensionDrawing::drawDimension(QPainter& painter, const QRect& outer, const QRect& inner, int side,
                                     int field) const {
    const QRect box = fields_[static_cast<std::size_t>(field)].editor->geometry();
    const auto px = computed(field);
    const QString text = px ? figure(*px, 1) : QString();
    constexpr int tick = 3;
    // On hatching a figure needs a plain background.
    const auto drawFigure = [&](const QRect& room, int align) {
        const QRect ink = painter.fontMetrics().boundingRect(room, align | Qt::AlignVCenter, text);
        painter.fillRect(ink.adjusted(-2, 1, 2, -1), palette().color(QPalette::Window));
        painter.drawText(room, align | Qt::AlignVCenter, text);
    };
    if (side == 0 || side == 2) {
        // Beside the field, from edge to edge.
        const int x = box.right() + 10;
        const int from = side == 0 ? outer.top() : inner.bottom();
        const int to = side == 0 ? inner.top() : outer.bottom();
        painter.drawLine(x, from, x, to);
        painter.drawLine(x - tick, from + tick, x + tick, from - tick);
        painter.drawLine(x - tick, to + tick, x + tick, to - tick);
        drawFigure(QRect(x + 7, from, 60, to - from), Qt::AlignLeft);
    } else {
        // Below the field.
        const int y = box.bottom() + 7;
        const int from = side == 3 ? outer.left() : inner.right();
        const int to = side == 3 ? inner.left() : outer.right();
        painter.drawLine(from, y, to, y);
        painter.drawLine(from - tick, y + tick, from + tick, y - tick);
        painter.drawLine(to - tick, y + tick, to + tick, y - tick);
        drawFigure(QRect(from, y + 3, to - from, 16), Qt::AlignHCenter);
    }
}

void DimensionDrawing::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const Boxes at = boxes();
    const QColor ink = palette().color(QPalette::WindowText);
    QColor faint = ink;
    faint.setAlphaF(0.28F);
    QFont small = font();
    small.setPointSizeF(small.pointSizeF() * 0.85);
    if (hasPadding()) {
        painter.setPen(QPen(faint, 1));
        hatch(painter, at.border, at.content);
        painter.setPen(QPen(faint, 1));
        painter.drawRect(at.content);
    }
    painter.fillRect(at.content.adjusted(1, 1, 0, 0), palette().color(QPalette::Base));
    painter.setPen(QPen(ink, 1));
    painter.drawRect(at.border);
    if (hasMargin()) {
        painter.setPen(QPen(faint, 1, Qt::DashLine));
        painter.drawRect(at.margin);
    }
    painter.setPen(ink);
    painter.setFont(small);
    const QString name = roleTitle(subject());
    const bool fits = painter.fontMetrics().horizontalAdvance(name) < at.content.width() - 2;
    painter.drawText(at.content, Qt::AlignCenter, fits ? name : QString("Aa"));
    painter.setRenderHint(QPainter::Antialiasing);
    for (int i = 0; i < 8; ++i) {
        if (i < 4 ? !hasMargin() : !hasPadding()) continue;
        painter.setPen(QPen(ink, 1));
        drawDimension(painter, i < 4 ? at.margin : at.border, i < 4 ? at.border : at.content, i % 4, i);
    }
}

}  // namespace tenter::desktop::panels
