// The panels of the side panel.
#pragma once

namespace tenter::desktop::panels {

enum class PanelKind { Row, Text, Spacing, Colour, Words, Pictures };

}  // namespace tenter::desktop::panels
