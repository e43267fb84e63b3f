// The sweep and the findings of the row in view, over all widths, kept up to date with every edit.
#pragma once

#include <QObject>
#include <QTimer>
#include <memory>
#include <optional>
#include <vector>

#include "checks/checks.h"
#include "document/background_fonts.h"
#include "document/background_job.h"
#include "document/viewing.h"
#include "sweep/sweep.h"

namespace tenter::desktop {

/// Follows the row in view. A row of few parts is swept on demand and checked when the event loop is idle, so
/// findings are at most one frame behind a drag. A row of many parts is swept and checked on a background
/// thread when it has not changed for a moment.
class Survey : public QObject {
    Q_OBJECT

public:
    explicit Survey(Viewing& viewing, QObject* parent = nullptr);

    /// The sweep of the row in view under the current break profile. For a row of many parts: the sweep of
    /// its last state that a background job has finished.
    [[nodiscard]] const sweep::Sweep& sweep() const;
    /// The findings under every break profile, in the order of `checks::check`.
    [[nodiscard]] const std::vector<checks::Finding>& findings() const { return findings_; }
    /// False while `findings()` belong to an earlier state of the row.
    [[nodiscard]] bool isFresh() const { return fresh_; }
    /// True while `findings()` stay out of date for longer than a frame, so that views should show it.
    [[nodiscard]] bool isStale() const { return !fresh_ && !viewing_.hasFewParts(); }

    /// The project in view, the one of `findings()` while they are fresh.
    [[nodiscard]] const project::Project& project() const { return viewing_.shown(); }

    /// The visits by which findings are weighted, for every project; empty: findings are weighted by widths.
    [[nodiscard]] const checks::Audience& audience() const { return audience_; }
    void setAudience(checks::Audience audience);

    /// The chosen finding as an index into `findings()`; empty if none is chosen.
    [[nodiscard]] std::optional<std::size_t> chosen() const;
    /// Chooses a finding: selects its part and goes to the width at which it is worst. If it exists under one
    /// break profile only, that profile becomes the current one.
    void choose(std::size_t index);

Q_SIGNALS:
    void swept();            ///< `sweep()` has changed
    void changed();          ///< `findings()` or `isFresh()` has changed
    void audienceChanged();  ///< the audience has changed; `changed` follows
    void chosenChanged();    ///< another finding is chosen, or none
    void findingShown();     ///< a finding was chosen, and its part and width are now in view

private:
    struct Result {
        sweep::Sweep sweep;
        std::vector<checks::Finding> findings;
    };
    void onRow();
    void onSelection();
    void check();
    void startJob();
    void setFindings(std::vector<checks::Finding> findings);
    [[nodiscard]] checks::Options options() const;

    Viewing& viewing_;
    QTimer checkTimer_, idleTimer_;
    std::shared_ptr<BackgroundFonts> fonts_ = std::make_shared<BackgroundFonts>();
    BackgroundJob job_;
    mutable sweep::Sweep sweep_;
    mutable bool sweepIsFresh_ = false;
    std::vector<checks::Finding> findings_;
    bool fresh_ = false;
    checks::Audience audience_;
    std::optional<checks::Finding> chosen_;
};

}  // namespace tenter::desktop
