// Greedy line breaking, as a template over its number type: at one width (double) or over a range of widths
// (units::Linear).
#pragma once

#include <algorithm>
#include <optional>
#include <vector>

#include "text/lines.h"

namespace tenter::text {

/// A line may exceed the available width by this much and still fit, in CSS px. It keeps rounding from
/// breaking the text of a box that is exactly as wide as the text, and is far below the grid of any browser
/// engine.
inline constexpr double fitTolerance = 1e-6;

/// The start of a line.
struct LineStart {
    std::uint32_t cluster = 0;
    double correction = 0;      ///< em, added to the line's width because of how it starts
    double insideLigature = 0;  ///< em; `Opportunity::insideLigature` of the cut at which the line starts
};

/// Breaks a paragraph greedily. CSS Text 3 § 5. `Policy` decides what fits and receives the lines:
///     bool fits(const Number& width)   true if a line of that width fits
///     void line(const LineStart& start, const Opportunity& end, const Number& width, const Number& over)
/// `over` is the width that did not fit and so ended the line, or 0.
template <class Number, class Policy>
class Breaker {
public:
    Breaker(const Paragraph& paragraph, const LineQueryOf<Number>& query, Policy& policy)
        : paragraph_(paragraph), query_(query), policy_(policy) {}

    void run() {
        const auto& opportunities = paragraph_.opportunities();
        LineStart start;
        for (std::size_t next = 0; next < opportunities.size();) {
            Choice line = lastThatFits(start, next);
            if (line.end == nullptr) line = cut(start, next, line.over);
            if (line.end == nullptr) line = {&opportunities[next], widthTo(start, opportunities[next])};
            end(start, *line.end, line.width, line.over);
            while (next < opportunities.size() && opportunities[next].cluster <= start.cluster)
                ++next;
        }
    }

private:
    /// The end of a line; null if there is none. `over` is the width that did not fit and so ended the line,
    /// or 0.
    struct Choice {
        const Opportunity* end = nullptr;
        Number width = 0;
        Number over = 0;
    };

    [[nodiscard]] Number widthTo(const LineStart& start, const Opportunity& opportunity) const {
        return lineWidth(paragraph_, query_, start.cluster, start.correction, opportunity);
    }
    [[nodiscard]] Number hyphenWidth(const Opportunity& at) const {
        return correctionWidth<Number>(paragraph_.hyphenAdvanceBefore(at.cluster), query_) +
               at.endLetterUnits * query_.letterSpacing;
    }
    /// `width` of the line from `start` to `at` with the rest of the ligature in which it ends.
    [[nodiscard]] Number withLigature(const LineStart& start, const Opportunity& at, Number width) const {
        if (start.cluster <= at.affected && at.fitCorrection != 0) width += at.fitCorrection * query_.size;
        return width;
    }
    static bool isHyphen(const Opportunity& at) { return at.kind == Opportunity::Kind::SoftHyphen; }
    /// True if the line from `start` does not end at `at`, because the engine does not look at the character
    /// before `start`.
    static bool isUnseen(const LineStart& start, const Opportunity& at) {
        return at.needsTwoBefore && at.cluster < start.cluster + 2;
    }

    static const Number& lesser(const Number& one, const Number& other) {
        return units::atStart(other) < units::atStart(one) ? other : one;
    }

    /// The last opportunity from index `next` on to which the line fits. A soft hyphen that does not fit does
    /// not end the search if the text before it fits.
    Choice lastThatFits(const LineStart& start, std::size_t next) {
        const auto& all = paragraph_.opportunities();
        Choice line;
        bool afterHyphen = false;
        std::size_t k = next;
        for (; k < all.size(); ++k) {
            if (isUnseen(start, all[k])) continue;
            const Number drawn = widthTo(start, all[k]);
            const Number width = withLigature(start, all[k], drawn);
            if (policy_.fits(width)) {
                line = {&all[k], drawn};
                afterHyphen = false;
                if (all[k].kind == Opportunity::Kind::Forced) return line;
                continue;
            }
            line.over = afterHyphen ? lesser(line.over, width) : width;
            if (!isHyphen(all[k]) || !policy_.fits(width - hyphenWidth(all[k]))) break;
            afterHyphen = true;
        }
        if (afterHyphen && paragraph_.reservesHyphen()) return lastBesideHyphen(start, next, k, line.over);
        return line;
    }

