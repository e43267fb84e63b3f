// Where the characters of a laid-out text are on the page: carets, selections, the character at a point.
#pragma once

#include <QPointF>
#include <vector>

#include "row/editing/copy_positions.h"
#include "session/layout_cache.h"

namespace tenter::desktop::row::editing {

/// Positions are those of CopyPositions, lengths CSS px on the page. At a line that wraps without a break in
/// the text, one position is both the end of a line and the start of the next.
class TextMap {
public:
    /// The text of part `part` of `row.layout`, laid out from `copy`.
    TextMap(const LaidOutRow& row, std::size_t part, const project::Copy& copy);

    struct Caret {
        double x = 0;
        double top = 0;
        double bottom = 0;
        std::size_t line = 0;
    };
    /// `atLineEnd`: at the end of a line that wraps there, not at the start of the next.
    [[nodiscard]] Caret caret(int position, bool atLineEnd = false) const;

    struct Hit {
        int position = 0;
        bool atLineEnd = false;
    };
    /// The position nearest to a point of the page.
    [[nodiscard]] Hit positionAt(const QPointF& page) const;
    /// The position nearest to `x` on a line.
    [[nodiscard]] Hit positionOn(std::size_t line, double x) const;
    /// The boxes of the characters from `first` to before `end`, one for each piece of a line.
    [[nodiscard]] std::vector<layout::Box> boxes(int first, int end) const;

    [[nodiscard]] std::size_t lineCount() const { return lines_.size(); }
    /// Start and end of the line that a caret is on.
    [[nodiscard]] Hit startOf(std::size_t line) const;
    [[nodiscard]] Hit endOf(std::size_t line) const;
    /// The area of the part and its lines.
    [[nodiscard]] const layout::Box& extent() const { return extent_; }

private:
    /// A cluster. `from` and `to` are positions, `left` and `right` its edges.
    struct Piece {
        int from = 0;
        int to = 0;
        double left = 0;
        double right = 0;
        bool rightToLeft = false;
        bool space = false;
        bool lineBreak = false;
        std::size_t line = 0;
        [[nodiscard]] double leading() const { return rightToLeft ? right : left; }
        [[nodiscard]] double trailing() const { return rightToLeft ? left : right; }
        [[nodiscard]] double at(int position) const;
    };
    struct Line {
        double start = 0;  ///< x of its start edge
        double top = 0;
        double bottom = 0;
        std::size_t first = 0, end = 0, next = 0;  ///< pieces; those from `end` on hang at the line's end
    };
    void addLine(const layout::LaidPart& part, const layout::LaidLine& laid, const CopyPositions& positions);
    void addStartOfEmptyLine(const LaidOutRow& row, const layout::LaidPart& part);
    [[nodiscard]] Caret on(std::size_t line, double x) const;
    [[nodiscard]] double afterEnd(const Piece& last, int position) const;
    [[nodiscard]] bool wraps(std::size_t line) const;

    std::vector<Piece> pieces_;  // in logical order
    std::vector<Line> lines_;
    std::vector<bool> stops_;  // by position: a caret may stand there
    layout::Box extent_;
    double space_ = 0;  // width of a space
    bool rightToLeft_ = false;
};

}  // namespace tenter::desktop::row::editing
