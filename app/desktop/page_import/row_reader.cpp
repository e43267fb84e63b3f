#include "page_import/row_reader.h"

#include <utility>

namespace tenter::desktop::page_import {

namespace {

constexpr int typingPause = 200;  // ms without typing before the page is read

}  // namespace

RowReader::RowReader(Document& document, QObject* parent) : QObject(parent), document_(document) {
    typingTimer_.setSingleShot(true);
    typingTimer_.setInterval(typingPause);
    connect(&typingTimer_, &QTimer::timeout, this, &RowReader::readAgain);
}

void RowReader::setPage(const QByteArray& bytes, const std::filesystem::path& file, bool atOnce) {
    if (bytes_.isEmpty() || file != file_) {
        result_.choices.clear();
        theme_.reset();
    }
    bytes_ = bytes;
    file_ = file;
    if (bytes_.isEmpty() || atOnce)
        readAgain();
    else
        typingTimer_.start();
    if (isReading()) Q_EMIT started();
}

void RowReader::setTheme(const std::string& css) {
    theme_ = css;
    typingTimer_.start();
    Q_EMIT started();
}

void RowReader::setRootSize(double px) {
    if (px == rootSize_) return;
    rootSize_ = px;
    readAgain();
}

void RowReader::guessAgain() {
    result_.choices.clear();
    theme_.reset();
    readAgain();
}

void RowReader::setIntoNew(bool on) {
    if (on == intoNew_) return;
    intoNew_ = on;
    readAgain();
}

std::filesystem::path RowReader::folderOfNew() const {
    return file_.empty() ? std::filesystem::path() : std::filesystem::absolute(file_).parent_path();
}

void RowReader::readAgain() {
    start(std::monostate());
}

void RowReader::setMeasuring(const std::optional<compare::Browser>& browser) {
    browser_ = browser;
    measured_ = {};
    readAgain();
}

void RowReader::measure() {
    run_ = std::make_unique<compare::PageRun>(*browser_, QByteArray::fromStdString(result_.toMeasure));
    // Queued, because the run must not be deleted while it emits a signal. A late answer is dropped.
    connect(
        run_.get(), &compare::PageRun::posted, this,
        [this, serial = serial_](const QByteArray& text) {
            if (serial != serial_) return;
            measured_ = {std::move(result_.toMeasure), text.toStdString()};
            readAgain();
        },
        Qt::QueuedConnection);
    connect(
        run_.get(), &compare::PageRun::failed, this,
        [this, serial = serial_](const QString& why) {
            if (serial != serial_) return;
            run_.reset();
            Q_EMIT measuringFailed(why);
            Q_EMIT finished();
        },
        Qt::QueuedConnection);
    run_->start();
    Q_EMIT started();
}

void RowReader::start(decltype(ImportRequest::change) change) {
    typingTimer_.stop();
    run_.reset();
    ++serial_;
    job_.cancel();
    if (bytes_.isEmpty()) {
        onResult({});
        return;
    }
    const std::filesystem::path folder = intoNew_ ? folderOfNew() : document_.folder();
    ImportRequest request{intoNew_ ? nullptr : std::make_shared<project::Project>(document_.project()),
                          bytes_,
                          file_,
                          folder.empty() ? std::filesystem::path(".") : folder,
                          result_.choices,
                          theme_,
                          rootSize_,
                          browser_.has_value(),
                          measured_,
                          std::move(change)};
    reading_ = true;
    Q_EMIT started();
    if (bytes_.size() <= largePage) {
        onResult(readRow(request));
        return;
    }
    job_.start([request = std::move(request)](const std::stop_token&) { return readRow(request); },
               [this](ImportResult result) { onResult(std::move(result)); });
}

void RowReader::onResult(ImportResult result) {
    reading_ = false;
    result_ = std::move(result);
    if (browser_ && !result_.toMeasure.empty()) measure();
    Q_EMIT finished();
}

}  // namespace tenter::desktop::page_import
