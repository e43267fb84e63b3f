// The cards that edits of whole cards act on.
#pragma once

#include <QString>
#include <vector>

#include "session/session.h"

namespace tenter::desktop::row::editing {

/// The cards that are selected, or of which a part is; by rising indices.
std::vector<std::size_t> selectedCards(const SelectionModel& selection);
/// Why cards cannot be added, moved or removed, as a sentence; empty if they can.
QString whyCardsStay(const Session& session);

}  // namespace tenter::desktop::row::editing
