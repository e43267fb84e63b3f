// Small icons, drawn as strokes in the palette's text colour so that they are sharp at every scale.
#pragma once

#include <QIcon>

namespace tenter::desktop::controls {

enum class Glyph {
    Add,
    Remove,
    Up,
    Down,
    Left,
    Right,
    Reset,
    Strong,
    Emphasis,
    Link,
    LineBreak,
    Copy,
    Search
};

QIcon glyph(Glyph glyph);
/// The strokes themselves, in a box of 16 × 16.
QPainterPath glyphPath(Glyph glyph);

}  // namespace tenter::desktop::controls