    /// The last of the opportunities [next, end) to which the line fits in the available width less that of
    /// a hyphen.
    Choice lastBesideHyphen(const LineStart& start, std::size_t next, std::size_t end, const Number& over) {
        const auto& all = paragraph_.opportunities();
        Choice line;
        line.over = over;
        for (; next < end; ++next) {
            if (isUnseen(start, all[next])) continue;
            const Number width = widthTo(start, all[next]);
            const Number besideHyphen = isHyphen(all[next]) ? width : width + hyphenWidth(all[next]);
            if (!policy_.fits(besideHyphen)) {
                line.over = lesser(over, besideHyphen);
                break;
            }
            line = {&all[next], width, over};
        }
        return line;
    }

    /// Ends a line inside a word that is wider than the line: at an overflow opportunity that the setting
    /// allows, or at a soft hyphen. `over` is the width of the line with the whole word.
    Choice cut(const LineStart& start, std::size_t next, const Number& over) {
        const auto& ends = paragraph_.opportunities();
        const auto& cuts = paragraph_.overflowOpportunities();
        std::size_t last = next;
        while (isHyphen(ends[last]) || isUnseen(start, ends[last]))
            ++last;
        const auto inside =
            std::upper_bound(cuts.begin(), cuts.end(), start.cluster,
                             [](std::uint32_t at, const Opportunity& o) { return at < o.cluster; });
        places_.clear();
        left_ = {next, last, static_cast<std::size_t>(inside - cuts.begin())};
        const bool neverCut = query_.overflowWrap == project::OverflowWrap::Normal;
        if (!hasPlace(0) || (neverCut && isHyphen(*places_.front()))) return {};
        if (places_.front()->breaksAtLineStart && places_.front()->cluster == start.cluster + 1) {
            const Number width = widthTo(start, *places_.front());
            if (policy_.fits(width)) return {places_.front(), width, over};
        }
        return paragraph_.reservesHyphen() ? cutBesideHyphen(start, over) : cutInOrder(start, over);
    }

    /// The opportunities that are not yet in `places_`: soft hyphens, and cuts inside the word.
    struct Left {
        std::size_t next = 0;    ///< index of the next soft hyphen
        std::size_t last = 0;    ///< index of the end of the word
        std::size_t inside = 0;  ///< index of the next cut
    };

    /// Makes sure that `places_` has a place with that index; false if there are not so many. A line of a
    /// word has far fewer places than the word, so they are listed only as far as the line is looked at.
    bool hasPlace(std::size_t index) {
        const auto& ends = paragraph_.opportunities();
        const auto& cuts = paragraph_.overflowOpportunities();
        const bool neverCut = query_.overflowWrap == project::OverflowWrap::Normal;
        while (places_.size() <= index) {
            if (left_.inside < cuts.size() && cuts[left_.inside].cluster < ends[left_.last].lineEnd) {
                const Opportunity& cut = cuts[left_.inside++];
                for (; left_.next < left_.last && ends[left_.next].cluster <= cut.cluster; ++left_.next)
                    places_.push_back(&ends[left_.next]);
                const bool allowed = !neverCut || cut.kind == Opportunity::Kind::OverflowingWord;
                if (allowed && (places_.empty() || places_.back()->cluster != cut.cluster))
                    places_.push_back(&cut);
            } else if (left_.next < left_.last) {
                places_.push_back(&ends[left_.next++]);
            } else {
                return false;
            }
        }
        return true;
    }

    /// Of `places_`, the last to which the line fits, or the first if there is none. A soft hyphen that
    /// comes first ends the line.
    Choice cutInOrder(const LineStart& start, const Number& over) {
        Choice line{nullptr, 0, over};
        for (std::size_t i = 0; hasPlace(i); ++i) {
            const Opportunity* place = places_[i];
            const Number drawn = widthTo(start, *place);
            const Number width = withLigature(start, *place, drawn);
            const bool fitting = policy_.fits(width);
            if (fitting || line.end == nullptr) {
                line.end = place;
                line.width = drawn;
                if (!fitting) line.over = lesser(line.over, width);
                if (isHyphen(*place)) return line;
            } else {
                line.over = lesser(line.over, width);
            }
            if (!fitting && !(isHyphen(*place) && policy_.fits(width - hyphenWidth(*place)))) return line;
        }
        return line;
    }

