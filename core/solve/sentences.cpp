#include <algorithm>

#include "checks/phrases.h"
#include "project/cascade.h"
#include "project/titles.h"
#include "project/wording.h"
#include "solve/solve.h"
#include "units/number.h"

namespace tenter::solve {

namespace {

/// Other places of a wish that are told; the rest is counted.
constexpr std::size_t mostOthers = 6;

/// Where a reader meets a binding, and what to call it.
struct Whereabouts {
    std::string words;  ///< `700 px`, `just past 590 px`
    std::string width;  ///< the same without what ties it to a sentence
    double at = 0;
};

Whereabouts spotOf(const project::Project& project, const Binding& binding) {
    // Readers who zoom have a page narrower than any that is looked at.
    if (binding.demand.kind == Kind::Zoom && binding.width < project.leastWidth) {
        const double window = std::min(binding.width * binding.demand.value, project.mostWidth);
        const double zoom = window / binding.width;
        const std::string there = checks::px(window) + " zoomed to " + checks::percent(zoom);
        return {"at " + there, there, window};
    }
    // A breakpoint's own width belongs to the band below it.
    const project::Variant& variant = project.variants[binding.variant];
    if (project::bandAt(variant, binding.width) < binding.band) {
        const std::string there = "just past " + checks::px(binding.width);
        return {there, there, std::min(binding.width + 1, project.mostWidth)};
    }
    const std::string there = checks::px(binding.width);
    return {"at " + there, there, binding.width};
}

std::string inVariant(const project::Project& project, std::size_t variant) {
    return project.variants.size() > 1 ? " in " + project::quotedTitle(project, variant) : std::string();
}

/// A sentence as it grows, with the places it names.
class Sentence {
public:
    explicit Sentence(const project::Project& project) : project_(project) {}

