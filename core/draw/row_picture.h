// The row at one width as a picture file.
#pragma once

#include <string>

#include "draw/drawing.h"
#include "draw/picture_source.h"
#include "draw/row.h"
#include "project/problem.h"
#include "text/paragraph_store.h"

namespace tenter::draw {

/// The largest width and height of a PNG picture, px. Cairo's images have no more.
inline constexpr int mostPictureSide = 32767;

/// The page of `row` as PNG with `ratio` px per CSS px. Empty, with a problem, if it is too large.
std::string pngPicture(const LaidOutRow& row, double ratio, PictureSource& pictures,
                       text::ParagraphStore& store, project::Problems& problems);

/// The page of `row` as SVG, one unit per CSS px, text as outlines. Pictures are inside, with two px per CSS
/// px.
std::string svgPicture(const LaidOutRow& row, PictureSource& pictures, text::ParagraphStore& store);

}  // namespace tenter::draw
