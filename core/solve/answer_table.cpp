#include "solve/answer_table.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "checks/phrases.h"
#include "layout/inline_sizes.h"
#include "project/cascade.h"
#include "project/titles.h"
#include "project/wording.h"
#include "solve/constraint.h"
#include "units/quantities.h"

namespace tenter::solve {

namespace {

/// Sizes are shown with two decimals: a smaller difference cannot be seen. CSS px.
constexpr double visibleDifference = 0.005;

/// Where a user sees a limit.
struct Place {
    std::string text;  ///< `at 700 px`, `just above 590 px`
    double width = 0;  ///< viewport width to show, CSS px
    bool zoomed = false;
    /// `at 700 px viewport width`; a zoomed place names the browser zoom instead.
    [[nodiscard]] std::string inViewport() const { return zoomed ? text : text + " viewport width"; }
};

class TableMaker {
public:
    TableMaker(const project::Project& project, const Answer& answer, text::ParagraphStore& store)
        : project_(project), answer_(answer), store_(store) {}

    AnswerTable make() {
        table_.variants = answer_.variants;
        table_.isUnchanged = answer_.solved && *answer_.solved == project_;
        if (answer_.solved) addRows();
        for (const Binding& binding : answer_.bindings)
            addLimit(binding);
        addNotes();
        if (!answer_.conflict.wishes.empty()) table_.conflict = conflictTable();
        return std::move(table_);
    }

private:
    void addRows() {
        for (const std::size_t variant : answer_.variants) {
            const layout::PreparedRow before(project_, variant, store_, text::defaultProfile());
            const layout::PreparedRow after(*answer_.solved, variant, store_, text::defaultProfile());
            for (const std::string& role : before.roles()) {
                double from = project_.leastWidth;
                for (std::size_t band = 0; band < before.bandCount() && from < project_.mostWidth; ++band) {
                    const std::optional<double> upTo = project_.row().variants[variant].bands[band].upTo;
                    const double to = std::min(upTo.value_or(project_.mostWidth), project_.mostWidth);
                    if (to <= from) continue;
                    SizeRow row;
                    row.variant = variant;
                    row.role = role;
                    row.band = band;
                    row.columns = before.band(band).columns;
                    const auto at = [&](double width) {
                        return EndSize{width, sizeAt(before, band, role, width),
                                       sizeAt(after, band, role, width)};
                    };
                    row.narrow = at(from);
                    row.wide = at(to);
                    table_.rows.push_back(std::move(row));
                    from = to;
                }
            }
        }
    }

    /// Size of `role` by its exact ramp in `band`, at viewport width `width`, CSS px.
    static double sizeAt(const layout::PreparedRow& row, std::size_t band, const std::string& role,
                         double width) {
        const layout::IntervalPlan& plan = row.intervalIn(band, width);
        const project::TextStyle& style = *plan.band->settings.text.find(role);
        const auto basis = layout::inlineSizesAt(plan, width).basis;
        return style.size.value_or(units::Ramp())
            .sizeAt(style.follow == project::Follow::Card ? basis.cqi : basis.vw);
    }

    /// Adds the limit to its row; to the role's first row if its band is outside the project's range.
    void addLimit(const Binding& binding) {
        const auto of = [&](bool inBand) {
            return std::ranges::find_if(table_.rows, [&](const SizeRow& row) {
                return row.variant == binding.variant && row.role == binding.wish.role &&
                       (!inBand || row.band == binding.band);
            });
        };
        auto row = of(true);
        if (row == table_.rows.end()) row = of(false);
        if (row == table_.rows.end()) return;
        row->limits.push_back(limit(binding));
    }

    Limit limit(const Binding& binding) const {
        const project::Variant& variant = project_.row().variants[binding.variant];
        const std::string inVariant =
            answer_.variants.size() > 1 ? ", variant " + project::quotedTitle(project_, binding.variant) : "";
        Limit made;
        made.binding = binding;
        const Place place = placeOf(binding);
        made.width = place.width;
        made.place = place.text;
        made.text = limitText(binding);
        made.fullText = roleLabel(binding.wish.role) + inVariant + ", " +
                        project::bandTitle(project_, variant, binding.band) + ": " + made.text;
        return made;
    }

