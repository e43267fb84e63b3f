#include "document/place_picture.h"

#include <QFileInfo>
#include <QImageReader>
#include <algorithm>
#include <variant>

#include "document/carry_files.h"

namespace tenter::desktop {

QString placePicture(Document& document, std::size_t card, const QString& file,
                     std::optional<std::size_t> part) {
    if (card >= document.project().cards.size())
        return "There is no card to put the picture into; add one first.";
    const auto& before = document.project().cards[card].parts;
    if (document.project().given && std::none_of(before.begin(), before.end(), [](const project::Part& one) {
            return std::holds_alternative<project::PicturePart>(one);
        }))
        return "The page’s card has no picture; take the row in again after putting one there.";
    QImageReader reader(file);
    reader.setAutoTransform(true);
    QSize size = reader.size();
    if (!size.isValid())
        return QFileInfo(file).fileName() + " cannot be read as a picture; use a PNG, JPEG or WebP file.";
    if (reader.transformation().testFlag(QImageIOHandler::TransformationRotate90)) size.transpose();
    const std::string kept = keptName(QFileInfo(file).absoluteFilePath().toStdString(), document.folder());
    document.edit("Picture", [&](project::Project& project) {
        auto& parts = project.cards[card].parts;
        const auto isPicture = [](const project::Part& one) {
            return std::holds_alternative<project::PicturePart>(one);
        };
        auto at = std::find_if(parts.begin(), parts.end(), isPicture);
        if (part && *part < parts.size() && isPicture(parts[*part]))
            at = parts.begin() + static_cast<std::ptrdiff_t>(*part);
        if (at == parts.end()) at = parts.insert(parts.begin(), project::PicturePart());
        auto& picture = std::get<project::PicturePart>(*at);
        picture.file = kept;
        picture.width = size.width();
        picture.height = size.height();
        picture.focusX = picture.focusY = 0.5;
    });
    return {};
}

}  // namespace tenter::desktop
