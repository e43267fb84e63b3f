#include "document/survey.h"

#include <algorithm>
#include <utility>

namespace tenter::desktop {

namespace {

// While a value is dragged the row changes at every frame, so a large row is checked only after this pause.
constexpr int checkDelay = 120;  // ms

/// True if both findings have the same cause, even if their widths differ.
bool isSame(const checks::Finding& one, const checks::Finding& other) {
    return one.check == other.check && one.severity == other.severity && one.place == other.place;
}

Viewing::Selection placeOf(const checks::Finding& finding) {
    if (!finding.place) return {};
    return {static_cast<int>(finding.place->card), static_cast<int>(finding.place->part)};
}

}  // namespace

Survey::Survey(Viewing& viewing, QObject* parent) : QObject(parent), viewing_(viewing) {
    checkTimer_.setSingleShot(true);
    checkTimer_.setInterval(0);
    idleTimer_.setSingleShot(true);
    idleTimer_.setInterval(checkDelay);
    connect(&checkTimer_, &QTimer::timeout, this, &Survey::check);
    connect(&idleTimer_, &QTimer::timeout, this, &Survey::startJob);
    connect(&viewing_, &Viewing::rowChanged, this, &Survey::onRow);
    connect(&viewing_, &Viewing::selectionChanged, this, &Survey::onSelection);
    // Findings of another project or variant are never shown for this one.
    const auto forget = [this] {
        sweep_ = {};
        findings_.clear();
        chosen_.reset();
        fresh_ = false;
        Q_EMIT changed();
        Q_EMIT chosenChanged();
    };
    connect(&viewing_, &Viewing::variantChanged, this, forget);
}

checks::Options Survey::options() const {
    checks::Options options;
    options.audience = audience_;
    if (viewing_.trial()) options.untried = std::make_shared<project::Project>(viewing_.untried());
    return options;
}

void Survey::onRow() {
    job_.cancel();
    checkTimer_.stop();
    idleTimer_.stop();
    sweepIsFresh_ = false;
    const bool few = viewing_.hasFewParts();
    if (few)
        checkTimer_.start();
    else
        idleTimer_.start();
    if (std::exchange(fresh_, false) && !few) Q_EMIT changed();
    Q_EMIT swept();
}

const sweep::Sweep& Survey::sweep() const {
    if (!sweepIsFresh_ && viewing_.hasFewParts()) {
        const project::Project& project = viewing_.shown();
        sweep_ = sweep::sweep(viewing_.row(), project.leastWidth, project.mostWidth);
        sweepIsFresh_ = true;
    }
    return sweep_;
}

void Survey::check() {
    if (viewing_.shown().row().cards.empty()) return setFindings({});
    setFindings(checks::check(viewing_.shown(), viewing_.variant(), viewing_.document().store(), options()));
}

void Survey::startJob() {
    job_.start(
        [fonts = fonts_, row = viewing_.rowUnder(viewing_.profile()), project = viewing_.shown(),
         variant = viewing_.variant(), folder = viewing_.document().folder(),
         options = options()](const std::stop_token&) {
            return Result{sweep::sweep(*row, project.leastWidth, project.mostWidth),
                          checks::check(project, variant, fonts->use(project, folder), options)};
        },
        [this](Result result) {
            sweep_ = std::move(result.sweep);
            sweepIsFresh_ = true;
            Q_EMIT swept();
            setFindings(std::move(result.findings));
        });
}

void Survey::setFindings(std::vector<checks::Finding> findings) {
    findings_ = std::move(findings);
    fresh_ = true;
    const bool had = chosen_.has_value();
    if (const auto at = chosen())
        chosen_ = findings_[*at];
    else
        chosen_.reset();
    Q_EMIT changed();
    if (had) Q_EMIT chosenChanged();
}

void Survey::setAudience(checks::Audience audience) {
    audience_ = std::move(audience);
    Q_EMIT audienceChanged();
    onRow();
}

std::optional<std::size_t> Survey::chosen() const {
    if (!chosen_) return std::nullopt;
    const auto same = [this](const checks::Finding& one) { return isSame(one, *chosen_); };
    const auto exact = std::ranges::find_if(
        findings_, [&](const checks::Finding& one) { return same(one) && one.says == chosen_->says; });
    const auto found = exact != findings_.end() ? exact : std::ranges::find_if(findings_, same);
    if (found == findings_.end()) return std::nullopt;
    return static_cast<std::size_t>(found - findings_.begin());
}

void Survey::choose(std::size_t index) {
    if (index >= findings_.size()) return;
    chosen_ = findings_[index];
    const checks::Finding finding = *chosen_;
    const checks::Profiles& holds = finding.profiles;
    if (!holds.empty() && std::ranges::find(holds, &viewing_.profile()) == holds.end())
        viewing_.setProfile(*holds.front());
    viewing_.select(placeOf(finding));
    viewing_.setWidth(finding.at);
    Q_EMIT chosenChanged();
    Q_EMIT findingShown();
}

void Survey::onSelection() {
    if (!chosen_ || viewing_.selection() == placeOf(*chosen_)) return;
    chosen_.reset();
    Q_EMIT chosenChanged();
}

}  // namespace tenter::desktop
