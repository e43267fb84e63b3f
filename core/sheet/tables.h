// The tables of a spec sheet.
#pragma once

#include <optional>
#include <vector>

#include "checks/key_widths.h"
#include "sheet/content.h"

namespace tenter::sheet {

/// A variant with what its tables are read from.
struct VariantFacts {
    const project::Project& project;
    std::size_t variant = 0;
    const layout::PreparedRow& row;
    const sweep::Curves& curves;
    const std::vector<checks::KeyWidth>& keys;
    [[nodiscard]] const project::Variant& of() const { return project.row().variants[variant]; }
};

/// Sizes, lines and slack at the key widths.
Table keyFigures(const VariantFacts& facts);
/// Widths, columns, row and card of each band.
Table columnsTable(const VariantFacts& facts);
/// The font size, family and line height of each role; equal bands in one row.
Table rampsTable(const VariantFacts& facts);
/// Margins, paddings and gaps, a column for each band. Several tables if there are many bands.
std::vector<Table> spacingTables(const VariantFacts& facts);
/// The smallest and the largest measure of each role in each band.
std::optional<Table> measureTable(const VariantFacts& facts);
/// The slot of each picture and the file sizes that fill it; empty without pictures.
std::optional<Table> slotsTable(const VariantFacts& facts);
/// The fonts in use; over all variants.
Table fontsTable(const std::vector<std::shared_ptr<const layout::PreparedRow>>& rows);

/// The plots of font size and measure.
Plots plotsOf(const VariantFacts& facts);

}  // namespace tenter::sheet
