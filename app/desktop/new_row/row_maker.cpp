#include "new_row/row_maker.h"

#include <utility>

#include "row/row_thumbnail.h"
#include "start/looks.h"

namespace tenter::desktop::new_row {

namespace {

constexpr int typingPause = 150;    // ms
constexpr double lookWidth = 1200;  // viewport of the pictures of looks, CSS px

}  // namespace

RowResult makeRow(const RowRequest& request, const std::stop_token& stop) {
    RowResult result;
    result.text = tenter::start::readPasted(request.text, request.format);
    tenter::start::NewRow row = request.row;
    row.text = result.text;
    text::Fonts fonts;
    text::ParagraphStore store(fonts);
    result.made = newRow(row, store, stop);
    if (!result.made.isCancelled && !request.size.isEmpty() && !stop.stop_requested())
        result.image = row::rowThumbnail(result.made.project, request.folder, request.width, request.size);
    return result;
}

RowMaker::RowMaker(QObject* parent) : QObject(parent) {
    pause_.setSingleShot(true);
    pause_.setInterval(typingPause);
    connect(&pause_, &QTimer::timeout, this, &RowMaker::startJob);
}

void RowMaker::request(const RowRequest& request, const QSize& lookSize) {
    if (request == request_ && lookSize == lookSize_) return;
    request_ = request;
    lookSize_ = lookSize;
    isCurrent_ = false;
    pause_.start();
    Q_EMIT started();
}

void RowMaker::startJob() {
    job_.start([request = request_](const std::stop_token& stop) { return makeRow(request, stop); },
               [this](RowResult result) {
                   result_ = std::move(result);
                   isCurrent_ = true;
                   Q_EMIT finished(result_);
               });
    lookJob_.cancel();
    for (const tenter::start::Look& look : tenter::start::looks()) {
        RowRequest request = request_;
        request.row.look = look.name;
        request.size = lookSize_;
        request.width = request.row.columns == 1 ? 480 : lookWidth;
        lookJob_.add([request](const std::stop_token& stop) { return makeRow(request, stop).image; },
                     [this, name = QString::fromStdString(look.name)](const QImage& image) {
                         Q_EMIT lookPainted(name, image);
                     });
    }
}

const RowResult& RowMaker::result() {
    if (!isCurrent_) {
        pause_.stop();
        job_.cancel();
        result_ = makeRow(request_);
        isCurrent_ = true;
    }
    return result_;
}

}  // namespace tenter::desktop::new_row
