// Finds parts in a layout, and their settings in the project.
#pragma once

#include <QPointF>
#include <optional>

#include "session/layout_cache.h"
#include "session/place.h"

namespace tenter::desktop::row {

/// The topmost part at a point of the page (CSS px), as an index into `Layout::parts`; empty if there is
/// none.
std::optional<std::size_t> partAt(const layout::Layout& layout, const QPointF& page);
/// The index of the card that contains part `part` of `Layout::parts`.
std::size_t cardOf(const layout::Layout& layout, std::size_t part);
/// The card at a point of the page (CSS px); empty if there is none.
std::optional<std::size_t> cardAt(const layout::Layout& layout, const QPointF& page);
/// Converts a part of the project to an index into `Layout::parts`, and back; empty if there is none.
std::optional<std::size_t> indexOf(const layout::Layout& layout, const std::optional<project::PartRef>& part);
/// The box of a card or a part of the project; null if it is not laid out.
const layout::Box* boxOf(const layout::Layout& layout, const Place& place);
project::PartRef refOf(const layout::Layout& layout, std::size_t part);
/// The part reached from `current` by moving `cards` cards and `parts` parts along the row, as an index into
/// `Layout::parts`; empty if there is none. Without a current part: the first, or the last card's first when
/// moving back.
std::optional<std::size_t> partBeside(const layout::Layout& layout, std::optional<std::size_t> current,
                                      int cards, int parts);

using draw::basisOf;
using draw::kindOf;
using draw::sourceOf;
using draw::styleOf;

/// Font size of `role` at the width of the layout, CSS px; empty if no part uses the role.
std::optional<double> fontSizeHere(const LaidOutRow& row, const std::string& role);

}  // namespace tenter::desktop::row
