#include "given/row_reader.h"

#include <utility>

namespace tenter::desktop::given {

namespace {

// So long may a letter follow another before anything is read.
constexpr int settleTyping = 200;  // ms

}  // namespace

RowReader::RowReader(Document& document, QObject* parent) : QObject(parent), document_(document) {
    pool_.setMaxThreadCount(1);
    settled_.setSingleShot(true);
    settled_.setInterval(settleTyping);
    connect(&settled_, &QTimer::timeout, this, &RowReader::readAgain);
}

RowReader::~RowReader() {
    pool_.clear();
    pool_.waitForDone();
}

void RowReader::setPage(const QByteArray& bytes, const std::filesystem::path& file, bool atOnce) {
    if (bytes_.isEmpty() || file != file_) {
        last_.choices.clear();
        theme_.reset();
    }
    bytes_ = bytes;
    file_ = file;
    if (bytes_.isEmpty() || atOnce)
        readAgain();
    else
        settled_.start();
    if (isReading()) emit started();
}

void RowReader::sayTheme(const std::string& css) {
    theme_ = css;
    settled_.start();
    emit started();
}

void RowReader::guessAnew() {
    last_.choices.clear();
    theme_.reset();
    readAgain();
}

void RowReader::readAgain() {
    start(std::monostate());
}

void RowReader::start(decltype(RowRequest::change) change) {
    settled_.stop();
    const quint64 job = ++job_;
    pool_.clear();
    if (bytes_.isEmpty()) {
        take({});
        return;
    }
    RowRequest request{std::make_shared<project::Project>(document_.project()),
                       bytes_,
                       file_,
                       document_.folder().empty() ? std::filesystem::path(".") : document_.folder(),
                       last_.choices,
                       theme_,
                       std::move(change)};
    reading_ = true;
    emit started();
    if (bytes_.size() <= largePage) {
        take(readRow(request));
        return;
    }
    pool_.start([this, job, request = std::move(request)] {
        auto reading = std::make_shared<RowReading>(readRow(request));
        QMetaObject::invokeMethod(
            this,
            [this, job, reading] {
                if (job == job_) take(std::move(*reading));
            },
            Qt::QueuedConnection);
    });
}

void RowReader::take(RowReading reading) {
    reading_ = false;
    last_ = std::move(reading);
    emit finished();
}

}  // namespace tenter::desktop::given
