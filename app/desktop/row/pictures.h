// Pictures: decoded and cut to their slots off the window's thread.
#pragma once

#include <QHash>
#include <QImage>
#include <QObject>
#include <QThreadPool>
#include <QTimer>
#include <vector>

namespace tenter::desktop::row {

/// What a slot needs: a size in device px and the focal point it is cropped around (0 to 1).
struct PictureSlot {
    QSize size;
    double focusX = 0.5;
    double focusY = 0.5;
    friend bool operator==(const PictureSlot&, const PictureSlot&) = default;
};

/// The part of a picture of size `picture` that covers a slot. CSS Images 3 § 5.5, `object-fit: cover`.
QRectF coverCrop(const QSizeF& picture, const PictureSlot& slot);

class Pictures : public QObject {
    Q_OBJECT

public:
    explicit Pictures(QObject* parent = nullptr);
    ~Pictures() override;

    enum class State { Loading, Shown, Missing };
    struct Found {
        State state = State::Loading;
        QImage image;  ///< of the slot's size
    };
    /// What can be drawn of `file` now: the cut itself, or one of another size, scaled; then the cut is made
    /// once sizes have settled.
    Found find(const QString& file, const PictureSlot& slot);
    /// True while a cut is being made, or waits to be.
    [[nodiscard]] bool isBusy() const;
    /// Looks again for files that were missing.
    void retryMissing();
    /// Forgets every picture.
    void clear();

signals:
    void arrived();

private:
    struct Cut {
        PictureSlot slot;
        QImage image;
    };
    struct File {
        bool missing = false;
        std::vector<Cut> cuts;  // latest last
        std::vector<PictureSlot> wanted;
        bool running = false;
        Cut quick;  // the last one scaled, so that a repaint costs nothing
    };
    void startWanted();
    void start(const QString& file, const PictureSlot& slot);
    void take(int generation, const QString& file, const PictureSlot& slot, const QImage& image);
    QHash<QString, File> files_;
    QThreadPool pool_;
    QTimer settled_;
    int generation_ = 0;
};

}  // namespace tenter::desktop::row
