#include "row/editing/text_map.h"

#include <QTextBoundaryFinder>
#include <algorithm>
#include <cmath>

#include "draw/text_line.h"
#include "draw/visual_order.h"
#include "row/lookup.h"

namespace tenter::desktop::row::editing {

namespace {

using text::Paragraph;

constexpr double usualSpace = 0.25;  // em

std::vector<bool> graphemeStarts(const QString& text) {
    std::vector<bool> starts(static_cast<std::size_t>(text.size()) + 1, false);
    QTextBoundaryFinder finder(QTextBoundaryFinder::Grapheme, text);
    for (auto at = finder.position(); at >= 0; at = finder.toNextBoundary())
        starts[static_cast<std::size_t>(at)] = true;
    return starts;
}

}  // namespace

double TextMap::Piece::at(int position) const {
    if (position <= from) return leading();
    if (position >= to || space) return trailing();
    return leading() + (trailing() - leading()) * (position - from) / (to - from);
}

TextMap::TextMap(const LaidOutRow& row, std::size_t part, const project::Copy& copy) {
    const layout::LaidPart& laid = row.layout.parts[part];
    const CopyPositions positions(copy);
    stops_ = graphemeStarts(positions.text());
    extent_ = laid.box;
    space_ = usualSpace * laid.glyphSize;
    rightToLeft_ = row.project.rightToLeft;
    if (laid.paragraph != nullptr) {
        rightToLeft_ = laid.paragraph->rightToLeft();
        for (const text::Cluster& cluster : laid.paragraph->clusters())
            if (cluster.space) space_ = cluster.advance * laid.glyphSize;
        for (std::uint32_t i = 0; i < laid.lineCount; ++i)
            addLine(laid, row.layout.lines[laid.firstLine + i], positions);
    }
    if (pieces_.empty() || pieces_.back().lineBreak) addStartOfEmptyLine(row, laid);
    double left = extent_.x;
    double right = extent_.right();
    for (const Piece& piece : pieces_) {
        left = std::min(left, piece.left);
        right = std::max(right, piece.right);
    }
    const double bottom = std::max(extent_.bottom(), lines_.back().bottom);
    const double top = std::min(extent_.y, lines_.front().top);
    extent_ = {left, top, right - left, bottom - top};
}

void TextMap::addLine(const layout::LaidPart& part, const layout::LaidLine& laid,
                      const CopyPositions& positions) {
    const Paragraph& paragraph = *part.paragraph;
    const auto& clusters = paragraph.clusters();
    Line line;
    line.first = pieces_.size();
    line.end = line.first + (laid.line.end - laid.line.first);
    line.next = line.first + (laid.line.next - laid.line.first);
    line.top = laid.baseline - laid.extent.above;
    line.bottom = laid.baseline + laid.extent.below;
    for (std::uint32_t index = laid.line.first; index < laid.line.next; ++index) {
        const text::Cluster& cluster = clusters[index];
        const auto unitEnd = index + 1 < clusters.size()
                                 ? clusters[index + 1].begin
                                 : static_cast<std::uint32_t>(paragraph.text().size());
        Piece piece;
        piece.from = positions.of(paragraph.sourceOf(cluster.begin));
        piece.to = positions.of(paragraph.sourceOf(unitEnd - 1)) + 1;
        piece.rightToLeft = (cluster.level & 1) != 0;
        piece.space = cluster.space;
        piece.lineBreak = paragraph.text()[cluster.begin] == u'\n';
        piece.line = lines_.size();
        pieces_.push_back(piece);
    }
    const std::vector<text::ReshapedCluster> reshaped = paragraph.reshaped(laid.line.first, laid.line.end);
    const auto advanceOf = [&](std::uint32_t index) {
        const text::Cluster& cluster = clusters[index];
        const text::ReshapedCluster* own = draw::find(reshaped, index);
        return (own != nullptr ? own->advance : cluster.advance) * part.glyphSize +
               cluster.letterUnits * part.letterSpacing + cluster.wordUnits * part.wordSpacing;
    };
    double pen = laid.x;
    if (laid.line.hyphen && rightToLeft_)
        pen += paragraph.hyphenAdvanceBefore(laid.line.end) * part.glyphSize;
    std::vector<std::uint32_t> order;
    draw::visualOrder(paragraph, laid.line.first, laid.line.end, order);
    for (const std::uint32_t index : order) {
        Piece& piece = pieces_[line.first + (index - laid.line.first)];
        piece.left = pen;
        pen += advanceOf(index);
        piece.right = pen;
    }
    line.start = rightToLeft_ ? pen : laid.x;
    // Spaces and breaks at the end hang in the direction of the text.
    double hang = rightToLeft_ ? laid.x : pen;
    for (std::uint32_t index = laid.line.end; index < laid.line.next; ++index) {
        Piece& piece = pieces_[line.first + (index - laid.line.first)];
        const double advance = piece.lineBreak ? 0 : advanceOf(index);
        piece.rightToLeft = rightToLeft_;
        piece.left = rightToLeft_ ? hang - advance : hang;
        piece.right = rightToLeft_ ? hang : hang + advance;
        hang = rightToLeft_ ? piece.left : piece.right;
    }
    lines_.push_back(line);
}

// A text without characters, or one that ends with a line break, has a line that the layout does not have.
void TextMap::addStartOfEmptyLine(const LaidOutRow& row, const layout::LaidPart& part) {
    const double left = part.box.x + part.border + part.padding.left;
    const double right = part.box.right() - part.border - part.padding.right;
    const auto* style = styleOf(row, part);
    const project::Align align =
        style == nullptr ? project::Align::Start : style->align.value_or(project::Align::Start);
    Line line;
    line.start = align == project::Align::Center                  ? (left + right) / 2
                 : (align == project::Align::End) == rightToLeft_ ? left
                                                                  : right;
    line.top = lines_.empty() ? part.box.y + part.border + part.padding.top : lines_.back().bottom;
    line.bottom = line.top + part.lineHeight;
    line.first = line.end = line.next = pieces_.size();
    lines_.push_back(line);
}

// ---- Carets

TextMap::Caret TextMap::on(std::size_t line, double x) const {
    return {x, lines_[line].top, lines_[line].bottom, line};
}

// Spaces at the end of a text collapse; the caret moves on by their width nevertheless.
double TextMap::afterEnd(const Piece& last, int position) const {
    const double spaces = std::max(0, position - last.to) * space_;
    return last.trailing() + (last.rightToLeft ? -spaces : spaces);
}

bool TextMap::wraps(std::size_t line) const {
    const Line& laid = lines_[line];
    return line + 1 < lines_.size() && laid.next > laid.first && !pieces_[laid.next - 1].lineBreak;
}

TextMap::Caret TextMap::caret(int position, bool atLineEnd) const {
    const auto next = std::ranges::upper_bound(pieces_, position, {}, &Piece::from);
    if (next == pieces_.begin()) {
        if (pieces_.empty()) return on(0, lines_.front().start);
        return on(0, pieces_.front().leading());
    }
    auto found = std::prev(next);
    // Case mapping may make several clusters of one character: the caret is before the first.
    while (position == found->from && found != pieces_.begin() && std::prev(found)->from == position)
        --found;
    const Piece& piece = *found;
    const Piece* const before = found == pieces_.begin() ? nullptr : &*std::prev(found);
    if (position == piece.from && atLineEnd && before != nullptr && before->line < piece.line)
        return on(before->line, before->trailing());
    if (piece.lineBreak && position == piece.from) {
        if (before == nullptr || before->line != piece.line) return on(piece.line, lines_[piece.line].start);
        return on(piece.line, afterEnd(*before, position));
    }
    if (position < piece.to) return on(piece.line, piece.at(position));
    if (piece.lineBreak) {
        if (next == pieces_.end()) return on(lines_.size() - 1, lines_.back().start);
        return on(next->line, next->leading());
    }
    const bool atEnd = next == pieces_.end() || next->lineBreak;
    return on(piece.line, atEnd ? afterEnd(piece, position) : piece.trailing());
}

TextMap::Hit TextMap::startOf(std::size_t line) const {
    const Line& laid = lines_[line];
    if (laid.first < laid.next) return {pieces_[laid.first].from, false};
    return {static_cast<int>(stops_.size()) - 1, false};
}

TextMap::Hit TextMap::endOf(std::size_t line) const {
    const Line& laid = lines_[line];
    if (laid.first == laid.next) return startOf(line);
    if (laid.end == laid.first) return {pieces_[laid.first].from, false};
    // The last line ends with the text, which may end with spaces that are not laid out.
    if (line + 1 == lines_.size()) return {static_cast<int>(stops_.size()) - 1, false};
    return {pieces_[laid.end - 1].to, wraps(line)};
}

TextMap::Hit TextMap::positionOn(std::size_t line, double x) const {
    const Line& laid = lines_[line];
    Hit best = endOf(line);
    double nearest = std::abs(caret(best.position, best.atLineEnd).x - x);
    for (std::size_t i = laid.first; i < laid.end; ++i) {
        const Piece& piece = pieces_[i];
        for (int position = piece.from; position < piece.to; ++position) {
            if (!stops_[static_cast<std::size_t>(position)]) continue;
            const double distance = std::abs(piece.at(position) - x);
            if (distance >= nearest) continue;
            nearest = distance;
            best = {position, false};
        }
    }
    return best;
}

TextMap::Hit TextMap::positionAt(const QPointF& page) const {
    std::size_t line = 0;
    while (line + 1 < lines_.size() && page.y() >= lines_[line].bottom)
        ++line;
    return positionOn(line, page.x());
}

std::vector<layout::Box> TextMap::boxes(int first, int end) const {
    std::vector<layout::Box> boxes;
    std::size_t last = 0;
    for (const Piece& piece : pieces_) {
        if (piece.to <= first || piece.from >= end || piece.lineBreak) continue;
        const double one = piece.at(std::max(first, piece.from));
        const double other = piece.at(std::min(end, piece.to));
        const double left = std::min(one, other);
        const double right = std::max(one, other);
        const Line& line = lines_[piece.line];
        if (!boxes.empty() && last == piece.line && std::abs(boxes.back().right() - left) < 0.01)
            boxes.back().width = right - boxes.back().x;
        else
            boxes.push_back({left, line.top, right - left, line.bottom - line.top});
        last = piece.line;
    }
    return boxes;
}

}  // namespace tenter::desktop::row::editing
