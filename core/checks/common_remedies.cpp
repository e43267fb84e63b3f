#include "checks/common_remedies.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "checks/phrases.h"
#include "layout/layout.h"
#include "project/cascade.h"
#include "project/titles.h"
#include "project/wording.h"
#include "units/number.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::checks {

using project::Settings;
using units::Length;
using units::Ramp;

namespace {

/// Sizes are set in steps that people type, CSS px.
constexpr double fineStep = 0.05;
constexpr double coarseStep = 0.1;

double stepped(double size, double step) {
    return units::rounded(std::round(size / step) * step, 2);
}

Ramp scaledRamp(const Ramp& ramp, double factor, double step) {
    const Ramp flat = Ramp::flat(stepped(ramp.from().size * factor, step));
    if (ramp.isFlat()) return flat;
    return Ramp::between({ramp.from().width, stepped(ramp.from().size * factor, step)},
                         {ramp.to().width, stepped(ramp.to().size * factor, step)})
        .value_or(flat);
}

const Ramp* rampOf(const Candidates& out, const std::string& role, std::size_t band) {
    const project::TextStyle* style = out.settings(band).text.find(role);
    return style != nullptr && style->size ? &*style->size : nullptr;
}

/// `14.1–15.3 px`: the sizes of the changed ramps.
std::string sizesOf(const std::vector<BandChange>& changes, const std::string& role) {
    double least = std::numeric_limits<double>::infinity();
    double most = 0;
    for (const auto& [band, change] : changes) {
        const Ramp& ramp = *change.text.find(role)->size;
        least = std::min({least, ramp.from().size, ramp.to().size});
        most = std::max({most, ramp.from().size, ramp.to().size});
    }
    return units::pxRange(least, most);
}

void proposeScaled(Candidates& out, const std::string& role, double factor, double step) {
    std::vector<BandChange> changes;
    for (const std::size_t band : out.bands()) {
        const Ramp* ramp = rampOf(out, role, band);
        if (ramp == nullptr) continue;
        const Ramp changed = scaledRamp(*ramp, factor, step);
        if (changed == *ramp) continue;
        Settings settings;
        settings.text.of(role).size = changed;
        changes.emplace_back(band, std::move(settings));
    }
    if (changes.empty()) return;
    const std::string by = units::percent(std::abs(factor - 1), 1);
    const std::string sizes = sizesOf(changes, role);
    const std::string label = factor < 1
                                  ? wording::say("Reduce %1 by %2, to %3", {roleText(role), by, sizes})
                                  : wording::say("Increase %1 by %2, to %3", {roleText(role), by, sizes});
    out.set(label, Candidates::Scope::Layout, std::move(changes), "size-of-" + role);
}

}  // namespace

Length scaled(const Length& length, double factor) {
    if (length.isKeyword()) return length;
    const std::string text =
        units::number(length.value() * factor, 3) + std::string(units::suffix(length.unit()));
    return Length::parse(text).value_or(length);
}

Length longer(const Length& length, double px, double em, double rem) {
    // Rounded up, so that what must be reached is reached.
    const auto up = [](double value) { return std::ceil(value * 20 - 1e-9) / 20; };
    if (length.unit() == units::Unit::Em && em > 0) return Length::em(up(length.value() + px / em));
    if (length.unit() == units::Unit::Rem && rem > 0) return Length::rem(up(length.value() + px / rem));
    return Length::px(std::ceil(length.value() + px));
}

std::string roleTexts(const std::vector<std::string>& roles) {
    std::vector<std::string> texts;
    texts.reserve(roles.size());
    for (const std::string& role : roles)
        texts.push_back(roleText(role));
    return project::listed(texts);
}

void proposeSizes(Candidates& out, const std::string& role, Need need) {
    for (const double change : {0.03, 0.06, 0.1, 0.15, 0.2, 0.25})
        proposeScaled(out, role, need == Need::Room ? 1 - change : 1 + change, coarseStep);
}

void proposeSlightSizes(Candidates& out, const std::string& role) {
    for (const double change : {0.005, 0.01, 0.015, 0.02})
        for (const double factor : {1 - change, 1 + change})
            proposeScaled(out, role, factor, fineStep);
}

void proposeSizesWithin(Candidates& out, const std::vector<std::string>& roles, double least, double most,
                        const std::string& label) {
    out.set(label, Candidates::Scope::Layout, [&](Settings& settings, std::size_t band) {
        for (const std::string& role : roles) {
            const Ramp* ramp = rampOf(out, role, band);
            if (ramp == nullptr) continue;
            const auto kept = [&](double size) { return std::clamp(size, least, std::max(least, most)); };
            const Ramp changed = Ramp::between({ramp->from().width, kept(ramp->from().size)},
                                               {ramp->to().width, kept(ramp->to().size)})
                                     .value_or(Ramp::flat(kept(ramp->from().size)));
            if (changed != *ramp) settings.text.of(role).size = changed;
        }
    });
}

