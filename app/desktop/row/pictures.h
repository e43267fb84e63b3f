// A cache of pictures, decoded and cropped to their slots on a background thread.
#pragma once

#include <QHash>
#include <QImage>
#include <QObject>
#include <QTimer>
#include <vector>

#include "document/background_job.h"

namespace tenter::desktop::row {

/// Size of a slot in device px, and the focal point (0 to 1) for cropping.
struct PictureSlot {
    QSize size;
    double focusX = 0.5;
    double focusY = 0.5;
    friend bool operator==(const PictureSlot&, const PictureSlot&) = default;
};

/// The rectangle of a picture of size `picture` that is visible in a slot. CSS Images 3 § 5.5, `object-fit:
/// cover`.
QRectF coverCrop(const QSizeF& picture, const PictureSlot& slot);

class Pictures : public QObject {
    Q_OBJECT

public:
    explicit Pictures(QObject* parent = nullptr);

    enum class State { Loading, Shown, Missing };
    struct Found {
        State state = State::Loading;
        QImage image;  ///< in the size of the slot
    };
    /// Begins to paint everything that is shown. Cuts that are not found again from here on are dropped when
    /// others arrive.
    void beginRound();
    /// The picture that can be drawn now: cropped exactly, or scaled quickly from another size. In the second
    /// case the exact one is made when sizes have not changed for a moment, and `arrived` is sent.
    Found find(const QString& file, const PictureSlot& slot);
    /// True while a picture is being decoded or is waiting for it.
    [[nodiscard]] bool isBusy() const;
    /// Waits until nothing is decoded any more, at most `milliseconds`.
    void waitUntilIdle(int milliseconds);
    /// Checks again whether missing files exist.
    void retryMissing();
    /// Drops all pictures.
    void clear();

Q_SIGNALS:
    void arrived();

private:
    struct Cut {
        PictureSlot slot;
        QImage image;
        int round = 0;  // the last one that drew it
    };
    static bool isNarrower(const Cut& a, const Cut& b) { return a.slot.size.width() < b.slot.size.width(); }
    struct File {
        bool missing = false;
        std::vector<Cut> cuts;
        std::vector<PictureSlot> wanted;  // in this round
        int running = 0;                  // pictures that are being decoded
    };
    void startWanted();
    void start(const QString& file, const PictureSlot& slot);
    void take(const QString& file, const PictureSlot& slot, const QImage& image);
    QHash<QString, File> files_;
    int round_ = 0;
    QTimer settled_;
    BackgroundJob job_;  // last, so that its thread ends before what it reports to
};

}  // namespace tenter::desktop::row
