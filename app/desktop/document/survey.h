// What is known of the row over all widths: its sweep, and what the checks find.
#pragma once

#include <QObject>
#include <QThreadPool>
#include <QTimer>
#include <memory>
#include <optional>
#include <vector>

#include "checks/checks.h"
#include "document/viewing.h"
#include "sweep/sweep.h"

namespace tenter::desktop {

/// Follows the row in view. A row of few parts is swept as soon as it is asked for, and checked at the next
/// idle moment: findings lag a drag by a frame at most. One of many parts is swept and checked off the
/// window's thread once it has rested.
class Survey : public QObject {
    Q_OBJECT

public:
    explicit Survey(Viewing& viewing, QObject* parent = nullptr);
    ~Survey() override;

    /// Of the row in view, under the profile in view; of many parts, of the row when it last rested.
    [[nodiscard]] const sweep::Sweep& sweep() const;
    /// Under every profile, as `checks::check` orders them.
    [[nodiscard]] const std::vector<checks::Finding>& findings() const { return findings_; }
    /// False while `findings()` is of the row as it was before.
    [[nodiscard]] bool isFresh() const { return fresh_; }
    /// True while what is told is of the row as it was before, and for longer than a frame.
    [[nodiscard]] bool lags() const { return !fresh_ && !viewing_.hasFewParts(); }

    /// The visits that findings are weighed by, whatever the project; empty: by widths.
    [[nodiscard]] const checks::Audience& audience() const { return audience_; }
    void setAudience(checks::Audience audience);

    /// The finding that is being looked at, as an index into `findings()`.
    [[nodiscard]] std::optional<std::size_t> chosen() const;
    /// Selects the finding's part and goes to the width at which it is worst; under the profile it is found
    /// under, if it is one alone.
    void choose(std::size_t index);

signals:
    void swept();            ///< `sweep()` is another
    void changed();          ///< `findings()` or `isFresh()`
    void audienceChanged();  ///< findings follow
    void chosenChanged();
    void wentThere();  ///< a finding was chosen, and its width is in view

private:
    struct Job;
    struct Told {
        sweep::Sweep sweep;
        std::vector<checks::Finding> findings;
    };
    void onRow();
    void onSelection();
    void check();
    void start();
    void take(int job, const Told& told);
    void tell(std::vector<checks::Finding> findings);
    [[nodiscard]] checks::Options options() const;

    Viewing& viewing_;
    QTimer soon_, settled_;
    QThreadPool pool_;
    std::shared_ptr<Job> jobs_;  // what the worker keeps from one job to the next
    int job_ = 0;
    mutable sweep::Sweep sweep_;
    mutable bool sweptNow_ = false;
    std::vector<checks::Finding> findings_;
    bool fresh_ = false;
    checks::Audience audience_;
    std::optional<checks::Finding> chosen_;
};

}  // namespace tenter::desktop
