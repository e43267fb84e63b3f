// The spec sheet as PDF, tagged.
#pragma once

#include <functional>
#include <string>

#include "draw/picture_source.h"
#include "sheet/content.h"
#include "text/paragraph_store.h"

namespace tenter::sheet {

/// Size of a page in points (1/72 inch). ISO 216 and ANSI A.
struct Paper {
    double width = 0;
    double height = 0;
};
inline constexpr Paper a4{595.276, 841.89};
inline constexpr Paper letter{612, 792};

/// The sheet as a PDF file with tags, title, language and alternative texts. The same content makes the same
/// bytes. Empty if `isStopped` said so between two blocks, or if there was not enough memory.
std::string pdfSheet(const Sheet& sheet, const Paper& paper, draw::PictureSource& pictures,
                     text::ParagraphStore& store, const std::function<bool()>& isStopped = {});

}  // namespace tenter::sheet
