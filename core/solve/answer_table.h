// The solver's answer as a table: sizes before and after, and the limits on each; or the conflict.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "solve/solve.h"

namespace tenter::solve {

/// A role's size at one end of a band.
struct EndSize {
    double width = 0;              ///< viewport, CSS px
    double before = 0, after = 0;  ///< CSS px
};

/// A place where a wish limits a size, in words.
struct Limit {
    Binding binding;
    double width = 0;      ///< viewport width that shows the place, within the project's range, CSS px
    std::string place;     ///< the place as `text` names it: `at 931 px`
    std::string text;      ///< `at most 21.4 px at 931 px viewport width, because of the wish “…”: …`
    std::string fullText;  ///< the same after role and band: `Heading, 931–1880 px (3 columns): at most …`
};

/// The sizes of one role in one band of one variant.
struct SizeRow {
    std::size_t variant = 0;
    std::string role;
    std::size_t band = 0;
    int columns = 1;
    EndSize narrow, wide;  ///< at the ends of the band, within the project's range
    std::vector<Limit> limits;

    /// True if the size differs, by more than the display shows, at an end of the band.
    [[nodiscard]] bool isChanged() const;
};

/// A change of one wish that resolves a conflict.
struct Resolution {
    Relaxation relaxation;
    std::string text;           ///< `Change “heading on one line” to “heading in at most 3 lines”`
    bool isApplicable = false;  ///< false for a change of the text, which only the user can make
};

/// Wishes that exclude each other.
struct ConflictTable {
    std::vector<std::string> wishes;  ///< `heading on one line`
    std::vector<Limit> places;        ///< where texts limit them
    std::vector<std::string> notes;   ///< other causes, one sentence or two each
    std::string advice;               ///< the line above the resolutions; without any, what else helps
    std::vector<Resolution> resolutions;
};

struct AnswerTable {
    std::vector<std::size_t> variants;  ///< that were solved, by index
    std::vector<SizeRow> rows;          ///< by variant, role and band; empty if there is no solution
    bool isUnchanged = false;           ///< the current sizes satisfy every wish
    std::vector<std::string> notes;     ///< what else there is to know, one sentence or two each
    std::optional<ConflictTable> conflict;
};

/// `answer` for `project`, the project as it was before.
AnswerTable answerTable(const project::Project& project, const Answer& answer, text::ParagraphStore& store);

/// The same as lines of text: the table, then the limits, then the notes or the conflict. `isConverted`: the
/// sizes before are those of a conversion to another width to follow, not those of the project file.
std::string toText(const project::Project& project, const AnswerTable& table, bool isConverted = false);

/// `No sizes satisfy these wishes together: “…” and “…”.`
std::string summary(const ConflictTable& conflict);

/// The smallest whole width of the row's band, or of the range, CSS px: a breakpoint belongs to the band
/// below.
double firstWholeWidth(const SizeRow& row);

/// The columns and whole widths of the row's band: `591–930 px (2 columns)`.
std::string bandLabel(const SizeRow& row);

/// A size for the table, CSS px without the unit.
std::string sizeLabel(double size);

}  // namespace tenter::solve
