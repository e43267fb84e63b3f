// Puts picture files into cards.
#pragma once

#include <QString>
#include <QStringList>
#include <filesystem>
#include <optional>

#include "document/document.h"

namespace tenter::desktop {

/// The file as a part of a project in `folder`, with its size in pixels; empty if it is no picture.
std::optional<project::PicturePart> picturePartOf(const QString& file, const std::filesystem::path& folder);

/// What came of `placePictures`.
struct PlacedPictures {
    std::size_t placed = 0;  ///< files that a card has now: one card each, from the first of `files` on
    QString problem;         ///< why nothing was changed, as a sentence; empty if pictures were placed
};

/// Puts `files` into card `card` and those that follow it, one file a card, as one undoable step. In the
/// first card the file goes into part `part` if that is a picture; otherwise into the card's first picture,
/// or into a new one at its top. A row without cards gets one new card for each file. Files for which no card
/// is left are not used. Where one file cannot be read as a picture nothing is changed.
PlacedPictures placePictures(Document& document, std::size_t card, const QStringList& files,
                             std::optional<std::size_t> part = {});

}  // namespace tenter::desktop