    Sentence& add(std::string_view text) {
        told_.says += text;
        return *this;
    }
    Sentence& place(const Binding& binding, const std::string& words, std::string says = {}) {
        told_.places.push_back(
            {told_.says.size(), words.size(), binding, spotOf(project_, binding).at, std::move(says)});
        told_.says += words;
        return *this;
    }
    /// With where it is, in full.
    Sentence& where(const Binding& binding, bool first = false) {
        const std::string words = spotOf(project_, binding).words;
        place(binding, first ? checks::sentence(words) : words);
        return add(inVariant(project_, binding.variant));
    }
    Told take() {
        for (ToldPlace& one : told_.places)
            if (one.says.empty()) one.says = told_.says;
        return std::move(told_);
    }

private:
    const project::Project& project_;
    Told told_;
};

bool isFloor(Kind kind) {
    return kind == Kind::MostMeasure || kind == Kind::LeastSize;
}

/// What decides by copy: which, and how far it lets type go.
void addCopy(Sentence& text, const project::Project& project, const Binding& binding) {
    const double reserve = *project::wishesOf(project).reserve;
    if (binding.demand.kind == Kind::Lines && reserve > 0)
        text.add(", with ").add(checks::percent(reserve)).add(" more copy");
    text.add(", ");
    if (!binding.word.empty()) text.add(checks::inQuotation(binding.word)).add(" in ");
    text.add(checks::named(project, binding.by.card, binding.by.part));
    text.add(isFloor(binding.demand.kind) ? " allows no less than " : " allows no more than ");
    text.add(checks::inPx(checks::figure(binding.size, 2)));
    if (binding.withShorter)
        text.add("; with three letters less in it, ")
            .add(checks::inPx(checks::figure(*binding.withShorter, 2)));
}

/// How one place decides, without a full stop.
void addBinding(Sentence& text, const project::Project& project, const Binding& binding) {
    text.add(checks::sentence(said(binding.demand))).add(": ");
    const std::string size = checks::inPx(checks::figure(binding.size, 2));
    if (binding.by.copy) {
        text.where(binding);
        addCopy(text, project, binding);
        return;
    }
    switch (binding.demand.kind) {
        case Kind::Zoom:
            text.add("no size may be more than " + units::number(binding.demand.value / 2, 2) +
                     " times the smallest, and the largest, " + size + " ");
            text.where(binding).add(", is just that");
            break;
        case Kind::WithColumn:
            text.add("it keeps the size at " + size + " ");
            text.where(binding).add(
                ", where the column changes; a breakpoint elsewhere, or leaving the wish out, frees it");
            break;
        case Kind::Growth:
            text.add("no ramp may be steeper than the one ");
            text.where(binding).add(", which has " + size + " there");
            break;
        default:
            text.add("reached ");
            text.where(binding).add(", with " + size);
            break;
    }
}

/// The other places where the same wish decides, variant by variant.
void addOthers(Sentence& text, const project::Project& project, const std::vector<Binding>& others) {
    if (others.empty()) return;
    text.add(" It decides ");
    const std::size_t shown = std::min(others.size(), mostOthers);
    for (std::size_t i = 0; i < shown; ++i) {
        const Binding& one = others[i];
        const bool last = i + 1 == others.size();
        const bool another = i == 0 || others[i - 1].variant != one.variant;
        if (i > 0 && another) text.add(inVariant(project, others[i - 1].variant));
        if (i > 0) text.add(last ? " and " : ", ");
        const Whereabouts spot = spotOf(project, one);
        Sentence alone(project);
        addBinding(alone, project, one);
        text.place(one, another ? spot.words : spot.width, alone.add(".").take().says);
    }
    text.add(inVariant(project, others[shown - 1].variant));
    if (shown < others.size()) text.add(" and at " + std::to_string(others.size() - shown) + " more widths");
    text.add(" too.");
    // Unnamed, they are places all the same.
    for (std::size_t i = shown; i < others.size(); ++i) {
        Sentence alone(project);
        addBinding(alone, project, others[i]);
        text.place(others[i], {}, alone.add(".").take().says);
    }
}

/// Of type that is to be the same in every variant: where it is decided for all of them.
Told sharedSentence(const project::Project& project, const Answer& answer, const Binding& binding) {
    std::vector<Binding> places;
    for (const Binding& one : answer.bindings) {
        if (one.demand.role != binding.demand.role || one.demand.kind == Kind::SameInVariants) continue;
        const auto isThere = [&](const Binding& other) {
            return other.variant == one.variant && spotOf(project, other).words == spotOf(project, one).words;
        };
        if (std::ranges::none_of(places, isThere)) places.push_back(one);
    }
    Sentence text(project);
    text.add(checks::sentence(said(binding.demand))).add(": ");
    if (places.empty()) {
        text.add("reached ").where(binding);
        return text.add(", with " + checks::inPx(checks::figure(binding.size, 2)) + ".").take();
    }
    text.add("decided ");
    for (std::size_t i = 0; i < places.size(); ++i) {
        if (i > 0) text.add(i + 1 == places.size() ? " and " : ", ");
        text.where(places[i]);
    }
    return text.add(".").take();
}

bool isSame(const Demand& a, const Demand& b) {
    return a.kind == b.kind && a.role == b.role && a.other == b.other && a.value == b.value &&
           a.widths.from == b.widths.from && a.widths.to == b.widths.to;
}

/// One sentence a wish that decides, for its tightest place; then its other places, variant by variant.
std::vector<Told> decided(const project::Project& project, const Answer& answer) {
    std::vector<Told> all;
    std::vector<const Binding*> done;
    for (const Binding& binding : answer.bindings) {
        const auto isIt = [&](const Binding* one) { return isSame(one->demand, binding.demand); };
        if (std::ranges::any_of(done, isIt)) continue;
        done.push_back(&binding);
        if (binding.demand.kind == Kind::SameInVariants) {
            all.push_back(sharedSentence(project, answer, binding));
            continue;
        }
        std::vector<Binding> places;
        std::ranges::copy_if(answer.bindings, std::back_inserter(places),
                             [&](const Binding& one) { return isSame(one.demand, binding.demand); });
        const double sign = isFloor(binding.demand.kind) ? -1 : 1;
        const auto tightest =
            std::ranges::min_element(places, {}, [&](const Binding& one) { return sign * one.size; });
        std::rotate(places.begin(), tightest, tightest + 1);
        Sentence text(project);
        addBinding(text, project, places.front());
        text.add(".");
        places.erase(places.begin());
        // Once for places that are called the same.
        const auto isAlike = [&](const Binding& a, const Binding& b) {
            return a.variant == b.variant && spotOf(project, a).words == spotOf(project, b).words;
        };
        std::ranges::stable_sort(places, {},
                                 [](const Binding& one) { return std::pair(one.variant, one.width); });
        places.erase(std::unique(places.begin(), places.end(), isAlike), places.end());
        addOthers(text, project, places);
        all.push_back(text.take());
    }
    return all;
}

bool followsCard(const project::Project& project, const std::string& role) {
    for (const project::Variant& variant : project.variants)
        for (std::size_t band = 0; band < variant.bands.size(); ++band)
            if (project::resolve(project, variant, band).text.find(role)->follow == project::Follow::Card)
                return true;
    return false;
}

std::string loosened(const Loosening& loosening) {
    if (loosening.out && loosening.demand.kind == Kind::Words)
        return "a soft hyphen in the word, or a shorter one";
    if (loosening.out) return "leave out “" + said(loosening.demand) + "”";
    return "ask for " + said(loosening.demand);
}

std::string whatHelps(const Conflict& conflict) {
    const std::vector<Loosening> ways = offered(conflict);
    if (ways.empty())
        return "No type that can be read keeps the others: shorter copy helps, or fewer columns there.";
    std::string text = ways.front().leavesOthers
                           ? "There is another conflict beside this one. This one ends with: "
                       : ways.size() == 1 ? "This helps: "
                                          : "Any one of these helps: ";
    for (std::size_t i = 0; i < ways.size(); ++i)
        text += (i == 0 ? "" : i + 1 == ways.size() ? ", or " : ", ") + loosened(ways[i]);
    return text + ".";
}

}  // namespace

std::vector<Told> told(const project::Project& project, const Answer& answer) {
    std::vector<Told> all;
    const auto say = [&](std::string text) { all.push_back({std::move(text), {}}); };
    if (answer.offGrid) say("There are sizes, but none on the grid: a finer grid helps.");
    for (const Demand& demand : answer.unkept)
        say("As laid out, the row still breaks “" + said(demand) + "” somewhere: ask for a little more.");
    std::ranges::move(decided(project, answer), std::back_inserter(all));
    for (const SharedRamp& one : answer.shared)
        say(checks::sentence(checks::typeOf(one.role)) + " has one ramp from " +
            checks::spaced(one.widths.from, 2) + " to " + checks::px(one.widths.to, 2) +
            " in every variant, since their breakpoints there differ. With breakpoints in common it could "
            "have a ramp for each band.");
    const Conflict& conflict = answer.conflict;
    if (conflict.demands.empty()) return all;
    std::vector<std::string> wishes;
    wishes.reserve(conflict.demands.size());
    for (const Demand& demand : conflict.demands)
        wishes.push_back("“" + said(demand) + "”");
    say(wishes.size() == 1 ? "No sizes keep this wish: " + wishes.front() + "."
                           : "No sizes keep these wishes together: " + project::listed(wishes) + ".");
    for (const Binding& place : conflict.places) {
        if (!place.by.copy) continue;
        Sentence text(project);
        text.where(place, true);
        addCopy(text, project, place);
        all.push_back(text.add(".").take());
    }
    for (const Demand& demand : conflict.demands)
        if (demand.kind == Kind::SameInVariants && followsCard(project, demand.role))
            say("Type that follows the card is of the same size in cards of unlike widths only where it does "
                "not change with them. Let " +
                checks::typeOf(demand.role) + " follow the page.");
    if (conflict.byReserve) say("Without room for longer copy they could be kept.");
    say(whatHelps(conflict));
    return all;
}

std::vector<std::string> sentences(const project::Project& project, const Answer& answer) {
    std::vector<Told> found = told(project, answer);
    std::vector<std::string> all;
    all.reserve(found.size());
    for (Told& one : found)
        all.push_back(std::move(one.says));
    return all;
}

}  // namespace tenter::solve
