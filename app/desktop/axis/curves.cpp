#include "axis/curves.h"

#include "units/whole_width.h"

#include <algorithm>
#include <cmath>

namespace tenter::desktop::axis {

namespace {

// CSS px above a breakpoint at which the first layout of the next band is computed.
constexpr double beyond = 1.0 / 64;
constexpr int sizeSamples = 48;

std::vector<double> widthsOf(double first, double last, std::size_t count, const std::vector<double>& extra) {
    std::vector<double> widths;
    for (std::size_t i = 0; i <= count; ++i)
        widths.push_back(first + (last - first) * static_cast<double>(i) / static_cast<double>(count));
    for (const double width : extra)
        if (width > first && width < last) widths.push_back(width);
    std::sort(widths.begin(), widths.end());
    return widths;
}

}  // namespace

Bands Bands::of(const project::Project& project, std::size_t variant) {
    Bands bands{project.leastWidth, project.mostWidth, {}};
    for (const project::Band& band : project.row().variants[variant].bands)
        if (band.upTo) bands.breakpoints.push_back(*band.upTo);
    return bands;
}

double Bands::first(std::size_t band) const {
    return band == 0 ? least : std::clamp(breakpoints[band - 1] + beyond, least, most);
}

double Bands::last(std::size_t band) const {
    return band >= breakpoints.size() ? most : std::clamp(breakpoints[band], least, most);
}

double Bands::endBeside(double width, int direction) const {
    std::vector<double> ends{least};
    for (const double breakpoint : breakpoints) {
        ends.push_back(breakpoint);
        ends.push_back(units::firstWholeWidthAbove(breakpoint));
    }
    ends.push_back(most);
    double to = width;
    for (const double end : ends) {
        if (direction > 0 && end > width) return end;
        if (direction < 0 && end < width) to = end;
    }
    return to;
}

std::vector<SizeCurve> sizeCurves(const layout::PreparedRow& row, const Bands& bands) {
    std::vector<SizeCurve> curves;
    for (std::uint32_t style = 0; style < row.roles().size(); ++style) {
        SizeCurve curve{style, row.roles()[style], {}};
        for (std::size_t band = 0; band < bands.count(); ++band) {
            QVector<QPointF> points;
            const double first = bands.first(band);
            const double last = bands.last(band);
            if (first < last) {
                std::vector<double> ends;
                const auto* text = row.settings(band).text.find(curve.role);
                if (text != nullptr && text->size) ends = {text->size->from().width, text->size->to().width};
                for (const double width : widthsOf(first, last, sizeSamples, ends))
                    points.append({width, row.fontSize(style, width)});
            }
            curve.pieces.push_back(simplified(points, 0.002));
        }
        curves.push_back(std::move(curve));
    }
    return curves;
}

std::vector<MeasureCurve> measuredParts(const project::Project& project, std::size_t most,
                                        std::optional<std::size_t> selectedCard) {
    // The paragraph is the first part with the role body; a card without one uses its longest other text.
    std::vector<MeasureCurve> curves;
    for (std::size_t c = 0; c < project.row().cards.size(); ++c) {
        const auto& parts = project.row().cards[c].parts;
        std::size_t longest = 0;
        std::size_t chosen = parts.size();
        bool body = false;
        for (std::size_t p = 0; p < parts.size(); ++p) {
            const auto* text = std::get_if<project::TextPart>(&parts[p]);
            if (text == nullptr || text->role == "button") continue;
            const std::size_t length = project::plainText(text->copy).size();
            const bool isBody = text->role == "body";
            if ((isBody && !body) || (isBody == body && length > longest)) {
                chosen = p;
                longest = length;
                body = body || isBody;
            }
        }
        if (chosen < parts.size() && (curves.size() < most || selectedCard == c))
            curves.push_back({c, chosen, {}});
    }
    return curves;
}

void measure(const layout::PreparedRow& row, const Bands& bands, std::size_t samples,
             std::vector<MeasureCurve>& curves) {
    layout::Layout laid;
    for (MeasureCurve& curve : curves)
        curve.pieces.assign(bands.count(), {});
    for (std::size_t band = 0; band < bands.count(); ++band) {
        const double first = bands.first(band);
        const double last = bands.last(band);
        if (first >= last) continue;
        const double share = (last - first) / (bands.most - bands.least);
        const auto count = std::max<std::size_t>(2, std::lround(share * static_cast<double>(samples)));
        for (const double width : widthsOf(first, last, count, {})) {
            layout::layOut(row, width, laid);
            for (MeasureCurve& curve : curves) {
                if (curve.card >= laid.cards.size()) continue;
                const layout::LaidCard& card = laid.cards[curve.card];
                for (std::uint32_t i = 0; i < card.partCount; ++i) {
                    const layout::LaidPart& part = laid.parts[card.firstPart + i];
                    if (part.index == curve.part) curve.pieces[band].append({width, part.measure});
                }
            }
        }
    }
    for (MeasureCurve& curve : curves)
        for (QVector<QPointF>& piece : curve.pieces)
            piece = simplified(piece, 0.02);
}

QVector<QPointF> simplified(const QVector<QPointF>& points, double tolerance) {
    if (points.size() < 3) return points;
    // From each kept point, skip points as long as a straight line stays close enough to all skipped points.
    QVector<QPointF> kept{points.first()};
    qsizetype start = 0;
    const auto straight = [&](qsizetype end) {
        const QPointF a = points[start];
        const QPointF b = points[end];
        for (qsizetype i = start + 1; i < end; ++i) {
            const double along = b.x() > a.x() ? (points[i].x() - a.x()) / (b.x() - a.x()) : 0;
            if (std::abs(a.y() + along * (b.y() - a.y()) - points[i].y()) > tolerance) return false;
        }
        return true;
    };
    for (qsizetype end = 2; end < points.size(); ++end) {
        if (straight(end)) continue;
        kept.append(points[end - 1]);
        start = end - 1;
    }
    kept.append(points.last());
    return kept;
}

}  // namespace tenter::desktop::axis
