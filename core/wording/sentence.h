// Sentences that are worded when they are shown, so that a file holds them for readers of every language.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace tenter::wording {

/// A text of the source with its values, which can be such texts again; or a text that stays as it is.
class Sentence {
public:
    Sentence() = default;
    /// A text that stays as it is in every language: a value, or a sentence of a file.
    Sentence(std::string verbatim) : text_(std::move(verbatim)) {}  // NOLINT(google-explicit-constructor)
    Sentence(const char* verbatim) : text_(verbatim) {}             // NOLINT(google-explicit-constructor)
    /// `source`, which `say` translates, with `values` for `%1` to `%9`. It is English, inside
    /// `wording::noted(…)`.
    static Sentence of(std::string_view source, std::vector<Sentence> values = {});

    [[nodiscard]] bool isVerbatim() const { return verbatim_; }
    [[nodiscard]] const std::string& text() const { return text_; }
    [[nodiscard]] const std::vector<Sentence>& values() const { return values_; }
    /// The sentence in the language in use; at most `longest` bytes, also of each value.
    [[nodiscard]] std::string worded() const;
    static constexpr std::size_t longest = 4000;

    friend bool operator==(const Sentence&, const Sentence&) = default;
    /// An order for sets.
    friend bool operator<(const Sentence& one, const Sentence& other);

private:
    std::string text_;
    std::vector<Sentence> values_;
    bool verbatim_ = true;
};

}  // namespace tenter::wording
