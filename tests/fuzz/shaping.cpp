// Texts made from bytes, shaped with the fonts of the system and broken into lines at any size and width.
#include <cmath>

#include "byte_source.h"
#include "lines.h"
#include "text.h"
#include "text/paragraph.h"

void tenter::fuzz::test(const std::uint8_t* data, std::size_t size) {
    using namespace tenter;
    static text::Fonts fonts;
    fuzz::ByteSource source(data, size);
    const auto whole = [&](int most) { return std::uniform_int_distribution<int>(0, most)(source); };
    const auto real = [&](double least, double most) {
        return std::uniform_real_distribution<double>(least, most)(source);
    };
    static const std::vector<std::vector<std::string>> families{
        {"Vollkorn", "serif"}, {"Karla"}, {"No such family"}, {"Noto Naskh Arabic", "sans-serif"}, {"Lato"}};
    static const char* const languages[] = {"en", "tr", "ar", "ja", "zh-Hans", "de", "x-unknown"};
    text::ShapingStyle style;
    style.family = families[static_cast<std::size_t>(whole(4))];
    style.weight = whole(1) == 0 ? 400 : 700;
    style.italic = whole(3) == 0;
    style.letterCase = static_cast<project::LetterCase>(whole(2));
    style.ligatures = whole(1) == 0;
    style.softHyphens = whole(1) == 0;
    style.language = languages[whole(6)];
    style.rightToLeft = whole(3) == 0;
    const text::BreakProfile& profile = *text::profiles()[static_cast<std::size_t>(whole(1))];
    const auto copy = fuzz::copyFrom(source, 40);
    const auto paragraph = text::Paragraph::prepare(copy, style, fonts, profile);
    for (const text::Cluster& cluster : paragraph->clusters())
        fuzz::require(std::isfinite(cluster.advance), "an advance is finite");
    std::uint32_t before = 0;
    for (const text::Opportunity& opportunity : paragraph->opportunities()) {
        fuzz::require(opportunity.cluster >= before && opportunity.cluster <= paragraph->clusters().size(),
                      "opportunities rise");
        before = opportunity.cluster;
    }
    for (int i = 0; i < 6; ++i) {
        text::LineQuery query;
        query.size = real(1, 400);
        query.available = i == 0 ? 0 : real(0, 4000);
        query.letterSpacing = whole(1) == 0 ? 0 : real(-5, 20);
        query.wordSpacing = whole(1) == 0 ? 0 : real(-5, 20);
        query.overflowWrap = static_cast<project::OverflowWrap>(whole(2));
        query.balance = whole(1) == 0;
        std::vector<text::Line> lines;
        text::breakLines(*paragraph, query, profile, lines);
        fuzz::requireCovered(*paragraph, lines);
        fuzz::require(std::isfinite(text::minContent(*paragraph, query)), "the min-content width is finite");
        fuzz::require(std::isfinite(text::maxContent(*paragraph, query)), "the max-content width is finite");
    }
}
