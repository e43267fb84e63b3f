#include "axis/sweep_plot.h"

#include <algorithm>

#include "session/changes.h"

namespace tenter::desktop::axis {

namespace {

constexpr std::size_t mostCards = 4;

QVector<QPointF> pointsOf(const sweep::Curve& curve) {
    QVector<QPointF> points;
    points.reserve(static_cast<qsizetype>(curve.size()));
    // Two vertices at the same width are a jump, drawn as a vertical line.
    for (const sweep::Vertex& vertex : curve)
        points.append({vertex.width, vertex.value});
    return points;
}

}  // namespace

SweepPlot::SweepPlot(Quantity quantity, const CheckRunner& checks, const SelectionModel& selection,
                     const WidthScale& scale, QWidget* parent)
    : Plot(scale, parent), quantity_(quantity), checks_(checks), selection_(selection) {
    setAccessibleName(quantity == Quantity::CardHeight ? QObject::tr("Card height at each viewport width")
                                                       : QObject::tr("Picture size at each viewport width"));
    onChange(checks_, CheckRunner::Change::Sweep, this, &SweepPlot::rebuild);
    onChange(selection_, SelectionModel::Change::Place, this, &SweepPlot::rebuild);
}

bool SweepPlot::isSelected(std::size_t card) const {
    return selection_.card() == card;
}

// The first cards and the selected one.
void SweepPlot::readCards() {
    const auto& cards = checks_.sweep().curves.cards;
    for (std::size_t card = 0; card < cards.size(); ++card)
        if (card < mostCards || isSelected(card))
            curves_.push_back({card, true, pointsOf(cards[card].height)});
}

// Width and height of one slot: that of the selected card, or of the first card with a picture.
void SweepPlot::readPictures() {
    const sweep::PartCurves* shown = nullptr;
    for (const sweep::PartCurves& part : checks_.sweep().curves.parts) {
        if (!part.picture) continue;
        if (shown == nullptr || (isSelected(part.place.card) && !isSelected(shown->place.card)))
            shown = &part;
    }
    if (shown == nullptr) return;
    curves_.push_back({shown->place.card, false, pointsOf(shown->slotWidth)});
    curves_.push_back({shown->place.card, true, pointsOf(shown->slotHeight)});
}

void SweepPlot::rebuild() {
    if (!isVisible()) return;
    curves_.clear();
    if (quantity_ == Quantity::CardHeight)
        readCards();
    else
        readPictures();
    double least = 1e9;
    double most = 0;
    for (const CardCurve& curve : curves_) {
        for (const QPointF& point : curve.points) {
            least = std::min(least, point.y());
            most = std::max(most, point.y());
        }
    }
    if (most > 0) setValues(least, most);
    restyle();
    Q_EMIT rebuilt();
}

// Changes are not followed while the plot is hidden.
void SweepPlot::showEvent(QShowEvent* event) {
    Plot::showEvent(event);
    rebuild();
}

void SweepPlot::restyle() {
    const row::Ink ink = row::Ink::of(palette());
    const bool pictures = quantity_ == Quantity::PictureSlot;
    std::vector<Line> lines;
    for (const CardCurve& curve : curves_) {
        const bool chosen = !pictures && isSelected(curve.card);
        QPen pen(chosen ? ink.accent : row::mixed(ink.ground, ink.text, pictures ? 0.7 : 0.6),
                 chosen ? 2.25 : 1);
        if (pictures && curve.height) pen.setStyle(Qt::DashLine);
        pen.setCosmetic(true);
        QString label;
        if (pictures)
            label = curve.height ? QObject::tr("slot height") : QObject::tr("slot width");
        else if (chosen || curves_.size() == 1)
            label = QObject::tr("card %1").arg(curve.card + 1);
        const QString name = pictures
                                 ? (curve.height ? QObject::tr("Slot height") : QObject::tr("Slot width"))
                                 : QObject::tr("Card %1").arg(curve.card + 1);
        lines.push_back({{curve.points}, pen, label, chosen ? ink.accentText : ink.quiet, name});
    }
    if (!pictures && lines.size() > 1 && !selection_.card())
        lines.front().label = QObject::tr("cards 1–%1").arg(lines.size());
    setLines(std::move(lines));
}

}  // namespace tenter::desktop::axis
