// Whether a font may be shipped with a page.
#pragma once

#include <string>

#include "text/fonts.h"

namespace tenter::text {

/// The embedding permission of a font. OpenType 1.9, OS/2 table, fsType.
enum class Embedding {
    Installable,      ///< may be shipped with a page
    Editable,         ///< only inside documents that can be edited
    PreviewAndPrint,  ///< only inside documents for viewing and printing
    Restricted,       ///< not without permission of its owner
    BitmapsOnly,      ///< only its bitmaps
    Unknown           ///< the font does not say
};

/// The least restrictive permission that the font states, as the specification asks. The file says nothing
/// about licences beyond it.
Embedding embeddingOf(const Face& face);

/// The permission as a predicate: `allows embedding for preview and printing only`.
std::string words(Embedding embedding);

}  // namespace tenter::text
