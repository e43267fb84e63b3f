// Nothing may stick out sideways of a page 320 px wide. WCAG 2.2 SC 1.4.10.
#include <algorithm>
#include <array>

#include "checks/phrases.h"
#include "checks/registry.h"

namespace tenter::checks {

namespace {

constexpr double reflowWidth = 320;
/// What engines' grids may make of widths that just fit.
constexpr double reflowGrid = 0.05;

/// How far something from `left` to `right` sticks out of the page.
double sticksOut(double left, double right, double page) {
    return std::max({0.0, -left, right - page});
}
double sticksOut(const layout::Box& box, double page) {
    return sticksOut(box.x, box.right(), page);
}

}  // namespace

void checkReflow(const Subject& subject, Findings& out) {
    const layout::Layout laid = layout::layOut(subject.row, reflowWidth);
    const double page = std::max(0.0, reflowWidth - subject.project.page.scrollbar.width);
    const auto told = [&](const Cause& cause, const std::string& what, const std::string& mend) {
        tell(out, cause,
             {"reflow", Severity::Error, "WCAG 2.2 SC 1.4.10",
              what + " sticks out of a page 320\u00A0px wide by " + px(cause.worst) +
                  ", so readers who zoom to 400 % must scroll sideways for every line: " + mend,
              ""});
    };
    Cause cause;
    // The outermost box that sticks out is the cause; what is in it follows.
    const double row = std::max(sticksOut(laid.container, page), sticksOut(laid.row, page));
    if (row > reflowGrid) {
        cause.add(0, 0, {reflowWidth, reflowWidth}, row);
        told(cause, "The row", "make its width a percentage, or give it a smaller least width.");
        return;
    }
    for (std::size_t card = 0; card < laid.cards.size(); ++card) {
        const layout::LaidCard& box = laid.cards[card];
        if (sticksOut(box.box, page) > reflowGrid)
            cause.add(card, 0, {reflowWidth, reflowWidth}, sticksOut(box.box, page));
    }
    if (cause.any()) {
        told(cause, "A card", "fewer columns or smaller gaps there mend it.");
        return;
    }
    for (std::size_t card = 0; card < laid.cards.size(); ++card) {
        for (std::size_t i = 0; i < laid.cards[card].partCount; ++i) {
            const layout::LaidPart& part = laid.parts[laid.cards[card].firstPart + i];
            double most = sticksOut(part.box, page);
            for (std::size_t l = part.firstLine; l < part.firstLine + part.lineCount; ++l) {
                const layout::LaidLine& line = laid.lines[l];
                most = std::max(most, sticksOut(line.x, line.x + line.line.width, page));
            }
            if (most > reflowGrid) cause.add(card, i, {reflowWidth, reflowWidth}, most);
        }
    }
    if (cause.any())
        told(cause, sentence(worstAndOthers(subject, cause)),
             "let its words break, or make its type smaller there.");
}

}  // namespace tenter::checks
