#include "start/example_text.h"

#include <map>

namespace tenter::start {

namespace {

struct ExampleCard {
    const char* heading;
    const char* body;
    const char* button;
};
struct ExampleRow {
    const char* title;
    std::vector<ExampleCard> cards;
};

// A place of our own: Marrow Sound, its shore and its ferry.
const std::map<std::string, ExampleRow>& exampleRows() {
    static const std::map<std::string, ExampleRow> rows{
        {"en",
         {"Around Marrow Sound",
          {{"Walk out at low tide",
            "Two slow miles across the sand while the sea is out. Wear boots that you can rinse, and a warm "
            "hat.",
            "Book a tide walk"},
           {"Count the winter geese",
            "Stand on the bank at first light with a flask and a borrowed telescope. Nobody minds if you "
            "lose count.",
            "Join a count"},
           {"Ride the morning ferry",
            "Forty minutes over the sound, past the seal banks and the old light. The return boat leaves at "
            "noon.",
            "See ferry times"},
           {"Stay in the net loft",
            "Four beds under the roof of the old net store, a stove, and a window that looks straight at the "
            "harbour.",
            "Ask for a bed"},
           {"Watch the sky turn",
            "On clear evenings the warden opens the dome. Children stay up late; the stove is lit from "
            "eight.",
            "Choose an evening"},
           {"Help to repair the path",
            "Once a month we carry planks to the marsh. Tools, gloves and soup are there; good company comes "
            "along.",
            "Lend a hand"}}}},
        {"de",
         {"Rund um den Marrow-Sund",
          {{"Bei Ebbe hinaus",
            "Zwei gemächliche Meilen über den Sand, solange das Wasser fort ist. Stiefel nicht vergessen.",
            "Wanderung buchen"},
           {"Wintergänse zählen", "Im ersten Licht auf dem Deich, mit Thermoskanne und geliehenem Fernrohr.",
            "Mitzählen"},
           {"Mit der Morgenfähre",
            "Vierzig Minuten über den Sund, vorbei an den Seehundbänken. Das Boot zurück fährt mittags.",
            "Fährzeiten ansehen"}}}},
        {"ar",
         {"حول خليج مارو",
          {{"نزهة وقت الجزر", "ميلان على مهل فوق الرمل ما دام البحر بعيدًا. أحضروا أحذية طويلة وقبعة دافئة.",
            "احجز نزهة"},
           {"عدّ إوزّ الشتاء", "نقف على الضفة مع أول الضوء ومعنا منظار مُعار. لا بأس إن أخطأتم العدّ.",
            "شارك في العدّ"},
           {"عبّارة الصباح", "أربعون دقيقة عبر الخليج قرب ضفاف الفقمات. يعود القارب عند الظهر.",
            "مواعيد العبّارة"}}}}};
    return rows;
}

project::TextPart examplePart(const char* role, const char* text) {
    project::TextPart part;
    part.role = role;
    part.copy = {{project::Run::Kind::Plain, text, {}}};
    if (part.role == "button") part.link = "#";
    return part;
}

}  // namespace

PastedText exampleText(std::size_t cards, const std::string& language) {
    const auto& rows = exampleRows();
    auto row = rows.find(language.substr(0, language.find('-')));
    PastedText out;
    if (row == rows.end()) row = rows.find("en");
    out.language = row->first;
    out.title = row->second.title;
    for (std::size_t i = 0; i < cards; ++i) {
        const ExampleCard& card = row->second.cards[i % row->second.cards.size()];
        out.cards.push_back({{examplePart("heading", card.heading), examplePart("body", card.body),
                              examplePart("button", card.button)},
                             {}});
    }
    return out;
}

}  // namespace tenter::start
