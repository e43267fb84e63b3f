#include "emit/band_changes.h"

#include <algorithm>

#include "emit/rules.h"
#include "project/cascade.h"
#include "project/intervals.h"
#include "units/number.h"

namespace tenter::emit {

namespace {

/// All rules of one band, at widths with one root size.
struct BandSheet {
    std::optional<double> upTo;  ///< CSS px
    int columns = 1;
    Rules rules;
};

/// Gives each rule the highest specificity, and each declaration the importance, that any band needs.
/// Otherwise the rule of a narrower band would not override that of a wider one.
void equaliseStrengths(std::vector<BandSheet>& bands) {
    for (std::size_t r = 0; r < bands.front().rules.size(); ++r) {
        Strength most;
        std::vector<bool> important(bands.front().rules[r].declarations.size(), false);
        for (const BandSheet& band : bands) {
            most = std::max(most, band.rules[r].strength);
            for (std::size_t d = 0; d < important.size(); ++d)
                important[d] = important[d] || band.rules[r].declarations[d].important;
        }
        for (BandSheet& band : bands) {
            band.rules[r].strength = most;
            for (std::size_t d = 0; d < important.size(); ++d)
                band.rules[r].declarations[d].important = important[d];
        }
    }
}

/// Removes the rules and declarations that no band needs from all bands.
void dropUnneeded(std::vector<BandSheet>& bands) {
    for (std::size_t r = 0; r < bands.front().rules.size(); ++r) {
        const bool needed =
            std::ranges::any_of(bands, [&](const BandSheet& band) { return band.rules[r].needed; });
        std::vector<bool> printed(bands.front().rules[r].declarations.size(), false);
        for (const BandSheet& band : bands) {
            for (std::size_t d = 0; d < printed.size(); ++d) {
                const Declaration& declaration = band.rules[r].declarations[d];
                if (needed && (declaration.printedAlways || declaration.value != declaration.neutral))
                    printed[d] = true;
            }
        }
        for (BandSheet& band : bands) {
            std::vector<Declaration> kept;
            for (std::size_t d = 0; d < printed.size(); ++d)
                if (printed[d]) kept.push_back(std::move(band.rules[r].declarations[d]));
            band.rules[r].declarations = std::move(kept);
        }
    }
}

/// The rules of `band` with only the declarations that differ from `above`.
Rules changes(const Rules& band, const Rules& above) {
    Rules out = band;
    for (std::size_t r = 0; r < out.size(); ++r) {
        std::vector<Declaration> changed;
        for (std::size_t d = 0; d < band[r].declarations.size(); ++d)
            if (!band[r].declarations[d].same(above[r].declarations[d]))
                changed.push_back(band[r].declarations[d]);
        out[r].declarations = std::move(changed);
    }
    return out;
}

bool hasDeclarations(const Rules& rules) {
    return std::ranges::any_of(rules, [](const Rule& rule) { return !rule.declarations.empty(); });
}

/// True if font sizes are printed in the same numbers under both root sizes.
bool printSameSizes(const units::RootSize& one, const units::RootSize& other) {
    if (one.isFluid() || other.isFluid()) return one.isFluid() && other.isFluid();
    return one.resolve(units::usualReaderSize, 0.0) == other.resolve(units::usualReaderSize, 0.0);
}

/// The intervals of a variant that differ for the stylesheet: by the band, or by the numbers of font sizes.
std::vector<project::Interval> sheetIntervals(const project::Page& page, const project::Variant& variant,
                                              units::Unit unit) {
    std::vector<project::Interval> all;
    for (const project::Interval& next : project::intervals(page, variant)) {
        const bool same = !all.empty() && all.back().band == next.band &&
                          (unit == units::Unit::Px || printSameSizes(page.settings(all.back().range).rootSize,
                                                                     page.settings(next.range).rootSize));
        if (same)
            all.back() = next;
        else
            all.push_back(next);
    }
    return all;
}

std::vector<BandSheet> bandSheets(const project::Project& project, const project::Variant& variant,
                                  units::Unit unit, const GivenSheet* given) {
    const std::vector<RoleUse> uses = roleUses(project);
    std::vector<BandSheet> bands;
    for (const project::Interval& interval : sheetIntervals(project.page, variant, unit)) {
        const project::Settings settings = project::resolve(project, variant, interval.band);
        const units::RootSize rootSize = project.page.settings(interval.range).rootSize;
        bands.push_back({interval.upTo, settings.row.columns.value_or(1),
                         bandRules({project, settings, rootSize, uses, unit, given})});
    }
    equaliseStrengths(bands);
    dropUnneeded(bands);
    return bands;
}

/// The block of breakpoint `upTo`. Breakpoints that print as the same number share a block.
Block& blockFor(std::vector<Block>& blocks, double upTo) {
    for (Block& block : blocks)
        if (block.upTo && units::number(*block.upTo) == units::number(upTo)) return block;
    return blocks.emplace_back(Block{upTo, {}});
}

}  // namespace

std::vector<Block> blocks(const project::Project& project, const std::vector<std::size_t>& variants,
                          units::Unit unit, const GivenSheet* given) {
    std::vector<Block> out(1);
    for (const std::size_t index : variants) {
        const project::Variant& variant = project.row().variants[index];
        std::vector<BandSheet> bands = bandSheets(project, variant, unit, given);
        const std::optional<double> above = bands.size() < 2 ? std::nullopt : bands[bands.size() - 2].upTo;
        out.front().variants.push_back({index, bands.back().columns, above, bands.back().rules});
        for (std::size_t i = bands.size() - 1; i-- > 0;) {
            Rules changed = changes(bands[i].rules, bands[i + 1].rules);
            if (!hasDeclarations(changed)) continue;
            blockFor(out, *bands[i].upTo)
                .variants.push_back({index, bands[i].columns, std::nullopt, std::move(changed)});
        }
    }
    std::stable_sort(out.begin() + 1, out.end(),
                     [](const Block& a, const Block& b) { return *a.upTo > *b.upTo; });
    return out;
}

}  // namespace tenter::emit
