#include "project/trial.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace tenter::project {

namespace {

using Kind = Trial::Kind;

struct Named {
    Kind kind;
    std::string_view word;
};
constexpr std::array<Named, 6> named{{{Kind::LongerCopy, "longer"},
                                      {Kind::LongestTitles, "longest-titles"},
                                      {Kind::ShortestTitles, "shortest-titles"},
                                      {Kind::NoPictures, "no-pictures"},
                                      {Kind::CardMore, "card-more"},
                                      {Kind::CardLess, "card-less"}}};

bool startsCharacter(char c) {
    return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
}

std::size_t characters(std::string_view text) {
    return static_cast<std::size_t>(std::ranges::count_if(text, startsCharacter));
}

std::vector<std::string_view> wordsIn(std::string_view text) {
    std::vector<std::string_view> words;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find_first_of(" \n", at), text.size());
        if (end > at) words.push_back(text.substr(at, end - at));
        at = end + 1;
    }
    return words;
}

/// At least `more` characters to append to `text`: its words from the first, or, for a text of one word, its
/// characters from the first.
std::string continuation(std::string_view text, std::size_t more) {
    const std::vector<std::string_view> words = wordsIn(text);
    std::string out;
    if (words.size() > 1) {
        for (std::size_t i = 0; characters(out) < more; ++i)
            out.append(" ").append(words[i % words.size()]);
        return out;
    }
    std::size_t count = 0;
    for (std::size_t at = 0; !text.empty(); ++at) {
        const char c = text[at % text.size()];
        if (startsCharacter(c) && count++ == more) break;
        out += c;
    }
    return out;
}

void lengthen(TextPart& part, double share) {
    Copy& copy = part.copy;
    const std::string text = plainText(copy);
    const double more = std::ceil(static_cast<double>(characters(text)) * std::clamp(share, 0.0, mostLonger));
    std::string added = continuation(text, static_cast<std::size_t>(more));
    if (added.empty()) return;
    // An accessible name that contains the label must still contain it. WCAG 2.2 SC 2.5.3.
    if (const std::size_t at = part.name.find(text); at != std::string::npos)
        part.name.insert(at + text.size(), added);
    if (copy.back().kind == Run::Kind::Plain)
        copy.back().text += added;
    else
        copy.push_back({Run::Kind::Plain, std::move(added), {}});
}

template <class Change>
void forEachText(Project& project, const Change& change) {
    for (Card& card : project.row().cards)
        for (Part& part : card.parts)
            if (auto* text = std::get_if<TextPart>(&part)) change(*text);
}

void setAllTitles(Project& project, bool longest) {
    std::optional<Copy> chosen;
    std::size_t most = 0;
    forEachText(project, [&](TextPart& text) {
        const std::size_t length = characters(plainText(text.copy));
        if (text.role != "heading" || length == 0) return;
        if (chosen && (longest ? length <= most : length >= most)) return;
        chosen = text.copy;
        most = length;
    });
    forEachText(project, [&](TextPart& text) {
        if (text.role == "heading" && chosen) text.copy = *chosen;
    });
}

}  // namespace

std::vector<Kind> trialKinds() {
    std::vector<Kind> kinds;
    kinds.reserve(named.size());
    for (const Named& each : named)
        kinds.push_back(each.kind);
    return kinds;
}

std::optional<Trial> trialOf(std::string_view text) {
    const std::size_t equals = text.find('=');
    const auto found = std::ranges::find(named, text.substr(0, equals), &Named::word);
    if (found == named.end()) return std::nullopt;
    Trial trial{found->kind, usualLonger};
    if (equals == std::string_view::npos) return trial;
    const std::string_view share = text.substr(equals + 1);
    double percent = 0;
    const char* end = share.data() + share.size();
    const auto [rest, error] = std::from_chars(share.data(), end, percent);
    const bool isPercent = error == std::errc() && std::string_view(rest, end) == "%";
    if (trial.kind != Kind::LongerCopy || !isPercent || !(percent > 0 && percent <= 100 * mostLonger))
        return std::nullopt;
    trial.share = percent / 100;
    return trial;
}

std::string trialWords() {
    return "longer (30\u00A0% longer text), longer=50% (or another share, at most 300%), longest-titles or "
           "shortest-titles (the longest or shortest heading in every card), no-pictures, card-more (one "
           "card "
           "more) or card-less (one card fewer)";
}

bool changesParts(const Trial& trial) {
    return trial.kind == Kind::NoPictures || trial.kind == Kind::CardMore || trial.kind == Kind::CardLess;
}

Project tried(const Project& project, const Trial& trial) {
    Project out = project;
    switch (trial.kind) {
        case Kind::LongerCopy:
            forEachText(out, [&](TextPart& text) { lengthen(text, trial.share); });
            break;
        case Kind::LongestTitles:
        case Kind::ShortestTitles:
            setAllTitles(out, trial.kind == Kind::LongestTitles);
            break;
        case Kind::NoPictures:
            for (Card& card : out.row().cards)
                std::erase_if(card.parts,
                              [](const Part& part) { return std::holds_alternative<PicturePart>(part); });
            break;
        case Kind::CardMore:
            if (!out.row().cards.empty()) out.row().cards.push_back(out.row().cards.front());
            break;
        case Kind::CardLess:
            if (out.row().cards.size() > 1) out.row().cards.pop_back();
            break;
    }
    return out;
}

}  // namespace tenter::project
