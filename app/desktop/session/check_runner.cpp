#include "session/check_runner.h"

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

}  // namespace

CheckRunner::CheckRunner(Document& document, const ShownProject& shown, ViewState& view,
                         SelectionModel& selection, const LayoutCache& layouts, QObject* parent)
    : QObject(parent),
      document_(document),
      shown_(shown),
      view_(view),
      selection_(selection),
      layouts_(layouts) {
    checkTimer_.setSingleShot(true);
    checkTimer_.setInterval(0);
    idleTimer_.setSingleShot(true);
    idleTimer_.setInterval(checkDelay);
    connect(&checkTimer_, &QTimer::timeout, this, &CheckRunner::finishChecks);
    connect(&idleTimer_, &QTimer::timeout, this, &CheckRunner::startJob);
    connect(&layouts_, &LayoutCache::changed, this, &CheckRunner::onRow);
    connect(&selection_, &SelectionModel::changed, this, &CheckRunner::onSelection);
}

checks::Options CheckRunner::options() const {
    checks::Options options;
    options.audience = audience_;
    if (shown_.trial()) options.untried = std::make_shared<project::Project>(shown_.untried());
    return options;
}

void CheckRunner::follow() const {
    const RowKey now = layouts_.key();
    if (now.hasSameVariant(held_)) return;
    held_ = now;
    sweep_ = {};
    swept_ = {};
    findings_.clear();
    choice_.reset();
}

// ---- Runs

void CheckRunner::onRow(LayoutCache::Changes changes) {
    if (!(changes & LayoutCache::Change::Row)) return;
    restart(changes & LayoutCache::Change::Variant ? Change::Findings | Change::Chosen : Changes());
}

void CheckRunner::restart(Changes changes) {
    job_.cancel();
    checkTimer_.stop();
    idleTimer_.stop();
    const bool few = shown_.hasFewParts();
    if (few) startChecks();
    (few ? checkTimer_ : idleTimer_).start();
    if (std::exchange(announcedFresh_, false) && !few) changes |= Change::Findings;
    Q_EMIT changed(changes | Change::Sweep);
}

void CheckRunner::startChecks() {
    job_.start(
        [fonts = fonts_, project = shown_.project(), variant = view_.variant(), folder = document_.folder(),
         options = options()](const std::stop_token&) {
            return project.row().cards.empty()
                       ? std::vector<checks::Finding>()
                       : checks::check(project, variant, fonts->use(project, folder), options);
        },
        [this, now = key()](std::vector<checks::Finding> findings) {
            setFindings(std::move(findings), now, {});
        });
}

void CheckRunner::finishChecks() {
    constexpr int longest = 2000;  // ms; a result that takes longer is delivered when it is ready
    job_.waitFor(longest);
}

void CheckRunner::startJob() {
    job_.start(
        [fonts = fonts_, row = layouts_.sharedRow(view_.profile()), project = shown_.project(),
         variant = view_.variant(), folder = document_.folder(),
         options = options()](const std::stop_token&) {
            return Result{sweep::sweep(*row, project.leastWidth, project.mostWidth),
                          checks::check(project, variant, fonts->use(project, folder), options)};
        },
        [this, now = key()](Result result) {
            follow();
            sweep_ = std::move(result.sweep);
            swept_ = now.row;
            setFindings(std::move(result.findings), now, Change::Sweep);
        });
}

void CheckRunner::setFindings(std::vector<checks::Finding> findings, const Key& key, Changes changes) {
    follow();
    findings_ = std::move(findings);
    checked_ = key;
    announcedFresh_ = true;
    if (choice_) changes |= Change::Chosen;
    if (const auto at = chosen())
        choice_->finding = findings_[*at];
    else
        choice_.reset();
    Q_EMIT changed(changes | Change::Findings);
}

void CheckRunner::setAudience(checks::Audience audience) {
    audience_ = std::move(audience);
    ++audienceNumber_;
    restart(Change::Audience);
}

// ---- Results

const sweep::Sweep& CheckRunner::sweep() const {
    follow();
    if (swept_ != layouts_.key() && shown_.hasFewParts()) {
        const project::Project& project = shown_.project();
        sweep_ = sweep::sweep(layouts_.row(), project.leastWidth, project.mostWidth);
        swept_ = layouts_.key();
    }
    return sweep_;
}

const std::vector<checks::Finding>& CheckRunner::findings() const {
    follow();
    return findings_;
}

std::optional<std::size_t> CheckRunner::chosen() const {
    follow();
    if (!choice_ || choice_->place != selection_.place()) return std::nullopt;
    const checks::Finding& choice = choice_->finding;
    const auto same = [&](const checks::Finding& one) { return isSame(one, choice); };
    const auto exact = std::ranges::find_if(
        findings_, [&](const checks::Finding& one) { return same(one) && one.says == choice.says; });
    const auto found = exact != findings_.end() ? exact : std::ranges::find_if(findings_, same);
    if (found == findings_.end()) return std::nullopt;
    return static_cast<std::size_t>(found - findings_.begin());
}

void CheckRunner::choose(std::size_t index) {
    if (index >= findings().size()) return;
    const checks::Finding finding = findings_[index];
    const checks::Profiles& holds = finding.profiles;
    if (!holds.empty() && std::ranges::find(holds, &view_.profile()) == holds.end())
        view_.setProfile(*holds.front());
    view_.setWidth(finding.at);
    const auto place = finding.place ? std::optional(Place::of(*finding.place)) : std::nullopt;
    choice_ = {finding, place};
    selection_.select(place, true);
    // While a text test adds or removes parts, nothing can be selected.
    choice_ = {finding, selection_.place()};
    Q_EMIT changed(Change::Chosen);
}

void CheckRunner::onSelection() {
    if (!choice_ || selection_.place() == choice_->place) return;
    choice_.reset();
    Q_EMIT changed(Change::Chosen);
}

}  // namespace tenter::desktop