    [[nodiscard]] Place placeOf(const Binding& binding) const {
        // A zoomed page is narrower than the window, and may be narrower than the project's range.
        const double zoom = binding.wish.kind->zoomFactor(binding.wish);
        if (zoom > 1 && binding.width < project_.leastWidth) {
            const double window = std::min(binding.width * zoom, project_.mostWidth);
            return {"at " + units::px(window) + " with " + units::percent(window / binding.width) +
                        " browser zoom",
                    window, true};
        }
        if (isJustAbove(binding))
            return {"just above " + units::px(binding.width),
                    std::min(binding.width + 1, project_.mostWidth)};
        return {"at " + units::px(binding.width), binding.width};
    }

    [[nodiscard]] std::string limitText(const Binding& binding) const {
        const Wish& wish = binding.wish;
        const ConstraintTraits& kind = wish.kind->traits;
        const std::string place = placeOf(binding).inViewport();
        const std::string at = units::px(binding.size) + " " + place;
        const std::string wished = condition(wish) + atItsWidths(wish);
        const std::string because = ", because of the wish “" + wished + "”";
        const auto own =
            wish.kind->limitText({wish, wished, at, place, because, binding.isLower,
                                  isAboveBreakpoint(binding), [&] { return limitingPlaces(binding); }});
        if (own) return *own;
        if (!binding.text.exists) return (binding.isLower ? "at least " : "at most ") + at + because + ".";
        std::string text = (kind.isLowerBound ? "at least " : "at most ") + at + because;
        const double reserve = *project::effectiveWishes(project_).reserve;
        if (kind.usesReserve && reserve > 0) text += " with a reserve of " + units::percent(reserve);
        text += ", limited by the " + limitingText(binding) + ".";
        if (binding.sizeWithShorterWord)
            text += " With three letters fewer in this word, the limit is " +
                    units::px(*binding.sizeWithShorterWord) + ".";
        return text;
    }

    /// `word “Saltmarsh” (card 1)`, `text “Two slow miles…” (card 1)`.
    [[nodiscard]] std::string limitingText(const Binding& binding) const {
        const std::string card = " (card " + std::to_string(binding.text.card + 1) + ")";
        if (!binding.word.empty()) return "word " + checks::inQuotation(binding.word) + card;
        const auto& part = project_.row().cards[binding.text.card].parts[binding.text.part];
        return "text " + checks::inQuotation(project::plainText(std::get<project::TextPart>(part).copy)) +
               card;
    }

    /// The width of a breakpoint belongs to the band below it.
    [[nodiscard]] bool isAboveBreakpoint(const Binding& binding) const {
        return project::bandAt(project_.row().variants[binding.variant], binding.width) < binding.band;
    }
    /// The range of a wish starts above its lower width, too.
    [[nodiscard]] bool isJustAbove(const Binding& binding) const {
        return isAboveBreakpoint(binding) ||
               (!binding.wish.everywhere && binding.width == binding.wish.widths.from &&
                binding.width > project_.leastWidth);
    }

    /// Where the role is limited in any variant: `at 320 px in “one” and just above 700 px in “few”`.
    [[nodiscard]] std::string limitingPlaces(const Binding& binding) const {
        std::vector<std::string> places;
        const auto add = [&](const Binding& one) {
            std::string place =
                placeOf(one).inViewport() + " in " + project::quotedTitle(project_, one.variant);
            if (std::ranges::find(places, place) == places.end()) places.push_back(std::move(place));
        };
        for (const Binding& one : answer_.bindings)
            if (one.wish.role == binding.wish.role && !one.wish.kind->traits.couplesVariants) add(one);
        if (places.empty()) add(binding);
        return project::listed(places);
    }

