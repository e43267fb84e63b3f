#include "checks/candidates.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "project/cascade.h"
#include "project/titles.h"
#include "project/wording.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::checks {

using project::Project;
using project::Settings;

namespace {

const Subject& subjectWith(const Subjects& subjects, const Finding& finding) {
    const auto holds = std::ranges::find_if(subjects, [&](const Subject& one) {
        return std::ranges::find(finding.profiles, &one.row.profile()) != finding.profiles.end();
    });
    return holds == subjects.end() ? subjects.front() : *holds;
}

/// The first and the last viewport width of a band within the project's range, CSS px.
sweep::Interval widthsOf(const Subject& subject, std::size_t band) {
    const auto& bands = subject.variant.bands;
    return {band == 0 ? subject.least : std::max(subject.least, bands[band - 1].upTo.value_or(0)),
            std::min(subject.most, bands[band].upTo.value_or(subject.most))};
}

std::vector<std::size_t> bandsOf(const Subject& subject, const Finding& finding) {
    std::vector<std::size_t> found;
    for (std::size_t band = 0; band < subject.variant.bands.size(); ++band) {
        const sweep::Interval there = widthsOf(subject, band);
        const bool any = std::ranges::any_of(finding.widths, [&](const sweep::Interval& span) {
            // A single width belongs to the band above it if it is a breakpoint at which something jumps.
            if (span.from == span.to) return span.to >= there.from && span.to <= there.to;
            return std::min(span.to, there.to) - std::max(span.from, there.from) > sweep::leastStep;
        });
        if (any) found.push_back(band);
    }
    return found;
}

/// The bands of the variant that have widths within the project's range.
std::size_t bandsInRange(const Subject& subject) {
    std::size_t count = 0;
    for (std::size_t band = 0; band < subject.variant.bands.size(); ++band)
        if (const sweep::Interval there = widthsOf(subject, band); there.from < there.to || band == 0)
            ++count;
    return count;
}

bool holds(const Project& project, std::size_t variant, std::size_t band, const Settings& change) {
    const Settings now = project::resolve(project, project.row().variants[variant], band);
    return project::merged(now, change) == now;
}

/// Sets `change` in `layer` (style or variant), and in the bands of the variant that set something else.
void setInLayer(Project& project, project::CascadeLayer layer, std::size_t variant, const Settings& change) {
    Settings& there = project::settingsOf(project, layer, variant, 0);
    there = project::merged(there, change);
    for (std::size_t band = 0; band < project.row().variants[variant].bands.size(); ++band) {
        if (holds(project, variant, band, change)) continue;
        Settings& own = project.row().variants[variant].bands[band].set;
        own = project::merged(own, change);
    }
}

/// True if setting `change` in the style alone is enough in every band of the variant.
bool isSetByStyle(Project project, std::size_t variant, const Settings& change) {
    project.row().style = project::merged(project.row().style, change);
    for (std::size_t band = 0; band < project.row().variants[variant].bands.size(); ++band)
        if (!holds(project, variant, band, change)) return false;
    return true;
}

std::string inVariant(const Subject& subject) {
    return wording::say("in the variant %1", {project::quotedTitle(subject.project, subject.variantIndex)});
}

std::string titleOfBands(const Subject& subject, const std::vector<BandChange>& changes) {
    constexpr std::size_t mostNamed = 2;
    if (changes.size() > mostNamed) return wording::sayCount("in %n band", "in %n bands", changes.size());
    std::vector<std::string> titles;
    titles.reserve(changes.size());
    for (const auto& [band, change] : changes)
        titles.push_back(project::bandTitle(subject.project, subject.variant, band));
    return titles.size() == 1 ? wording::say("in the band %1", {titles.front()})
                              : wording::say("in the bands %1", {project::listed(titles)});
}

}  // namespace

Candidates::Candidates(const Subjects& subjects, const Finding& finding)
    : subjects_(subjects),
      finding_(finding),
      subject_(subjectWith(subjects, finding)),
      bands_(bandsOf(subject_, finding)) {}

bool Candidates::isFor(const std::string& key) const {
    // The key of a finding is that of its cause after the names of check and severity (`report`,
    // `nameCheck`).
    return finding_.key == finding_.check + "\n" + std::string(word(finding_.severity)) + "\n" + key;
}

