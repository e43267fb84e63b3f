#include "text/paragraph.h"

#include <algorithm>

#include "text/builder.h"
#include "text/unicode.h"

namespace tenter::text {

std::shared_ptr<const Paragraph> Paragraph::prepare(const project::Copy& copy, const ShapingStyle& style,
                                                    Fonts& fonts, const BreakProfile& profile) {
    const auto builder = std::make_shared<ParagraphBuilder>(copy, style, fonts, profile);
    const std::shared_ptr<Paragraph> made = builder->build();
    made->correctOverflow_ = [builder](Paragraph& paragraph) {
        builder->correctOverflowOpportunities(paragraph);
    };
    return made;
}

const std::vector<Opportunity>& Paragraph::overflowOpportunities() const {
    std::call_once(corrected_, [this] {
        if (!correctOverflow_) return;
        // The cast is safe: nobody can have read these opportunities before this call.
        correctOverflow_(const_cast<Paragraph&>(*this));
        correctOverflow_ = nullptr;
    });
    return overflowOpportunities_;
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

CopyPosition Paragraph::sourceOf(std::uint32_t unit) const {
    return sources_[std::min<std::size_t>(unit, text_.size())];
}

std::uint32_t Paragraph::unitAt(CopyPosition position) const {
    const auto at = std::ranges::lower_bound(sources_.begin(), sources_.end() - 1, position);
    return static_cast<std::uint32_t>(at - sources_.begin());
}

std::size_t Paragraph::memory() const {
    const auto bytes = [](const auto& list) { return list.capacity() * sizeof(*list.data()); };
    return sizeof(Paragraph) + bytes(text_) + bytes(sources_) + bytes(clusters_) + bytes(glyphs_) +
           bytes(runs_) + bytes(opportunities_) + bytes(overflowOpportunities_) + bytes(ems_) +
           bytes(letters_) + bytes(words_) + bytes(graphemes_) + bytes(joints_) + bytes(items_);
}

}  // namespace tenter::text
