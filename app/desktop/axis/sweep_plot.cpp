#include "axis/sweep_plot.h"

#include <algorithm>

namespace tenter::desktop::axis {

namespace {

constexpr std::size_t mostCards = 4;

QVector<QPointF> pointsOf(const sweep::Curve& curve) {
    QVector<QPointF> points;
    points.reserve(static_cast<qsizetype>(curve.size()));
    // Two vertices at one width are a jump, drawn upright.
    for (const sweep::Vertex& vertex : curve)
        points.append({vertex.width, vertex.value});
    return points;
}

}  // namespace

SweepPlot::SweepPlot(Shows shows, Viewing& viewing, const Survey& survey, const WidthScale& scale,
                     QWidget* parent)
    : Plot(scale, parent), shows_(shows), viewing_(viewing), survey_(survey) {
    setAccessibleName(shows == Shows::CardHeight ? tr("Height of cards against width")
                                                 : tr("Size of the picture against width"));
    connect(&survey_, &Survey::swept, this, &SweepPlot::rebuild);
    connect(&viewing_, &Viewing::selectionChanged, this, &SweepPlot::rebuild);
}

bool SweepPlot::isSelected(std::size_t card) const {
    return static_cast<int>(card) == viewing_.selection().card;
}

// The first cards, and the selected one.
void SweepPlot::readCards() {
    const auto& cards = survey_.sweep().curves.cards;
    for (std::size_t card = 0; card < cards.size(); ++card)
        if (card < mostCards || isSelected(card)) read_.push_back({card, true, pointsOf(cards[card].height)});
}

// One picture's slot is told by its width and its height: the selected card's, or else the first.
void SweepPlot::readPictures() {
    const sweep::PartCurves* told = nullptr;
    for (const sweep::PartCurves& part : survey_.sweep().curves.parts) {
        if (!part.picture) continue;
        if (told == nullptr || (isSelected(part.card) && !isSelected(told->card))) told = &part;
    }
    if (told == nullptr) return;
    read_.push_back({told->card, false, pointsOf(told->slotWidth)});
    read_.push_back({told->card, true, pointsOf(told->slotHeight)});
}

void SweepPlot::rebuild() {
    if (!isVisible()) return;
    read_.clear();
    if (shows_ == Shows::CardHeight)
        readCards();
    else
        readPictures();
    double least = 1e9;
    double most = 0;
    for (const Read& read : read_) {
        for (const QPointF& point : read.points) {
            least = std::min(least, point.y());
            most = std::max(most, point.y());
        }
    }
    if (most > 0) setValues(least, most);
    restyle();
}

void SweepPlot::restyle() {
    const row::Ink ink = row::Ink::of(palette());
    const bool pictures = shows_ == Shows::PictureSlot;
    std::vector<Line> lines;
    for (const Read& read : read_) {
        const bool chosen = !pictures && isSelected(read.card);
        QPen pen(chosen ? ink.accent : row::mixed(ink.ground, ink.text, pictures ? 0.7 : 0.6),
                 chosen ? 2.25 : 1);
        if (pictures && read.height) pen.setStyle(Qt::DashLine);
        pen.setCosmetic(true);
        QString label;
        if (pictures)
            label = read.height ? tr("height") : tr("width");
        else if (chosen || read_.size() == 1)
            label = tr("card %1").arg(read.card + 1);
        lines.push_back({{read.points}, pen, label, chosen ? ink.accentText : ink.quiet});
    }
    if (!pictures && lines.size() > 1 && viewing_.selection().card < 0)
        lines.front().label = tr("cards 1 to %1").arg(lines.size());
    setLines(std::move(lines));
}

}  // namespace tenter::desktop::axis
