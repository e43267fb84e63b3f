// Differences of cards and their parts.
#include "project/differences/align.h"
#include "project/differences/comparison.h"
#include "project/differences/setting_names.h"
#include "project/project_json.h"

namespace tenter::project {

namespace {

/// True if both parts say and show the same, however their files write them.
bool same(const Part& one, const Part& other) {
    const auto bare = [](Part part) {
        std::visit([](auto& each) { each.fileKeys = {}; }, part);
        return part;
    };
    return bare(one) == bare(other);
}

std::string kindOf(const Part& part) {
    const auto* text = std::get_if<TextPart>(&part);
    return text == nullptr ? "picture" : text->role;
}

double likeness(const Part& one, const Part& other) {
    if (same(one, other)) return 1;
    if (kindOf(one) != kindOf(other)) return 0;
    const auto* text = std::get_if<TextPart>(&one);
    if (text == nullptr)
        return std::get<PicturePart>(one).file == std::get<PicturePart>(other).file ? 0.8 : 0.4;
    return plainText(text->copy) == plainText(std::get<TextPart>(other).copy) ? 0.8 : 0.4;
}

/// The share of parts that two cards have in common; 1 for equal cards.
double likeness(const Card& one, const Card& other) {
    const std::size_t most = std::max(one.parts.size(), other.parts.size());
    if (most == 0) return 1;
    std::size_t alike = 0;
    std::vector<bool> used(other.parts.size(), false);
    for (const Part& part : one.parts)
        for (std::size_t i = 0; i < other.parts.size(); ++i) {
            if (used[i] || !same(part, other.parts[i])) continue;
            used[i] = true;
            ++alike;
            break;
        }
    return static_cast<double>(alike) / static_cast<double>(most);
}

/// ` (“Up the creek at dusk”)`: the first text of a card; empty if it has none.
std::string headOf(const Card& card) {
    for (const Part& part : card.parts)
        if (const auto* text = std::get_if<TextPart>(&part))
            if (const std::string plain = plainText(text->copy); !plain.empty())
                return " (" + quoted(plain) + ")";
    return {};
}

std::string cardName(std::size_t card) {
    return "card " + std::to_string(card + 1);
}

}  // namespace

void Comparison::compareCards() {
    const std::vector<Card>& before = before_.row().cards;
    const std::vector<Card>& after = after_.row().cards;
    const Alignment aligned = align(
        before.size(), after.size(),
        [&](std::size_t i, std::size_t j) { return likeness(before[i], after[j]); },
        before.size() == after.size());
    for (const std::size_t i : aligned.removed)
        add({Difference::Kind::Removed, placeOf("/cards", i), "", written(before[i]), nullptr,
             "C" + cardName(i).substr(1) + headOf(before[i]) + " is removed."});
    for (const std::size_t j : aligned.added)
        add({Difference::Kind::Added, "", placeOf("/cards", j), nullptr, written(after[j]),
             "C" + cardName(j).substr(1) + headOf(after[j]) + " is new."});
    for (const Alignment::Pair& pair : aligned.pairs) {
        if (pair.moved)
            add({Difference::Kind::Moved, placeOf("/cards", pair.before), placeOf("/cards", pair.after),
                 nullptr, nullptr,
                 "C" + cardName(pair.before).substr(1) + headOf(before[pair.before]) + " is now " +
                     cardName(pair.after) + "."});
        parts(pair.before, pair.after);
    }
}

void Comparison::parts(std::size_t oldCard, std::size_t newCard) {
    const std::vector<Part>& before = before_.row().cards[oldCard].parts;
    const std::vector<Part>& after = after_.row().cards[newCard].parts;
    const std::string oldList = placeOf("/cards", oldCard) + "/parts";
    const std::string newList = placeOf("/cards", newCard) + "/parts";
    const Alignment aligned = align(
        before.size(), after.size(),
        [&](std::size_t i, std::size_t j) { return likeness(before[i], after[j]); }, false);
    for (const std::size_t i : aligned.removed)
        add({Difference::Kind::Removed, placeOf(oldList, i), "", written(before[i]), nullptr,
             "The " + kindOf(before[i]) + " of " + cardName(newCard) + " is removed."});
    for (const std::size_t j : aligned.added)
        add({Difference::Kind::Added, "", placeOf(newList, j), nullptr, written(after[j]),
             "C" + cardName(newCard).substr(1) + " has a new " + kindOf(after[j]) + "."});
    for (const Alignment::Pair& pair : aligned.pairs) {
        if (pair.moved)
            add({Difference::Kind::Moved, placeOf(oldList, pair.before), placeOf(newList, pair.after),
                 nullptr, nullptr,
                 "The " + kindOf(after[pair.after]) + " of " + cardName(newCard) + " is now part " +
                     std::to_string(pair.after + 1) + " of its card; it was part " +
                     std::to_string(pair.before + 1) + "."});
        part(oldCard, newCard, pair.before, pair.after);
    }
}

void Comparison::part(std::size_t oldCard, std::size_t newCard, std::size_t oldPart, std::size_t newPart) {
    const Part& before = before_.row().cards[oldCard].parts[oldPart];
    const Part& after = after_.row().cards[newCard].parts[newPart];
    const std::string oldPlace = placeOf(placeOf("/cards", oldCard) + "/parts", oldPart);
    const std::string newPlace = placeOf(placeOf("/cards", newCard) + "/parts", newPart);
    const std::string of = " of " + cardName(newCard);
    if (const auto* picture = std::get_if<PicturePart>(&before))
        this->picture(oldPlace, newPlace, of, *picture, std::get<PicturePart>(after));
    else
        text(oldPlace, newPlace, of, std::get<TextPart>(before), std::get<TextPart>(after));
}

void Comparison::picture(const std::string& oldPlace, const std::string& newPlace, const std::string& of,
                         const PicturePart& before, const PicturePart& after) {
    const auto each = [&](const char* key, const std::string& name, const Json& old, const Json& fresh) {
        value(oldPlace + key, newPlace + key, name + of, old, fresh);
    };
    each("/picture", "The picture file", before.file, after.file);
    each("/alt", "The alternative text of the picture", before.alt, after.alt);
    const auto pair = [](double first, double second) {
        return Json::array({written(first), written(second)});
    };
    if (before.file == after.file)
        each("/size", "The size in pixels of the picture", pair(before.width, before.height),
             pair(after.width, after.height));
    each("/focus", "The focal point of the picture", pair(before.focusX, before.focusY),
         pair(after.focusX, after.focusY));
    if (before.ratio != after.ratio)
        each("/ratio", "The aspect ratio of the picture", before.ratio ? written(*before.ratio) : Json(),
             after.ratio ? written(*after.ratio) : Json());
}

void Comparison::text(const std::string& oldPlace, const std::string& newPlace, const std::string& of,
                      const TextPart& before, const TextPart& after) {
    const std::string name = " the " + after.role + of;
    const std::string was = plainText(before.copy);
    const std::string is = plainText(after.copy);
    if (was != is)
        add({Difference::Kind::Changed, oldPlace + "/copy", newPlace + "/copy", written(before.copy),
             written(after.copy),
             "The text of" + name + " changes from " + quoted(was) + " to " + quoted(is) + "."});
    else if (before.copy != after.copy)
        add({Difference::Kind::Changed, oldPlace + "/copy", newPlace + "/copy", written(before.copy),
             written(after.copy), "Emphasis, links or line breaks in the text of" + name + " change."});
    value(oldPlace + "/link", newPlace + "/link", "The link address of" + name, before.link, after.link);
    value(oldPlace + "/name", newPlace + "/name", "The accessible name of" + name, before.name, after.name);
}

}  // namespace tenter::project
