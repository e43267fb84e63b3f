#include "axis/size_plot.h"

#include <QToolTip>
#include <algorithm>
#include <cmath>

#include "document/wording.h"
#include "session/changes.h"

namespace tenter::desktop::axis {

namespace {

constexpr double snapReach =
    4;  // px; a dragged end this close to a breakpoint or an end of the range snaps to it
constexpr int previewSteps = 240;
constexpr double leastSize = 1;
constexpr double mostSize = 400;

/// The roundest number that is at most `reach` from `value`: what a person means who drags to a place between
/// two pixels.
double roundest(double value, double reach) {
    for (const double step : {100.0, 50.0, 20.0, 10.0, 5.0, 2.0, 1.0, 0.5, 0.2})
        if (const double near = std::round(value / step) * step; std::abs(near - value) <= reach) return near;
    return std::round(value * 10) / 10;
}

}  // namespace

SizePlot::SizePlot(Session& session, const WidthScale& scale, QWidget* parent)
    : Plot(scale, parent), session_(session) {
    setAccessibleName(QObject::tr("Font size of each role at each viewport width"));
    onChange(session_.plot, PlotAnnotations::Change::SizePreview, this, &SizePlot::rebuild);
    onChange(session_.plot, PlotAnnotations::Change::Marks, this, &SizePlot::onMarks);
    // A pasted size is shown at the widths of the edit scope.
    connect(&session_.scope, &EditScope::changed, this, &SizePlot::rebuild);
}

// Roles differ by line style and label, not by colour.
QPen SizePlot::penOf(std::size_t index, const std::string& role, const row::Ink& ink) const {
    const bool chosen = role == session_.selection.role();
    QPen pen(chosen ? ink.accent : row::mixed(ink.ground, ink.text, 0.7), chosen ? 2.25 : 1.25);
    const Qt::PenStyle styles[] = {Qt::SolidLine, Qt::DashLine, Qt::DotLine, Qt::DashDotLine};
    pen.setStyle(styles[index % 4]);
    pen.setCosmetic(true);
    pen.setCapStyle(Qt::FlatCap);
    return pen;
}

void SizePlot::rebuild() {
    const Bands bands = Bands::of(session_.shown.project(), session_.view.variant());
    curves_ = sizeCurves(session_.layouts.row(), bands);
    readEnds();
    // The allowed sizes of a role do not depend on its own ramp, so a drag does not change them.
    if (!dragged_) readAllowed();
    readBefore();
    double least = 1e9;
    double most = 0;
    const auto include = [&](double size) {
        least = std::min(least, size);
        most = std::max(most, size);
    };
    for (const std::vector<SizeCurve>* curves : {&curves_, &before_})
        for (const SizeCurve& curve : *curves)
            for (const QVector<QPointF>& piece : curve.pieces)
                for (const QPointF& point : piece)
                    include(point.y());
    for (const RampEnd& end : ends_)
        include(end.size);
    for (const QPointF& point : previewed())
        include(point.y());
    for (const PlotMark& mark : session_.plot.marks())
        if (mark.variant == session_.view.variant()) include(mark.size);
    if (most > 0) setValues(least, most);
    restyle();
    placeHandles();
}

void SizePlot::readAllowed() {
    allowed_ = {};
    if (!session_.shown.hasFewParts()) return;
    allowed_ = solve::allowedSizes(session_.shown.project(), session_.view.variant(),
                                   session_.selection.role(), session_.document.store());
}

void SizePlot::readBefore() {
    before_.clear();
    if (!session_.shown.isProposal()) return;
    const project::Project& project = session_.document.project();
    const std::size_t variant = std::min(session_.view.variant(), project.row().variants.size() - 1);
    const layout::PreparedRow row(project, variant, session_.document.store(), session_.view.profile());
    before_ = sizeCurves(row, Bands::of(project, variant));
    std::erase_if(before_, [&](const SizeCurve& curve) { return curve.role != session_.selection.role(); });
}

// Hatches the sizes that a wish excludes at each width.
void SizePlot::drawAllowed(QPainter& painter, const row::Ink& ink) const {
    // Of the colour of lines, which is that of text for people who have chosen black and white.
    const QColor shade = row::mixed(ink.ground, ink.line, 0.75);
    const QRectF room = area();
    const auto shut = [&](const sweep::Curve& curve, double edge) {
        QPolygonF region;
        for (const sweep::Vertex& vertex : curve)
            region.append(at(vertex.width, vertex.value));
        if (region.size() < 2) return;
        painter.setPen(QPen(ink.line, 1));
        painter.setBrush(Qt::NoBrush);
        painter.drawPolyline(region);
        region.prepend({region.first().x(), edge});
        region.append({region.last().x(), edge});
        painter.setPen(Qt::NoPen);
        painter.setBrush(QBrush(shade, Qt::BDiagPattern));
        painter.drawPolygon(region);
    };
    // The hatching extends far beyond the plot, so that it is also correct for limits outside the visible
    // range.
    for (const sweep::Curve& curve : allowed_.most)
        shut(curve, room.top() - 10000);
    for (const sweep::Curve& curve : allowed_.least)
        shut(curve, room.bottom() + 10000);
}

QVector<QPointF> SizePlot::previewed() const {
    QVector<QPointF> points;
    if (!session_.plot.sizePreview()) return points;
    const SizePreview& preview = *session_.plot.sizePreview();
    const Bands bands = Bands::of(session_.shown.project(), session_.view.variant());
    const bool band = session_.scope.layerOf("text/" + preview.role + "/size") == project::CascadeLayer::Band;
    const double first = band ? bands.first(session_.layouts.band()) : bands.least;
    const double last = band ? bands.last(session_.layouts.band()) : bands.most;
    const double rem = session_.shown.project().page.readerSize / 16;
    for (int i = 0; i <= previewSteps; ++i) {
        const double width = first + (last - first) * i / previewSteps;
        const bool card = preview.follow == project::Follow::Card;
        points.append(
            {width, preview.ramp.sizeAt(card ? session_.layouts.row().cardWidth(width) : width) * rem});
    }
    return points;
}

void SizePlot::restyle() {
    const row::Ink ink = row::Ink::of(palette());
    std::vector<Line> lines;
    for (std::size_t i = 0; i < curves_.size(); ++i) {
        const SizeCurve& curve = curves_[i];
        const bool chosen = curve.role == session_.selection.role();
        lines.push_back({curve.pieces, penOf(i, curve.role, ink), roleName(curve.role),
                         chosen ? ink.accentText : ink.quiet, roleTitle(curve.role)});
    }
    setLines(std::move(lines));
}

std::vector<SizePlot::SizeAtWidth> SizePlot::sizesAt(double width) const {
    std::vector<SizeAtWidth> sizes;
    for (const SizeCurve& curve : curves_) {
        const double size = session_.layouts.row().fontSize(curve.style, width);
        sizes.push_back({at(width, size), figure(size, 2), curve.role == session_.selection.role()});
    }
    return sizes;
}

void SizePlot::onWidth() {
    if (session_.layouts.band() == band_) return;
    readEnds();
    placeHandles();
}

void SizePlot::readEnds() {
    band_ = session_.layouts.band();
    ends_ = rampEnds(session_.shown.project(), session_.view.variant(), session_.layouts.row(),
                     session_.view.width());
}

Handle* SizePlot::addHandle(const QString& name) {
    auto* handle = new Handle(Handle::Shape::End, this);
    handles_.insert(name, handle);
    const auto find = [this, name]() -> const RampEnd* {
        const auto found = std::find_if(ends_.begin(), ends_.end(), [&name](const RampEnd& end) {
            return QString::fromStdString(end.name()) == name;
        });
        return found == ends_.end() ? nullptr : &*found;
    };
    connect(handle, &Handle::grabbed, this, [this, find] {
        if (const RampEnd* end = find()) session_.selection.selectRole(std::string(end->role));
        session_.document.endGesture();
        grabbed_ = session_.document.project();
        holdValues(true);
        dragged_ = true;
        Q_EMIT handleGrabbed();
    });
    connect(handle, &Handle::movedTo, this, [this, name, find](const QPointF& centre) {
        const double x = centre.x();
        double width = roundest(scale_.width(x), scale_.width(x + 1) - scale_.width(x));
        std::vector<double> stops = scale_.breakpoints();
        stops.push_back(scale_.least());
        stops.push_back(scale_.most());
        for (const double stop : stops)
            if (std::abs(scale_.x(stop) - x) < snapReach) width = stop;
        // The axis of sizes stays as it is during a drag: beyond it the point would be out of sight.
        const double y = std::clamp(centre.y(), area().top(), area().bottom());
        moveTo(name, width, roundest(valueAt(y), std::abs(valueAt(y + 1) - valueAt(y))));
        if (const RampEnd* const end = find())
            QToolTip::showText(mapToGlobal(QPoint(qRound(x) + 12, qRound(y) + 12)),
                               QObject::tr("%1 at %2").arg(pixels(end->size), pixels(end->width, 0)), this);
    });
    connect(handle, &Handle::nudged, this, [this, name, find](int right, int up, bool coarse) {
        const RampEnd* const end = find();
        if (end == nullptr) return;
        const double times = coarse ? 10 : 1;
        moveTo(name, right == 0 ? end->width : std::round(end->width) + right * times,
               up == 0 ? end->size : std::round(end->size * 10 + up * times) / 10);
    });
    connect(handle, &Handle::cancelled, this, [this, name] {
        session_.scope.edit(
            QObject::tr("Change font size"), [this](project::Project& project) { project = grabbed_; },
            QStringLiteral("ramp ") + name);
    });
    connect(handle, &Handle::released, this, [this] {
        QToolTip::hideText();
        session_.document.endGesture();
        holdValues(false);
        dragged_ = false;
        placeHandles();
        Q_EMIT handleReleased();
    });
    return handle;
}

void SizePlot::moveTo(const QString& name, double width, double size) {
    const auto found = std::find_if(ends_.begin(), ends_.end(), [&name](const RampEnd& end) {
        return QString::fromStdString(end.name()) == name;
    });
    if (found == ends_.end() || !session_.shown.showsDocument()) return;
    const RampEnd end = *found;
    width = std::clamp(width, scale_.least(), scale_.most());
    size = std::clamp(size, leastSize, mostSize);
    const double cardWidth = end.followsCard ? session_.layouts.row().cardWidth(width) : 0;
    session_.scope.edit(
        QObject::tr("Change font size of %1").arg(roleName(end.role)),
        [&](project::Project& project) {
            moveEnd(project, session_.view.variant(), end, cardWidth, width, size);
        },
        QStringLiteral("ramp ") + name);
}

void SizePlot::placeHandles() {
    QMap<QString, Handle*> unused = handles_;
    for (const RampEnd& end : ends_) {
        const QString name = QString::fromStdString(end.name());
        Handle* handle = handles_.value(name);
        if (handle == nullptr) handle = addHandle(name);
        unused.remove(name);
        const QPointF place = at(end.width, end.size);
        handle->setCentre(place);
        const bool chosen = end.role == session_.selection.role();
        handle->setProminent(chosen);
        handle->setEnabled(session_.shown.showsDocument());
        handle->setVisible(place.x() >= scale_.left() - 6 && place.x() <= scale_.right() + 6);
        if (chosen) handle->raise();
        const QString summary = QObject::tr("%1: %2 at viewport width %3")
                                    .arg(roleTitle(end.role), pixels(end.size), pixels(end.width, 0));
        handle->setAccessibleName(summary);
        handle->setToolTip(QObject::tr("%1. Drag to change the ramp.").arg(summary));
    }
    for (auto it = unused.begin(); it != unused.end(); ++it) {
        if (it.value()->isDragged()) continue;
        handles_.remove(it.key());
        // Before the event loop runs, it is not deleted until the loop ends.
        it.value()->hide();
        it.value()->deleteLater();
    }
    placeMarks();
}

void SizePlot::onMarks() {
    // Marks outside the visible range of sizes need a larger value axis.
    const bool outside = std::ranges::any_of(session_.plot.marks(), [this](const PlotMark& mark) {
        const double y = at(mark.width, mark.size).y();
        return mark.variant == session_.view.variant() && (y < area().top() || y > area().bottom());
    });
    if (outside)
        rebuild();
    else
        placeMarks();
}

void SizePlot::placeMarks() {
    std::size_t used = 0;
    for (const PlotMark& mark : session_.plot.marks()) {
        if (mark.variant != session_.view.variant()) continue;
        const QPointF place = at(mark.width, mark.size);
        if (place.x() < scale_.left() - 1 || place.x() > scale_.right() + 1) continue;
        if (used == marks_.size()) {
            auto* made = new WishMark(this);
            connect(made, &QAbstractButton::clicked, this,
                    [this, made] { goTo(made->mark(), session_.view, session_.selection); });
            marks_.push_back(made);
        }
        WishMark* const shown = marks_[used++];
        shown->show(mark, mark.role == session_.selection.role(), place);
        // Handles must stay above marks. A proposal has no handles that can be dragged.
        shown->raise();
        if (session_.shown.showsDocument())
            for (Handle* handle : std::as_const(handles_))
                handle->raise();
    }
    for (; used < marks_.size(); ++used)
        marks_[used]->hide();
}

void SizePlot::resizeEvent(QResizeEvent* event) {
    Plot::resizeEvent(event);
    placeHandles();
}

// A dotted line connects an end that lies outside its ramp's bands with the curve.
void SizePlot::drawOver(QPainter& painter) {
    const row::Ink ink = row::Ink::of(palette());
    const Bands bands = Bands::of(session_.shown.project(), session_.view.variant());
    painter.setClipRect(area());
    drawAllowed(painter, ink);
    painter.setClipRect(area().adjusted(-8, -8, 8, 8));
    painter.setPen(QPen(ink.accent, 1, Qt::DashLine));
    for (const SizeCurve& curve : before_)
        for (const QVector<QPointF>& piece : curve.pieces) {
            QPolygonF line;
            for (const QPointF& point : piece)
                line.append(at(point.x(), point.y()));
            painter.drawPolyline(line);
        }
    if (const QVector<QPointF> preview = previewed(); !preview.isEmpty()) {
        QPolygonF line;
        for (const QPointF& point : preview)
            line.append(at(point.x(), point.y()));
        QPen pen(ink.accent, 2.25);
        pen.setDashPattern({4, 3});
        pen.setCapStyle(Qt::FlatCap);
        painter.setPen(pen);
        painter.drawPolyline(line);
    }
    painter.setPen(QPen(ink.accent, 1, Qt::DotLine));
    for (const RampEnd& end : ends_) {
        if (end.role != session_.selection.role() || end.followsCard) continue;
        const double first = bands.first(end.firstBand);
        const double last = bands.last(end.lastBand);
        const double edge = std::clamp(end.width, first, last);
        if (edge == end.width) continue;
        const auto curve = std::find_if(curves_.begin(), curves_.end(),
                                        [&end](const SizeCurve& one) { return one.role == end.role; });
        if (curve != curves_.end())
            painter.drawLine(at(edge, session_.layouts.row().fontSize(curve->style, edge)),
                             at(end.width, end.size));
    }
    painter.setClipping(false);
}

}  // namespace tenter::desktop::axis
