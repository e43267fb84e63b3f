// What to upload for each picture of a row, so that one file fills its slot in every variant at every width.
#pragma once

#include <string>
#include <vector>

#include "pictures/slots.h"
#include "text/paragraph_store.h"
#include "text/profile.h"

namespace tenter::pictures {

/// The file to upload for one picture.
struct PictureUpload {
    project::PartRef place;
    double pixelRatio = 2;  ///< device pixels per CSS px that the file is for
    PixelSize size;         ///< of the file to upload, cut to the ratio that its slots show; 0 × 0: no slot
    PixelSize file;         ///< of the present file; 0 × 0: not known
    bool isTooSmall = false;  ///< the present file has fewer pixels than its largest slot needs
    std::size_t variant = 0;  ///< the variant with the largest slot
    double width = 0;         ///< viewport width at which the slot is largest, CSS px
    double slotWidth = 0;     ///< of that slot, CSS px
    double slotHeight = 0;    ///< of that slot, CSS px
};

/// The uploads of all pictures of `project` over all its viewport widths and variants, by card, then part.
std::vector<PictureUpload> uploadsOf(const project::Project& project, text::ParagraphStore& store,
                                     const text::BreakProfile& profile, double pixelRatio = 2);

/// The smallest whole viewport width at which the slot of `upload` is largest, CSS px.
double wholeWidthOf(const PictureUpload& upload);

/// `1038 × 692 px`.
std::string sizeLabel(const PixelSize& size);

/// Why the file is larger than that slot in one direction: `At other widths the slots are taller.`; empty if
/// it is not.
std::string otherSlotsSentence(const PictureUpload& upload);

/// `The largest slot is 519 × 346 px, at 590 px viewport width in the variant “Home page”.` The variant is
/// named only if the project has several.
std::string largestSlotSentence(const project::Project& project, const PictureUpload& upload);

}  // namespace tenter::pictures
