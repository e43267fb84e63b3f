#include "controls/reading_order.h"

#include <QApplication>
#include <QScrollArea>
#include <algorithm>
#include <vector>

namespace tenter::desktop::controls {

namespace {

constexpr const char* ownOrder = "tenterOwnOrder";

bool takesTab(const QWidget& widget, const QWidget& window) {
    return (widget.focusPolicy() & Qt::TabFocus) == Qt::TabFocus && widget.focusProxy() == nullptr &&
           widget.isVisibleTo(&window) && widget.isEnabled();
}

/// Widgets that are read together: one widget, those of a widget with its own order, or those of a scroll
/// area.
struct Stop {
    QRect place;
    std::vector<QWidget*> widgets;
    const QWidget* owner;
};

/// The widget inside a scroll area that it scrolls; null if `widget` is none.
const QWidget* scrolled(const QWidget* widget) {
    const auto* area = qobject_cast<const QScrollArea*>(widget);
    return area != nullptr ? area->widget() : nullptr;
}

const QWidget* ownerOf(const QWidget* widget, const QWidget& root) {
    const QWidget* owner = widget;
    for (const QWidget* parent = widget; parent != &root; parent = parent->parentWidget())
        if (parent->property(ownOrder).toBool() || scrolled(parent) != nullptr) owner = parent;
    return owner;
}

std::vector<QWidget*> asRead(const QWidget& root);

std::vector<Stop> stopsOf(const QWidget& root) {
    std::vector<Stop> stops;
    for (QWidget* widget = root.nextInFocusChain(); widget != &root; widget = widget->nextInFocusChain()) {
        if (!root.isAncestorOf(widget) || !takesTab(*widget, *root.window())) continue;
        const QWidget* const owner = ownerOf(widget, root);
        const auto known = std::ranges::find(stops, owner, &Stop::owner);
        if (known != stops.end())
            known->widgets.push_back(widget);
        else
            stops.push_back({QRect(owner->mapTo(&root, QPoint()), owner->size()), {widget}, owner});
    }
    // What is scrolled has places beyond those of the scroll area, under its neighbours.
    for (Stop& stop : stops)
        if (const QWidget* inside = scrolled(stop.owner)) stop.widgets = asRead(*inside);
    return stops;
}

std::vector<QWidget*> asRead(const QWidget& root) {
    std::vector<Stop> stops = stopsOf(root);
    std::ranges::stable_sort(stops, {}, [](const Stop& stop) { return stop.place.top(); });
    const bool rightToLeft = root.isRightToLeft();
    std::vector<QWidget*> widgets;
    for (auto line = stops.begin(); line != stops.end();) {
        // A line has everything whose middle is beside its first widget.
        const int bottom = line->place.bottom();
        const auto end = std::find_if(line, stops.end(),
                                      [&](const Stop& stop) { return stop.place.center().y() > bottom; });
        std::stable_sort(line, end, [&](const Stop& a, const Stop& b) {
            return rightToLeft ? a.place.right() > b.place.right() : a.place.left() < b.place.left();
        });
        for (; line != end; ++line)
            widgets.insert(widgets.end(), line->widgets.begin(), line->widgets.end());
    }
    return widgets;
}

}  // namespace

bool moveFocusAsRead(QWidget& root, bool next) {
    const Qt::FocusReason reason = next ? Qt::TabFocusReason : Qt::BacktabFocusReason;
    std::vector<QWidget*> widgets = asRead(root);
    if (!next) std::ranges::reverse(widgets);
    QWidget* const now = QApplication::focusWidget();
    const auto at = std::ranges::find(widgets, now);
    if (at != widgets.end() && at + 1 != widgets.end()) {
        at[1]->setFocus(reason);
        return true;
    }
    QWidget* widget = now != nullptr ? now : &root;
    const QWidget* const start = widget;
    do
        widget = next ? widget->nextInFocusChain() : widget->previousInFocusChain();
    while (widget != start &&
           (&root == widget || root.isAncestorOf(widget) || !takesTab(*widget, *root.window())));
    if (widget == start) return false;
    widget->setFocus(reason);
    return true;
}

void keepOwnOrder(QWidget& widget) {
    widget.setProperty(ownOrder, true);
}

}  // namespace tenter::desktop::controls
