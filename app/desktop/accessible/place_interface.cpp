#include "accessible/place_interface.h"

#include <algorithm>

#include "document/wording.h"
#include "findings/wording.h"
#include "row/figures.h"
#include "row/lookup.h"

namespace tenter::desktop::accessible {

namespace {

/// The findings of a part at a viewport width, in sentences.
QStringList findingsAt(const CheckRunner& checks, const project::PartRef& part, double width) {
    QStringList sentences;
    for (const checks::Finding& finding : checks.findings()) {
        const bool here = std::ranges::find(finding.places, part) != finding.places.end();
        const bool now = std::ranges::any_of(finding.widths, [&](const sweep::Interval& range) {
            return width >= range.from && width <= range.to;
        });
        if (here && now)
            sentences << findings::severityTitle(finding.severity) + ": " +
                             QString::fromStdString(finding.says);
    }
    return sentences;
}

}  // namespace

bool PlaceInterface::isValid() const {
    return row_.isValid() && row::boxOf(session().layouts.layout(), place_) != nullptr;
}

const project::Part* PlaceInterface::part() const {
    const auto ref = place_.partRef();
    const project::Row& row = session().shown.project().row();
    if (!ref || ref->card >= row.cards.size() || ref->part >= row.cards[ref->card].parts.size())
        return nullptr;
    return &row.cards[ref->card].parts[ref->part];
}

QAccessibleInterface* PlaceInterface::parent() const {
    return place_.part ? row_.at({place_.card, {}, place_.row}) : &row_;
}

int PlaceInterface::childCount() const {
    if (place_.part || !isValid()) return 0;
    return static_cast<int>(session().layouts.layout().cards[place_.card].partCount);
}

QAccessibleInterface* PlaceInterface::child(int index) const {
    if (index < 0 || index >= childCount()) return nullptr;
    const layout::Layout& layout = session().layouts.layout();
    const std::size_t part = layout.cards[place_.card].firstPart + static_cast<std::size_t>(index);
    return row_.at(Place::of(row::refOf(layout, part)));
}

QAccessibleInterface* PlaceInterface::childAt(int x, int y) const {
    for (int i = 0; i < childCount(); ++i)
        if (child(i)->rect().contains(x, y)) return child(i);
    return nullptr;
}

int PlaceInterface::indexOfChild(const QAccessibleInterface* child) const {
    for (int i = 0; i < childCount(); ++i)
        if (this->child(i) == child) return i;
    return -1;
}

QString PlaceInterface::text(QAccessible::Text kind) const {
    if (!isValid()) return {};
    if (kind == QAccessible::Name) return name();
    if (kind == QAccessible::Description) return description();
    return {};
}

QString PlaceInterface::name() const {
    const project::Part* one = part();
    if (one == nullptr)
        return QObject::tr("Card %1 of %2").arg(place_.card + 1).arg(session().layouts.layout().cards.size());
    if (const auto* text = std::get_if<project::TextPart>(one))
        return QString::fromStdString(project::plainText(text->copy));
    const auto& picture = std::get<project::PicturePart>(*one);
    return picture.alt.empty() ? QObject::tr("Picture") : QString::fromStdString(picture.alt);
}

QString PlaceInterface::description() const {
    const layout::Layout& layout = session().layouts.layout();
    const auto index = row::indexOf(layout, place_.partRef());
    if (!index) {
        const layout::Box& box = layout.cards[place_.card].box;
        return QObject::tr("%1 × %2").arg(figure(box.width, 1), pixels(box.height, 1));
    }
    QStringList sentences{row::figuresOf(session().layouts, session().view.variant(), *index).asSentence() +
                          '.'};
    sentences << findingsAt(session().checks, *place_.partRef(), session().view.width());
    return sentences.join(' ');
}

QRect PlaceInterface::rect() const {
    const QRect there = row_.view().rectOf(place_).toAlignedRect();
    return {row_.view().viewport()->mapToGlobal(there.topLeft()), there.size()};
}

QAccessible::Role PlaceInterface::role() const {
    const project::Part* one = part();
    if (one == nullptr) return QAccessible::ListItem;
    const auto* text = std::get_if<project::TextPart>(one);
    if (text == nullptr) return QAccessible::Graphic;
    if (text->role == "heading") return QAccessible::Heading;
    return text->role == "button" ? QAccessible::Link : QAccessible::Paragraph;
}

QAccessible::State PlaceInterface::state() const {
    QAccessible::State state;
    state.invalid = !isValid();
    if (state.invalid) return state;
    const std::vector<Place> all = session().selection.all();
    state.invisible = row_.state().invisible;
    state.offscreen = !row_.view().viewport()->rect().intersects(row_.view().rectOf(place_).toAlignedRect());
    state.selectable = true;
    state.focusable = true;
    state.selected = std::ranges::find(all, place_) != all.end();
    state.focused = row_.view().hasFocus() && session().selection.place() == place_;
    return state;
}

void* PlaceInterface::interface_cast(QAccessible::InterfaceType type) {
    return type == QAccessible::ActionInterface ? static_cast<QAccessibleActionInterface*>(this) : nullptr;
}

QStringList PlaceInterface::actionNames() const {
    return {pressAction(), setFocusAction()};
}

void PlaceInterface::doAction(const QString& action) {
    if (!isValid() || !actionNames().contains(action)) return;
    if (action == setFocusAction()) row_.view().setFocus(Qt::OtherFocusReason);
    session().selection.select(place_, true);
}

}  // namespace tenter::desktop::accessible
