#include "row/editing/spacing.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "document/wording.h"
#include "layout/prepared.h"
#include "row/lookup.h"

namespace tenter::desktop::row::editing {

namespace {

using layout::Box;
using units::Length;
using units::Unit;

bool holds(const Box& box, const QPointF& point) {
    return point.x() >= box.x && point.x() < box.right() && point.y() >= box.y && point.y() < box.bottom();
}

// At least `reach` wide and high.
Box widened(Box box, double reach) {
    if (box.width < reach) {
        box.x -= (reach - box.width) / 2;
        box.width = reach;
    }
    if (box.height < reach) {
        box.y -= (reach - box.height) / 2;
        box.height = reach;
    }
    return box;
}

// Steps in which a person writes lengths.
double stepOf(Unit unit) {
    switch (unit) {
        case Unit::Rem:
        case Unit::Em:
            return 0.05;
        case Unit::Percent:
            return 0.5;
        case Unit::Vw:
        case Unit::Cqi:
            return 0.1;
        default:
            return 1;
    }
}

class Collector {
public:
    explicit Collector(const LaidOutRow& row)
        : row_(row), frame_(layout::frameAt(row.prepared.interval(row.layout.interval), row.layout.width)) {}

    std::vector<Spacing> all() {
        const layout::Layout& layout = row_.layout;
        for (std::size_t i = 0; i + 1 < layout.cards.size(); ++i)
            gap(i);
        for (std::size_t i = 0; i < layout.cards.size(); ++i) {
            const layout::LaidCard& card = layout.cards[i];
            const double rim = card.border;
            const Box& box = card.box;
            padding("card", QObject::tr("Card padding"), i,
                    {box.x + rim, box.y + rim, box.width - 2 * rim, box.height - 2 * rim}, card.padding,
                    row_.settings().card.padding, frame_.columnWidth);
        }
        if (!layout.cards.empty())
            padding("row", QObject::tr("Row padding"), 0, layout.row, frame_.rowPadding,
                    row_.settings().row.padding, frame_.containerContentWidth);
        return std::move(all_);
    }

private:
    void add(std::string path, const QString& name, std::size_t index, const Box& area, bool across,
             double direction, const std::optional<Length>& value, double percent) {
        if (!value || value->isKeyword()) return;
        units::LengthBasis basis = frame_.basis;
        basis.percent = percent;
        all_.push_back({std::move(path), name, area, across, direction, *value, basis, index});
    }

    void gap(std::size_t index) {
        const project::RowSettings& settings = row_.settings().row;
        Box one = row_.layout.cards[index].box;
        Box next = row_.layout.cards[index + 1].box;
        if (one.y == next.y) {
            if (next.x < one.x) std::swap(one, next);
            add("row/columnGap", QObject::tr("Column gap"), index,
                {one.right(), one.y, next.x - one.right(), one.height}, true, 1, settings.columnGap,
                frame_.rowContentWidth);
        } else if (next.y > one.y) {
            add("row/rowGap", QObject::tr("Row gap"), index,
                {frame_.contentX, one.bottom(), frame_.rowContentWidth, next.y - one.bottom()}, false, 1,
                settings.rowGap, 0);
        }
    }

    void padding(const std::string& of, const QString& name, std::size_t index, const Box& box,
                 const layout::Edges& edges, const project::Sides& set, double percent) {
        const std::string path = of + "/padding/";
        add(path + "top", QObject::tr("%1, top").arg(name), index, {box.x, box.y, box.width, edges.top},
            false, 1, set.top, percent);
        add(path + "right", QObject::tr("%1, right").arg(name), index,
            {box.right() - edges.right, box.y, edges.right, box.height}, true, -1, set.right, percent);
        add(path + "bottom", QObject::tr("%1, bottom").arg(name), index,
            {box.x, box.bottom() - edges.bottom, box.width, edges.bottom}, false, 1, set.bottom, percent);
        add(path + "left", QObject::tr("%1, left").arg(name), index, {box.x, box.y, edges.left, box.height},
            true, 1, set.left, percent);
    }

    const LaidOutRow& row_;
    layout::Frame frame_;
    std::vector<Spacing> all_;
};

bool isOf(const Spacing& spacing, const char* what) {
    return spacing.path.starts_with(what);
}

}  // namespace

std::vector<Spacing> spacingsOf(const LaidOutRow& row) {
    return Collector(row).all();
}

std::optional<Spacing> spacingAt(const LaidOutRow& row, const QPointF& page, double reach) {
    const auto card = cardAt(row.layout, page);
    // A picture may extend over the padding.
    const bool onPart = partAt(row.layout, page).has_value();
    std::optional<Spacing> nearest;
    double least = 0;
    for (Spacing& spacing : spacingsOf(row)) {
        const bool padding = isOf(spacing, "card/");
        if (padding && (onPart || spacing.index != card)) continue;
        if (isOf(spacing, "row/padding") && card) continue;
        const Box& area = spacing.area;
        if (!holds(widened(area, reach), page)) continue;
        const double middle = spacing.across ? area.x + area.width / 2 : area.y + area.height / 2;
        const double from = (spacing.across ? page.x() : page.y()) - middle;
        // In a corner, the side whose middle is nearer.
        if (nearest && std::abs(from) >= least) continue;
        // The edge of a gap that is nearer follows the pointer.
        if (spacing.path == "row/columnGap" && from < 0) spacing.direction = -1;
        least = std::abs(from);
        nearest = std::move(spacing);
    }
    return nearest;
}

Length grown(const Spacing& spacing, double by) {
    const Unit unit = spacing.value.unit();
    const double one = Length::in(1, unit).resolve(spacing.basis);
    if (by == 0 || one <= 0) return spacing.value;
    const double step = stepOf(unit);
    const double steps = std::round((spacing.value.value() + by / one) / step);
    return Length::in(std::max(0.0, steps * step), unit);
}

QString lengthTitle(const Length& length) {
    return figure(length.value()) + QChar(0x00A0) +
           QString::fromStdString(std::string(suffix(length.unit())));
}

}  // namespace tenter::desktop::row::editing
