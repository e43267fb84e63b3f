// Headings whose last line is one short word over a long run of widths. Common practice, no source.
#include "checks/phrases.h"
#include "checks/registry.h"
#include "layout/across.h"
#include "text/along.h"

namespace tenter::checks {

namespace {

using units::Linear;

/// The breaker's witness that also keeps where the last line starts.
struct LastLineWitness {
    text::LineFollower follower;
    std::uint32_t start = 0;
    bool fits(const Linear& width) { return follower.fits(width); }
    void line(const text::LineStart& from, const text::Opportunity& end, const Linear& width,
              const Linear& over) {
        start = from.cluster;
        follower.line(from, end, width, over);
    }
};

bool isOneShortWord(const text::Paragraph& paragraph, std::uint32_t first, double most) {
    const auto end = static_cast<std::uint32_t>(paragraph.clusters().size());
    // A word broken within itself is another matter.
    if (first == 0 || !paragraph.clusters()[first - 1].space) return false;
    if (paragraph.graphemes(first, end) > most) return false;
    for (std::uint32_t i = first; i < end; ++i) {
        const char16_t unit = paragraph.text()[paragraph.clusters()[i].begin];
        if (paragraph.clusters()[i].space || unit == u'\u00A0') return false;
    }
    return true;
}

/// The widths of one piece at which the last line is one short word.
void addLastWords(const Subject& subject, const PartSeen& part, const sweep::Piece& piece,
                  std::vector<sweep::Interval>& spans) {
    const layout::BandPlan& band = subject.row.band(piece.band);
    const layout::PartPlan& plan = band.cards[part.card].parts[part.part];
    const layout::RolePlan& role = band.roles[plan.role];
    // Balanced lines are about even.
    if (role.balance || piece.lines < 2) return;
    sweep::Stride stride;
    for (double at = piece.from; at < piece.to;) {
        const text::LinesAlong query =
            layout::textAcross(role, *plan.paragraph, layout::acrossAt(band, Linear(at, 1))).query;
        LastLineWitness witness{text::LineFollower(query.available, 0)};
        text::Breaker<Linear, LastLineWitness>(*plan.paragraph, query, witness).run();
        const double next = stride.next(at, witness.follower.until(), piece.to);
        if (isOneShortWord(*plan.paragraph, witness.start, subject.limits().shortWord))
            spans.push_back({at, next});
        at = next;
    }
}

std::string lastWordOf(const project::Copy& copy) {
    std::string text = project::plainText(copy);
    while (!text.empty() && (text.back() == ' ' || text.back() == '\n'))
        text.pop_back();
    const std::size_t space = text.find_last_of(" \n");
    return space == std::string::npos ? text : text.substr(space + 1);
}

}  // namespace

void checkLastWords(const Subject& subject, Findings& out) {
    Cause cause;
    for (const PartSeen& part : subject.parts) {
        if (!part.is("heading")) continue;
        // A break that the copy forces is meant.
        const project::Copy& copy = part.text->copy;
        if (std::ranges::find(copy, project::Run::Kind::Break, &project::Run::kind) != copy.end()) continue;
        std::vector<sweep::Interval> spans;
        for (const sweep::Piece& piece : part.pieces.pieces)
            addLastWords(subject, part, piece, spans);
        join(spans);
        const double length = lengthOf(spans);
        if (length < subject.limits().lastWordRun) continue;
        for (const sweep::Interval& span : spans)
            cause.add(part.card, part.part, span, length + (span.to - span.from) / 1e6);
    }
    if (!cause.any()) return;
    const auto& worst = std::get<project::TextPart>(subject.project.cards[cause.card].parts[cause.part]);
    tell(out, cause,
         {"last-word", Severity::Note, "common practice, no source",
          sentence(worstAndOthers(subject, cause)) + " ends in a line of one short word, " +
              inQuotation(lastWordOf(worst.copy)) + ", over " + px(std::floor(cause.worst), 0) +
              " of widths. A no-break space before it keeps it company.",
          ""});
}

}  // namespace tenter::checks
