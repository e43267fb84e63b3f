#include "project/validate.h"

#include <algorithm>
#include <concepts>
#include <set>
#include <type_traits>

#include "project/cascade.h"
#include "project/conflicts.h"
#include "project/object.h"
#include "project/rules.h"
#include "project/utf8.h"
#include "project/values.h"

namespace tenter::project {

namespace {

// `check` applies the rules for a value, by its place, or those for a struct and all in it.

/// Values that no rule restricts beyond their type.
template <class T>
concept Unrestricted =
    std::is_enum_v<T> || std::same_as<T, bool> || std::same_as<T, Colour> || std::same_as<T, std::string>;

template <Unrestricted T>
void check(ReadContext& /*context*/, const T& /*value*/) {}
void check(ReadContext& context, const double& value) {
    checkNumber(context, value);
}
void check(ReadContext& context, const int& value) {
    checkNumber(context, value);
}
void check(ReadContext& context, const Length& value) {
    checkLength(context, value);
}
void check(ReadContext& context, const LineHeight& value) {
    checkLineHeight(context, value);
}
void check(ReadContext& context, const Ramp& value) {
    checkRamp(context, value);
}
void check(ReadContext& context, const Ratio& value) {
    if (!value.isOwn()) checkRatio(context, value);
}
void check(ReadContext& context, const units::RootSize& value) {
    checkRootSize(context, value);
}
void check(ReadContext& context, const std::vector<std::string>& value) {
    checkFamilies(context, value);
}
void check(ReadContext& context, const RoleStyles& styles);
void check(ReadContext& context, const Part& part);
void check(ReadContext& context, const Card& card);
void check(ReadContext& context, const Band& band);
void check(ReadContext& context, const Variant& variant);
void check(ReadContext& context, const PageRange& range);
void check(ReadContext& context, const Page& page);
void check(ReadContext& context, const FontEntry& font);
void check(ReadContext& context, const RoleWishes& wishes);
void check(ReadContext& context, const Wishes& wishes);
void check(ReadContext& context, const Silence& silence);
void check(ReadContext& context, const Checking& checking);
void check(ReadContext& context, const Given& given);
template <HasMembers T>
void check(ReadContext& context, const T& group);

template <class T>
void checkAt(ReadContext& context, const char* key, const T& value) {
    const ReadContext::Step step = context.at(key);
    check(context, value);
}
template <class T>
void checkAt(ReadContext& context, const char* key, const std::optional<T>& value) {
    if (value) checkAt(context, key, *value);
}
template <HasMembers T>
void check(ReadContext& context, const T& group) {
    T::members([&](const char* key, auto member) { checkAt(context, key, group.*member); });
}

/// The keys of an object with one entry for each role.
std::size_t keyCount(std::size_t roles, const FileKeys& fileKeys) {
    return roles + static_cast<std::size_t>(std::ranges::count_if(
                       fileKeys.keys, [](const auto& entry) { return isExtensionKey(entry.first); }));
}

void check(ReadContext& context, const RoleStyles& styles) {
    if (!checkRoleCount(context, keyCount(styles.roles.size(), styles.fileKeys), mostRoles)) return;
    for (const auto& [role, style] : styles.roles) {
        const ReadContext::Step step = context.at(role);
        if (!isRoleName(role))
            context.wrong("The key " + inQuotes(role) + " is not the name of a role.",
                          std::string("A role must be ") + roleNameRule + ".");
        check(context, style);
    }
}

/// Adds the problem that the name at `key` breaks `rule`.
bool wrongName(ReadContext& context, const char* key, const char* rule, const std::string& name,
               const char* fix = "") {
    const ReadContext::Step step = context.at(key);
    return context.mustBe(rule, inQuotes(name), fix);
}

std::size_t charactersOf(const Copy& copy) {
    std::size_t count = 0;
    for (const Run& run : copy)
        count += run.kind == Run::Kind::Break ? 1 : characterCount(run.text);
    return count;
}

void check(ReadContext& context, const TextPart& text) {
    if (!isRoleName(text.role)) wrongName(context, "role", roleNameRule, text.role);
    const ReadContext::Step step = context.at("copy");
    if (!checkCount(context, text.copy.size(), mostRuns)) return;
    const std::size_t count = charactersOf(text.copy);
    if (count > longestText)
        context.mustBe("at most " + std::to_string(longestText) + " characters long",
                       std::to_string(count) + " characters long",
                       "Divide the text among several parts or cards.");
}

void check(ReadContext& context, const PicturePart& picture) {
    {
        const ReadContext::Step step = context.at("picture");
        checkFileName(context, picture.file, "picture");
    }
    const auto checkPair = [&](const char* key, double first, double second) {
        const ReadContext::Step step = context.at(key);
        for (std::size_t i = 0; i < 2; ++i) {
            const ReadContext::Step entry = context.at(i);
            checkNumber(context, i == 0 ? first : second);
        }
    };
    // A size that is not known is not written.
    if (picture.width > 0 && picture.height > 0) checkPair("size", picture.width, picture.height);
    checkAt(context, "ratio", picture.ratio);
    checkPair("focus", picture.focusX, picture.focusY);
}

void check(ReadContext& context, const Part& part) {
    std::visit([&](const auto& one) { check(context, one); }, part);
}

template <class T>
void checkList(ReadContext& context, const char* key, const std::vector<T>& list, std::size_t most) {
    const ReadContext::Step step = context.at(key);
    if (!checkCount(context, list.size(), most)) return;
    for (std::size_t i = 0; i < list.size(); ++i) {
        const ReadContext::Step entry = context.at(i);
        check(context, list[i]);
    }
}

void check(ReadContext& context, const Card& card) {
    checkList(context, "parts", card.parts, mostParts);
}

/// The length of the texts of all cards.
void checkTexts(ReadContext& context, const std::vector<Card>& cards) {
    std::size_t count = 0;
    for (const Card& card : cards)
        for (const Part& part : card.parts)
            if (const auto* text = std::get_if<TextPart>(&part)) count += charactersOf(text->copy);
    if (count <= longestTexts) return;
    const ReadContext::Step step = context.at("cards");
    context.wrong("The texts of the cards have " + std::to_string(count) + " characters; at most " +
                      std::to_string(longestTexts) + " are allowed.",
                  "Split the project.");
}

void check(ReadContext& context, const Band& band) {
    checkAt(context, "upTo", band.upTo);
    checkAt(context, "set", band.set);
}

/// The ends of `list` must rise; only the last entry may have none. `what` names an entry.
template <class T>
void checkRising(ReadContext& context, const std::vector<T>& list, const std::string& what) {
    double last = 0;
    for (std::size_t i = 0; i < list.size(); ++i) {
        const ReadContext::Step step = context.at(i);
        const bool isLast = i + 1 == list.size();
        if (!isLast && !list[i].upTo) {
            // NOLINTNEXTLINE(performance-inefficient-string-concatenation)
            context.wrong("The " + what + " has no end; only the last " + what + " may have none.",
                          R"(Add "upTo" with a width in px.)");
        } else if (list[i].upTo && *list[i].upTo <= last) {
            // NOLINTNEXTLINE(performance-inefficient-string-concatenation)
            context.wrong("The " + what + " ends at or below the end of the " + what + " before it.",
                          "Put the " + what + "s in order of rising widths.");
        }
        last = list[i].upTo.value_or(last);
    }
}

/// At least one band, and the ends of all but the last in rising order.
void checkBandEnds(ReadContext& context, const std::vector<Band>& bands) {
    const ReadContext::Step list = context.at("bands");
    if (bands.empty()) {
        context.wrong("The variant has no band; it needs at least one.", R"(Write "bands": [{}].)");
    } else if (bands.back().upTo) {
        const ReadContext::Step step = context.at(bands.size() - 1);
        context.wrong("The last band ends at a width, so wider pages have no band.",
                      R"(Remove its "upTo", or add a band after it.)");
    }
    checkRising(context, bands, "band");
}

void check(ReadContext& context, const Variant& variant) {
    if (!isClassName(variant.className))
        wrongName(context, "class", classNameRule, variant.className,
                  variant.className.starts_with('.') ? "Leave out the leading dot." : "");
    checkAt(context, "set", variant.set);
    checkList(context, "bands", variant.bands, mostBands);
    if (context.isSound()) checkBandEnds(context, variant.bands);
}

void checkShift(ReadContext& context, const Shift& shift) {
    const ReadContext::Step step = context.at("shift");
    checkAt(context, "percent", shift.percent);
    checkAt(context, "px", shift.px);
}

void check(ReadContext& context, const PageRange& range) {
    checkAt(context, "upTo", range.upTo);
    checkAt(context, "rootSize", range.rootSize);
    const ReadContext::Step container = context.at("container");
    checkAt(context, "width", range.container.width);
    checkAt(context, "maxWidth", range.container.maxWidth);
    checkAt(context, "addedWidth", range.container.addedWidth);
    if (range.container.shift) checkShift(context, *range.container.shift);
    checkAt(context, "padding", range.container.padding);
}

void check(ReadContext& context, const Page& page) {
    {
        const ReadContext::Step scrollbar = context.at("scrollbar");
        checkAt(context, "width", page.scrollbar.width);
    }
    checkAt(context, "rootSize", page.rootSize);
    checkAt(context, "readerSize", page.readerSize);
    {
        const ReadContext::Step container = context.at("container");
        checkAt(context, "width", page.container.width);
        checkAt(context, "maxWidth", page.container.maxWidth);
        checkAt(context, "addedWidth", page.container.addedWidth);
        checkShift(context, page.container.shift);
        checkAt(context, "padding", page.container.padding);
    }
    checkList(context, "ranges", page.ranges, mostPageRanges);
    const ReadContext::Step ranges = context.at("ranges");
    if (context.isSound()) checkRising(context, page.ranges, "page range");
}

void check(ReadContext& context, const FontEntry& font) {
    if (font.family.empty()) {
        const ReadContext::Step step = context.at("family");
        context.mustBe("the name of a font family", "empty");
    }
    {
        const ReadContext::Step step = context.at("file");
        checkFileName(context, font.file, "font");
    }
    const ReadContext::Step step = context.at("weight");
    if (font.leastWeight == font.mostWeight) {
        checkNumber(context, font.leastWeight);
        return;
    }
    bool sound = true;
    for (std::size_t i = 0; i < 2; ++i) {
        const ReadContext::Step entry = context.at(i);
        if (!checkNumber(context, i == 0 ? font.leastWeight : font.mostWeight)) sound = false;
    }
    if (sound && font.leastWeight > font.mostWeight)
        context.wrong("The smallest weight is above the largest.", "Write [smallest, largest].");
}

void check(ReadContext& context, const RoleWishes& wishes) {
    validate(context, wishes);
}

void check(ReadContext& context, const Wishes& wishes) {
    checkAt(context, "grid", wishes.grid);
    checkAt(context, "reserve", wishes.reserve);
    checkAt(context, "slack", wishes.slack);
    checkAt(context, "narrowSlack", wishes.narrowSlack);
    checkList(context, "without", wishes.without, mostWishes);
    checkList(context, "roles", wishes.roles, mostWishes);
}

void check(ReadContext& context, const Silence& silence) {
    if (!context.isCheckName(silence.check))
        wrongName(context, "check", "the name of a check, as its findings give it", silence.check);
    if (!silence.reason.empty()) return;
    const ReadContext::Step step = context.at("reason");
    context.wrong("The check is silenced without a reason.", "Write why, for the next maintainer.");
}

void check(ReadContext& context, const Checking& checking) {
    checkList(context, "silenced", checking.silenced, mostSilenced);
    checkAt(context, "limits", checking.limits);
}

void check(ReadContext& context, const Given& given) {
    checkAt(context, "levelBefore", given.levelBefore);
    for (const auto& [key, text] : {std::pair{"markup", &given.markup}, std::pair{"theme", &given.theme}}) {
        const ReadContext::Step code = context.at(key);
        checkBytes(context, *text, longestCode);
    }
    const ReadContext::Step step = context.at("selectors");
    if (!checkRoleCount(context, keyCount(given.selectors.size(), given.selectorsFileKeys), mostSelectors))
        return;
    for (const auto& [role, selector] : given.selectors) {
        const ReadContext::Step entry = context.at(role);
        if (role != "card" && role != "picture" && !isRoleName(role)) {
            context.wrong("The key " + inQuotes(role) + " is not the name of a role.",
                          std::string("Use ") + selectorRoleRule + ".");
        } else if (role != "row" && selector.find_first_not_of(" \t\r\n\f") == std::string::npos) {
            context.mustBe(R"(a CSS selector such as ".walk img")", "empty");
        } else {
            checkBytes(context, selector, longestSelectors);
        }
    }
    for (const char* role : {"row", "card"})
        if (given.find(role) == nullptr)
            context.wrong("The selector for " + inQuotes(role) + " is missing.",
                          R"(Add it. For "row", "" stands for the element with the variant's class.)");
}

void checkHead(ReadContext& context, const Project& project) {
    if (!isClassName(project.row().name)) wrongName(context, "row", classNameRule, project.row().name);
    if (!isLanguage(project.language))
        wrongName(context, "language", R"(a language tag such as "en" or "pt-BR")", project.language);
    checkAt(context, "headingLevel", project.row().headingLevel);
    const ReadContext::Step range = context.at("range");
    checkAt(context, "from", project.leastWidth);
    checkAt(context, "to", project.mostWidth);
    if (context.isSound() && project.leastWidth >= project.mostWidth)
        context.wrong(R"("from" must be smaller than "to".)", "");
}

void checkClasses(ReadContext& context, const Project& project) {
    const ReadContext::Step variants = context.at("variants");
    if (project.row().variants.empty())
        context.wrong("The project has no variant; it needs at least one.",
                      R"(Add {"class": "…", "bands": [{}]}.)");
    std::set<std::string> seen;
    for (std::size_t i = 0; i < project.row().variants.size(); ++i) {
        if (seen.insert(project.row().variants[i].className).second) continue;
        const ReadContext::Step variant = context.at(i);
        const ReadContext::Step name = context.at("class");
        context.wrong("Two variants have the class " + inQuotes(project.row().variants[i].className) + ".",
                      "Give each variant its own class.");
    }
}

bool usesOwnRatio(const Project& project) {
    for (const Variant& variant : project.row().variants)
        for (std::size_t band = 0; band < variant.bands.size(); ++band)
            if (memberHeld(project, variant, band, [](const Settings& s) {
                    return s.picture.ratio;
                })->isOwn())
                return true;
    return false;
}

/// A picture shown at its own ratio needs its size.
void checkPictures(ReadContext& context, const Project& project) {
    const bool ownByStyle = usesOwnRatio(project);
    const ReadContext::Step cards = context.at("cards");
    for (std::size_t c = 0; c < project.row().cards.size(); ++c) {
        for (std::size_t p = 0; p < project.row().cards[c].parts.size(); ++p) {
            const auto* picture = std::get_if<PicturePart>(&project.row().cards[c].parts[p]);
            if (picture == nullptr || (picture->width > 0 && picture->height > 0)) continue;
            if (picture->ratio ? !picture->ratio->isOwn() : !ownByStyle) continue;
            const ReadContext::Step card = context.at(c);
            const ReadContext::Step parts = context.at("parts");
            const ReadContext::Step part = context.at(p);
            context.wrong("The picture is shown at its own ratio, but its size is missing.",
                          R"(Add "size": [width, height] in pixels.)");
        }
    }
}

/// The rules that hold between values at several places.
void checkWhole(ReadContext& context, const Project& project) {
    if (!checkRoleCount(context, roles(project).size(), mostRoles)) return;
    checkClasses(context, project);
    checkPictures(context, project);
    for (Problem& problem : conflicts(project))
        context.wrongAt(problem.place, std::move(problem.what), std::move(problem.fix));
}

}  // namespace

bool validate(ReadContext& context, const RoleWishes& wishes) {
    RoleWishes::members([&](const char* key, auto member) { checkAt(context, key, wishes.*member); });
    if (!context.isSound()) return false;
    if (!isRoleName(wishes.role)) {
        return wrongName(context, "role", roleNameRule, wishes.role,
                         R"(Write the role that these wishes are for, such as "heading".)");
    }
    const auto checkOrder = [&](const char* key, const std::optional<double>& least,
                                const std::optional<double>& most, const char* what, const char* fix) {
        if (!least || !most || *least <= *most) return;
        const ReadContext::Step step = context.at(key);
        context.wrong(what, fix);
    };
    checkOrder("upTo", wishes.from, wishes.upTo, R"("from" must be smaller than "upTo".)", "");
    checkOrder("leastMeasure", wishes.leastMeasure, wishes.mostMeasure,
               "The smallest measure is above the largest.", "Swap the two values.");
    checkOrder("leastSize", wishes.leastSize, wishes.mostSize, "The smallest size is above the largest.",
               "Swap the two values.");
    if ((wishes.ratio || wishes.leastRatio) && (!wishes.ratioTo || *wishes.ratioTo == wishes.role)) {
        const ReadContext::Step step = context.at(wishes.ratio ? "ratio" : "leastRatio");
        context.wrong("The ratio refers to no other role.", R"(Add that role, such as "ratioTo": "body".)");
    }
    return context.isSound();
}

bool validate(ReadContext& context, const Project& project, const Project* valid) {
    const auto differs = [](const auto& whole, const auto* before, auto member) {
        return before == nullptr || whole.*member != before->*member;
    };
    const Row& row = project.row();
    const Row* rowBefore = valid == nullptr ? nullptr : &valid->row();
    const auto isNew = [&](auto member) { return differs(project, valid, member); };
    const auto isNewInRow = [&](auto member) { return differs(row, rowBefore, member); };
    checkHead(context, project);
    if (isNew(&Project::page)) checkAt(context, "page", project.page);
    if (isNew(&Project::fonts)) checkList(context, "fonts", project.fonts, mostFonts);
    const bool style = isNewInRow(&Row::style);
    const bool cards = isNewInRow(&Row::cards);
    const bool variants = isNewInRow(&Row::variants);
    if (style) checkAt(context, "style", project.row().style);
    if (cards) {
        checkList(context, "cards", project.row().cards, mostCards);
        if (context.isSound()) checkTexts(context, project.row().cards);
    }
    if (variants) checkList(context, "variants", project.row().variants, mostVariants);
    if (isNewInRow(&Row::wishes)) checkAt(context, "wishes", project.row().wishes);
    if (isNew(&Project::checking)) checkAt(context, "checks", project.checking);
    if (isNewInRow(&Row::given)) checkAt(context, "given", project.row().given);
    if (context.isSound() && (style || cards || variants)) checkWhole(context, project);
    return context.isSound();
}

Problems validate(const Project& project, const Project* valid) {
    Problems problems;
    ReadContext context({}, {}, problems);
    validate(context, project, valid);
    return problems;
}

}  // namespace tenter::project
