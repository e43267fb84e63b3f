#include "draw/text_block.h"

#include <algorithm>

#include "text/lines.h"

namespace tenter::draw {

namespace {

project::Copy plainCopy(const std::string& text) {
    project::Copy copy;
    std::size_t from = 0;
    while (true) {
        const std::size_t end = text.find('\n', from);
        project::Run run;
        run.text = text.substr(from, end == std::string::npos ? end : end - from);
        copy.push_back(run);
        if (end == std::string::npos) return copy;
        project::Run lineBreak;
        lineBreak.kind = project::Run::Kind::Break;
        copy.push_back(lineBreak);
        from = end + 1;
    }
}

}  // namespace

TextBlock::TextBlock(const std::string& text, const BlockStyle& style, double width,
                     text::ParagraphStore& store)
    : TextBlock(plainCopy(text), style, width, store) {}

TextBlock::TextBlock(const project::Copy& copy, const BlockStyle& style, double width,
                     text::ParagraphStore& store)
    : style_(style) {
    text::ShapingStyle shaping;
    shaping.family = style.family;
    shaping.weight = style.weight;
    shaping.language = style.language;
    shaping.rightToLeft = style.rightToLeft;
    shaping.ligatures = style.ligatures && style.letterSpacing == 0;
    const text::BreakProfile& profile = text::defaultProfile();
    paragraph_ = store.get(copy, shaping, profile);
    part_.fontSize = part_.glyphSize = style.size;
    part_.lineHeight = style.lineHeight;
    part_.letterSpacing = style.letterSpacing;
    part_.paragraph = paragraph_.get();
    text::LineQuery query;
    query.size = style.size;
    query.available = width;
    query.letterSpacing = style.letterSpacing;
    query.overflowWrap = project::OverflowWrap::BreakWord;
    std::vector<text::Line> broken;
    text::breakLines(*paragraph_, query, profile, broken);
    part_.lineCount = static_cast<std::uint32_t>(broken.size());
    const text::FacePtr& strut = paragraph_->strut();
    const double ascent = (strut ? strut->ascent() : 0.8) * style.size;
    const double descent = (strut ? strut->descent() : 0.2) * style.size;
    const double above = (style.lineHeight - ascent - descent) / 2 + ascent;
    lines_.reserve(broken.size());
    for (std::size_t i = 0; i < broken.size(); ++i) {
        const double spare = width - broken[i].width;
        const bool toRight = (style.align == TextAlign::End) != style.rightToLeft;
        double x = toRight ? spare : 0;
        if (style.align == TextAlign::Center) x = spare / 2;
        lines_.push_back({broken[i],
                          x,
                          static_cast<double>(i) * style.lineHeight + above,
                          {above, style.lineHeight - above}});
    }
}

double TextBlock::width() const {
    double widest = 0;
    for (const layout::LaidLine& line : lines_)
        widest = std::max(widest, line.line.width);
    return widest;
}

}  // namespace tenter::draw
