// Gives a card a picture file.
#pragma once

#include <QString>
#include <optional>

#include "document/document.h"

namespace tenter::desktop {

/// Puts `file` into part `part` of card `card` if that is a picture, else into its first picture, or adds one
/// at its top, as one undoable step.
/// What is wrong with the file, if anything; then nothing was changed.
QString placePicture(Document& document, std::size_t card, const QString& file,
                     std::optional<std::size_t> part = {});

}  // namespace tenter::desktop
