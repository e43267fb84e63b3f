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
#include "units/whole_width.h"
#include "wording/say.h"

namespace tenter::solve {

namespace {

/// Sizes are shown with two decimals: a smaller difference cannot be seen. CSS px.
constexpr double visibleDifference = 0.005;

/// Where a user sees a limit.
struct Place {
    std::string text;        ///< `at 700 px`, `just above 590 px`
    std::string inViewport;  ///< `at 700 px viewport width`; a zoomed place names the browser zoom instead
    double width = 0;        ///< viewport width to show, CSS px
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
        Limit made;
        made.binding = binding;
        const Place place = placeOf(binding);
        made.width = place.width;
        made.place = place.text;
        made.text = limitText(binding);
        const std::string role = roleLabel(binding.wish.role);
        const std::string band = project::bandTitle(project_, variant, binding.band);
        //: A role, a band, and what limits the size of the role there
        made.fullText =
            answer_.variants.size() > 1
                ? wording::say("%1, variant %2, %3: %4",
                               {role, project::quotedTitle(project_, binding.variant), band, made.text})
                : wording::say("%1, %2: %3", {role, band, made.text});
        return made;
    }

    [[nodiscard]] Place placeOf(const Binding& binding) const {
        // A zoomed page is narrower than the window, and may be narrower than the project's range.
        const double zoom = binding.wish.kind->zoomFactor(binding.wish);
        if (zoom > 1 && binding.width < project_.leastWidth) {
            const double window = std::min(binding.width * zoom, project_.mostWidth);
            const std::string place = wording::say(
                "at %1 with %2 browser zoom", {units::px(window), units::percent(window / binding.width)});
            return {place, place, window};
        }
        const std::string width = units::px(binding.width);
        if (isJustAbove(binding))
            return {wording::say("just above %1", {width}),
                    wording::say("just above %1 viewport width", {width}),
                    std::min(binding.width + 1, project_.mostWidth)};
        return {wording::say("at %1", {width}), wording::say("at %1 viewport width", {width}), binding.width};
    }

    [[nodiscard]] std::string limitText(const Binding& binding) const {
        const Wish& wish = binding.wish;
        const std::string place = placeOf(binding).inViewport;
        //: A size, and the place where it is reached: 21.4 px at 931 px viewport width
        const std::string at = wording::say("%1 %2", {units::px(binding.size), place});
        const std::string wished = atItsWidths(condition(wish), wish);
        const auto own =
            wish.kind->limitText({wish, wished, at, place, binding.isLower, isAboveBreakpoint(binding),
                                  [&] { return limitingPlaces(binding); }});
        if (own) return *own;
        if (!binding.text.exists)
            return binding.isLower ? wording::say("at least %1, because of the wish “%2”.", {at, wished})
                                   : wording::say("at most %1, because of the wish “%2”.", {at, wished});
        std::string text = limitByText(binding, at, wished);
        if (!binding.sizeWithShorterWord) return text;
        return wording::say("%1 With three letters fewer in this word, the limit is %2.",
                            {text, units::px(*binding.sizeWithShorterWord)});
    }

    /// `at most 21.4 px at 931 px viewport width, because of the wish “one line”, limited by the word
    /// “Saltmarsh” (card 1).`
    [[nodiscard]] std::string limitByText(const Binding& binding, const std::string& at,
                                          const std::string& wished) const {
        const ConstraintTraits& kind = binding.wish.kind->traits;
        const std::string limiting = limitingText(binding);
        const double reserve = *project::effectiveWishes(project_).reserve;
        if (!kind.usesReserve || reserve <= 0)
            return kind.isLowerBound
                       ? wording::say("at least %1, because of the wish “%2”, limited by the %3.",
                                      {at, wished, limiting})
                       : wording::say("at most %1, because of the wish “%2”, limited by the %3.",
                                      {at, wished, limiting});
        const std::string share = units::percent(reserve);
        return kind.isLowerBound
                   ? wording::say(
                         "at least %1, because of the wish “%2” with a reserve of %3, limited by the %4.",
                         {at, wished, share, limiting})
                   : wording::say(
                         "at most %1, because of the wish “%2” with a reserve of %3, limited by the %4.",
                         {at, wished, share, limiting});
    }

