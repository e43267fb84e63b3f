#include <algorithm>
#include <optional>
#include <string_view>
#include <unordered_map>

#include "project/json_text.h"
#include "project/utf8.h"

namespace tenter::project {

namespace {

/// A key as a step of a JSON pointer. RFC 6901 § 3.
std::string stepOf(std::string_view key) {
    std::string step = "/";
    for (const char c : key) {
        if (c == '~') {
            step += "~0";
        } else if (c == '/') {
            step += "~1";
        } else {
            step += c;
        }
    }
    return step;
}

/// Reads valid JSON once and notes where the wanted pointers lead.
class PositionFinder {
public:
    using Offsets = std::unordered_map<std::string, std::optional<std::size_t>>;

    PositionFinder(const std::string& text, Offsets& wanted) : text_(text), wanted_(wanted) {}

    void find() {
        note(text_.find_first_not_of(" \t\r\n"));
        while (at_ < text_.size())
            readToken();
    }

private:
    /// An open object or list. `length`: of the pointer to it.
    struct Container {
        bool isObject;
        std::size_t length;
        std::size_t index = 0;
    };

    void readToken() {
        const char c = text_[at_];
        if (c == '"') return readString();
        if (c == '{' || c == '[') {
            noteElement();
            containers_.push_back({c == '{', pointer_.size()});
            expectsKey_ = c == '{';
            startsElement_ = c == '[';
        } else if (c == '}' || c == ']') {
            containers_.pop_back();
            pointer_.resize(containers_.empty() ? 0 : containers_.back().length);
            startsElement_ = false;
        } else if (c == ',') {
            pointer_.resize(containers_.back().length);
            expectsKey_ = containers_.back().isObject;
            startsElement_ = !expectsKey_;
        } else if (std::string_view(" \t\r\n:").find(c) == std::string_view::npos) {
            noteElement();
        }
        ++at_;
    }

    void readString() {
        std::size_t end = at_ + 1;
        while (end < text_.size() && text_[end] != '"')
            end += text_[end] == '\\' ? 2 : 1;
        end = std::min(end + 1, text_.size());
        if (expectsKey_) {
            const std::string_view quoted = std::string_view(text_).substr(at_, end - at_);
            const bool escaped = quoted.find('\\') != std::string_view::npos;
            pointer_ += stepOf(escaped ? Json::parse(quoted).get<std::string>()
                                       : std::string(quoted.substr(1, quoted.size() - 2)));
            note(at_);
            expectsKey_ = false;
        } else {
            noteElement();
        }
        at_ = end;
    }

    /// At the first character of an element of a list.
    void noteElement() {
        if (!startsElement_) return;
        startsElement_ = false;
        pointer_ += "/" + std::to_string(containers_.back().index++);
        note(at_);
    }

    void note(std::size_t offset) {
        const auto found = wanted_.find(pointer_);
        if (found != wanted_.end() && !found->second) found->second = offset;
    }

    const std::string& text_;
    Offsets& wanted_;
    std::size_t at_ = 0;
    std::string pointer_;
    std::vector<Container> containers_;
    bool expectsKey_ = false;
    bool startsElement_ = false;
};

std::string parentOf(const std::string& pointer) {
    return pointer.substr(0, pointer.rfind('/'));
}

}  // namespace

std::vector<std::string> positionsOf(const std::string& text, const std::vector<std::string>& pointers) {
    PositionFinder::Offsets offsets{{"", std::nullopt}};
    for (std::string pointer : pointers)
        for (; !pointer.empty(); pointer = parentOf(pointer))
            offsets.emplace(pointer, std::nullopt);
    PositionFinder(text, offsets).find();
    std::vector<std::string> positions;
    for (std::string pointer : pointers) {
        while (!pointer.empty() && !offsets.at(pointer))
            pointer = parentOf(pointer);
        positions.push_back(lineAndColumn(text, std::min(offsets.at(pointer).value_or(0), text.size())));
    }
    return positions;
}

}  // namespace tenter::project
