// Differences of variants, bands, the page and fonts.
#include "project/differences/align.h"
#include "project/differences/comparison.h"
#include "project/differences/setting_names.h"
#include "project/project_json.h"
#include "project/titles.h"
#include "units/quantities.h"

namespace tenter::project {

namespace {

/// How alike two ranges of widths are that end at `one` and `other`.
double likeEnds(const std::optional<double>& one, const std::optional<double>& other) {
    return one == other ? 1 : 0;
}

std::string endWords(const std::optional<double>& upTo) {
    return upTo ? "up to " + units::px(*upTo) : std::string("without a breakpoint above it");
}

}  // namespace

void Comparison::compareVariants() {
    const std::vector<Variant>& before = before_.row().variants;
    const std::vector<Variant>& after = after_.row().variants;
    const Alignment aligned = align(
        before.size(), after.size(),
        [&](std::size_t i, std::size_t j) {
            if (before[i].className == after[j].className) return 1.0;
            return !before[i].name.empty() && before[i].name == after[j].name ? 0.5 : 0.0;
        },
        before.size() == after.size());
    for (const std::size_t i : aligned.removed)
        add({Difference::Kind::Removed, placeOf("/variants", i), "", written(before[i]), nullptr,
             "The variant " + quotedTitle(before_, i) + " is removed."});
    for (const std::size_t j : aligned.added)
        add({Difference::Kind::Added, "", placeOf("/variants", j), nullptr, written(after[j]),
             "The variant " + quotedTitle(after_, j) + " is new."});
    for (const Alignment::Pair& pair : aligned.pairs) {
        if (pair.moved)
            add({Difference::Kind::Moved, placeOf("/variants", pair.before), placeOf("/variants", pair.after),
                 nullptr, nullptr,
                 "The variant " + quotedTitle(after_, pair.after) + " is now variant " +
                     std::to_string(pair.after + 1) + "; it was variant " + std::to_string(pair.before + 1) +
                     "."});
        variant(pair.before, pair.after);
    }
}

void Comparison::variant(std::size_t oldIndex, std::size_t newIndex) {
    const Variant& before = before_.row().variants[oldIndex];
    const Variant& after = after_.row().variants[newIndex];
    const std::string oldPlace = placeOf("/variants", oldIndex);
    const std::string newPlace = placeOf("/variants", newIndex);
    const std::string title = "the variant " + quotedTitle(after_, newIndex);
    value(oldPlace + "/class", newPlace + "/class", "The class of " + title, before.className,
          after.className);
    value(oldPlace + "/name", newPlace + "/name", "The name of " + title, before.name, after.name);
    settings(oldPlace + "/set", newPlace + "/set", before.set, after.set, "in " + title);
    const Alignment aligned = align(
        before.bands.size(), after.bands.size(),
        [&](std::size_t i, std::size_t j) { return likeEnds(before.bands[i].upTo, after.bands[j].upTo); },
        before.bands.size() == after.bands.size());
    const auto oldBand = [&](std::size_t i) { return placeOf(oldPlace + "/bands", i); };
    const auto newBand = [&](std::size_t j) { return placeOf(newPlace + "/bands", j); };
    for (const std::size_t i : aligned.removed)
        add({Difference::Kind::Removed, oldBand(i), "", written(before.bands[i]), nullptr,
             "The band " + bandTitle(before_, before, i) + " of " + title + " is removed."});
    for (const std::size_t j : aligned.added)
        add({Difference::Kind::Added, "", newBand(j), nullptr, written(after.bands[j]),
             "The band " + bandTitle(after_, after, j) + " of " + title + " is new."});
    for (const Alignment::Pair& pair : aligned.pairs) {
        const Band& old = before.bands[pair.before];
        const Band& fresh = after.bands[pair.after];
        if (old.upTo != fresh.upTo)
            add({Difference::Kind::Changed, oldBand(pair.before) + "/upTo", newBand(pair.after) + "/upTo",
                 old.upTo ? written(*old.upTo) : Json(), fresh.upTo ? written(*fresh.upTo) : Json(),
                 old.upTo && fresh.upTo ? "The breakpoint at " + units::px(*old.upTo) + " of " + title +
                                              " moves to " + units::px(*fresh.upTo) + "."
                                        : "The band " + endWords(old.upTo) + " of " + title + " is now " +
                                              endWords(fresh.upTo) + "."});
        settings(oldBand(pair.before) + "/set", newBand(pair.after) + "/set", old.set, fresh.set,
                 "in the band " + bandTitle(after_, after, pair.after) + " of " + title);
    }
}

void Comparison::comparePage() {
    const Page& before = before_.page;
    const Page& after = after_.page;
    const auto each = [&](const char* key, const char* label, const auto& old, const auto& fresh) {
        value(std::string("/page/") + key, std::string("Page › ") + label, written(old), written(fresh));
    };
    each("scrollbar/width", "Scrollbar", before.scrollbar.width, after.scrollbar.width);
    each("scrollbar/always", "Scrollbar always visible", before.scrollbar.always, after.scrollbar.always);
    each("rootSize", "Theme root size", before.rootSize, after.rootSize);
    each("readerSize", "Reader text size", before.readerSize, after.readerSize);
    const Container& old = before.container;
    const Container& fresh = after.container;
    each("container/width", "Container width", old.width, fresh.width);
    each("container/maxWidth", "Maximum width", old.maxWidth, fresh.maxWidth);
    each("container/addedWidth", "Added width", old.addedWidth, fresh.addedWidth);
    each("container/place", "Container position", old.place, fresh.place);
    each("container/shift/percent", "Container shift, share of the page", old.shift.percent,
         fresh.shift.percent);
    each("container/shift/px", "Container shift, px", old.shift.px, fresh.shift.px);
    each("container/padding/top", "Container padding top", old.padding.top, fresh.padding.top);
    each("container/padding/right", "Side padding, right", old.padding.right, fresh.padding.right);
    each("container/padding/bottom", "Container padding bottom", old.padding.bottom, fresh.padding.bottom);
    each("container/padding/left", "Side padding, left", old.padding.left, fresh.padding.left);
    each("container/background", "Background", old.background, fresh.background);
    ranges();
}

void Comparison::ranges() {
    const std::vector<PageRange>& before = before_.page.ranges;
    const std::vector<PageRange>& after = after_.page.ranges;
    const auto bare = [](PageRange range) {
        range.fileKeys = range.container.fileKeys = range.container.padding.fileKeys = {};
        return range;
    };
    const auto title = [](const PageRange& range) {
        return "The page range " +
               (range.upTo ? "up to " + units::px(*range.upTo) : std::string("of the widest viewports"));
    };
    const std::string list = "/page/ranges";
    const Alignment aligned = align(
        before.size(), after.size(),
        [&](std::size_t i, std::size_t j) { return likeEnds(before[i].upTo, after[j].upTo); },
        before.size() == after.size());
    for (const std::size_t i : aligned.removed)
        add({Difference::Kind::Removed, placeOf(list, i), "", written(before[i]), nullptr,
             title(before[i]) + " is removed."});
    for (const std::size_t j : aligned.added)
        add({Difference::Kind::Added, "", placeOf(list, j), nullptr, written(after[j]),
             title(after[j]) + " is new."});
    for (const Alignment::Pair& pair : aligned.pairs) {
        if (bare(before[pair.before]) == bare(after[pair.after])) continue;
        add({Difference::Kind::Changed, placeOf(list, pair.before), placeOf(list, pair.after),
             written(before[pair.before]), written(after[pair.after]),
             title(after[pair.after]) + " has another root size or container than before."});
    }
}

void Comparison::compareFonts() {
    const auto bare = [](FontEntry font) {
        font.fileKeys = {};
        return font;
    };
    const auto title = [](const FontEntry& font) {
        return quoted(font.file) + " of the family " + font.family;
    };
    const Alignment aligned = align(
        before_.fonts.size(), after_.fonts.size(),
        [&](std::size_t i, std::size_t j) {
            const FontEntry& old = before_.fonts[i];
            const FontEntry& fresh = after_.fonts[j];
            if (bare(old) == bare(fresh)) return 1.0;
            return old.file == fresh.file ? 0.8 : old.family == fresh.family ? 0.4 : 0.0;
        },
        false);
    for (const std::size_t i : aligned.removed)
        add({Difference::Kind::Removed, placeOf("/fonts", i), "", written(before_.fonts[i]), nullptr,
             "The font file " + title(before_.fonts[i]) + " is removed."});
    for (const std::size_t j : aligned.added)
        add({Difference::Kind::Added, "", placeOf("/fonts", j), nullptr, written(after_.fonts[j]),
             "The font file " + title(after_.fonts[j]) + " is new."});
    for (const Alignment::Pair& pair : aligned.pairs) {
        const FontEntry& old = before_.fonts[pair.before];
        const FontEntry& fresh = after_.fonts[pair.after];
        if (bare(old) == bare(fresh)) continue;
        add({Difference::Kind::Changed, placeOf("/fonts", pair.before), placeOf("/fonts", pair.after),
             written(old), written(fresh),
             "The font file " + title(fresh) + " has other properties than before."});
    }
}

}  // namespace tenter::project
