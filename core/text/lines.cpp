#include "text/lines.h"

#include <algorithm>

namespace tenter::text {
namespace {

/// Far below any engine's grid: keeps a box that is exactly as wide as its text from breaking it.
constexpr double hair = 1e-6;

bool fits(double width, const LineQuery& query) {
    return width <= query.available + hair;
}

/// Where the next line starts and what its start costs.
struct Start {
    std::uint32_t cluster = 0;
    double correction = 0;
};

class Breaker {
public:
    Breaker(const Paragraph& paragraph, const LineQuery& query, std::vector<Line>& lines)
        : paragraph_(paragraph), query_(query), lines_(lines) {}

    void greedy() {
        const auto& opportunities = paragraph_.opportunities();
        Start start;
        for (std::size_t next = 0; next < opportunities.size();) {
            std::size_t chosen = opportunities.size();
            double chosenWidth = 0;
            double overWidth = 0;
            for (std::size_t k = next; k < opportunities.size(); ++k) {
                const double width = widthTo(start, opportunities[k]);
                if (!fits(width, query_)) {
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
                        uncut ? Opportunity::Kind::Rescue : Opportunity::Kind::Emergency))
                    continue;
                chosen = next;
                chosenWidth = overWidth;
                overWidth = 0;
            }
            add(start, opportunities[chosen], chosenWidth, overWidth);
            next = chosen + 1;
        }
    }

    void at(const std::vector<std::uint32_t>& ends) {
        Start start;
        for (const std::uint32_t end : ends) {
            const Opportunity& opportunity = paragraph_.opportunities()[end];
            add(start, opportunity, widthTo(start, opportunity), 0);
        }
    }

private:
    [[nodiscard]] double widthTo(const Start& start, const Opportunity& opportunity) const {
        return lineWidth(paragraph_, query_, start.cluster, start.correction, opportunity);
    }

    /// Ends a line inside a word that alone is too wide, at the last place of `kind` that fits, or at the
    /// first of Emergency; false if there is none.
    bool cut(Start& start, const Opportunity& wordEnd, Opportunity::Kind kind) {
        const auto& cuts = paragraph_.emergencies();
        auto from = std::upper_bound(cuts.begin(), cuts.end(), start.cluster,
                                     [](std::uint32_t at, const Opportunity& o) { return at < o.cluster; });
        const Opportunity* chosen = nullptr;
        double chosenWidth = 0;
        double overWidth = widthTo(start, wordEnd);
        for (; from != cuts.end() && from->cluster < wordEnd.lineEnd; ++from) {
            if (kind == Opportunity::Kind::Rescue && from->kind != kind) continue;
            const double width = widthTo(start, *from);
            const bool fitting = fits(width, query_);
            if (!fitting) overWidth = width;
            if (!fitting && (chosen != nullptr || kind == Opportunity::Kind::Rescue)) break;
            chosen = &*from;
            chosenWidth = width;
            if (!fitting) break;
        }
        if (chosen == nullptr) return false;
        add(start, *chosen, chosenWidth, overWidth);
        return true;
    }

    void add(Start& start, const Opportunity& end, double width, double overWidth) {
        Line line;
        line.first = start.cluster;
        line.end = std::max(end.lineEnd, start.cluster);
        line.next = end.cluster;
        line.hyphen = end.kind == Opportunity::Kind::SoftHyphen;
        line.width = width;
        if (width > 0 && fits(width, query_))
            line.slack = std::min(line.slack, (query_.available - width) / width);
        if (overWidth > 0) line.slack = std::min(line.slack, (overWidth - query_.available) / overWidth);
        line.slack = std::max(line.slack, 0.0);
        lines_.push_back(line);
        start = {end.cluster, end.startCorrection};
    }

    const Paragraph& paragraph_;
    const LineQuery& query_;
    std::vector<Line>& lines_;
};

}  // namespace

double lineWidth(const Paragraph& paragraph, const LineQuery& query, std::uint32_t first,
                 double startCorrection, const Opportunity& at) {
    const std::uint32_t end = std::max(at.lineEnd, first);
    double width = (paragraph.ems(first, end) + startCorrection + at.endCorrection) * query.size;
    if (query.letterSpacing != 0)
        width += (paragraph.letters(first, end) + at.endLetterUnits) * query.letterSpacing;
    if (query.wordSpacing != 0) width += paragraph.words(first, end) * query.wordSpacing;
    return width;
}

void breakLines(const Paragraph& paragraph, const LineQuery& query, const BreakProfile& profile,
                std::vector<Line>& lines) {
    if (paragraph.empty()) return;
    Breaker breaker(paragraph, query, lines);
    if (query.balance) {
        const std::vector<std::uint32_t> ends = profile.balanced(paragraph, query);
        if (!ends.empty()) {
            // How many lines there are is decided by greedy breaking, so its slack is theirs.
            const std::size_t first = lines.size();
            breaker.greedy();
            double slack = 1;
            for (std::size_t i = first; i < lines.size(); ++i)
                slack = std::min(slack, lines[i].slack);
            lines.resize(first);
            breaker.at(ends);
            for (std::size_t i = first; i < lines.size(); ++i)
                lines[i].slack = slack;
            return;
        }
    }
    breaker.greedy();
}

double maxContent(const Paragraph& paragraph, const LineQuery& query) {
    double widest = 0;
    std::uint32_t first = 0;
    for (const Opportunity& end : paragraph.opportunities()) {
        if (end.kind != Opportunity::Kind::Forced) continue;
        widest = std::max(widest, lineWidth(paragraph, query, first, 0, end));
        first = end.cluster;
    }
    return widest;
}

double minContent(const Paragraph& paragraph, const LineQuery& query) {
    double widest = 0;
    Start start;
    auto word = [&](const Opportunity& end) {
        widest = std::max(widest, lineWidth(paragraph, query, start.cluster, start.correction, end));
        start = {end.cluster, end.startCorrection};
    };
    if (query.overflowWrap != project::OverflowWrap::Anywhere) {
        for (const Opportunity& end : paragraph.opportunities())
            word(end);
        return widest;
    }
    // Only `anywhere` lets a word's cuts count for the narrowest width. CSS Text 3 § 5.5.
    auto cut = paragraph.emergencies().begin();
    for (const Opportunity& end : paragraph.opportunities()) {
        for (; cut != paragraph.emergencies().end() && cut->cluster < end.cluster; ++cut)
            word(*cut);
        word(end);
    }
    return widest;
}

}  // namespace tenter::text
