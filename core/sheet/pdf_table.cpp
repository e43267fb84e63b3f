#include "sheet/pdf_table.h"

#include <algorithm>
#include <numeric>

namespace tenter::sheet {

namespace {

constexpr double usualSize = 7.8;   // of cells, pt
constexpr double leastSize = 5.8;   // before words are cut
constexpr double columnGap = 9;     // pt
constexpr double rowPadding = 3.2;  // above and below the text of a row, pt
constexpr double noWrap = 1e5;

class TableSetter {
public:
    TableSetter(PdfWriter& out, const Table& table) : out_(out), table_(table) { chooseWidths(); }

    void set() {
        makeRows();
        double whole = head_.height;
        for (const Row& row : rows_)
            whole += row.height;
        std::vector<draw::TextBlock> note;
        if (!table_.note.empty())
            note.push_back(
                out_.block(table_.note, look::note(), std::min(look::mostMeasure + 60, out_.width())));
        // A short table stays together; of a longer one at least the head and two rows.
        const double page = out_.bottom() - out_.top();
        double first = head_.height;
        for (std::size_t i = 0; i < std::min<std::size_t>(2, rows_.size()); ++i)
            first += rows_[i].height;
        const double noteHeight = note.empty() ? 0 : note[0].height() + 5;
        out_.heading(3, table_.title, "");
        out_.begin(whole + noteHeight < 0.45 * page ? whole + noteHeight : first);
        setHead();
        for (std::size_t i = 0; i < rows_.size(); ++i) {
            // The last row takes the note along.
            const bool isLast = i + 1 == rows_.size();
            if (out_.begin(rows_[i].height + (isLast ? noteHeight : 0))) setHead();
            setRow(rows_[i], false);
        }
        out_.closeList();
        out_.advance(4);
        if (!note.empty()) {
            out_.paragraph("P", note[0]);
            out_.advance(8);
        }
    }

private:
    struct Row {
        std::vector<draw::TextBlock> cells;
        double height = 0;
    };

    [[nodiscard]] bool alignsAtEnd(std::size_t column) const {
        return column > 0 && table_.columns[column].isNumber;
    }

    [[nodiscard]] draw::BlockStyle styleOf(std::size_t column, bool isHead) const {
        draw::BlockStyle style = look::cell(size_, isHead || column == 0 ? 600 : 400);
        if (alignsAtEnd(column)) style.align = draw::TextAlign::End;
        return style;
    }

    [[nodiscard]] double widthOf(const std::string& text, std::size_t column, bool isHead) const {
        return out_.block(text, styleOf(column, isHead), noWrap).width();
    }

    /// The widest word.
    [[nodiscard]] double wordOf(const std::string& text, std::size_t column, bool isHead) const {
        double widest = 0;
        std::size_t from = 0;
        while (from < text.size()) {
            const std::size_t end = std::min(text.find(' ', from), text.size());
            widest = std::max(widest, widthOf(text.substr(from, end - from), column, isHead));
            from = end + 1;
        }
        return widest;
    }

    // CSS 2.2 § 17.5.2.2: between the widest word and the whole text, by how much each column could use.
    void chooseWidths() {
        const std::size_t count = table_.columns.size();
        const double room = out_.width() - columnGap * static_cast<double>(count - 1);
        for (size_ = usualSize;; size_ = std::max(leastSize, size_ - 0.4)) {
            std::vector<double> least(count, 0);
            std::vector<double> most(count, 0);
            for (std::size_t i = 0; i < count; ++i) {
                const auto add = [&](const std::string& text, bool isHead) {
                    least[i] = std::max(least[i], wordOf(text, i, isHead) + 0.1);
                    most[i] = std::max(most[i], widthOf(text, i, isHead) + 0.1);
                };
                add(table_.columns[i].title, true);
                for (const std::vector<std::string>& row : table_.rows)
                    add(row[i], false);
            }
            const double leastSum = std::accumulate(least.begin(), least.end(), 0.0);
            const double mostSum = std::accumulate(most.begin(), most.end(), 0.0);
            if (leastSum > room && size_ > leastSize) continue;
            widths_.assign(count, 0);
            for (std::size_t i = 0; i < count; ++i) {
                if (mostSum <= room)
                    widths_[i] = most[i] + (room - mostSum) * most[i] / mostSum;
                else if (leastSum <= room)
                    widths_[i] = least[i] + (room - leastSum) * (most[i] - least[i]) / (mostSum - leastSum);
                else
                    widths_[i] = least[i] * room / leastSum;
            }
            return;
        }
    }

    [[nodiscard]] Row rowOf(const std::vector<std::string>& texts, bool isHead) const {
        Row row;
        row.cells.reserve(texts.size());
        for (std::size_t i = 0; i < texts.size(); ++i) {
            row.cells.push_back(out_.block(texts[i], styleOf(i, isHead), widths_[i]));
            row.height = std::max(row.height, row.cells.back().height());
        }
        row.height += 2 * rowPadding;
        return row;
    }

    void makeRows() {
        std::vector<std::string> titles;
        titles.reserve(table_.columns.size());
        for (const Column& column : table_.columns)
            titles.push_back(column.title);
        head_ = rowOf(titles, true);
        rows_.reserve(table_.rows.size());
        for (const std::vector<std::string>& row : table_.rows)
            rows_.push_back(rowOf(row, false));
    }

    void setHead() {
        out_.open("Table");
        setRow(head_, true);
    }

    void setRow(const Row& row, bool isHead) {
        out_.open("TR");
        double x = 0;
        for (std::size_t i = 0; i < row.cells.size(); ++i) {
            const draw::TextBlock& cell = row.cells[i];
            // Titles of columns end together above the rule.
            const double top =
                isHead ? out_.y() + row.height - rowPadding - cell.height() : out_.y() + rowPadding;
            const bool isTitle = isHead || i == 0;
            if (isTitle) out_.noteHead(isHead);
            out_.text(isTitle ? "TH" : "TD", cell, x, top);
            x += widths_[i] + columnGap;
        }
        out_.close();
        out_.advance(row.height);
        out_.fill(0, out_.y() - 0.5, out_.width(), 0.5, isHead ? look::text : look::faint);
    }

    PdfWriter& out_;
    const Table& table_;
    double size_ = usualSize;
    std::vector<double> widths_;
    Row head_;
    std::vector<Row> rows_;
};

}  // namespace

void setTable(PdfWriter& out, const Table& table) {
    if (!table.columns.empty()) TableSetter(out, table).set();
}

}  // namespace tenter::sheet