    /// `word “Saltmarsh” (card 1)`, `text “Two slow miles…” (card 1)`.
    [[nodiscard]] std::string limitingText(const Binding& binding) const {
        const std::string card = std::to_string(binding.text.card + 1);
        if (!binding.word.empty())
            return wording::say("word %1 (card %2)", {checks::inQuotation(binding.word), card});
        const auto& part = project_.row().cards[binding.text.card].parts[binding.text.part];
        const std::string text = project::plainText(std::get<project::TextPart>(part).copy);
        return wording::say("text %1 (card %2)", {checks::inQuotation(text), card});
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
            std::string place = wording::say(
                "%1 in %2", {placeOf(one).inViewport, project::quotedTitle(project_, one.variant)});
            if (std::ranges::find(places, place) == places.end()) places.push_back(std::move(place));
        };
        for (const Binding& one : answer_.bindings)
            if (one.wish.role == binding.wish.role && !one.wish.kind->traits.couplesVariants) add(one);
        if (places.empty()) add(binding);
        return project::listed(places);
    }

    void addNotes() {
        if (answer_.isCancelled) table_.notes.push_back(wording::say("Solving was cancelled."));
        if (answer_.offGrid)
            table_.notes.push_back(wording::say(
                "Sizes that satisfy the wishes exist, but none on the size grid. Choose a finer grid."));
        for (const Wish& wish : answer_.violated)
            table_.notes.push_back(wording::say(
                "In the solved row, “%1” is still violated at some widths. Make this wish slightly "
                "stricter than you need.",
                {describe(wish)}));
        for (const SharedRamp& one : answer_.sharedRamps)
            table_.notes.push_back(wording::say(
                "%1 has one ramp %2 in every variant because the variants’ breakpoints differ there. "
                "With common breakpoints it can have one ramp per band.",
                {roleLabel(one.role), units::fromPxToPx(one.widths.from, one.widths.to)}));
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
                made.notes.push_back(wording::say(
                    "%1 follows the card width, and the variants have cards of different widths. Set "
                    "“Grows with” to “Viewport width”.",
                    {roleLabel(wish.role)}));
        if (conflict.reserveOnly)
            made.notes.push_back(
                wording::say("Without the reserve of %1 for longer text, these wishes can be satisfied.",
                             {units::percent(*project::effectiveWishes(project_).reserve)}));
        const std::vector<Relaxation> relaxations = usefulRelaxations(conflict);
        for (const Relaxation& relaxation : relaxations)
            made.resolutions.push_back(resolution(conflict, relaxation));
        made.advice =
            relaxations.empty() ? wording::say(
                                      "No readable size satisfies the other wishes. Shorten the text, or use "
                                      "fewer columns there.")
            : relaxations.size() == 1 ? wording::say("This change resolves the conflict:")
                                      : wording::say("Any one of these changes resolves the conflict:");
        if (!relaxations.empty() && relaxations.front().othersConflict)
            made.notes.push_back(wording::say(
                "There is a second conflict. Tenter shows it when you solve again after this change."));
        return made;
    }

    static Resolution resolution(const Conflict& conflict, const Relaxation& relaxation) {
        if (const auto advice = relaxation.wish.kind->advice()) return {relaxation, *advice, false};
        const std::string wish = describe(relaxation.wish);
        if (relaxation.removed) return {relaxation, wording::say("Remove “%1”", {wish}), true};
        const auto before = std::ranges::find_if(conflict.wishes, [&](const Wish& one) {
            const Wish& changed = relaxation.wish;
            return one.kind == changed.kind && one.role == changed.role && one.other == changed.other &&
                   one.firstWidth == changed.firstWidth && one.widths.to == changed.widths.to;
        });
        if (before == conflict.wishes.end())
            return {relaxation, wording::say("Change to “%1”", {wish}), true};
        return {relaxation, wording::say("Change “%1” to “%2”", {describe(*before), wish}), true};
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
    return row.band == 0 ? row.narrow.width : units::firstWholeWidthAbove(row.narrow.width);
}

std::string bandLabel(const SizeRow& row) {
    return wording::say("%1 (%2)", {units::pxRange(firstWholeWidth(row), row.wide.width),
                                    project::columnsLabel(row.columns)});
}

std::string sizeLabel(double size) {
    return units::figure(size);
}

}  // namespace tenter::solve