    /// The room for text that is cut: the available width less `taken` CSS px and, if `narrowed`, at least
    /// `less` CSS px less.
    struct Room {
        Number taken = 0;
        bool narrowed = false;
        Number less = 0;
    };
    /// The place at which a line is cut. `overflows`: the engine knows that the line does not fit, and so
    /// does not try again.
    struct Cut {
        Choice line;
        bool overflows = false;
    };

    bool fitsIn(const Room& room, const Number& width) {
        if (!policy_.fits(width + room.taken)) return false;
        return !room.narrowed || policy_.fits(width + room.taken + room.less);
    }

    /// The place of `places_` at which an engine that reserves hyphens cuts the line: as `cutBeside` says, or
    /// the first. If the line, reshaped, is then too wide, it is cut once more where it is at least 1 px
    /// narrower. Measured in Chromium 156.
    Choice cutBesideHyphen(const LineStart& start, const Number& over) {
        Cut cut = cutBeside(start, Room{}, over);
        if (cut.line.end == nullptr) {
            cut.line.end = places_.front();
            cut.line.width = widthTo(start, *cut.line.end);
        } else if (!cut.overflows && !policy_.fits(cut.line.width)) {
            const Number less = query_.available - cut.line.width + Number(1);
            const Choice again = cutBeside(start, Room{Number(0), true, less}, over).line;
            if (again.end != nullptr && again.end->cluster < cut.line.end->cluster &&
                policy_.fits(again.width))
                return again;
        }
        return cut.line;
    }

    /// The last of `places_` to which the line fits without a hyphen. If that is a soft hyphen, the last to
    /// which the line fits beside a hyphen.
    Cut cutBeside(const LineStart& start, Room room, const Number& over) {
        Cut cut = lastCut(start, room, over);
        if (cut.line.end == nullptr || !isHyphen(*cut.line.end) || cut.overflows) return cut;
        room.taken = hyphenWidth(*cut.line.end);
        return lastCut(start, room, over);
    }

    /// The last of `places_` to which the line fits, not counting hyphens. The engine finds it in the
    /// unbroken text, in which every place inside a ligature is at one end of the ligature. Only then does
    /// it reshape the end of the line, and goes back place by place until the reshaped line fits. It does not
    /// check a line without a position at which breaks change no glyph, unless it went back to it. If the
    /// line fits to no place, the one found first is kept. Measured in Chromium 156.
    Cut lastCut(const LineStart& start, const Room& room, const Number& over) {
        Cut cut{Choice{nullptr, 0, over}, false};
        const double inStart = start.correction - start.insideLigature;
        std::optional<std::size_t> last;
        for (std::size_t i = 0; hasPlace(i); ++i) {
            Opportunity unbroken = *places_[i];
            unbroken.endCorrection = 0;
            unbroken.endLetterUnits = 0;
            const Number width = lineWidth(paragraph_, query_, start.cluster,
                                           start.correction - unbroken.insideLigature, unbroken);
            if (!fitsIn(room, width)) {
                cut.line.over = width + room.taken;
                break;
            }
            last = i;
        }
        if (!last) return cut;
        const std::size_t found = *last;
        const Number unbrokenOver = cut.line.over;
        for (std::size_t i = found + 1; i-- > 0;) {
            const Opportunity& place = *places_[i];
            const bool joined = start.cluster > place.affected;
            Number reshaped = widthTo(start, place);
            if (isHyphen(place)) reshaped = reshaped - hyphenWidth(place);
            if (joined) reshaped = reshaped + inStart * query_.size;
            if (place.reshapes && !(joined && i == found) && !fitsIn(room, reshaped)) {
                cut.line.over = reshaped + room.taken;
                continue;
            }
            cut.line.end = &place;
            cut.line.width = widthTo(start, place);
            return cut;
        }
        cut.overflows = true;
        cut.line = {places_[found], widthTo(start, *places_[found]), unbrokenOver};
        return cut;
    }

    void end(LineStart& start, const Opportunity& at, const Number& width, const Number& over) {
        policy_.line(start, at, width, over);
        start = {at.cluster, at.startCorrection, at.insideLigature};
    }

    const Paragraph& paragraph_;
    const LineQueryOf<Number>& query_;
    Policy& policy_;
    std::vector<const Opportunity*> places_;  // where a word can be cut, in order, as far as was needed
    Left left_;
};

}  // namespace tenter::text
