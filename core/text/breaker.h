// Greedy line breaking, in whatever numbers: at one width, or along a stretch of widths.
#pragma once

#include <algorithm>

#include "text/lines.h"

namespace tenter::text {

/// Far below any engine's grid: keeps a box that is exactly as wide as its text from breaking it. CSS px.
inline constexpr double fitTolerance = 1e-6;

/// Where a line starts and what its start costs.
struct LineStart {
    std::uint32_t cluster = 0;
    double correction = 0;  ///< em
};

/// Breaks a paragraph greedily. CSS Text 3 § 5. What a width is and what becomes of a line is `Witness`'s
/// matter, which has
///     bool fits(const Number& width)   whether a line of that width fits
///     void line(const LineStart& start, const Opportunity& end, const Number& width, const Number& over)
/// where `over` is the width that did not fit and so ended the line, or 0.
template <class Number, class Witness>
class Breaker {
public:
    Breaker(const Paragraph& paragraph, const LineQueryOf<Number>& query, Witness& witness)
        : paragraph_(paragraph), query_(query), witness_(witness) {}

    void run() {
        const auto& opportunities = paragraph_.opportunities();
        LineStart start;
        for (std::size_t next = 0; next < opportunities.size();) {
            std::size_t chosen = opportunities.size();
            Number chosenWidth = 0;
            Number overWidth = 0;
            for (std::size_t k = next; k < opportunities.size(); ++k) {
                const Number width = widthTo(start, opportunities[k]);
                if (!witness_.fits(width)) {
                    overWidth = width;
                    break;
                }
                chosen = k;
                chosenWidth = width;
                if (opportunities[k].kind == Opportunity::Kind::Forced) break;
            }
            if (chosen == opportunities.size()) {
                const bool uncut = query_.overflowWrap == project::OverflowWrap::Normal;
                if (cut(start, opportunities[next],
                        uncut ? Opportunity::Kind::OverflowingWord : Opportunity::Kind::OverflowWrap))
                    continue;
                chosen = next;
                chosenWidth = overWidth;
                overWidth = 0;
            }
            end(start, opportunities[chosen], chosenWidth, overWidth);
            next = chosen + 1;
        }
    }

private:
    [[nodiscard]] Number widthTo(const LineStart& start, const Opportunity& opportunity) const {
        return lineWidth(paragraph_, query_, start.cluster, start.correction, opportunity);
    }

    /// Ends a line inside a word that alone is too wide, at the last place of `kind` that fits, or at the
    /// first of Emergency; false if there is none.
    bool cut(LineStart& start, const Opportunity& wordEnd, Opportunity::Kind kind) {
        const auto& cuts = paragraph_.overflowOpportunities();
        auto from = std::upper_bound(cuts.begin(), cuts.end(), start.cluster,
                                     [](std::uint32_t at, const Opportunity& o) { return at < o.cluster; });
        const Opportunity* chosen = nullptr;
        Number chosenWidth = 0;
        Number overWidth = widthTo(start, wordEnd);
        for (; from != cuts.end() && from->cluster < wordEnd.lineEnd; ++from) {
            if (kind == Opportunity::Kind::OverflowingWord && from->kind != kind) continue;
            const Number width = widthTo(start, *from);
            const bool fitting = witness_.fits(width);
            if (!fitting) overWidth = width;
            if (!fitting && (chosen != nullptr || kind == Opportunity::Kind::OverflowingWord)) break;
            chosen = &*from;
            chosenWidth = width;
            if (!fitting) break;
        }
        if (chosen == nullptr) return false;
        end(start, *chosen, chosenWidth, overWidth);
        return true;
    }

    void end(LineStart& start, const Opportunity& at, const Number& width, const Number& over) {
        witness_.line(start, at, width, over);
        start = {at.cluster, at.startCorrection};
    }

    const Paragraph& paragraph_;
    const LineQueryOf<Number>& query_;
    Witness& witness_;
};

}  // namespace tenter::text
