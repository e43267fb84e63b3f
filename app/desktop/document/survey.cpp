#include "document/survey.h"

#include <algorithm>
#include <utility>

namespace tenter::desktop {

namespace {

// A drag changes the row at every frame: not before it rests.
constexpr int restMilliseconds = 120;

/// True if both are of one cause, though it may have come to more or fewer widths.
bool isSame(const checks::Finding& one, const checks::Finding& other) {
    return one.check == other.check && one.severity == other.severity && one.card == other.card &&
           one.part == other.part;
}

Viewing::Selection placeOf(const checks::Finding& finding) {
    const auto index = [](const std::optional<std::size_t>& at) { return at ? static_cast<int>(*at) : -1; };
    return {index(finding.card), index(finding.part)};
}

}  // namespace

/// The worker's own fonts and paragraphs: the document's have no lock.
struct Survey::Job {
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
    soon_.setSingleShot(true);
    soon_.setInterval(0);
    settled_.setSingleShot(true);
    settled_.setInterval(restMilliseconds);
    connect(&soon_, &QTimer::timeout, this, &Survey::check);
    connect(&settled_, &QTimer::timeout, this, &Survey::start);
    connect(&viewing_, &Viewing::rowChanged, this, &Survey::onRow);
    connect(&viewing_, &Viewing::selectionChanged, this, &Survey::onSelection);
    // Of another project, or variant, nothing is told.
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
    soon_.stop();
    settled_.stop();
    sweptNow_ = false;
    const bool few = viewing_.hasFewParts();
    if (few)
        soon_.start();
    else
        settled_.start();
    if (std::exchange(fresh_, false) && !few) emit changed();
    emit swept();
}

const sweep::Sweep& Survey::sweep() const {
    if (!sweptNow_ && viewing_.hasFewParts()) {
        const project::Project& project = viewing_.shown();
        sweep_ = sweep::sweep(viewing_.row(), project.leastWidth, project.mostWidth);
        sweptNow_ = true;
    }
    return sweep_;
}

void Survey::check() {
    if (viewing_.shown().cards.empty()) return tell({});
    tell(checks::check(viewing_.shown(), viewing_.variant(), viewing_.document().store(), options()));
}

void Survey::start() {
    ++job_;
    if (!jobs_) jobs_ = std::make_shared<Job>();
    pool_.start([this, job = job_, jobs = jobs_, row = viewing_.rowUnder(viewing_.profile()),
                 project = viewing_.shown(), variant = viewing_.variant(),
                 folder = viewing_.document().folder(), options = options()] {
        jobs->use(project.fonts, folder);
        Told told{sweep::sweep(*row, project.leastWidth, project.mostWidth),
                  checks::check(project, variant, jobs->store, options)};
        QMetaObject::invokeMethod(
            this, [this, job, told = std::move(told)] { take(job, told); }, Qt::QueuedConnection);
    });
}

void Survey::take(int job, const Told& told) {
    // A late answer is of a row that is no more.
    if (job != job_) return;
    sweep_ = told.sweep;
    sweptNow_ = true;
    emit swept();
    tell(told.findings);
}

void Survey::tell(std::vector<checks::Finding> findings) {
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
    if (finding.only != nullptr) viewing_.setProfile(*finding.only);
    viewing_.select(placeOf(finding));
    viewing_.setWidth(finding.at);
    emit chosenChanged();
    emit wentThere();
}

void Survey::onSelection() {
    if (!chosen_ || viewing_.selection() == placeOf(*chosen_)) return;
    chosen_.reset();
    emit chosenChanged();
}

}  // namespace tenter::desktop
