// Thumbnails of project files: painted in the background, and kept on disk.
#pragma once

#include <QImage>
#include <QObject>
#include <QSize>

#include "document/background_job.h"

namespace tenter::desktop::start_page {

class Thumbnails : public QObject {
    Q_OBJECT

public:
    explicit Thumbnails(QObject* parent = nullptr);
    /// Asks for the thumbnail of a project file; `size` in device px. `arrived` follows.
    void request(const QString& file, const QSize& size);
    /// Forgets all requests.
    void cancel() { job_.cancel(); }
    [[nodiscard]] bool isBusy() const { return job_.isRunning(); }

Q_SIGNALS:
    /// `image` is null if the project cannot be read.
    void arrived(const QString& file, const QImage& image);

private:
    BackgroundJob job_{this};
};

}  // namespace tenter::desktop::start_page
