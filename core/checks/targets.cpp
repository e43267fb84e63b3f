// Is what is pressed large enough. WCAG 2.2 SC 2.5.8 with its exceptions for spacing and for links within
// sentences; SC 2.5.5.
#include <algorithm>
#include <cmath>

#include "checks/phrases.h"
#include "checks/registry.h"
#include "layout/prepared.h"

namespace tenter::checks {

namespace {

/// WCAG 2.2 SC 2.5.8. CSS px.
constexpr double targetSide = 24;
/// What engines' grids cut off a distance made of padding, line and margin, 1/60 px each. CSS px.
constexpr double offGrid = 0.05;

using layout::Box;
using sweep::Interval;

/// What can be pressed of a part that is a link as a whole: a button's box; of other text its line boxes as
/// high as the face's letters.
Box targetBox(const layout::LaidPart& part, const layout::Layout& laid, bool button) {
    if (button || part.lineCount == 0) return part.box;
    Box box{laid.lines[part.firstLine].x, part.box.y + part.border + part.padding.top, 0, 0};
    for (std::size_t l = part.firstLine; l < part.firstLine + part.lineCount; ++l) {
        const layout::LaidLine& line = laid.lines[l];
        const double right = std::max(box.right(), line.x + line.line.width);
        box.x = std::min(box.x, line.x);
        box.width = right - box.x;
        box.height += line.extent.above + line.extent.below;
    }
    const text::FacePtr& face = part.paragraph->strut();
    const double letters = face ? (face->ascent() + face->descent()) * part.fontSize : part.fontSize;
    box.y += (part.lineHeight - letters) / 2;
    box.height += letters - part.lineHeight;
    return box;
}

double smaller(const Box& box) {
    return std::min(box.width, box.height);
}

double distanceTo(const Box& box, double x, double y) {
    const double dx = std::max({box.x - x, 0.0, x - box.right()});
    const double dy = std::max({box.y - y, 0.0, y - box.bottom()});
    return std::hypot(dx, dy);
}

class TargetsSeen {
public:
    explicit TargetsSeen(const Subject& subject) : subject_(subject), least_(targetSide) {}

    void look(Findings& out) {
        for (const PartSeen& part : subject_.parts)
            if (part.text != nullptr && isLink(*part.text)) follow(part);
        const std::string where = wherePressed(small_);
        tell(out, small_,
             {"target", Severity::Error, "WCAG 2.2 SC 2.5.8",
              where + " and closer to its neighbour than that makes up for: at least " + px(least_) +
                  " square, or as much room around it, keeps fingers from missing. More padding mends it.",
              "small"});
        tell(out, modest_,
             {"target", Severity::Note, "WCAG 2.2 SC 2.5.5 (AAA)",
              wherePressed(modest_) + "; " + px(subject_.limits().comfortTarget) +
                  " square is comfortable for every hand. More padding gives it.",
              "modest"});
    }

private:
    [[nodiscard]] std::string wherePressed(const Cause& cause) const {
        if (!cause.any()) return {};
        return sentence(worstAndOthers(subject_, cause)) + " can be pressed on only " + figure(-cause.worst) +
               " px at its smallest, " + atWidths(subject_, cause.there);
    }

    [[nodiscard]] bool cardIsTarget(const PartSeen& part, std::size_t band) const {
        return part.is("button") && subject_.row.settings(band).card.linked.value_or(false);
    }

    void follow(const PartSeen& part) {
        for (const sweep::Piece& piece : part.pieces.pieces) {
            if (cardIsTarget(part, piece.band)) continue;
            // Just past the piece's start, which may be the last width of the band before.
            const double start = piece.from + std::min(1e-6, (piece.to - piece.from) / 2);
            const double first = sizeAt(part, start);
            // Just before its end: by rounding that may lie in the next piece already.
            const double last = sizeAt(part, piece.to - (start - piece.from));
            const units::Linear size(first, (last - first) / (piece.to - piece.from));
            const auto under = [&](double limit) {
                return whereAbove(limit - offGrid - size, piece.from, piece.to);
            };
            // Of equally small ones the longest run is named.
            const double longer = (piece.to - piece.from) * 1e-10;
            const auto small = under(least_);
            const auto modest = under(subject_.limits().comfortTarget);
            if (small && crowded(part, *small)) {
                small_.add(part.card, part.part, *small, -std::min(first, last) + longer,
                           first < last ? small->from : small->to);
                continue;
            }
            if (modest)
                modest_.add(part.card, part.part, *modest, -std::min(first, last) + longer,
                            first < last ? modest->from : modest->to);
        }
    }

    double sizeAt(const PartSeen& part, double width) {
        layout::layOutAlone(subject_.row, width, part.card, laid_, asked_);
        return smaller(targetBox(laid_.parts[part.part], laid_, part.is("button")));
    }

    /// True if at the span's ends or middle a circle about the target touches another target, or the circle
    /// of another that is too small.
    bool crowded(const PartSeen& part, const Interval& span) {
        const double start = span.from + std::min(1e-6, (span.to - span.from) / 2);
        for (const double width : {start, (span.from + span.to) / 2, span.to})
            if (crowdedAt(part, width)) return true;
        return false;
    }

    bool crowdedAt(const PartSeen& part, double width) {
        layout::layOut(subject_.row, width, laid_);
        const auto boxOf = [&](const PartSeen& p) {
            return targetBox(laid_.parts[laid_.cards[p.card].firstPart + p.part], laid_, p.is("button"));
        };
        const Box own = boxOf(part);
        const double x = own.x + own.width / 2;
        const double y = own.y + own.height / 2;
        return std::ranges::any_of(subject_.parts, [&](const PartSeen& other) {
            if (other.text == nullptr || !isLink(*other.text)) return false;
            if (other.card == part.card && other.part == part.part) return false;
            const Box box = boxOf(other);
            if (distanceTo(box, x, y) < least_ / 2 - offGrid) return true;
            const double between = std::hypot(box.x + box.width / 2 - x, box.y + box.height / 2 - y);
            return smaller(box) < least_ - offGrid && between < least_ - offGrid;
        });
    }

    const Subject& subject_;
    double least_;
    Cause small_, modest_;
    layout::Layout laid_;
    layout::Asked asked_;
};

}  // namespace

void checkTargets(const Subject& subject, Findings& out) {
    TargetsSeen(subject).look(out);
}

}  // namespace tenter::checks
