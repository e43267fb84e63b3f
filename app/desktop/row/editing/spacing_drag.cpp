#include "row/editing/spacing_drag.h"

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "document/wording.h"
#include "row/dimension.h"
#include "row/ink.h"
#include "row/value_flag.h"

namespace tenter::desktop::row::editing {

namespace {

constexpr double reach = 6;  // view px: a narrower gap or padding is grabbed in an area of this width
const QString gesture = QStringLiteral("drag of a gap or padding");

}  // namespace

bool SpacingDrag::hover(const QPointF& view) {
    std::optional<Spacing> at;
    const auto sheet = sheets_.sheetAt(view);
    if (sheet && session_.shown.showsDocument() && session_.document.hasProject())
        at = spacingAt(sheets_.rowOn(*sheet), sheets_.pageAt(view, *sheet), reach / sheets_.zoom());
    const bool same = at ? hot_ && hot_->isSameAs(*at) && sheet == hotSheet_ : !hot_;
    if (!same) area_.viewport()->update();
    hot_ = at;
    hotSheet_ = sheet.value_or(0);
    if (hot_) area_.viewport()->setCursor(hot_->across ? Qt::SplitHCursor : Qt::SplitVCursor);
    return hot_.has_value();
}

void SpacingDrag::leave() {
    if (drag_ || !hot_) return;
    hot_.reset();
    area_.viewport()->update();
}

std::size_t SpacingDrag::band() const {
    return project::bandAt(session_.document.project().row().variants[session_.view.variant()],
                           session_.view.width());
}

bool SpacingDrag::press(const QPointF& view) {
    if (!hover(view)) return false;
    if (sheets_.showsAll()) session_.view.setVariant(hotSheet_);
    session_.document.endGesture();
    drag_ = Drag{*hot_,
                 hotSheet_,
                 view,
                 sheets_.zoom(),
                 session_.scope.layerOf(hot_->path),
                 session_.document.project(),
                 false};
    area_.viewport()->update();
    return true;
}

void SpacingDrag::move(const QPointF& view) {
    const QPointF moved = (view - drag_->from) / drag_->zoom;
    const double by = drag_->spacing.direction * (drag_->spacing.across ? moved.x() : moved.y());
    const units::Length value = grown(drag_->spacing, by);
    drag_->moved = drag_->moved || value != drag_->spacing.value;
    if (drag_->moved) put(value);
    area_.viewport()->update();
}

void SpacingDrag::put(const units::Length& value) {
    project::Problems problems;
    session_.scope.edit(
        QObject::tr("Change %1", "setting").arg(inSentence(drag_->spacing.name)),
        [&](project::Project& project) {
            project::setSetting(project::settingsOf(project, drag_->layer, session_.view.variant(), band()),
                                drag_->spacing.path, value.css(), problems);
        },
        gesture);
}

bool SpacingDrag::release() {
    const bool moved = drag_ && drag_->moved;
    drag_.reset();
    session_.document.endGesture();
    area_.viewport()->update();
    return moved;
}

void SpacingDrag::cancel() {
    if (!drag_) return;
    if (drag_->moved)
        session_.scope.edit(
            QObject::tr("Change %1", "setting").arg(inSentence(drag_->spacing.name)),
            [&](project::Project& project) { project = drag_->before; }, gesture);
    release();
    hot_.reset();
}

void SpacingDrag::paint(QPainter& painter) const {
    if (!hot_ && !drag_) return;
    const std::size_t sheet = drag_ ? drag_->sheet : hotSheet_;
    if (sheet >= sheets_.count()) return;
    // The value and its place are those of the layout now.
    const Spacing& of = drag_ ? drag_->spacing : *hot_;
    const std::vector<Spacing> all = spacingsOf(sheets_.rowOn(sheet));
    const auto shown = std::ranges::find_if(all, [&](const Spacing& one) { return one.isSameAs(of); });
    if (shown == all.end()) return;
    const Ink ink = Ink::of(area_.palette());
    const QRectF place = sheets_.projection(sheet).rect(shown->area);
    // Faint while the pointer only passes over it.
    QColor wash = ink.accent;
    wash.setAlpha(56);
    if (drag_) painter.fillRect(place, wash);
    QColor hatching = ink.accent;
    hatching.setAlpha(drag_ ? 255 : 128);
    paintHatching(painter, place, {}, hatching);
    painter.setFont(area_.font());
    QString text = shown->name + ' ' + lengthTitle(shown->value);
    if (shown->value.unit() != units::Unit::Px)
        text += QStringLiteral(" = ") + pixels(shown->across ? shown->area.width : shown->area.height, 1);
    if (drag_) text += ", " + scopeTitle(session_.layouts, drag_->layer);
    paintFlag(painter, place, text, area_.viewport()->rect(), ink);
}

}  // namespace tenter::desktop::row::editing
