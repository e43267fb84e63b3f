#include "compare/comparison.h"

#include <utility>

#include "compare/browser_run.h"
#include "compare/width_order.h"
#include "document/handover.h"
#include "document/wording.h"
#include "session/changes.h"

namespace tenter::desktop::compare {

/// The data of the background jobs. Has its own fonts and paragraphs, because those of the document are not
/// thread-safe.
struct Comparison::Worker {
    std::shared_ptr<const project::Project> project;
    std::size_t variant = 0;
    std::filesystem::path folder;
    const text::BreakProfile* profile = nullptr;
    QString savedPage;
    QString browser;  ///< its title
    BackgroundFonts fonts;
    std::optional<layout::PreparedRow> row;
    layout::Layout layout;

    /// The HTML page to measure; empty, with problems, if it cannot be made.
    QByteArray page(project::Problems& problems) {
        text::ParagraphStore& store = fonts.use(*project, folder);
        row.emplace(*project, variant, store, *profile);
        const std::string html = savedPage.isEmpty()
                                     ? pageOf(*project, variant, folder, store, problems)
                                     : savedPageWithStylesheet(*project, variant, folder,
                                                               savedPage.toStdString(), store, problems);
        return QByteArray::fromStdString(html);
    }

    /// Compares the browser's layouts with Tenter's. Returns nothing if `json` is not valid or has other
    /// widths; `error` is then a sentence.
    std::vector<judge::Verdict> judgeLayouts(const std::vector<double>& widths, const QByteArray& json,
                                             QString& error) {
        std::string invalid;
        auto measured =
            judge::parseBrowserLayouts({json.constData(), static_cast<std::size_t>(json.size())}, invalid);
        if (!measured || measured->size() != widths.size()) {
            error =
                (measured ? QObject::tr(
                                "%1 sent a result that cannot be understood: the number of widths is wrong.")
                          : QObject::tr("%1 sent a result that cannot be understood: %2."))
                    .arg(browser);
            if (!measured) error = error.arg(QString::fromStdString(invalid));
            return {};
        }
        std::vector<judge::Verdict> verdicts;
        for (std::size_t i = 0; i < widths.size(); ++i) {
            judge::BrowserLayout& browserLayout = (*measured)[i];
            if (browserLayout.width != widths[i]) {
                error = QObject::tr("%1 laid out the page %2 wide instead of %3.")
                            .arg(browser, pixels(browserLayout.width), pixels(widths[i]));
                return {};
            }
            layout::layOutDrawn(*row, browserLayout.width, layout);
            if (!savedPage.isEmpty()) browserLayout.moveRowTo(layout.row.y);
            verdicts.push_back(judge::judge(*row, layout, browserLayout));
        }
        return verdicts;
    }
};

Comparison::Comparison(const LayoutCache& layouts, const Document& document, QObject* parent)
    : QObject(parent), layouts_(layouts), document_(document) {
    onChange(layouts_, LayoutCache::Change::Row, this, [this] {
        if (std::exchange(announcedFresh_, isFresh()) != isFresh()) Q_EMIT changed();
    });
}

bool Comparison::isFresh() const {
    // Whole projects are compared once after each change.
    if (std::exchange(judged_, layouts_.key()) != layouts_.key())
        fresh_ = compared_ && variant_ == layouts_.variant() && *compared_ == layouts_.project();
    return fresh_;
}

Comparison::~Comparison() = default;

void Comparison::start(const Browser& browser, std::vector<double> widths, const QString& savedPage) {
    stop();
    compared_ = std::make_shared<const project::Project>(layouts_.project());
    variant_ = layouts_.variant();
    judged_ = layouts_.key();
    fresh_ = announcedFresh_ = true;
    browser_ = browser;
    if (widths.empty()) {
        std::vector<double> breakpoints;
        for (const project::Band& band : compared_->row().variants[variant_].bands)
            if (band.upTo) breakpoints.push_back(*band.upTo);
        widths = widthOrder(compared_->leastWidth, compared_->mostWidth, breakpoints);
    }
    widths_ = std::move(widths);
    total_ = widths_.size();
    verdicts_.clear();
    summary_ = {};
    runs_.clear();
    running_ = true;
    browserFinished_ = false;
    worker_ = std::make_shared<Worker>();
    worker_->project = compared_;
    worker_->variant = variant_;
    worker_->folder = document_.folder();
    worker_->profile = &browser_.profile();
    worker_->savedPage = savedPage;
    worker_->browser = browser_.title;
    struct Page {
        QByteArray html;
        QString problem;
    };
    job_.start(
        [worker = worker_](const std::stop_token&) {
            project::Problems problems;
            Page page{worker->page(problems), {}};
            if (!problems.empty()) page.problem = QString::fromStdString(problems.front().sentence());
            return page;
        },
        [this](const Page& page) {
            if (page.html.isEmpty())
                fail(QObject::tr("The page for the comparison could not be written.") + ' ' + page.problem);
            else
                run(page.html);
        });
    Q_EMIT changed();
}

void Comparison::run(const QByteArray& html) {
    browserRun_ = std::make_unique<BrowserRun>(browser_, html, widths_);
    connect(browserRun_.get(), &BrowserRun::measured, this, &Comparison::judgeMeasured);
    // Queued, because the run must not be deleted while it emits a signal.
    connect(
        browserRun_.get(), &BrowserRun::finished, this,
        [this, serial = serial_] {
            if (serial != serial_) return;
            browserFinished_ = true;
            finishIfDone();
        },
        Qt::QueuedConnection);
    connect(
        browserRun_.get(), &BrowserRun::failed, this,
        [this, serial = serial_](const QString& why) {
            if (serial == serial_) fail(why);
        },
        Qt::QueuedConnection);
    browserRun_->start();
}

void Comparison::judgeMeasured(const std::vector<double>& widths, const QByteArray& json) {
    struct Judged {
        std::vector<judge::Verdict> verdicts;
        QString error;
    };
    job_.add(
        [worker = worker_, widths, json](const std::stop_token&) {
            Judged judged;
            judged.verdicts = worker->judgeLayouts(widths, json, judged.error);
            return judged;
        },
        [this](const Judged& judged) {
            if (judged.error.isEmpty())
                addVerdicts(judged.verdicts);
            else
                fail(judged.error);
        });
}

void Comparison::addVerdicts(const std::vector<judge::Verdict>& verdicts) {
    for (const judge::Verdict& verdict : verdicts) {
        summary_.add(verdict);
        verdicts_[verdict.width] = verdict;
    }
    runs_ = judge::differingRuns(verdicts_);
    Q_EMIT changed();
    finishIfDone();
}

void Comparison::finishIfDone() {
    // The last results may arrive after the browser has closed.
    if (!running_ || !browserFinished_ || done() < total_) return;
    stop();
    Q_EMIT changed();
    Q_EMIT finished();
}

void Comparison::fail(const QString& why) {
    if (!running_) return;
    stop();
    Q_EMIT changed();
    Q_EMIT failed(why);
}

void Comparison::cancel() {
    if (!running_) return;
    stop();
    Q_EMIT changed();
}

void Comparison::stop() {
    ++serial_;
    running_ = false;
    job_.cancel();
    browserRun_.reset();
    worker_.reset();
}

const project::Project& Comparison::project() const {
    return compared_ ? *compared_ : layouts_.project();
}

}  // namespace tenter::desktop::compare
