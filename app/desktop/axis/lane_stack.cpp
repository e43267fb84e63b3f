#include "axis/lane_stack.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "axis/disclosure.h"
#include "controls/text_scale.h"
#include "document/wording.h"

namespace tenter::desktop::axis {

namespace {

constexpr int nameHeight = 28;  // px at the top of a lane in which its name is centred
constexpr int closedHeight = 24;
constexpr int plotNeeds = 56;
constexpr int veryTallWindow = 1240;
// The comfortable height of a plot with a share of 1, px.
constexpr int shortPlot = 160;
constexpr int tallPlot = 220;

/// Below this height the axis of a plot has no room for two labels, px.
int leastPlotHeight() {
    return controls::scaled(plotNeeds);
}

}  // namespace

void LaneStack::add(const char* key, const QString& subtitle, const QString& description, QWidget* content,
                    int height, double share, OpensWhen opens) {
    const QString name = QObject::tr(key);
    const bool open = opens == OpensWhen::Always;
    auto* action = new QAction(name, &pane_);
    action->setCheckable(true);
    action->setChecked(open);
    action->setToolTip(toolTipText(description));
    auto* disclosure = new Disclosure(name, subtitle, &pane_);
    disclosure->setToolTip(toolTipText(description));
    disclosure->setAccessibleDescription(description);
    disclosure->setChecked(open);
    content->setVisible(open);
    connect(disclosure, &QAbstractButton::toggled, action, &QAction::setChecked);
    connect(disclosure, &QAbstractButton::clicked, this, [this] { chosenByUser_ = true; });
    connect(action, &QAction::triggered, this, [this] { chosenByUser_ = true; });
    connect(action, &QAction::toggled, this, [this, content, disclosure](bool opened) {
        disclosure->setChecked(opened);
        content->setVisible(opened);
        Q_EMIT changed(opened);
    });
    lanes_.append({key, content, disclosure, action, opens, height, share});
}

void LaneStack::nameInFull(const QString& name) {
    lanes_.last().action->setText(name);
    lanes_.last().disclosure->setAccessibleName(name);
}

void LaneStack::setKey(const QKeySequence& key) {
    lanes_.last().action->setShortcut(key);
}

void LaneStack::moveLastBelow(const QWidget* content) {
    const auto above = std::ranges::find(lanes_, content, &Lane::content);
    lanes_.move(lanes_.size() - 1, above - lanes_.begin() + 1);
}

void LaneStack::setAvailable(const QWidget* content, bool available) {
    Lane& lane = *std::ranges::find(lanes_, content, &Lane::content);
    if (lane.available == available) return;
    lane.available = available;
    lane.action->setVisible(available);
    lane.disclosure->setVisible(available);
    lane.content->setVisible(lane.isOpen());
    Q_EMIT changed(false);
}

void LaneStack::openForWindow(int height) {
    const auto opens = height >= veryTallWindow ? OpensWhen::WindowIsVeryTall
                       : height >= tallWindow   ? OpensWhen::WindowIsTall
                                                : OpensWhen::Always;
    if (chosenByUser_ || opened_ == opens) return;
    opened_ = opens;
    for (const Lane& lane : lanes_)
        if (lane.opens != OpensWhen::Chosen) lane.action->setChecked(lane.opens <= opens);
}

std::optional<QStringList> LaneStack::chosenLanes() const {
    if (!chosenByUser_) return std::nullopt;
    QStringList keys;
    for (const Lane& lane : lanes_)
        if (lane.action->isChecked()) keys << lane.key;
    return keys;
}

void LaneStack::chooseLanes(const std::optional<QStringList>& keys) {
    chosenByUser_ = keys.has_value();
    opened_.reset();
    for (const Lane& lane : lanes_)
        lane.action->setChecked(keys ? keys->contains(lane.key) : lane.opens == OpensWhen::Always);
}

QList<QAction*> LaneStack::actions() const {
    QList<QAction*> actions;
    for (const Lane& lane : lanes_)
        actions.append(lane.action);
    return actions;
}

QList<LaneStack::Data> LaneStack::openData() const {
    QList<Data> open;
    for (const Lane& lane : lanes_)
        if (const auto* source = dynamic_cast<const controls::HasData*>(lane.content);
            source && lane.isOpen())
            open.append({lane.disclosure->accessibleName(), source});
    return open;
}

bool LaneStack::hasPlot() const {
    return std::ranges::any_of(lanes_, [](const Lane& lane) { return lane.isOpen() && lane.height == 0; });
}

int LaneStack::comfortableHeight(bool tall) const {
    int height = arrangeClosed(std::nullopt);
    for (const Lane& lane : lanes_) {
        if (!lane.isOpen()) continue;
        const double plot = lane.share * controls::scaled(tall ? tallPlot : shortPlot);
        height += lane.height > 0 ? lane.height : std::max(leastPlotHeight(), static_cast<int>(plot));
    }
    return height;
}

int LaneStack::minimumHeight() const {
    int height = arrangeClosed(std::nullopt);
    for (const Lane& lane : lanes_)
        if (lane.isOpen()) height += lane.height > 0 ? lane.height : leastPlotHeight();
    return height;
}

int LaneStack::arrangeClosed(std::optional<int> y) const {
    constexpr int from = 6;
    constexpr int apart = 8;
    const int width = pane_.width();
    int rows = 0;
    int x = width;
    for (const Lane& lane : lanes_) {
        if (!lane.isClosed()) continue;
        const QSize name = lane.disclosure->sizeHint();
        if (x + name.width() > width - from) {
            x = from;
            ++rows;
        }
        if (y)
            lane.disclosure->setGeometry(x,
                                         *y + rows * controls::scaled(closedHeight) -
                                             (controls::scaled(closedHeight) + name.height()) / 2,
                                         name.width(), name.height());
        x += name.width() + apart;
    }
    return rows * controls::scaled(closedHeight);
}

std::map<const LaneStack::Lane*, int> LaneStack::plotHeights(int top) const {
    int rest = pane_.height() - top - arrangeClosed(std::nullopt);
    std::vector<const Lane*> plots;
    for (const Lane& lane : lanes_) {
        if (!lane.isOpen()) continue;
        if (lane.height > 0)
            rest -= lane.height;
        else
            plots.push_back(&lane);
    }
    // A plot with a small share would be squashed by its neighbours, so the smallest share comes first.
    std::ranges::stable_sort(plots, {}, &Lane::share);
    double shares = 0;
    for (const Lane* plot : plots)
        shares += plot->share;
    std::map<const Lane*, int> heights;
    for (const Lane* plot : plots) {
        const int least = std::min(leastPlotHeight(), rest / static_cast<int>(plots.size() - heights.size()));
        const int height = std::max({0, least, static_cast<int>(std::floor(rest * plot->share / shares))});
        heights[plot] = height;
        rest -= height;
        shares -= plot->share;
    }
    return heights;
}

int LaneStack::arrange(int top) {
    const std::map<const Lane*, int> rooms = plotHeights(top);
    int y = top;
    for (const Lane& lane : lanes_) {
        if (!lane.isOpen()) continue;
        const int room = lane.height > 0 ? lane.height : rooms.at(&lane);
        lane.content->setGeometry(0, y + 1, pane_.width(), std::max(1, room - 1));
        const QSize name = lane.disclosure->sizeHint();
        lane.disclosure->setGeometry(
            6,
            lane.height > 0
                ? std::max(y + 4, y + std::min(room, controls::scaled(nameHeight)) / 2 - name.height() / 2)
                : y + 4,
            name.width(), name.height());
        lane.disclosure->raise();
        y += room;
    }
    closedFrom_ = y;
    arrangeClosed(y);
    return y;
}

void LaneStack::update() {
    for (const Lane& lane : lanes_)
        lane.content->update();
}

void LaneStack::paintLines(QPainter& painter) const {
    for (const Lane& lane : lanes_)
        if (lane.isOpen()) painter.drawLine(0, lane.content->y() - 1, pane_.width(), lane.content->y() - 1);
    painter.drawLine(0, closedFrom_, pane_.width(), closedFrom_);
}

}  // namespace tenter::desktop::axis
