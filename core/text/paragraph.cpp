#include "text/paragraph.h"

#include <algorithm>

#include "text/builder.h"
#include "text/unicode.h"
#include "units/number.h"

namespace tenter::text {

std::shared_ptr<const Paragraph> Paragraph::prepare(const project::Copy& copy, const ShapingStyle& style,
                                                    Fonts& fonts, const BreakProfile& profile) {
    const auto builder = std::make_shared<ParagraphBuilder>(copy, style, fonts, profile);
    const std::shared_ptr<Paragraph> made = builder->build();
    made->finish_ = [builder](Paragraph& paragraph) { builder->correctEmergencies(paragraph); };
    return made;
}

const std::vector<Opportunity>& Paragraph::emergencies() const {
    std::call_once(finished_, [this] {
        if (!finish_) return;
        // Nobody has seen the emergencies yet, so that the paragraph is as constant as ever.
        finish_(const_cast<Paragraph&>(*this));
        finish_ = nullptr;
    });
    return emergencies_;
}

std::size_t Paragraph::forcedLines() const {
    return static_cast<std::size_t>(
        std::ranges::count(opportunities_, Opportunity::Kind::Forced, &Opportunity::kind));
}

std::string Paragraph::utf8(std::uint32_t first, std::uint32_t end) const {
    const std::size_t from = first < clusters_.size() ? clusters_[first].begin : text_.size();
    const std::size_t to = end < clusters_.size() ? clusters_[end].begin : text_.size();
    return from < to ? toUtf8(std::u16string_view(text_).substr(from, to - from)) : std::string();
}

ParagraphPtr ParagraphStore::get(const project::Copy& copy, const ShapingStyle& style,
                                 const BreakProfile& profile) {
    std::string key(profile.name());
    auto add = [&key](std::string_view piece) {
        key += '\x1f';
        key += piece;
    };
    for (const std::string& family : style.family)
        add(family);
    add(units::number(style.weight));
    add(style.language);
    key += {'\x1e',
            static_cast<char>('0' + style.italic),
            static_cast<char>('0' + static_cast<int>(style.letterCase)),
            static_cast<char>('0' + style.ligatures),
            static_cast<char>('0' + style.softHyphens),
            static_cast<char>('0' + style.rightToLeft)};
    for (const project::Run& run : copy) {
        key += static_cast<char>('0' + static_cast<int>(run.kind));
        add(run.text);
        add(run.to);
    }
    ParagraphPtr& kept = kept_[key];
    if (!kept) kept = Paragraph::prepare(copy, style, fonts_, profile);
    return kept;
}

}  // namespace tenter::text
