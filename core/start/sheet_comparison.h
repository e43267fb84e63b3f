// What differs between a project and a stylesheet that is live.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "project/json_text.h"
#include "project/problem.h"
#include "project/project.h"
#include "text/paragraph_store.h"

namespace tenter::start {

/// A setting that differs, or the breakpoints of a variant.
// NOLINTNEXTLINE(bugprone-exception-escape): moving JSON throws only where it is used wrongly.
struct SheetDifference {
    std::size_t variant = 0;         ///< index in the project
    std::vector<std::size_t> bands;  ///< of the stylesheet; empty for breakpoints
    bool everyBand = false;          ///< true if these are all bands
    double from = 0;                 ///< viewport widths in CSS px; 0 for breakpoints
    double upTo = 0;
    std::string path;     ///< as in `project::settingAt`; empty for breakpoints
    std::string name;     ///< `Row › Column gap`
    std::string where;    ///< variant and viewport widths, for people; empty: everywhere
    std::string before;   ///< the value in the project, in words
    std::string after;    ///< the value in the stylesheet, in words
    project::Json now;    ///< the value in the project as in its file; null for breakpoints
    project::Json value;  ///< that value as in a project file; for breakpoints a list of px
};

/// A comparison of a project with a stylesheet.
struct SheetComparison {
    std::vector<SheetDifference> differences;
    std::vector<std::string> report;        ///< what could not be compared, a sentence each
    std::vector<std::vector<double>> ends;  ///< by variant of the project: the breakpoints of the stylesheet
};

/// The differences of a project from a stylesheet: one that Tenter printed for it and that was changed since,
/// one for its given row, or one of any other origin, which is compared with the first variant. Of a sheet
/// that Tenter printed only what differs from what Tenter would print now counts. Texts, pictures and the
/// page are not compared. Empty, with problems, if no row is recognised in the stylesheet.
std::optional<SheetComparison> compareWithSheet(const project::Project& project, std::string_view css,
                                                const std::filesystem::path& file,
                                                text::ParagraphStore& store, project::Problems& problems);

/// Gives the project the values of the differences whose entry in `chosen` is true. A value that holds in
/// every band is set in the variant, or in the style if there is no other variant.
void takeDifferences(project::Project& project, const SheetComparison& comparison,
                     const std::vector<bool>& chosen);

/// The differences as sentences, one on a line, then their number.
std::string differencesList(const SheetComparison& comparison);
/// The same as a JSON array.
std::string differencesJson(const SheetComparison& comparison);

}  // namespace tenter::start