void proposeLetterSpacing(Candidates& out, const std::string& role) {
    // What readers do not notice in a heading or a label. Common practice, no source.
    for (const double em : {0.0, -0.005, -0.01, -0.015, -0.02}) {
        const Length spacing = Length::em(em);
        const bool narrower = std::ranges::all_of(out.bands(), [&](std::size_t band) {
            const project::TextStyle* style = out.settings(band).text.find(role);
            if (style == nullptr || !style->letterSpacing) return false;
            const Length& now = *style->letterSpacing;
            return (now.isZero() || now.unit() == units::Unit::Em) && now.value() > em;
        });
        if (narrower)
            out.set(
                wording::say("Set letter spacing of %1 to %2",
                             {roleText(role), spacing.isZero() ? "0" : units::figure(em, 3) + "\u00A0em"}),
                Candidates::Scope::Layout,
                [&](Settings& settings, std::size_t) { settings.text.of(role).letterSpacing = spacing; },
                "letter-spacing-of-" + role);
    }
}

void proposeColumns(Candidates& out, Need need) {
    std::set<int> counts;
    std::vector<BandChange> changes;
    for (const std::size_t band : out.bands()) {
        const int columns = out.settings(band).row.columns.value_or(1);
        const int other = need == Need::Room ? columns - 1 : columns + 1;
        if (other < 1 || other > static_cast<int>(out.subject().project.row().cards.size())) continue;
        Settings settings;
        settings.row.columns = other;
        counts.insert(other);
        changes.emplace_back(band, std::move(settings));
    }
    const std::string label =
        counts.size() == 1
            ? wording::sayCount("Use %n column", "Use %n columns", static_cast<std::size_t>(*counts.begin()))
        : need == Need::Room ? wording::say("Use one column fewer")
                             : wording::say("Use one more column");
    out.set(label, Candidates::Scope::Layout, std::move(changes));
}

void proposeBreakpoints(Candidates& out) {
    const auto& bands = out.subject().variant.bands;
    const std::vector<sweep::Interval>& widths = out.finding().widths;
    for (const std::size_t band : out.bands()) {
        const double from = band == 0 ? out.subject().least : bands[band - 1].upTo.value_or(0);
        const double to = std::min(out.subject().most, bands[band].upTo.value_or(out.subject().most));
        double first = to;
        double last = from;
        for (const sweep::Interval& span : widths) {
            if (span.to <= from || span.from >= to) continue;
            first = std::min(first, std::max(span.from, from));
            last = std::max(last, std::min(span.to, to));
        }
        // The band below holds a little longer, or the band above starts a little earlier: as little as is
        // needed, or at a round width with some room.
        const std::string group = "breakpoint-beside-band-" + std::to_string(band);
        const auto roundUp = [](double width) { return std::ceil(width / 10) * 10; };
        const auto roundDown = [](double width) { return std::floor(width / 10) * 10; };
        if (band > 0 && first <= from + 1 && last < to - 1)
            for (const double width : {std::ceil(last), roundUp(last + 5), roundUp(last + 15)})
                out.moveBreakpoint(band - 1, width, group);
        if (bands[band].upTo && last >= to - 1 && first > from + 1)
            for (const double width : {std::floor(first), roundDown(first - 5), roundDown(first - 15)})
                out.moveBreakpoint(band, width, group);
    }
}

void proposeTighterCards(Candidates& out) {
    for (const double factor : {0.75, 0.5})
        out.set(
            wording::say("Reduce the side padding of cards to %1", {units::percent(factor)}),
            Candidates::Scope::Layout,
            [&](Settings& settings, std::size_t band) {
                const project::Sides& now = out.settings(band).card.padding;
                if (now.left && !now.left->isZero()) settings.card.padding.left = scaled(*now.left, factor);
                if (now.right && !now.right->isZero())
                    settings.card.padding.right = scaled(*now.right, factor);
            },
            "card-padding");
    for (const double factor : {0.75, 0.5})
        out.set(
            wording::say("Reduce the column gap to %1", {units::percent(factor)}), Candidates::Scope::Layout,
            [&](Settings& settings, std::size_t band) {
                const project::RowSettings& now = out.settings(band).row;
                if (now.columns.value_or(1) > 1 && now.columnGap && !now.columnGap->isZero())
                    settings.row.columnGap = scaled(*now.columnGap, factor);
            },
            "column-gap");
}

