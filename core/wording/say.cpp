#include "wording/say.h"

#include "wording/translation.h"

namespace tenter::wording {

namespace {

/// `text` with its placeholders replaced. A placeholder without a value stays as it is.
std::string filled(std::string_view text, std::string_view count, std::span<const std::string_view> values) {
    std::size_t length = text.size() + count.size();
    for (const std::string_view value : values)
        length += value.size();
    std::string out;
    out.reserve(length);
    for (;;) {
        const std::size_t mark = text.find('%');
        out += text.substr(0, mark);
        if (mark == std::string_view::npos) return out;
        const char which = mark + 1 < text.size() ? text[mark + 1] : '\0';
        const bool isValue =
            which >= '1' && which <= '9' && values.size() > static_cast<std::size_t>(which - '1');
        const bool isCount = which == 'n' && !count.empty();
        if (isValue)
            out += values[static_cast<std::size_t>(which - '1')];
        else if (isCount)
            out += count;
        else
            out += '%';
        text.remove_prefix(mark + (isValue || isCount ? 2 : 1));
    }
}

}  // namespace

std::string say(std::string_view source, std::initializer_list<std::string_view> values) {
    return say(source, std::span(values.begin(), values.size()));
}

std::string say(std::string_view source, std::span<const std::string_view> values) {
    return filled(translated(source, 1).value_or(source), {}, values);
}

std::string sayCount(std::string_view one, std::string_view many, std::size_t count,
                     std::initializer_list<std::string_view> values) {
    return filled(translated(one, count).value_or(count == 1 ? one : many), std::to_string(count),
                  std::span(values.begin(), values.size()));
}

}  // namespace tenter::wording
