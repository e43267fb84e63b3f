#include "row/pictures.h"

#include <QEventLoop>
#include <QFileInfo>
#include <QImageReader>
#include <algorithm>
#include <cmath>
#include <utility>

#include "row/scaling.h"

namespace tenter::desktop::row {

namespace {

constexpr int settleMilliseconds = 90;
constexpr int mostReduction = 2;  // of a cut that is kept to scale from; a larger one would lose details
constexpr int mostSide = 8192;

// Decodes only the cropped picture in the size of the slot, because whole photographs need too much memory.
QImage cutTo(const QString& file, const PictureSlot& slot) {
    QImageReader reader(file);
    reader.setAutoTransform(true);
    QSize whole = reader.size();
    if (!whole.isValid() || whole.isEmpty()) {
        const QImage image = reader.read();
        if (image.isNull()) return {};
        return image.copy(coverCrop(image.size(), slot).toAlignedRect())
            .scaled(slot.size, Qt::IgnoreAspectRatio, Qt::SmoothTransformation)
            .convertToFormat(QImage::Format_ARGB32_Premultiplied);
    }
    const bool turned = (reader.transformation() & QImageIOHandler::TransformationRotate90) != 0;
    const QSize upright = turned ? whole.transposed() : whole;
    const QRectF crop = coverCrop(upright, slot);
    const double factor = slot.size.width() / crop.width();
    const QSize scaled(std::max(1, static_cast<int>(std::lround(upright.width() * factor))),
                       std::max(1, static_cast<int>(std::lround(upright.height() * factor))));
    if (scaled.width() > mostSide || scaled.height() > mostSide) return {};
    reader.setScaledSize(turned ? scaled.transposed() : scaled);
    const QImage image = reader.read();
    if (image.isNull()) return {};
    const QRect cut(static_cast<int>(std::lround(crop.x() * factor)),
                    static_cast<int>(std::lround(crop.y() * factor)), slot.size.width(), slot.size.height());
    const QImage result = image.copy(cut.intersected(image.rect()));
    const auto format = result.hasAlphaChannel() ? QImage::Format_ARGB32_Premultiplied : QImage::Format_RGB32;
    if (result.size() != slot.size)
        return result.scaled(slot.size, Qt::IgnoreAspectRatio, Qt::SmoothTransformation)
            .convertToFormat(format);
    return result.convertToFormat(format);
}

}  // namespace

QRectF coverCrop(const QSizeF& picture, const PictureSlot& slot) {
    if (slot.size.isEmpty() || picture.isEmpty()) return {QPointF(), picture};
    const double factor =
        std::max(slot.size.width() / picture.width(), slot.size.height() / picture.height());
    const QSizeF crop(slot.size.width() / factor, slot.size.height() / factor);
    return {(picture.width() - crop.width()) * slot.focusX, (picture.height() - crop.height()) * slot.focusY,
            crop.width(), crop.height()};
}

Pictures::Pictures(QObject* parent) : QObject(parent) {
    settled_.setSingleShot(true);
    settled_.setInterval(settleMilliseconds);
    connect(&settled_, &QTimer::timeout, this, &Pictures::startWanted);
}

void Pictures::beginRound() {
    ++round_;
    for (File& file : files_)
        file.wanted.clear();
}

Pictures::Found Pictures::find(const QString& file, const PictureSlot& slot) {
    Found found;
    if (slot.size.isEmpty()) return found;
    File& kept = files_[file];
    if (kept.missing) {
        found.state = State::Missing;
        return found;
    }
    const auto exact =
        std::find_if(kept.cuts.begin(), kept.cuts.end(), [&](const Cut& cut) { return cut.slot == slot; });
    if (exact != kept.cuts.end()) {
        exact->round = round_;
        return {State::Shown, exact->image};
    }
    if (kept.cuts.empty()) {
        if (kept.running == 0) start(file, slot);
        return found;
    }
    if (std::find(kept.wanted.begin(), kept.wanted.end(), slot) == kept.wanted.end())
        kept.wanted.push_back(slot);
    settled_.start();
    const auto largest = std::max_element(kept.cuts.begin(), kept.cuts.end(), isNarrower);
    return {State::Shown, scaledQuickly(largest->image, coverCrop(largest->image.size(), slot), slot.size)};
}

bool Pictures::isBusy() const {
    return std::any_of(files_.begin(), files_.end(),
                       [](const File& file) { return file.running || !file.wanted.empty(); });
}

void Pictures::startWanted() {
    for (auto it = files_.begin(); it != files_.end(); ++it) {
        if (it->running > 0) continue;
        for (const PictureSlot& slot : std::exchange(it->wanted, {}))
            start(it.key(), slot);
    }
}

void Pictures::start(const QString& file, const PictureSlot& slot) {
    ++files_[file].running;
    job_.add([file, slot](const std::stop_token&) { return cutTo(file, slot); },
             [this, file, slot](const QImage& image) { take(file, slot, image); });
}

void Pictures::take(const QString& file, const PictureSlot& slot, const QImage& image) {
    File& kept = files_[file];
    --kept.running;
    if (image.isNull()) {
        kept.missing = true;
    } else {
        // Beside the cuts that are shown, the largest is kept to scale from, if it is not much larger.
        kept.cuts.push_back({slot, image, round_});
        const int largest =
            std::max_element(kept.cuts.begin(), kept.cuts.end(), isNarrower)->slot.size.width();
        std::erase_if(kept.cuts, [&](const Cut& cut) {
            const int width = cut.slot.size.width();
            return cut.round < round_ && (width < largest || width > mostReduction * slot.size.width());
        });
    }
    Q_EMIT arrived();
}

void Pictures::waitUntilIdle(int milliseconds) {
    if (!isBusy()) return;
    QEventLoop loop;
    QTimer late;
    late.setSingleShot(true);
    connect(&late, &QTimer::timeout, &loop, &QEventLoop::quit);
    connect(this, &Pictures::arrived, &loop, [&] {
        if (!isBusy()) loop.quit();
    });
    late.start(milliseconds);
    loop.exec();
}

void Pictures::retryMissing() {
    for (auto it = files_.begin(); it != files_.end(); ++it)
        if (it->missing && QFileInfo::exists(it.key())) it->missing = false;
}

void Pictures::clear() {
    job_.cancel();
    files_.clear();
}

}  // namespace tenter::desktop::row
