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

/// Fonts and paragraphs of the background thread. Those of the document are not thread-safe.
struct Survey::Worker {
    text::Fonts fonts;
    text::ParagraphStore store{fonts};
    std::vector<project::FontEntry> entries;
    std::filesystem::path folder;

    void use(const std::vector<project::FontEntry>& wanted, const std::filesystem::path& in) {
        if (wanted == entries && in == folder) return;
        entries = wanted;
        folder = in;
        fonts.use(entries, folder);
        store.clear();
    }
};

Survey::Survey(Viewing& viewing, QObject* parent) : QObject(parent), viewing_(viewing) {
    pool_.setMaxThreadCount(1);
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
        emit changed();
        emit chosenChanged();
    };
    connect(&viewing_, &Viewing::variantChanged, this, forget);
}

Survey::~Survey() {
    pool_.waitForDone();
}

checks::Options Survey::options() const {
    checks::Options options;
    options.audience = audience_;
    if (viewing_.trial()) options.untried = std::make_shared<project::Project>(viewing_.untried());
    return options;
}

void Survey::onRow() {
    ++job_;
    checkTimer_.stop();
    idleTimer_.stop();
    sweepIsFresh_ = false;
    const bool few = viewing_.hasFewParts();
    if (few)
        checkTimer_.start();
    else
        idleTimer_.start();
    if (std::exchange(fresh_, false) && !few) emit changed();
    emit swept();
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
    if (viewing_.shown().cards.empty()) return setFindings({});
    setFindings(checks::check(viewing_.shown(), viewing_.variant(), viewing_.document().store(), options()));
}

void Survey::startJob() {
    ++job_;
    if (!worker_) worker_ = std::make_shared<Worker>();
    pool_.start([this, job = job_, worker = worker_, row = viewing_.rowUnder(viewing_.profile()),
                 project = viewing_.shown(), variant = viewing_.variant(),
                 folder = viewing_.document().folder(), options = options()] {
        worker->use(project.fonts, folder);
        Result result{sweep::sweep(*row, project.leastWidth, project.mostWidth),
                      checks::check(project, variant, worker->store, options)};
        QMetaObject::invokeMethod(
            this, [this, job, result = std::move(result)] { onResult(job, result); }, Qt::QueuedConnection);
    });
}

void Survey::onResult(int job, const Result& result) {
    // The row changed while this job was running: its result is out of date.
    if (job != job_) return;
    sweep_ = result.sweep;
    sweepIsFresh_ = true;
    emit swept();
    setFindings(result.findings);
}

void Survey::setFindings(std::vector<checks::Finding> findings) {
    findings_ = std::move(findings);
    fresh_ = true;
    const bool had = chosen_.has_value();
    if (const auto at = chosen())
        chosen_ = findings_[*at];
    else
        chosen_.reset();
    emit changed();
    if (had) emit chosenChanged();
}

void Survey::setAudience(checks::Audience audience) {
    audience_ = std::move(audience);
    emit audienceChanged();
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
    emit chosenChanged();
    emit findingShown();
}

void Survey::onSelection() {
    if (!chosen_ || viewing_.selection() == placeOf(*chosen_)) return;
    chosen_.reset();
    emit chosenChanged();
}

}  // namespace tenter::desktop
