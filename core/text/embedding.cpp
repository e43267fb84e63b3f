#include "text/embedding.h"

#include <hb.h>

namespace tenter::text {

Embedding embeddingOf(const Face& face) {
    constexpr unsigned offset = 8;  // of fsType in the OS/2 table
    hb_blob_t* table = hb_face_reference_table(hb_font_get_face(face.font()), HB_TAG('O', 'S', '/', '2'));
    unsigned size = 0;
    const char* data = hb_blob_get_data(table, &size);
    unsigned type = 0;
    const bool known = data != nullptr && size >= offset + 2;
    if (known)
        type = static_cast<unsigned char>(data[offset]) * 256U + static_cast<unsigned char>(data[offset + 1]);
    hb_blob_destroy(table);
    if (!known) return Embedding::Unknown;
    if ((type & 0x0200U) != 0) return Embedding::BitmapsOnly;
    // Old fonts set several of these bits; the least restrictive one holds.
    if ((type & 0x000FU) == 0) return Embedding::Installable;
    if ((type & 0x0008U) != 0) return Embedding::Editable;
    if ((type & 0x0004U) != 0) return Embedding::PreviewAndPrint;
    return Embedding::Restricted;
}

std::string words(Embedding embedding) {
    switch (embedding) {
        case Embedding::Installable:
            return "may be shipped with a page";
        case Embedding::Editable:
            return "allows embedding in documents only, not in pages";
        case Embedding::PreviewAndPrint:
            return "allows embedding for preview and printing only";
        case Embedding::Restricted:
            return "must not be embedded";
        case Embedding::BitmapsOnly:
            return "allows embedding of its bitmaps only";
        case Embedding::Unknown:
            break;
    }
    return "does not say whether it may be embedded";
}

}  // namespace tenter::text
