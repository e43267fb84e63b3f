// Gives a card a picture file.
#pragma once

#include <QString>

#include "document/document.h"

namespace tenter::desktop {

/// Puts `file` into the first picture part of card `card`, or adds one at its top, as one undoable step.
/// What is wrong with the file, if anything; then nothing was changed.
QString placePicture(Document& document, std::size_t card, const QString& file);

}  // namespace tenter::desktop
