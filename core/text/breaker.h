// Greedy line breaking, as a template over its number type: at one width (double) or over a range of widths
// (units::Linear).
#pragma once

#include <algorithm>

#include "text/lines.h"

namespace tenter::text {

/// A line may exceed the available width by this much and still fit, in CSS px. It keeps rounding from
/// breaking the text of a box that is exactly as wide as the text, and is far below the grid of any browser
/// engine.
inline constexpr double fitTolerance = 1e-6;

/// The start of a line.
struct LineStart {
    std::uint32_t cluster = 0;
    double correction = 0;  ///< em, added to the line's width because of how it starts
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
            std::size_t chosen = opportunities.size();
            Number chosenWidth = 0;
            Number overWidth = 0;
            for (std::size_t k = next; k < opportunities.size(); ++k) {
                const Number width = widthTo(start, opportunities[k]);
                if (!policy_.fits(width)) {
                    overWidth = width;
                    break;
                }
                chosen = k;
                chosenWidth = width;
                if (opportunities[k].kind == Opportunity::Kind::Forced) break;
            }
            if (chosen == opportunities.size()) {
                const bool neverCut = query_.overflowWrap == project::OverflowWrap::Normal;
                if (cut(start, opportunities[next],
                        neverCut ? Opportunity::Kind::OverflowingWord : Opportunity::Kind::OverflowWrap))
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

    /// Ends a line inside a word that is wider than the line. Of the `OverflowingWord` opportunities, takes
    /// the last that fits; of all overflow opportunities (`OverflowWrap`), the last that fits, or the first
    /// if none fits. False if there is none.
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
            // Chromium 156 finds the last letter that fits before it reshapes the line. Reshaping can make
            // the line wider or narrower. In other engines both widths are the same.
            Opportunity unshaped = *from;
            unshaped.endCorrection = 0;
            const Number unshapedWidth = lineWidth(paragraph_, query_, start.cluster, 0, unshaped);
            const bool fitting = policy_.fits(width) && policy_.fits(unshapedWidth);
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
        policy_.line(start, at, width, over);
        start = {at.cluster, at.startCorrection};
    }

    const Paragraph& paragraph_;
    const LineQueryOf<Number>& query_;
    Policy& policy_;
};

}  // namespace tenter::text
