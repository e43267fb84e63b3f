// The content of a spec sheet, without saying how it is set: blocks that HTML and PDF share.
#pragma once

#include <memory>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "checks/finding.h"
#include "draw/drawing.h"
#include "layout/layout.h"
#include "sweep/curves.h"

namespace tenter::sheet {

/// A heading of level 2 or 3; the title of the sheet is level 1.
struct Heading {
    int level = 2;
    std::string text;
    std::string detail;  ///< beside it, quieter; may be empty
};

struct Paragraph {
    enum class Kind { Plain, Note, Caution };
    Kind kind = Kind::Plain;
    std::string text;
};

struct Column {
    std::string title;
    bool isNumber = false;  ///< aligned at the end
};

/// A table with a row of column titles. Every row has a cell for each column; the first is its title.
struct Table {
    std::string title;
    std::vector<Column> columns;
    std::vector<std::vector<std::string>> rows;
    std::string note;  ///< below it; may be empty
};

/// The row at one viewport width.
struct Thumbnail {
    std::shared_ptr<const layout::PreparedRow> row;
    layout::Layout layout;
    draw::Drawing drawing;
    std::string title;  ///< `860 px, 2 columns`
    std::string why;    ///< why this width
    std::string alt;
};

/// Thumbnails by rising width, all to one scale.
struct Thumbnails {
    std::vector<Thumbnail> list;
};

struct Series {
    std::string name;
    sweep::Curve curve;
};

/// A line across a plot.
struct Limit {
    double value = 0;
    std::string label;
};

/// Values over the viewport width.
struct Plot {
    std::string title;
    std::string unit;  ///< of the values
    std::string alt;
    double least = 0, most = 0;  ///< viewport widths, CSS px
    std::vector<Series> series;
    std::vector<double> breakpoints;  ///< CSS px
    std::vector<Limit> limits;
};

struct Plots {
    std::vector<Plot> list;
};

struct FindingItem {
    checks::Severity severity = checks::Severity::Note;
    std::string title;   ///< `Contrast, 31 % of widths`
    std::string says;    ///< the sentences of the finding
    std::string widths;  ///< the widths that the text does not name; may be empty
    std::string source;
};

struct Findings {
    std::vector<FindingItem> list;
};

using Block = std::variant<Heading, Paragraph, Table, Thumbnails, Plots, Findings>;

/// A label of the cover, such as “Classes”, with its values. A value is broken only if it is wider than the
/// column.
struct Fact {
    std::string label;
    std::vector<std::string> values;
};

/// A spec sheet. Its own words are English; names come from the project.
struct Sheet {
    std::string title;     ///< the project's name
    std::string language;  ///< of the project's names, BCP 47
    bool rightToLeft = false;
    std::string date;  ///< `2026-11-29`
    std::vector<Fact> facts;
    std::vector<Block> blocks;
};

}  // namespace tenter::sheet
