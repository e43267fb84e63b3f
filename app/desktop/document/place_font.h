// Adds a font file to the project.
#pragma once

#include <QString>

#include "document/document.h"

namespace tenter::desktop {

/// True if the name ends in `.ttf`, `.otf`, `.woff` or `.woff2`.
bool isFontName(const QString& file);
/// Adds `file` (TTF, OTF, WOFF, WOFF2) to the project's fonts and makes it the first family of `role`, as one
/// undoable step. Returns an error message and changes nothing if the file cannot be read or the project
/// cannot have this font; otherwise an empty string.
QString placeFont(Document& document, const QString& file, const std::string& role);

}  // namespace tenter::desktop
