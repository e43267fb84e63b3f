// Compares the layout of the row in view with that of a browser, over all widths, in the background.
#pragma once

#include <QObject>
#include <memory>
#include <optional>
#include <vector>

#include "compare/browser.h"
#include "document/background_fonts.h"
#include "document/background_job.h"
#include "judge/runs.h"
#include "session/layout_cache.h"

namespace tenter::desktop::compare {

class BrowserRun;

class Comparison : public QObject {
    Q_OBJECT

public:
    Comparison(const LayoutCache& layouts, const Document& document, QObject* parent = nullptr);
    ~Comparison() override;

    /// Compares the current state of the variant in view at `widths` (whole CSS px), in this order; at every
    /// whole width if `widths` is empty. With `savedPage`, a file, the row is measured inside that page.
    /// Discards earlier results.
    void start(const Browser& browser, std::vector<double> widths = {}, const QString& savedPage = {});
    /// Stops the comparison and keeps the results so far.
    void cancel();

    [[nodiscard]] bool isRunning() const { return running_; }
    /// The number of widths compared so far, and the number of all widths to compare.
    [[nodiscard]] std::size_t done() const { return verdicts_.size(); }
    [[nodiscard]] std::size_t total() const { return total_; }
    /// Empty until the first comparison.
    [[nodiscard]] const judge::Verdicts& verdicts() const { return verdicts_; }
    [[nodiscard]] const judge::Summary& summary() const { return summary_; }
    [[nodiscard]] const std::vector<judge::DifferingRun>& runs() const { return runs_; }
    /// Name of the browser that was compared; empty before the first comparison.
    [[nodiscard]] QString browserTitle() const { return browser_.title; }
    /// False if the row in view has changed since the comparison.
    [[nodiscard]] bool isFresh() const;
    /// The project and the index of the variant that were compared.
    [[nodiscard]] const project::Project& project() const;
    [[nodiscard]] std::size_t variant() const { return variant_; }

Q_SIGNALS:
    void changed();                   ///< progress, results or `isFresh()` have changed
    void finished();                  ///< all widths are compared
    void failed(const QString& why);  ///< `why` is a message for the user

private:
    struct Worker;
    void run(const QByteArray& html);
    void judgeMeasured(const std::vector<double>& widths, const QByteArray& json);
    void addVerdicts(const std::vector<judge::Verdict>& verdicts);
    void finishIfDone();
    void fail(const QString& why);
    void stop();

    const LayoutCache& layouts_;
    const Document& document_;
    BackgroundJob job_;
    int serial_ = 0;  // of the newest comparison: a browser may still report on an earlier one
    bool running_ = false;
    bool browserFinished_ = false;
    bool announcedFresh_ = false;
    mutable RowKey judged_;  // the row that `fresh_` is about
    mutable bool fresh_ = false;
    Browser browser_;
    std::vector<double> widths_;
    std::size_t total_ = 0;
    std::shared_ptr<Worker> worker_;  // used by background jobs only
    std::shared_ptr<const project::Project> compared_;
    std::size_t variant_ = 0;
    std::unique_ptr<BrowserRun> browserRun_;
    judge::Verdicts verdicts_;
    judge::Summary summary_;
    std::vector<judge::DifferingRun> runs_;
};

}  // namespace tenter::desktop::compare
