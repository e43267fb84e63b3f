#include "session/layout_cache.h"

#include <algorithm>

namespace tenter::desktop {

LayoutCache::LayoutCache(Document& document, const ShownProject& shown, const ViewState& view,
                         QObject* parent)
    : QObject(parent),
      document_(document),
      shown_(shown),
      view_(view),
      announcedKey_(key()),
      announcedWidth_(width()) {
    connect(&shown_, &ShownProject::changed, this, &LayoutCache::announce);
    connect(&view_, &ViewState::changed, this, &LayoutCache::announce);
}

RowKey LayoutCache::key() const {
    return {document_.opening(), shown_.revision(), variant(), &profile()};
}

LayoutCache::Made& LayoutCache::made(std::size_t variant, const text::BreakProfile& profile) const {
    if (std::exchange(revision_, shown_.revision()) != shown_.revision())
        // The layouts keep their memory for those that follow.
        for (auto& [key, made] : made_) {
            made.row.reset();
            made.laidOut = false;
        }
    variant = std::min(variant, shown_.project().row().variants.size() - 1);
    Made& made = made_[{variant, &profile}];
    if (!made.row)
        made.row = std::make_shared<const layout::PreparedRow>(shown_.project(), variant, document_.store(),
                                                               profile);
    return made;
}

const layout::Layout& LayoutCache::layout(std::size_t variant, const text::BreakProfile& profile) const {
    Made& made = this->made(variant, profile);
    if (!made.laidOut || made.layout.width != width()) layout::layOutDrawn(*made.row, width(), made.layout);
    made.laidOut = true;
    return made.layout;
}

LaidOutRow LayoutCache::of(std::size_t variant) const {
    const layout::Layout& layout = this->layout(variant, profile());
    return {project(), *made(variant, profile()).row, layout};
}

void LayoutCache::announce() {
    const RowKey now = key();
    const RowKey before = std::exchange(announcedKey_, now);
    const bool widthChanged = std::exchange(announcedWidth_, width()) != width();
    Changes changes;
    changes.setFlag(Change::Layout, now != before || widthChanged);
    changes.setFlag(Change::Row, now != before);
    changes.setFlag(Change::Variant, !now.hasSameVariant(before));
    if (changes) Q_EMIT changed(changes);
}

}  // namespace tenter::desktop
