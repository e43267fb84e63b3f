#include "solve/columns.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include "layout/layout.h"
#include "project/cascade.h"
#include "units/number.h"

namespace tenter::solve {

namespace {

constexpr std::array<const char*, 9> ensembles{"solo",   "pair",   "trio",  "quartet", "quintet",
                                               "sextet", "septet", "octet", "nonet"};
/// Content width of the narrowest cards, if the source has one column only, CSS px. Common practice, no
/// source.
constexpr double defaultCardWidth = 240;
/// Narrower bands are not created, CSS px.
constexpr double leastBandWidth = 40;
/// Position in the range at which a band starts if its cards never reach their width.
constexpr double lateStartShare = 0.75;
/// Distance of the viewport widths at which the source is sampled, CSS px.
constexpr double samplingStep = 10;

int columnsIn(const project::Project& project, const project::Variant& variant, std::size_t band) {
    return *project::resolve(project, variant, band).row.columns;
}

double startOf(const project::Project& project, const project::Variant& variant, std::size_t band) {
    const double from = band == 0 ? 0 : *variant.bands[band - 1].upTo;
    return std::max(from, project.leastWidth);
}

class ColumnMaker {
public:
    ColumnMaker(const project::Project& project, std::size_t from, text::ParagraphStore& store)
        : project_(project),
          source_(project.row().variants[from]),
          store_(store),
          row_(project, from, store, text::defaultProfile()) {
        for (std::size_t band = 0; band < source_.bands.size(); ++band)
            counts_.push_back(columnsIn(project, source_, band));
        sampleSource();
    }

    project::Variant make(int columns, const std::string& className) {
        project::Variant made;
        made.className = className;
        made.set = source_.set;
        for (const int count : columnSteps(columns, project_.row().cards.size())) {
            project::Band band = source_.bands[templateFor(count)];
            band.upTo.reset();
            band.set.row.columns = count;
            if (made.bands.empty()) {
                made.bands.push_back(std::move(band));
                continue;
            }
            const double start = startFor(made, band, count);
            const double before = startOf(project_, made, made.bands.size() - 1);
            // A band too narrow to justify a media query is replaced by the next.
            if (start - before < leastBandWidth && made.bands.size() > 1) {
                made.bands.back() = std::move(band);
                continue;
            }
            made.bands.back().upTo = std::max(start, before + leastBandWidth);
            made.bands.push_back(std::move(band));
        }
        fitRamps(made);
        return made;
    }

private:
    struct SourceSample {
        double width = 0;   ///< viewport
        double column = 0;  ///< content width of a card
        std::vector<double> sizes;
    };

    void sampleSource() {
        const int last = static_cast<int>((project_.mostWidth - project_.leastWidth) / samplingStep);
        for (int i = 0; i <= last; ++i) {
            const double width = project_.leastWidth + i * samplingStep;
            SourceSample sample{width, row_.cardWidth(width), {}};
            for (std::uint32_t role = 0; role < row_.roles().size(); ++role)
                sample.sizes.push_back(row_.fontSize(role, width));
            samples_.push_back(std::move(sample));
        }
        narrowestCard_ = 0;
        for (const SourceSample& sample : samples_)
            if (counts_[row_.bandAt(sample.width)] > 1 &&
                (narrowestCard_ == 0 || sample.column < narrowestCard_))
                narrowestCard_ = sample.column;
        if (narrowestCard_ == 0) narrowestCard_ = defaultCardWidth;
    }

    /// The band of the source with the nearest column count.
    [[nodiscard]] std::size_t templateFor(int count) const {
        const auto away = [&](int other) { return std::abs(other - count); };
        return static_cast<std::size_t>(std::ranges::min_element(counts_, {}, away) - counts_.begin());
    }

    /// The viewport width at which `band` starts: that of the source's band with `count` columns, else where
    /// its cards are as wide as the source's narrowest.
    double startFor(const project::Variant& made, const project::Band& band, int count) {
        const auto same = std::ranges::find(counts_, count);
        if (same != counts_.end() && same != counts_.begin())
            return startOf(project_, source_, static_cast<std::size_t>(same - counts_.begin()));
        project::Project alone = project_;
        alone.row().variants = {made};
        alone.row().variants[0].bands = {band};
        const layout::PreparedRow row(alone, 0, store_, text::defaultProfile());
        double low = project_.leastWidth;
        double high = project_.mostWidth;
        if (row.cardWidth(high) < narrowestCard_) return std::round(low + lateStartShare * (high - low));
        while (high - low > 1)
            (row.cardWidth((low + high) / 2) < narrowestCard_ ? low : high) = (low + high) / 2;
        return std::ceil(high / samplingStep) * samplingStep;
    }

