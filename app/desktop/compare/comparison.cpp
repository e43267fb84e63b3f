#include "compare/comparison.h"

#include <utility>

#include "compare/browser_run.h"
#include "compare/width_order.h"
#include "document/handover.h"
#include "document/wording.h"

namespace tenter::desktop::compare {

/// What the background job works with: fonts and paragraphs of its own, since those of the document belong to
/// the window's thread.
struct Comparison::Bench {
    std::shared_ptr<const project::Project> project;
    std::size_t variant = 0;
    std::filesystem::path folder;
    const text::BreakProfile* profile = nullptr;
    QString savedPage;
    text::Fonts fonts;
    text::ParagraphStore store{fonts};
    std::optional<layout::PreparedRow> row;
    layout::Layout layout;

    /// Empty if there is none; `problems` then says why.
    QByteArray page(project::Problems& problems) {
        fonts.use(project->fonts, folder);
        row.emplace(*project, variant, store, *profile);
        const std::string html =
            savedPage.isEmpty()
                ? pageOf(*project, variant, folder, store, problems)
                : dressedPageOf(*project, variant, folder, savedPage.toStdString(), store, problems);
        return QByteArray::fromStdString(html);
    }

    /// Empty with a reason if the readings are none, or not of `widths`.
    std::vector<judge::Verdict> judged(const std::vector<double>& widths, const QByteArray& json,
                                       QString& wrong) {
        std::string amiss;
        auto readings = judge::readings({json.constData(), static_cast<std::size_t>(json.size())}, amiss);
        if (!readings || readings->size() != widths.size()) {
            wrong = "what it read cannot be understood: " +
                    (readings ? "the number of widths is wrong" : QString::fromStdString(amiss));
            return {};
        }
        std::vector<judge::Verdict> verdicts;
        for (std::size_t i = 0; i < widths.size(); ++i) {
            judge::Reading& read = (*readings)[i];
            if (read.width != widths[i]) {
                wrong =
                    "it laid the page out " + pixels(read.width) + " wide instead of " + pixels(widths[i]);
                return {};
            }
            layout::layOut(*row, read.width, layout);
            if (!savedPage.isEmpty()) read.putRowAt(layout.row.y);
            verdicts.push_back(judge::judge(*row, layout, read));
        }
        return verdicts;
    }
};

Comparison::Comparison(Viewing& viewing, QObject* parent) : QObject(parent), viewing_(viewing) {
    pool_.setMaxThreadCount(1);
    connect(&viewing_, &Viewing::rowChanged, this, [this] {
        const bool fresh = compared_ && variant_ == viewing_.variant() && *compared_ == viewing_.shown();
        if (fresh != std::exchange(fresh_, fresh)) emit changed();
    });
}

Comparison::~Comparison() {
    pool_.clear();
    pool_.waitForDone();
}

void Comparison::start(const Browser& browser, std::vector<double> widths, const QString& savedPage) {
    stop();
    compared_ = std::make_shared<const project::Project>(viewing_.shown());
    variant_ = viewing_.variant();
    fresh_ = true;
    browser_ = browser;
    if (widths.empty()) {
        std::vector<double> breakpoints;
        for (const project::Band& band : compared_->variants[variant_].bands)
            if (band.upTo) breakpoints.push_back(*band.upTo);
        widths = widthOrder(compared_->leastWidth, compared_->mostWidth, breakpoints);
    }
    widths_ = std::move(widths);
    total_ = widths_.size();
    verdicts_.clear();
    summary_ = {};
    runs_.clear();
    running_ = true;
    readAll_ = false;
    bench_ = std::make_shared<Bench>();
    bench_->project = compared_;
    bench_->variant = variant_;
    bench_->folder = viewing_.document().folder();
    bench_->profile = &browser_.profile();
    bench_->savedPage = savedPage;
    pool_.start([this, job = job_, bench = bench_] {
        project::Problems problems;
        const QByteArray html = bench->page(problems);
        const QString why =
            problems.empty() ? QString()
                             : QString::fromStdString(problems.front().what + "; " + problems.front().mend);
        QMetaObject::invokeMethod(
            this,
            [this, job, html, why] {
                if (job != job_) return;
                if (html.isEmpty())
                    fail("There is no page to compare: " + why + '.');
                else
                    run(html);
            },
            Qt::QueuedConnection);
    });
    emit changed();
}

void Comparison::run(const QByteArray& html) {
    browserRun_ = std::make_unique<BrowserRun>(browser_, html, widths_);
    connect(browserRun_.get(), &BrowserRun::read, this, &Comparison::judgeReadings);
    // Later: a run cannot be let go while it speaks.
    connect(
        browserRun_.get(), &BrowserRun::finished, this,
        [this, job = job_] {
            if (job != job_) return;
            readAll_ = true;
            settleIfDone();
        },
        Qt::QueuedConnection);
    connect(
        browserRun_.get(), &BrowserRun::failed, this,
        [this, job = job_](const QString& why) {
            if (job == job_) fail(why);
        },
        Qt::QueuedConnection);
    browserRun_->start();
}

void Comparison::judgeReadings(const std::vector<double>& widths, const QByteArray& json) {
    pool_.start([this, job = job_, bench = bench_, widths, json] {
        QString wrong;
        auto verdicts = bench->judged(widths, json, wrong);
        QMetaObject::invokeMethod(
            this,
            [this, job, verdicts = std::move(verdicts), wrong] {
                if (job != job_) return;
                if (wrong.isEmpty())
                    take(verdicts);
                else
                    fail(browser_.title + " opened the page, but " + wrong + '.');
            },
            Qt::QueuedConnection);
    });
}

void Comparison::take(const std::vector<judge::Verdict>& verdicts) {
    for (const judge::Verdict& verdict : verdicts) {
        summary_.add(verdict);
        verdicts_[verdict.width] = verdict;
    }
    runs_ = judge::differingRuns(verdicts_);
    emit changed();
    settleIfDone();
}

void Comparison::settleIfDone() {
    // The last readings may still be judged after the browser has gone.
    if (!running_ || !readAll_ || done() < total_) return;
    stop();
    emit changed();
    emit finished();
}

void Comparison::fail(const QString& why) {
    if (!running_) return;
    stop();
    emit changed();
    emit failed(why);
}

void Comparison::cancel() {
    if (!running_) return;
    stop();
    emit changed();
}

void Comparison::stop() {
    ++job_;
    running_ = false;
    pool_.clear();
    browserRun_.reset();
    bench_.reset();
}

const project::Project& Comparison::project() const {
    return compared_ ? *compared_ : viewing_.shown();
}

}  // namespace tenter::desktop::compare
