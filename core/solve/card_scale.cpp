#include "solve/card_scale.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "layout/layout.h"
#include "project/card_scale.h"
#include "project/conflicts.h"
#include "project/titles.h"
#include "solve/wish.h"
#include "units/number.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::solve {

namespace {

/// Distance of the viewport widths at which current sizes are sampled, CSS px.
constexpr double sampleDistance = 4;
/// Number of card widths at which a ramp may start or end.
constexpr int rampEnds = 24;
/// Differences of size below this are ignored, CSS px.
constexpr double negligible = 0.05;
/// The smallest size of a fitted ramp, CSS px.
constexpr double leastCardSize = 1;

struct SizeSample {
    double card = 0;  ///< content width, CSS px
    double size = 0;
    double width = 0;  ///< viewport
    std::size_t variant = 0;
};

/// A line from (`from`, `first`) to (`to`, `last`), flat outside, and how well it fits.
struct Fit {
    double from = 0, to = 0;     ///< card widths, CSS px
    double first = 0, last = 0;  ///< sizes there, CSS px
    double error = 0;            ///< sum of squared differences
};

/// Position of `card` between `from` and `to`, from 0 to 1.
double positionOf(double card, double from, double to) {
    return to > from ? std::clamp((card - from) / (to - from), 0.0, 1.0) : 0;
}

/// The least-squares sizes at `from` and `to`, by the two normal equations.
Fit fitted(const std::vector<SizeSample>& samples, double from, double to) {
    double ff = 0, fl = 0, ll = 0, fs = 0, ls = 0;
    for (const SizeSample& one : samples) {
        const double t = positionOf(one.card, from, to);
        ff += (1 - t) * (1 - t);
        fl += (1 - t) * t;
        ll += t * t;
        fs += (1 - t) * one.size;
        ls += t * one.size;
    }
    Fit fit{from, to, 0, 0, 0};
    const double determinant = ff * ll - fl * fl;
    if (determinant > 1e-9 * (1 + ff * ll)) {
        fit.first = (fs * ll - ls * fl) / determinant;
        fit.last = (ff * ls - fl * fs) / determinant;
    } else {
        fit.first = fit.last = (fs + ls) / static_cast<double>(samples.size());
    }
    for (const SizeSample& one : samples) {
        const double t = positionOf(one.card, from, to);
        const double difference = fit.first + t * (fit.last - fit.first) - one.size;
        fit.error += difference * difference;
    }
    return fit;
}

units::Ramp rampOf(const Fit& fit) {
    const double first = std::max(leastCardSize, units::rounded(fit.first, 2));
    const double last = std::max(leastCardSize, units::rounded(fit.last, 2));
    if (std::abs(last - first) < negligible) return units::Ramp::flat(units::rounded((first + last) / 2, 2));
    return units::Ramp::between({fit.from, first}, {fit.to, last}).value_or(units::Ramp::flat(first));
}

units::Ramp nearestRamp(const std::vector<SizeSample>& samples) {
    const auto [narrow, wide] = std::ranges::minmax(samples, {}, &SizeSample::card);
    const double least = std::floor(narrow.card);
    const double most = std::ceil(wide.card);
    const auto endAt = [&](int i) { return std::round(least + (most - least) * i / rampEnds); };
    Fit best = fitted(samples, least, most);
    for (int from = 0; from < rampEnds; ++from)
        for (int to = from + 1; to <= rampEnds; ++to)
            if (const Fit fit = fitted(samples, endAt(from), endAt(to));
                fit.to > fit.from && fit.error < best.error - 1e-9)
                best = fit;
    return rampOf(best);
}

/// Current sizes of every role over the whole range, in every variant.
class SizeSamples {
public:
    SizeSamples(const project::Project& project, text::ParagraphStore& store) {
        const int last = static_cast<int>((project.mostWidth - project.leastWidth) / sampleDistance);
        for (std::size_t variant = 0; variant < project.row().variants.size(); ++variant) {
            const layout::PreparedRow row(project, variant, store, text::defaultProfile());
            for (int i = 0; i <= last; ++i) {
                const double width = project.leastWidth + i * sampleDistance;
                for (std::uint32_t role = 0; role < row.roles().size(); ++role)
                    of(row.roles()[role])
                        .push_back({row.cardWidth(width), row.fontSize(role, width), width, variant});
            }
        }
    }
    std::vector<SizeSample>& of(const std::string& role) {
        for (auto& [name, samples] : roles_)
            if (name == role) return samples;
        return roles_.emplace_back(role, std::vector<SizeSample>()).second;
    }

private:
    std::vector<std::pair<std::string, std::vector<SizeSample>>> roles_;
};

void removeRamp(project::Settings& settings, const std::string& role) {
    if (settings.text.find(role) == nullptr) return;
    project::TextStyle& style = settings.text.of(role);
    style.size.reset();
    style.follow.reset();
    std::erase_if(settings.text.roles, [](const auto& one) { return one.second == project::TextStyle(); });
}

/// The fitted ramp, with the largest change.
CardRamp fittedRamp(const std::string& role, const std::vector<SizeSample>& samples) {
    CardRamp card{role, nearestRamp(samples)};
    double most = -1;
    for (const SizeSample& one : samples) {
        const double after = card.ramp.sizeAt(one.card);
        if (std::abs(after - one.size) <= most) continue;
        most = std::abs(after - one.size);
        card.before = one.size;
        card.after = after;
        card.width = one.width;
        card.variant = one.variant;
    }
    return card;
}

}  // namespace

