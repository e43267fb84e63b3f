#include <unordered_set>

#include "project/json_text.h"
#include "project/utf8.h"
#include "project/wording.h"

namespace tenter::project {

namespace {

// The iterator that the parser reads the text with. The builder sees the position it has reached.
class Cursor {
public:
    using iterator_category = std::input_iterator_tag;
    using value_type = char;
    using difference_type = std::ptrdiff_t;
    using pointer = const char*;
    using reference = const char&;

    Cursor(const char* at, const char** reached) : at_(at), reached_(reached) {}
    reference operator*() const { return *at_; }
    Cursor& operator++() {
        *reached_ = ++at_;
        return *this;
    }
    friend bool operator==(const Cursor& a, const Cursor& b) { return a.at_ == b.at_; }
    friend bool operator!=(const Cursor& a, const Cursor& b) { return a.at_ != b.at_; }

private:
    const char* at_;
    const char** reached_;
};

// Builds the value; stops at the first problem.
class Builder : public nlohmann::json_sax<Json> {
public:
    Builder(const std::string& text, const std::string& file, const char* const* reached, Problems& problems)
        : text_(text), file_(file), reached_(reached), problems_(problems) {}

    Json take() { return std::move(root_); }

    bool null() override { return put(nullptr); }
    bool boolean(bool value) override { return put(value); }
    bool number_integer(Json::number_integer_t value) override { return put(value); }
    bool number_unsigned(Json::number_unsigned_t value) override { return put(value); }
    bool number_float(Json::number_float_t value, const std::string& /*text*/) override { return put(value); }
    bool string(std::string& value) override { return put(std::move(value)); }
    bool binary(Json::binary_t& /*value*/) override { return false; }
    bool start_object(std::size_t /*size*/) override { return open(Json::object()); }
    bool end_object() override { return close(); }
    bool start_array(std::size_t /*size*/) override { return open(Json::array()); }
    bool end_array() override { return close(); }

    bool key(std::string& name) override {
        Level& level = levels_.back();
        if (!level.keys.insert(name).second) {
            return wrong(startOfString(), "The key " + inQuotes(name) + " occurs twice in the same object.",
                         "Remove one of the two.");
        }
        level.key = std::move(name);
        return true;
    }

    static constexpr std::size_t longestNumber = 30;  // shown of it

    bool parse_error(std::size_t position, const std::string& token, const Json::exception& error) override {
        const std::size_t at = position == 0 ? 0 : position - 1;
        if (error.id == 406) {
            return wrong(at,
                         "The number " + std::string(token, 0, longestNumber) +
                             (token.size() > longestNumber ? "…" : "") + " is too large.",
                         "Write a smaller number.");
        }
        if (at >= text_.size()) {
            return wrong(text_.size(), "The file ends in the middle of its JSON.",
                         "Add the missing brackets or quotes, or get the whole file again.");
        }
        // The parser's own message, without the place and the text that it read last.
        const std::string why = error.what();
        if (const std::size_t invalid = why.find(" - invalid "); invalid != std::string::npos) {
            const std::size_t start = invalid + 3;
            return wrong(at, "This is not JSON: " + why.substr(start, why.find("; last read") - start) + ".",
                         "Correct the JSON here.");
        }
        const std::size_t expected = why.find("; expected ");
        return wrong(at, "This is not JSON: " + inQuotes(token) + " is not expected here.",
                     expected == std::string::npos ? "Correct the JSON here."
                                                   : "Write " + why.substr(expected + 11) + " here.");
    }

private:
    struct Level {
        Json* value;
        std::string key;
        std::unordered_set<std::string> keys;
    };

    // Appends without a search: the library compares each new key with all keys of the object.
    Json* append(Json&& value) {
        if (levels_.empty()) {
            root_ = std::move(value);
            return &root_;
        }
        Level& level = levels_.back();
        if (level.value->is_array()) {
            auto& elements = level.value->get_ref<Json::array_t&>();
            elements.push_back(std::move(value));
            return &elements.back();
        }
        auto& members = level.value->get_ref<Json::object_t&>();
        members.emplace_back(std::move(level.key), std::move(value));
        return &members.back().second;
    }

    bool put(Json&& value) {
        append(std::move(value));
        return true;
    }

    bool open(Json&& value) {
        if (levels_.size() >= deepestNesting) {
            return wrong(
                reachedAt() - 1,
                "Objects and lists are nested more than " + std::to_string(deepestNesting) + " deep.",
                "Nest them less.");
        }
        levels_.push_back({append(std::move(value)), {}, {}});
        return true;
    }

    bool close() {
        levels_.pop_back();
        return true;
    }

    [[nodiscard]] std::size_t reachedAt() const { return static_cast<std::size_t>(*reached_ - text_.data()); }

    // The start of the string just read: the last quote that no backslash escapes.
    [[nodiscard]] std::size_t startOfString() const {
        std::size_t at = reachedAt() - 1;
        while (at > 0) {
            at = text_.rfind('"', at - 1);
            if (at == std::string::npos) return 0;
            std::size_t slashes = 0;
            while (slashes < at && text_[at - slashes - 1] == '\\')
                ++slashes;
            if (slashes % 2 == 0) return at;
        }
        return 0;
    }

    bool wrong(std::size_t at, std::string what, std::string fix) {
        problems_.push_back({file_, lineAndColumn(text_, at), std::move(what), std::move(fix)});
        return false;
    }

    const std::string& text_;
    const std::string& file_;
    const char* const* reached_;
    Problems& problems_;
    Json root_;
    std::vector<Level> levels_;
};

}  // namespace

std::optional<Json> parseJson(const std::string& text, const std::string& file, Problems& problems) {
    if (text.size() > largestFile) {
        problems.push_back({file, "",
                            "The file is larger than " + std::to_string(largestFile >> 20U) + " MB.",
                            "Check that it is the right file."});
        return std::nullopt;
    }
    if (const std::optional<std::size_t> bad = firstBadByte(text)) {
        problems.push_back({file, lineAndColumn(text, *bad), "The file contains a byte that is not UTF-8.",
                            "Save the file as UTF-8."});
        return std::nullopt;
    }
    // JSON has none, and the parser takes it for the end of the text.
    if (const std::size_t null = text.find('\0'); null != std::string::npos) {
        problems.push_back({file, lineAndColumn(text, null), "The file contains a NUL character.",
                            "Get the whole file again, or save it as UTF-8."});
        return std::nullopt;
    }
    const char* reached = text.data();
    Builder builder(text, file, &reached, problems);
    const Cursor begin(text.data(), &reached);
    const Cursor end(text.data() + text.size(), &reached);
    if (!Json::sax_parse(begin, end, &builder)) return std::nullopt;
    return builder.take();
}

}  // namespace tenter::project