    void addNotes() {
        if (answer_.isCancelled) table_.notes.emplace_back("Solving was cancelled.");
        if (answer_.offGrid)
            table_.notes.emplace_back(
                "Sizes that satisfy the wishes exist, but none on the size grid. Choose a "
                "finer grid.");
        for (const Wish& wish : answer_.violated)
            table_.notes.push_back(
                "In the solved row, “" + describe(wish) +
                "” is still violated at some widths. Make this wish slightly stricter than you need.");
        for (const SharedRamp& one : answer_.sharedRamps)
            table_.notes.push_back(roleLabel(one.role) + " has one ramp " +
                                   units::fromPxToPx(one.widths.from, one.widths.to) +
                                   " in every variant because the variants’ breakpoints differ there. With "
                                   "common breakpoints it can have one ramp per band.");
    }

    [[nodiscard]] ConflictTable conflictTable() const {
        const Conflict& conflict = answer_.conflict;
        ConflictTable made;
        for (const Wish& wish : conflict.wishes)
            made.wishes.push_back(describe(wish));
        for (const Binding& place : conflict.places)
            if (place.text.exists) made.places.push_back(limit(place));
        for (const Wish& wish : conflict.wishes)
            if (wish.kind->traits.couplesVariants && followsCard(wish.role))
                made.notes.push_back(
                    roleLabel(wish.role) +
                    " follows the card width, and the variants have cards of different widths. "
                    "Set “Grows with” to “Viewport width”.");
        if (conflict.reserveOnly)
            made.notes.push_back("Without the reserve of " +
                                 units::percent(*project::effectiveWishes(project_).reserve) +
                                 " for longer text, these wishes can be satisfied.");
        const std::vector<Relaxation> relaxations = usefulRelaxations(conflict);
        for (const Relaxation& relaxation : relaxations)
            made.resolutions.push_back(resolution(conflict, relaxation));
        made.advice = relaxations.empty()
                          ? "No readable size satisfies the other wishes. Shorten the text, or use fewer "
                            "columns there."
                      : relaxations.size() == 1 ? "This change resolves the conflict:"
                                                : "Any one of these changes resolves the conflict:";
        if (!relaxations.empty() && relaxations.front().othersConflict)
            made.notes.emplace_back(
                "There is a second conflict. Tenter shows it when you solve again after this change.");
        return made;
    }

    static Resolution resolution(const Conflict& conflict, const Relaxation& relaxation) {
        if (const auto advice = relaxation.wish.kind->advice()) return {relaxation, *advice, false};
        const std::string wish = "“" + describe(relaxation.wish) + "”";
        if (relaxation.removed) return {relaxation, "Remove " + wish, true};
        const auto before = std::ranges::find_if(conflict.wishes, [&](const Wish& one) {
            const Wish& changed = relaxation.wish;
            return one.kind == changed.kind && one.role == changed.role && one.other == changed.other &&
                   one.firstWidth == changed.firstWidth && one.widths.to == changed.widths.to;
        });
        const std::string change =
            before == conflict.wishes.end() ? "Change to " : "Change “" + describe(*before) + "” to ";
        return {relaxation, change + wish, true};
    }

    [[nodiscard]] bool followsCard(const std::string& role) const {
        for (const project::Variant& variant : project_.row().variants)
            for (std::size_t band = 0; band < variant.bands.size(); ++band)
                if (project::resolve(project_, variant, band).text.find(role)->follow ==
                    project::Follow::Card)
                    return true;
        return false;
    }

    const project::Project& project_;
    const Answer& answer_;
    text::ParagraphStore& store_;
    AnswerTable table_;
};

}  // namespace

bool SizeRow::isChanged() const {
    return std::abs(narrow.after - narrow.before) >= visibleDifference ||
           std::abs(wide.after - wide.before) >= visibleDifference;
}

AnswerTable answerTable(const project::Project& project, const Answer& answer, text::ParagraphStore& store) {
    return TableMaker(project, answer, store).make();
}

double firstWholeWidth(const SizeRow& row) {
    return row.band == 0 ? row.narrow.width : std::floor(row.narrow.width) + 1;
}

std::string bandLabel(const SizeRow& row) {
    return units::pxRange(firstWholeWidth(row), row.wide.width) + " (" + project::columnsLabel(row.columns) +
           ")";
}

std::string sizeLabel(double size) {
    return units::figure(size);
}

}  // namespace tenter::solve