std::vector<std::string> Candidates::roles() const {
    std::vector<std::string> roles;
    for (const project::PartRef& place : finding_.places) {
        const auto* text = std::get_if<project::TextPart>(&subject_.project.part(place));
        if (text != nullptr && std::ranges::find(roles, text->role) == roles.end())
            roles.push_back(text->role);
    }
    return roles;
}

void Candidates::set(const std::string& label, Scope scope,
                     const std::function<void(Settings&, std::size_t)>& change, const std::string& group) {
    std::vector<BandChange> changes;
    for (const std::size_t band : bands_) {
        Settings settings;
        change(settings, band);
        if (settings != Settings()) changes.emplace_back(band, std::move(settings));
    }
    set(label, scope, std::move(changes), group);
}

void Candidates::set(const std::string& label, Scope scope, std::vector<BandChange> changes,
                     const std::string& group) {
    if (changes.empty()) return;
    const std::size_t variant = subject_.variantIndex;
    const Settings first = changes.front().second;
    const bool same =
        std::ranges::all_of(changes, [&](const BandChange& change) { return change.second == first; });
    if (!same || changes.size() < bandsInRange(subject_)) {
        const std::string where = titleOfBands(subject_, changes);
        addChange(label, where, group, [variant, changes = std::move(changes)](Project& project) {
            for (const auto& [band, change] : changes) {
                Settings& own = project.row().variants[variant].bands[band].set;
                own = project::merged(own, change);
            }
        });
        return;
    }
    const bool style = scope == Scope::Look && isSetByStyle(subject_.project, variant, first);
    const bool onlyVariant = subject_.project.row().variants.size() == 1;
    const std::string where = onlyVariant ? wording::say("at every width")
                              : style     ? wording::say("in all variants")
                                          : inVariant(subject_);
    const auto layer = style ? project::CascadeLayer::Style : project::CascadeLayer::Variant;
    addChange(label, where, group,
              [layer, variant, first](Project& project) { setInLayer(project, layer, variant, first); });
}

void Candidates::editTexts(const std::string& label,
                           std::function<void(project::TextPart&, project::PartRef)> change) {
    std::set<std::size_t> cards;
    for (const project::PartRef& place : finding_.places)
        cards.insert(place.card);
    if (cards.empty()) return;
    const std::string where = cards.size() == 1
                                  ? wording::say("in card %1", {std::to_string(*cards.begin() + 1)})
                                  : wording::sayCount("in %n card", "in %n cards", cards.size());
    addChange(label, where, {}, [places = finding_.places, change = std::move(change)](Project& project) {
        for (const project::PartRef& place : places)
            if (auto* text = std::get_if<project::TextPart>(&project.part(place))) change(*text, place);
    });
    all_.back().changesText = true;
}

void Candidates::add(const std::string& label, const std::string& where, std::function<void(Project&)> change,
                     const std::string& group) {
    addChange(label, where, group, std::move(change));
}

void Candidates::moveBreakpoint(std::size_t band, double width, const std::string& group) {
    const std::size_t variant = subject_.variantIndex;
    const std::optional<double> now = subject_.variant.bands[band].upTo;
    if (!now || width == *now) return;
    const auto& variants = subject_.project.row().variants;
    addChange(wording::say("Move the breakpoint from %1 to %2", {units::figure(*now), units::px(width)}),
              variants.size() == 1 ? std::string() : inVariant(subject_), group,
              [variant, band, width](Project& project) {
                  project.row().variants[variant].bands[band].upTo = width;
              });
}

void Candidates::solveSizes(std::function<void(Project&)> wish) {
    const auto& variants = subject_.project.row().variants;
    addChange(
        wording::say("Solve sizes"),
        variants.size() == 1 ? wording::say("at every width") : inVariant(subject_), {},
        wish ? std::move(wish) : [](Project&) {});
    all_.back().solves = true;
}

void Candidates::addChange(const std::string& label, const std::string& where, const std::string& group,
                           std::function<void(Project&)> change) {
    all_.push_back({label, where, group, std::move(change)});
}

}  // namespace tenter::checks
