// Any bytes as pasted text, in every format: cards of valid text, and the same cards again from their
// Markdown.
#include "fuzz.h"
#include "project/utf8.h"
#include "start/pasted_text.h"

void tenter::fuzz::test(const std::uint8_t* data, std::size_t size) {
    using namespace tenter;
    if (size == 0) return;
    static constexpr std::optional<start::TextFormat> formats[] = {{},
                                                                   start::TextFormat::Plain,
                                                                   start::TextFormat::Markdown,
                                                                   start::TextFormat::Html,
                                                                   start::TextFormat::Table};
    const auto format = formats[data[0] % std::size(formats)];
    const start::PastedText read = start::readPasted(fuzz::textOf(data + 1, size - 1), format);
    fuzz::require(read.cards.size() <= start::mostPastedCards, "there are not more cards than allowed");
    for (const start::PastedCard& card : read.cards) {
        for (const project::TextPart& part : card.parts) {
            fuzz::require(!project::plainText(part.copy).empty(), "a part has text");
            for (const project::Run& run : part.copy)
                fuzz::require(!project::firstBadByte(run.text), "text is UTF-8");
        }
    }
    start::markdownOf(read);
}
