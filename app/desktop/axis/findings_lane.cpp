#include "axis/findings_lane.h"

#include <QHelpEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>
#include <algorithm>
#include <cmath>

#include "checks/phrases.h"
#include "document/wording.h"
#include "findings/weight.h"
#include "findings/wording.h"
#include "row/ink.h"
#include "session/changes.h"

namespace tenter::desktop::axis {

namespace {

constexpr double levelHeight = 6;
constexpr double runHeight = 5;
constexpr double shortestRun = 4;     // px, so that a single width can be seen and clicked
constexpr double leastDimension = 8;  // px; a shorter range is drawn as one tick
constexpr double hitReach = 2;        // px beyond the ends of a range
constexpr double clearance = 16;      // CSS px between two findings on one level
constexpr int levelCount = 5;

}  // namespace

FindingsLane::FindingsLane(CheckRunner& checks, const WidthScale& scale, QWidget* parent)
    : QWidget(parent), checks_(checks), scale_(scale) {
    setAccessibleName(QObject::tr("Findings at each viewport width"));
    setMouseTracking(true);
    onChange(checks_, CheckRunner::Change::Findings, this, [this] {
        arrange();
        update();
    });
    onChange(checks_, CheckRunner::Change::Chosen, this, qOverload<>(&QWidget::update));
    arrange();
}

// Each finding goes to the first level with enough free room; if there is none, to the last level.
void FindingsLane::arrange() {
    std::vector<std::vector<sweep::Interval>> taken(levelCount);
    levels_.clear();
    for (const checks::Finding& finding : checks_.findings()) {
        const auto free = [&](const std::vector<sweep::Interval>& level) {
            return std::ranges::none_of(level, [&](const sweep::Interval& there) {
                return std::ranges::any_of(finding.widths, [&](const sweep::Interval& run) {
                    return run.from - clearance < there.to && there.from < run.to + clearance;
                });
            });
        };
        const auto level = std::ranges::find_if(taken, free);
        levels_.push_back(static_cast<int>(std::min<std::ptrdiff_t>(level - taken.begin(), levelCount - 1)));
        auto& onto = taken[static_cast<std::size_t>(levels_.back())];
        onto.insert(onto.end(), finding.widths.begin(), finding.widths.end());
    }
    const auto count = checks_.findings().size();
    setAccessibleDescription(count == 0 ? QObject::tr("No findings")
                                        : QObject::tr("%n finding(s)", nullptr, static_cast<int>(count)));
}

QRectF FindingsLane::place(std::size_t finding, std::size_t run) const {
    if (finding >= levels_.size() || run >= checks_.findings()[finding].widths.size()) return {};
    const sweep::Interval& span = checks_.findings()[finding].widths[run];
    const double from = std::round(scale_.x(span.from));
    const double to = std::max(from + shortestRun, std::round(scale_.x(span.to)));
    // The levels in use are centred in the lane; four or more stand closer together, so that they stay
    // inside.
    const int last = *std::ranges::max_element(levels_);
    const double apart = std::min(levelHeight, (height() - runHeight - 2.0) / std::max(1, last));
    const double middle = std::floor(height() / 2.0) + (levels_[finding] - last / 2.0) * apart;
    return {from, std::round(middle) - 2, to - from, runHeight};
}

std::vector<std::size_t> FindingsLane::at(const QPointF& point) const {
    std::vector<std::pair<double, std::size_t>> near;
    for (std::size_t i = 0; i < levels_.size(); ++i) {
        for (std::size_t run = 0; run < checks_.findings()[i].widths.size(); ++run) {
            const QRectF box = place(i, run);
            if (point.x() < box.left() - hitReach || point.x() > box.right() + hitReach) continue;
            near.emplace_back(std::abs(box.center().y() - point.y()), i);
            break;
        }
    }
    std::ranges::stable_sort(near, [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<std::size_t> found;
    for (const auto& [far, finding] : near)
        if (far <= levelHeight) found.push_back(finding);
    return found;
}

bool FindingsLane::event(QEvent* event) {
    if (event->type() != QEvent::ToolTip) return QWidget::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    const std::vector<std::size_t> under = at(help->pos());
    const QString text =
        under.empty()
            ? QString()
            : findings::describe(checks_.project(), checks_.findings()[under.front()], checks_.audience());
    QToolTip::showText(help->globalPos(), toolTipText(text), this);
    return true;
}

controls::DataTable FindingsLane::data() const {
    controls::DataTable table{
        {QObject::tr("Severity"), QObject::tr("Viewport widths"), QObject::tr("Finding")}, {}};
    for (const checks::Finding& finding : checks_.findings()) {
        QStringList widths;
        for (const sweep::Interval& range : finding.widths)
            widths << QString::fromStdString(checks::atWidths(checks_.project(), range));
        table.rows.append({findings::severityTitle(finding.severity), widths.join(", "),
                           QString::fromStdString(finding.says)});
    }
    return table;
}

// A click next to all findings is left to the pane, which drags the width.
void FindingsLane::mousePressEvent(QMouseEvent* event) {
    const std::vector<std::size_t> under = at(event->position());
    if (event->button() != Qt::LeftButton || under.empty()) {
        event->ignore();
        return;
    }
    // A second click at the same point chooses the next of the overlapping findings.
    const auto chosen = checks_.chosen();
    const auto now = chosen ? std::ranges::find(under, *chosen) : under.end();
    checks_.choose(now == under.end() || now + 1 == under.end() ? under.front() : *(now + 1));
}

void FindingsLane::mouseMoveEvent(QMouseEvent* event) {
    setCursor(at(event->position()).empty() ? Qt::ArrowCursor : Qt::PointingHandCursor);
    event->ignore();
}

void FindingsLane::paintEvent(QPaintEvent* event) {
    const row::Ink ink = row::Ink::of(palette());
    QPainter painter(this);
    painter.setClipRect(QRectF(scale_.left() - 1, 0, scale_.right() - scale_.left() + 3, height())
                            .intersected(QRectF(event->rect())));
    const auto& all = checks_.findings();
    if (all.empty() && checks_.isFresh()) {
        painter.setPen(ink.quiet);
        painter.drawText(QRectF(scale_.left(), 0, width(), height()), Qt::AlignVCenter | Qt::AlignLeft,
                         QObject::tr("No findings"));
        return;
    }
    const auto chosen = checks_.chosen();
    const QColor line = checks_.isStale() ? ink.line : row::mixed(ink.ground, ink.text, 0.75);
    for (std::size_t i = 0; i < all.size() && i < levels_.size(); ++i) {
        const int weight = findings::weightOf(all[i].severity).line;
        for (std::size_t run = 0; run < all[i].widths.size(); ++run) {
            const QRectF box = place(i, run);
            const double middle = box.center().y();
            const QColor colour = chosen == i ? ink.accent : line;
            if (box.width() < leastDimension) {
                const int wide = (weight + 1) / 2;
                painter.fillRect(
                    QRectF(std::floor(box.center().x() - wide / 2.0), box.top(), wide, box.height()), colour);
                continue;
            }
            painter.fillRect(QRectF(box.left(), std::floor(middle - weight / 2.0), box.width(), weight),
                             colour);
            painter.fillRect(QRectF(box.left(), box.top(), 1, box.height()), colour);
            painter.fillRect(QRectF(box.right() - 1, box.top(), 1, box.height()), colour);
        }
    }
}

}  // namespace tenter::desktop::axis