void proposeRowWidth(Candidates& out, double share) {
    const Subject& subject = out.subject();
    std::vector<BandChange> changes;
    double most = 0;
    for (const std::size_t band : out.bands()) {
        // The row is widest at the last width of the band that has the finding.
        double last = 0;
        for (const sweep::Interval& span : out.finding().widths)
            if (subject.row.bandAt(span.to) == band) last = std::max(last, span.to);
        if (last == 0) last = std::min(subject.most, subject.variant.bands[band].upTo.value_or(subject.most));
        const double width = std::floor(layout::layOut(subject.row, last).row.width * share);
        if (!(width >= 1)) continue;
        Settings settings;
        settings.row.maxWidth = Length::px(width);
        most = std::max(most, width);
        changes.emplace_back(band, std::move(settings));
    }
    const std::string label =
        changes.size() == 1 ? wording::say("Set the maximum width of the row to %1", {units::px(most, 0)})
                            : wording::say("Make the row narrower by %1", {units::percent(1 - share)});
    out.set(label, Candidates::Scope::Layout, std::move(changes), "row-width");
}

void proposeWordBreaks(Candidates& out) {
    const std::vector<std::string> roles = out.roles();
    using project::OverflowWrap;
    const std::string texts = roleTexts(roles);
    for (const auto& [value, label] :
         {std::pair{OverflowWrap::BreakWord, wording::say("Set “Long words” of %1 to “Break”", {texts})},
          std::pair{OverflowWrap::Anywhere,
                    wording::say("Set “Long words” of %1 to “Break anywhere”", {texts})}})
        out.set(
            label, Candidates::Scope::Look,
            [&, wanted = value](Settings& settings, std::size_t band) {
                for (const std::string& role : roles)
                    if (out.settings(band).text.find(role)->overflowWrap != wanted)
                        settings.text.of(role).overflowWrap = wanted;
            },
            "long-words");
    out.set(wording::say("Turn on soft hyphens of %1", {texts}), Candidates::Scope::Look,
            [&](Settings& settings, std::size_t band) {
                for (const std::string& role : roles)
                    if (out.settings(band).text.find(role)->hyphens == project::Hyphens::None)
                        settings.text.of(role).hyphens = project::Hyphens::Manual;
            });
}

std::string useRatio(double width, double height) {
    return wording::say("Use the aspect ratio %1", {units::figure(width) + ":" + units::figure(height)});
}

void proposeOneRatio(Candidates& out) {
    const auto setRatio = [&](const project::Ratio& ratio, const std::string& label) {
        const std::size_t variant = out.subject().variantIndex;
        const std::vector<std::size_t> bands = out.bands();
        out.add(
            label, wording::say("for all pictures"),
            [=](project::Project& project) {
                for (const std::size_t band : bands) {
                    // Only where another ratio holds does a band need its own.
                    if (project::resolve(project, project.row().variants[variant], band).picture.ratio ==
                        ratio)
                        continue;
                    project.row().variants[variant].bands[band].set.picture.ratio = ratio;
                }
                for (project::Card& card : project.row().cards)
                    for (project::Part& part : card.parts)
                        if (auto* picture = std::get_if<project::PicturePart>(&part)) picture->ratio.reset();
            },
            "one-ratio");
    };
    // The ratio of the settings, if pictures differ from it; else a common one.
    for (const std::size_t band : out.bands()) {
        const std::optional<project::Ratio>& now = out.settings(band).picture.ratio;
        if (now && !now->isOwn()) setRatio(*now, useRatio(now->width, now->height));
    }
    for (const auto& [width, height] : {std::pair{3, 2}, std::pair{4, 3}, std::pair{1, 1}})
        setRatio({static_cast<double>(width), static_cast<double>(height)}, useRatio(width, height));
}

void proposeAlignedParts(Candidates& out) {
    const auto aligned = [&](const std::string& label, bool atStart) {
        out.set(
            label, Candidates::Scope::Layout,
            [&](Settings& settings, std::size_t band) {
                if (out.settings(band).row.columns.value_or(1) < 2) return;
                settings.row.level = project::Level::Subgrid;
                if (atStart) settings.row.lastLine = project::LastLine::Start;
            },
            "aligned-parts");
    };
    aligned(wording::say("Align parts of neighbouring cards"), false);
    // Parts cannot be aligned while the last line of cards is centred.
    aligned(wording::say("Align parts of neighbouring cards, with the last line of cards at the start"),
            true);
}

}  // namespace tenter::checks