    /// The source's size of a role where its column is `column` wide, CSS px; if several viewport widths give
    /// that column, at the one nearest to `width`.
    [[nodiscard]] double sizeFor(std::size_t role, double column, double width) const {
        const auto cost = [&](const SourceSample& sample) {
            return std::abs(sample.column - column) + 0.05 * std::abs(sample.width - width);
        };
        return std::ranges::min_element(samples_, {}, cost)->sizes[role];
    }

    /// True if the source has the same band: the same column count at the same widths.
    [[nodiscard]] bool isInSource(const project::Variant& made, std::size_t band) const {
        const int count = columnsIn(project_, made, band);
        const std::size_t same = templateFor(count);
        return counts_[same] == count && source_.bands[same].upTo == made.bands[band].upTo &&
               startOf(project_, source_, same) == startOf(project_, made, band);
    }

    /// Sets ramps in each band that the source does not have. Ramps that follow the card already fit.
    void fitRamps(project::Variant& made) {
        project::Project whole = project_;
        whole.row().variants = {made};
        const layout::PreparedRow row(whole, 0, store_, text::defaultProfile());
        for (std::size_t band = 0; band < made.bands.size(); ++band) {
            if (isInSource(made, band)) continue;
            const double from = std::round(startOf(project_, made, band));
            const double to =
                std::round(std::min(made.bands[band].upTo.value_or(project_.mostWidth), project_.mostWidth));
            const project::Settings settings = project::resolve(whole, made, band);
            for (std::size_t role = 0; role < row_.roles().size(); ++role) {
                const std::string& name = row_.roles()[role];
                if (settings.text.find(name)->follow == project::Follow::Card) continue;
                // At the breakpoint itself the band below applies.
                const auto size = [&](double width) {
                    return units::rounded(sizeFor(role, row.cardWidth(width), width), 2);
                };
                const auto ramp = units::Ramp::between({from, size(from + 0.01)}, {to, size(to)});
                made.bands[band].set.text.of(name).size = ramp.value_or(units::Ramp::flat(size(to)));
            }
        }
    }

    const project::Project& project_;
    const project::Variant& source_;
    text::ParagraphStore& store_;
    layout::PreparedRow row_;
    std::vector<int> counts_;  // columns of each of the source's bands
    std::vector<SourceSample> samples_;
    double narrowestCard_ = 0;
};

}  // namespace

std::vector<int> columnSteps(int columns, std::size_t cards) {
    const auto emptyShare = [&](int count) {
        const auto whole = static_cast<std::size_t>(count);
        return static_cast<double>((whole - cards % whole) % whole) / count;
    };
    std::vector<int> steps{columns};
    while (steps.back() > 1) {
        const int now = steps.back();
        int best = std::max(1, now / 2);
        for (int next = (now + 2) / 3; next < now; ++next) {
            // Fewest empty cells; then nearest to half; of two equally near ones the larger.
            const double fewer = emptyShare(next) - emptyShare(best);
            const int nearer = std::abs(2 * next - now) - std::abs(2 * best - now);
            if (fewer < 0 || (fewer == 0 && (nearer < 0 || (nearer == 0 && next > best)))) best = next;
        }
        steps.push_back(best);
    }
    std::ranges::reverse(steps);
    return steps;
}

std::string classFor(const std::string& className, int columns) {
    std::string stem = className;
    for (const char* word : ensembles) {
        const std::string ending = std::string("-") + word;
        if (stem.size() > ending.size() && stem.ends_with(ending)) {
            stem.resize(stem.size() - ending.size());
            break;
        }
    }
    const auto count = static_cast<std::size_t>(columns);
    return stem + (count <= ensembles.size() ? std::string("-") + ensembles[count - 1]
                                             : "-of-" + std::to_string(columns));
}

project::Variant withColumns(const project::Project& project, std::size_t from, int columns,
                             const std::string& className, text::ParagraphStore& store) {
    return ColumnMaker(project, from, store).make(columns, className);
}

}  // namespace tenter::solve