std::optional<CardScale> toCardScale(const project::Project& project, text::ParagraphStore& store,
                                     project::Problems& problems) {
    CardScale scale{project, {}};
    SizeSamples samples(project, store);
    for (const std::string& role : project::usedRoles(project)) {
        const std::vector<SizeSample>& there = samples.of(role);
        if (there.empty()) continue;
        scale.roles.push_back(fittedRamp(role, there));
        for (project::Variant& variant : scale.project.row().variants) {
            removeRamp(variant.set, role);
            for (project::Band& band : variant.bands)
                removeRamp(band.set, role);
        }
        project::TextStyle& style = scale.project.row().style.text.of(role);
        style.size = scale.roles.back().ramp;
        style.follow = project::Follow::Card;
    }
    problems = project::conflicts(scale.project);
    if (!problems.empty()) return std::nullopt;
    return scale;
}

namespace {

/// Where the conversion changes the size of a role most.
std::string largestChange(const project::Project& project, const CardRamp& one) {
    if (std::abs(one.after - one.before) < negligible) return wording::say("No size changes.");
    const std::string width = units::px(one.width, 0);
    const std::string before = units::figure(one.before);
    const std::string after = units::px(one.after);
    return project.row().variants.size() > 1
               ? wording::say(
                     "The conversion changes it most at %1 viewport width (variant %2): from %3 to %4.",
                     {width, project::quotedTitle(project, one.variant), before, after})
               : wording::say("The conversion changes it most at %1 viewport width: from %2 to %3.",
                              {width, before, after});
}

}  // namespace

std::vector<std::string> describe(const project::Project& project, const CardScale& scale) {
    std::vector<std::string> all;
    all.reserve(scale.roles.size() + 1);
    for (const CardRamp& one : scale.roles) {
        const units::RampPoint& from = one.ramp.from();
        const units::RampPoint& to = one.ramp.to();
        const std::string sizes =
            one.ramp.isFlat()
                ? wording::say("%1: %2 in every card.", {roleLabel(one.role), units::px(from.size)})
                : wording::say("%1: %2 where the card’s content is %3 wide, %4 where it is %5.",
                               {roleLabel(one.role), units::px(from.size), units::px(from.width, 0),
                                units::px(to.size), units::px(to.width, 0)});
        all.push_back(sizes + " " + largestChange(project, one));
    }
    // The releases are not verified; the unit is that of CSS Conditional 5 § 5.
    all.push_back(wording::say(
        "Each card becomes a size container, and its sizes use the unit cqi. Chrome 105, Edge 105, "
        "Safari 16, Firefox 110 and later versions support this (we did not verify these versions). Older "
        "browsers ignore these sizes."));
    return all;
}

}  // namespace tenter::solve
