#include "solve/card_scale.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "checks/phrases.h"
#include "layout/layout.h"
#include "project/card_scale.h"
#include "project/conflicts.h"
#include "project/titles.h"
#include "units/number.h"

namespace tenter::solve {

namespace {

/// CSS px between viewport widths at which sizes are read off.
constexpr double sampledEvery = 4;
/// Where a ramp may start and end: so many places over the range of the card's widths.
constexpr int places = 24;
/// A ramp that gains less is flat, CSS px.
constexpr double leastGain = 0.05;
/// CSS px; smaller sizes are none.
constexpr double leastCardSize = 1;

struct Reading {
    double card = 0;  ///< content width, CSS px
    double size = 0;
    double width = 0;  ///< viewport
    std::size_t variant = 0;
};

/// The sums over readings that a straight line between two places is fitted by, and how far it is off.
struct Fit {
    double from = 0, to = 0;
    double first = 0, last = 0;  ///< sizes there
    double off = 0;              ///< sum of squares
};

double along(double card, double from, double to) {
    return to > from ? std::clamp((card - from) / (to - from), 0.0, 1.0) : 0;
}

/// The best sizes at `from` and `to`, flat outside them: two normal equations.
Fit fitted(const std::vector<Reading>& readings, double from, double to) {
    double ff = 0, fl = 0, ll = 0, fs = 0, ls = 0;
    for (const Reading& one : readings) {
        const double t = along(one.card, from, to);
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
        fit.first = fit.last = (fs + ls) / static_cast<double>(readings.size());
    }
    for (const Reading& one : readings) {
        const double t = along(one.card, from, to);
        const double away = fit.first + t * (fit.last - fit.first) - one.size;
        fit.off += away * away;
    }
    return fit;
}

units::Ramp rampOf(const Fit& fit) {
    const double first = std::max(leastCardSize, units::rounded(fit.first, 2));
    const double last = std::max(leastCardSize, units::rounded(fit.last, 2));
    if (std::abs(last - first) < leastGain) return units::Ramp::flat(units::rounded((first + last) / 2, 2));
    return units::Ramp::between({fit.from, first}, {fit.to, last}).value_or(units::Ramp::flat(first));
}

units::Ramp nearestRamp(const std::vector<Reading>& readings) {
    const auto [narrow, wide] = std::ranges::minmax(readings, {}, &Reading::card);
    const double least = std::floor(narrow.card);
    const double most = std::ceil(wide.card);
    const auto placeAt = [&](int i) { return std::round(least + (most - least) * i / places); };
    Fit best = fitted(readings, least, most);
    for (int from = 0; from < places; ++from)
        for (int to = from + 1; to <= places; ++to)
            if (const Fit fit = fitted(readings, placeAt(from), placeAt(to));
                fit.to > fit.from && fit.off < best.off - 1e-9)
                best = fit;
    return rampOf(best);
}

/// Sizes of every role at widths over the whole range, in every variant.
class Readings {
public:
    Readings(const project::Project& project, text::ParagraphStore& store) {
        const int last = static_cast<int>((project.mostWidth - project.leastWidth) / sampledEvery);
        for (std::size_t variant = 0; variant < project.variants.size(); ++variant) {
            const layout::PreparedRow row(project, variant, store, text::blink());
            for (int i = 0; i <= last; ++i) {
                const double width = project.leastWidth + i * sampledEvery;
                for (std::uint32_t role = 0; role < row.roles().size(); ++role)
                    of(row.roles()[role])
                        .push_back({row.cardWidth(width), row.fontSize(role, width), width, variant});
            }
        }
    }
    std::vector<Reading>& of(const std::string& role) {
        for (auto& [name, readings] : roles_)
            if (name == role) return readings;
        return roles_.emplace_back(role, std::vector<Reading>()).second;
    }

private:
    std::vector<std::pair<std::string, std::vector<Reading>>> roles_;
};

void unsay(project::Settings& settings, const std::string& role) {
    if (settings.text.find(role) == nullptr) return;
    project::TextStyle& style = settings.text.of(role);
    style.size.reset();
    style.follow.reset();
    std::erase_if(settings.text.roles, [](const auto& one) { return one.second == project::TextStyle(); });
}

ByCard turned(const std::string& role, const std::vector<Reading>& readings) {
    ByCard turned{role, nearestRamp(readings)};
    double most = -1;
    for (const Reading& one : readings) {
        const double after = turned.ramp.sizeAt(one.card);
        if (std::abs(after - one.size) <= most) continue;
        most = std::abs(after - one.size);
        turned.before = one.size;
        turned.after = after;
        turned.width = one.width;
        turned.variant = one.variant;
    }
    return turned;
}

}  // namespace

std::optional<CardScale> inCardScale(const project::Project& project, text::ParagraphStore& store,
                                     project::Problems& problems) {
    CardScale scale{project, {}};
    Readings readings(project, store);
    for (const std::string& role : project::usedRoles(project)) {
        const std::vector<Reading>& there = readings.of(role);
        if (there.empty()) continue;
        scale.roles.push_back(turned(role, there));
        for (project::Variant& variant : scale.project.variants) {
            unsay(variant.set, role);
            for (project::Band& band : variant.bands)
                unsay(band.set, role);
        }
        project::TextStyle& style = scale.project.style.text.of(role);
        style.size = scale.roles.back().ramp;
        style.follow = project::Follow::Card;
    }
    problems = project::conflicts(scale.project);
    if (!problems.empty()) return std::nullopt;
    return scale;
}

std::vector<std::string> sentences(const project::Project& project, const CardScale& scale) {
    std::vector<std::string> all;
    all.reserve(scale.roles.size() + 1);
    for (const ByCard& one : scale.roles) {
        const std::string ends = one.ramp.isFlat()
                                     ? checks::px(one.ramp.from().size, 2) + " in every card"
                                     : checks::px(one.ramp.from().size, 2) + " in a card " +
                                           checks::px(one.ramp.from().width, 0) + " wide inside, " +
                                           checks::px(one.ramp.to().size, 2) + " in one of " +
                                           checks::px(one.ramp.to().width, 0);
        std::string text = checks::sentence(checks::typeOf(one.role)) + ": " + ends + ". ";
        if (std::abs(one.after - one.before) < leastGain)
            text += "No size changes.";
        else
            text += "What changes most: " + checks::px(one.before, 2) + " becomes " +
                    checks::px(one.after, 2) + " at " + checks::px(one.width, 0) +
                    (project.variants.size() > 1 ? " in " + project::quotedTitle(project, one.variant) : "") +
                    ".";
        all.push_back(std::move(text));
    }
    // Releases from memory; the units are those of CSS Conditional 5 § 5.
    all.emplace_back(
        "Every card becomes a container, and sizes are in cqi. As far as we remember their releases, "
        "browsers "
        "have that from Chrome and Edge 105, Safari 16 and Firefox 110 on; in older ones these sizes do not "
        "hold.");
    return all;
}

}  // namespace tenter::solve
