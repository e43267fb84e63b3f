// Runs the sweep and the checks of the current row over all widths, after every edit.
#pragma once

#include <QObject>
#include <QTimer>
#include <memory>
#include <optional>
#include <vector>

#include "checks/checks.h"
#include "document/background_fonts.h"
#include "document/background_job.h"
#include "session/layout_cache.h"
#include "session/selection_model.h"
#include "sweep/sweep.h"

namespace tenter::desktop {

/// Checks run on a background thread. Those of a row of few parts start with the change and are waited for
/// when the event loop is idle, so that they run while the window paints and findings are at most one frame
/// behind a drag; its sweep is computed when it is read. A row of many parts is swept and checked when it has
/// not changed for a moment.
class CheckRunner : public QObject {
    Q_OBJECT

public:
    enum class Change {
        Sweep = 1,     ///< `sweep()`
        Findings = 2,  ///< `findings()` or `isFresh()`
        Chosen = 4,    ///< `chosen()`
        Audience = 8   ///< `audience()`
    };
    Q_DECLARE_FLAGS(Changes, Change)
    friend constexpr Changes operator|(Change one, Change other) { return Changes(one) | other; }

    CheckRunner(Document& document, const ShownProject& shown, ViewState& view, SelectionModel& selection,
                const LayoutCache& layouts, QObject* parent = nullptr);

    /// The sweep of the current row under the current break profile. For a row of many parts: the sweep of
    /// its last state that a background job has finished.
    [[nodiscard]] const sweep::Sweep& sweep() const;
    /// The findings of the current variant under every break profile, in the order of `checks::check`.
    [[nodiscard]] const std::vector<checks::Finding>& findings() const;
    /// False while `findings()` belong to an earlier state of the row.
    [[nodiscard]] bool isFresh() const { return checked_ == key(); }
    /// True while `findings()` stay out of date for longer than a frame, so that views should show it.
    [[nodiscard]] bool isStale() const { return !isFresh() && !shown_.hasFewParts(); }

    /// The project that is shown, the one of `findings()` while they are fresh.
    [[nodiscard]] const project::Project& project() const { return shown_.project(); }

    /// The visits by which findings are weighted, for every project; empty: findings are weighted by widths.
    [[nodiscard]] const checks::Audience& audience() const { return audience_; }
    void setAudience(checks::Audience audience);

    /// The chosen finding as an index into `findings()`; empty if none is chosen. Selecting something else
    /// ends the choice.
    [[nodiscard]] std::optional<std::size_t> chosen() const;
    /// Chooses a finding: goes to the width at which it is worst and selects its part; views scroll to it. If
    /// it exists under one break profile only, that profile becomes the current one.
    void choose(std::size_t index);

Q_SIGNALS:
    void changed(tenter::desktop::CheckRunner::Changes changes);

private:
    struct Result {
        sweep::Sweep sweep;
        std::vector<checks::Finding> findings;
    };
    /// What findings depend on.
    struct Key {
        RowKey row;
        int audience = 0;  ///< another number for each audience
        friend bool operator==(const Key&, const Key&) = default;
    };
    struct Choice {
        checks::Finding finding;
        std::optional<Place> place;  ///< what was selected with it
    };
    [[nodiscard]] Key key() const { return {layouts_.key(), audienceNumber_}; }
    void restart(Changes changes);
    void onRow(LayoutCache::Changes changes);
    void onSelection();
    void startChecks();
    void finishChecks();
    void startJob();
    void setFindings(std::vector<checks::Finding> findings, const Key& key, Changes changes);
    /// Drops what belongs to another variant or another project.
    void follow() const;
    [[nodiscard]] checks::Options options() const;

    Document& document_;
    const ShownProject& shown_;
    ViewState& view_;
    SelectionModel& selection_;
    const LayoutCache& layouts_;
    QTimer checkTimer_, idleTimer_;
    std::shared_ptr<BackgroundFonts> fonts_ = std::make_shared<BackgroundFonts>();
    BackgroundJob job_;
    mutable sweep::Sweep sweep_;
    mutable RowKey swept_;
    mutable std::vector<checks::Finding> findings_;
    mutable std::optional<Choice> choice_;
    mutable RowKey held_;  // of the variant that the sweep, the findings and the choice belong to
    std::optional<Key> checked_;
    bool announcedFresh_ = false;
    checks::Audience audience_;
    int audienceNumber_ = 0;
};

}  // namespace tenter::desktop
