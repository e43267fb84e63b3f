// The spec sheet as one HTML file.
#pragma once

#include <string>

#include "draw/picture_source.h"
#include "sheet/content.h"
#include "text/paragraph_store.h"

namespace tenter::sheet {

/// One self-contained page: no script, no request. Thumbnails and plots are SVG.
std::string htmlSheet(const Sheet& sheet, draw::PictureSource& pictures, text::ParagraphStore& store);

}  // namespace tenter::sheet
