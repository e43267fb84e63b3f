// Rows whose parts are levelled, and the level each part has to have: layout and stylesheet are tested by the
// same cases.
#pragma once

#include <string>
#include <vector>

namespace tenter::test {

struct LevelCase {
    std::string name;
    std::string card;    ///< settings of the card, JSON text
    std::string button;  ///< the button's top margin
    /// Letters of the cards' parts: p(icture), h(eading), b(ody), B(utton).
    std::vector<std::string> cards;
    /// The level of each part; -1 for a picture that stands beside the others.
    std::vector<std::vector<int>> levels;
    int count;
};

inline const std::vector<LevelCase>& levelCases() {
    static const std::vector<LevelCase> cases{
        {"buttons last, unlike numbers of parts",
         "{}",
         "auto",
         {"hbB", "hB", "B"},
         {{0, 1, 2}, {0, 2}, {2}},
         3},
        {"a button in the middle keeps its order",
         "{}",
         "auto",
         {"hBb", "hb", "phb"},
         {{0, 1, 2}, {0, 1}, {0, 1, 2}},
         3},
        {"one button in the middle, so none takes the last level",
         "{}",
         "auto",
         {"hBb", "hB", "phbB"},
         {{0, 1, 2}, {0, 1}, {0, 1, 2, 3}},
         4},
        {"two buttons in a card", "{}", "auto", {"hBB", "hB"}, {{0, 1, 2}, {0, 1}}, 3},
        {"buttons that nothing sends to the end", "{}", "12px", {"hbB", "hB"}, {{0, 1, 2}, {0, 1}}, 3},
        {"a picture beside takes no level",
         R"({"direction": "beside", "bleed": true})",
         "auto",
         {"phbB", "hB"},
         {{-1, 0, 1, 2}, {0, 2}},
         3},
        {"a picture beside is not below the button",
         R"({"direction": "beside", "bleed": true})",
         "auto",
         {"hBp", "hbB", "pphB"},
         {{0, 2, -1}, {0, 1, 2}, {-1, 0, 1, 2}},
         3},
    };
    return cases;
}

/// The cards as JSON text; no two headings or paragraphs are equally long.
inline std::string cardsOf(const LevelCase& given) {
    std::string out = "[";
    std::size_t length = 0;
    for (const std::string& letters : given.cards) {
        out += out.size() > 1 ? ", " : "";
        out += R"({"parts": [)";
        bool first = true;
        for (const char letter : letters) {
            out += first ? "" : ", ";
            first = false;
            std::string copy = "Low tide";
            for (length = length * 5 % 7 + 1; copy.size() < 12 * length;)
                copy += " and marsh";
            if (letter == 'p') out += R"({"picture": "shore.png", "size": [600, 400]})";
            if (letter == 'h') out += R"({"role": "heading", "copy": ")" + copy + "\"}";
            if (letter == 'b') out += R"({"role": "body", "copy": ")" + copy + "\"}";
            if (letter == 'B') out += R"({"role": "button", "copy": "Book", "link": "#book"})";
        }
        out += "]}";
    }
    return out + "]";
}

/// The style of such a row as JSON text: a column for each card.
inline std::string styleOf(const LevelCase& given) {
    return R"({"row": {"level": "subgrid", "rowGap": "18px", "columns": )" +
           std::to_string(given.cards.size()) + R"(}, "card": )" + given.card +
           R"(, "text": {"button": {"margin": {"top": ")" + given.button + R"("}}}})";
}

}  // namespace tenter::test
