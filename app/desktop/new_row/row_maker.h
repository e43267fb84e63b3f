// Makes a new row in the background while the person types and chooses.
#pragma once

#include <QImage>
#include <QObject>
#include <QSize>
#include <QTimer>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>

#include "document/background_job.h"
#include "start/new_row.h"
#include "text/fonts.h"

namespace tenter::desktop::new_row {

/// What the dialog asks for.
struct RowRequest {
    tenter::start::NewRow row;  ///< without its text
    std::string text;           ///< as typed or pasted
    std::optional<tenter::start::TextFormat> format;
    std::filesystem::path folder;  ///< of the pictures
    double width = 1280;           ///< viewport of the preview, CSS px
    QSize size;                    ///< of the preview, device px; empty: no preview
    friend bool operator==(const RowRequest&, const RowRequest&) = default;
};

struct RowResult {
    tenter::start::PastedText text;
    tenter::start::MadeRow made;
    QImage image;
};

/// Reads the text, makes the row and paints it. Can be called on any thread.
RowResult makeRow(const RowRequest& request, const std::stop_token& stop = {});

class RowMaker : public QObject {
    Q_OBJECT

public:
    explicit RowMaker(QObject* parent = nullptr);
    /// Makes the row after a pause, then its previews in every look. A later request replaces it.
    void request(const RowRequest& request, const QSize& lookSize);
    /// The row of the last request. Waits for it if it is not ready.
    const RowResult& result();
    [[nodiscard]] bool isBusy() const { return pause_.isActive() || job_.isRunning(); }

Q_SIGNALS:
    void started();
    void finished(const tenter::desktop::new_row::RowResult& result);
    void lookPainted(const QString& look, const QImage& image);

private:
    void startJob();

    QTimer pause_;
    BackgroundJob job_{this};
    BackgroundJob lookJob_{this};
    RowRequest request_;
    QSize lookSize_;
    RowResult result_;
    bool isCurrent_ = false;
};

}  // namespace tenter::desktop::new_row
