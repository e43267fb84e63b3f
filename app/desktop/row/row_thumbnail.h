// A small picture of a project's row, painted without a window.
#pragma once

#include <QImage>
#include <filesystem>

#include "project/project.h"

namespace tenter::desktop::row {

/// The first variant's row at viewport width `width` (CSS px), scaled to `size` (device px) in width; its
/// height is cut, or the rest is empty. Waits until its pictures are decoded. Can be called on any thread.
QImage rowThumbnail(const project::Project& project, const std::filesystem::path& folder, double width,
                    const QSize& size);

/// The same for the project in a file; a null image if it cannot be read.
QImage rowThumbnail(const std::filesystem::path& file, double width, const QSize& size);

}  // namespace tenter::desktop::row
