// Gives the project a font file.
#pragma once

#include <QString>

#include "document/document.h"

namespace tenter::desktop {

/// True for names that end as font files do.
bool isFontName(const QString& file);
/// Adds `file` (TTF, OTF, WOFF, WOFF2) to the project's fonts and makes it the first family of `role`, as one
/// undoable step. What is wrong with the file, if anything; then nothing was changed.
QString placeFont(Document& document, const QString& file, const std::string& role);

}  // namespace tenter::desktop
