#include "document/place_picture.h"

#include <QFileInfo>
#include <QImageReader>
#include <algorithm>
#include <variant>

#include "document/collect_files.h"
#include "document/new_card.h"
#include "document/refusal.h"

namespace tenter::desktop {

namespace {

bool isPicture(const project::Part& part) {
    return std::holds_alternative<project::PicturePart>(part);
}

void put(project::Card& card, const project::PicturePart& picture, std::optional<std::size_t> part) {
    auto& parts = card.parts;
    auto at = std::find_if(parts.begin(), parts.end(), isPicture);
    if (part && *part < parts.size() && isPicture(parts[*part]))
        at = parts.begin() + static_cast<std::ptrdiff_t>(*part);
    if (at == parts.end()) at = parts.insert(parts.begin(), project::PicturePart());
    auto& placed = std::get<project::PicturePart>(*at);
    placed.file = picture.file;
    placed.width = picture.width;
    placed.height = picture.height;
    placed.focusX = placed.focusY = 0.5;
}

}  // namespace

std::optional<project::PicturePart> picturePartOf(const QString& file, const std::filesystem::path& folder) {
    QImageReader reader(file);
    reader.setAutoTransform(true);
    QSize size = reader.size();
    if (!size.isValid()) return std::nullopt;
    if (reader.transformation().testFlag(QImageIOHandler::TransformationRotate90)) size.transpose();
    project::PicturePart picture;
    picture.file = storedPath(QFileInfo(file).absoluteFilePath().toStdString(), folder);
    picture.width = size.width();
    picture.height = size.height();
    return picture;
}

PlacedPictures placePictures(Document& document, std::size_t card, const QStringList& files,
                             std::optional<std::size_t> part) {
    std::vector<project::PicturePart> pictures;
    for (const QString& file : files) {
        const auto picture = picturePartOf(file, document.folder());
        if (!picture)
            return {0, QObject::tr("%1 cannot be read as a picture. Use a PNG, JPEG or WebP file.")
                           .arg(QFileInfo(file).fileName())};
        pictures.push_back(*picture);
    }
    const auto& cards = document.project().row().cards;
    const bool empty = cards.empty();
    if (!empty && card >= cards.size()) return {0, QObject::tr("Drop the picture on a card.")};
    const std::size_t count = empty ? pictures.size() : std::min(pictures.size(), cards.size() - card);
    if (document.project().row().given)
        for (std::size_t i = 0; !empty && i < count; ++i)
            if (const auto& parts = cards[card + i].parts;
                std::none_of(parts.begin(), parts.end(), isPicture))
                return {0,
                        QObject::tr("Card %1 of the imported row has no picture. Add one in the page, then "
                                    "import the row again.")
                            .arg(card + i + 1)};
    const project::Problems problems = document.edit(
        count == 1 ? QObject::tr("Place picture") : QObject::tr("Place pictures"),
        [&](project::Project& project) {
            if (empty) project.row().cards.assign(count, newCard());
            for (std::size_t i = 0; i < count; ++i)
                put(project.row().cards[empty ? i : card + i], pictures[i], i == 0 ? part : std::nullopt);
        });
    if (!problems.empty()) return {0, refusal(document.project(), problems.front())};
    return {count, {}};
}

}  // namespace tenter::desktop
