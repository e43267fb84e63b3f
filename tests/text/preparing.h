// Paragraphs for tests, in fonts from the distribution's packages.
#pragma once

#include <random>
#include <string>
#include <vector>

#include "text/lines.h"
#include "text/paragraph.h"

namespace tenter::test {

inline text::Fonts& fonts() {
    static text::Fonts all;
    return all;
}

inline text::ShapingStyle styleOf(const std::string& family, double weight = 400) {
    text::ShapingStyle style;
    style.family = {family, "sans-serif"};
    style.weight = weight;
    return style;
}

inline project::Copy plain(const std::string& text) {
    return {{project::Run::Kind::Plain, text, ""}};
}

inline text::ParagraphPtr prepare(const std::string& text,
                                  const text::ShapingStyle& style = styleOf("Vollkorn")) {
    return text::Paragraph::prepare(plain(text), style, fonts(), text::blink());
}

inline double between(double least, double most, std::mt19937& random) {
    return std::uniform_real_distribution<double>(least, most)(random);
}

inline text::LineQuery at(double size, double available) {
    text::LineQuery query;
    query.size = size;
    query.available = available;
    return query;
}

inline std::vector<text::Line> linesOf(const text::Paragraph& paragraph, const text::LineQuery& query) {
    std::vector<text::Line> lines;
    text::breakLines(paragraph, query, text::blink(), lines);
    return lines;
}

inline std::vector<std::string> textsOf(const text::Paragraph& paragraph, const text::LineQuery& query) {
    std::vector<std::string> texts;
    for (const text::Line& line : linesOf(paragraph, query))
        texts.push_back(paragraph.utf8(line.first, line.end));
    return texts;
}

}  // namespace tenter::test
