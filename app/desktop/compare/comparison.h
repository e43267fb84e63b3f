// The row in view against what a browser lays out, over all widths, off the window's thread.
#pragma once

#include <QObject>
#include <QThreadPool>
#include <memory>
#include <optional>
#include <vector>

#include "compare/browser.h"
#include "document/viewing.h"
#include "judge/runs.h"

namespace tenter::desktop::compare {

class BrowserRun;

class Comparison : public QObject {
    Q_OBJECT

public:
    explicit Comparison(Viewing& viewing, QObject* parent = nullptr);
    ~Comparison() override;

    /// Compares the variant in view, as it now is, at `widths` (CSS px, whole) in that order; at every whole
    /// width if none are named. With `savedPage`, a file, the row is looked at where that page has it. What
    /// was compared before is forgotten.
    void start(const Browser& browser, std::vector<double> widths = {}, const QString& savedPage = {});
    /// Ends it; what has been compared is kept.
    void cancel();

    [[nodiscard]] bool isRunning() const { return running_; }
    /// Widths compared so far, and to compare in all.
    [[nodiscard]] std::size_t done() const { return verdicts_.size(); }
    [[nodiscard]] std::size_t total() const { return total_; }
    /// Empty until the first comparison.
    [[nodiscard]] const judge::Verdicts& verdicts() const { return verdicts_; }
    [[nodiscard]] const judge::Summary& summary() const { return summary_; }
    [[nodiscard]] const std::vector<judge::DifferingRun>& runs() const { return runs_; }
    /// Of which browser they are; empty before the first comparison.
    [[nodiscard]] QString browserTitle() const { return browser_.title; }
    /// False once the row in view is another than was compared.
    [[nodiscard]] bool isFresh() const { return fresh_; }
    /// What was compared, with its variant's index.
    [[nodiscard]] const project::Project& project() const;
    [[nodiscard]] std::size_t variant() const { return variant_; }

signals:
    void changed();   ///< progress, verdicts, or whether they are fresh
    void finished();  ///< at all widths
    void failed(const QString& why);

private:
    struct Bench;
    void run(const QByteArray& html);
    void judgeReadings(const std::vector<double>& widths, const QByteArray& json);
    void take(const std::vector<judge::Verdict>& verdicts);
    void settleIfDone();
    void fail(const QString& why);
    void stop();

    Viewing& viewing_;
    QThreadPool pool_;
    int job_ = 0;
    bool running_ = false;
    bool readAll_ = false;
    bool fresh_ = false;
    Browser browser_;
    std::vector<double> widths_;
    std::size_t total_ = 0;
    std::shared_ptr<Bench> bench_;  // the background job's own; nothing here touches what is in it
    std::shared_ptr<const project::Project> compared_;
    std::size_t variant_ = 0;
    std::unique_ptr<BrowserRun> browserRun_;
    judge::Verdicts verdicts_;
    judge::Summary summary_;
    std::vector<judge::DifferingRun> runs_;
};

}  // namespace tenter::desktop::compare
