#include "wording/sentence.h"

#include <algorithm>
#include <array>
#include <span>

#include "wording/say.h"

namespace tenter::wording {

namespace {

/// `text` cut to the longest sentence, between two characters.
std::string cut(std::string text) {
    if (text.size() <= Sentence::longest) return text;
    std::size_t end = Sentence::longest;
    const auto continues = [&](std::size_t at) {
        return (static_cast<unsigned char>(text[at]) & 0xC0U) == 0x80U;
    };
    while (end > 0 && continues(end))
        --end;
    text.resize(end);
    return text + "…";
}

}  // namespace

Sentence Sentence::of(std::string_view source, std::vector<Sentence> values) {
    Sentence sentence;
    sentence.text_ = source;
    sentence.values_ = std::move(values);
    sentence.verbatim_ = false;
    return sentence;
}

bool operator<(const Sentence& one, const Sentence& other) {
    if (one.verbatim_ != other.verbatim_) return other.verbatim_;
    if (one.text_ != other.text_) return one.text_ < other.text_;
    return std::lexicographical_compare(one.values_.begin(), one.values_.end(), other.values_.begin(),
                                        other.values_.end());
}

std::string Sentence::worded() const {
    if (verbatim_) return cut(text_);
    std::array<std::string, 9> texts;
    std::array<std::string_view, 9> views;
    const std::size_t count = std::min(values_.size(), texts.size());
    for (std::size_t i = 0; i < count; ++i) {
        texts[i] = values_[i].worded();
        views[i] = texts[i];
    }
    return cut(say(text_, std::span(views).first(count)));
}

}  // namespace tenter::wording
