// The language of sentences for people.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string_view>

namespace tenter::wording {

/// The translation of a text of the source; for a text with a count, of the form for `count`. Empty if there
/// is none. What it returns must last as long as the program.
using Translate = std::optional<std::string_view> (*)(std::string_view source, std::size_t count);

/// Sets how texts are translated; null for English, which is the default. Call it before other threads
/// compose sentences: in a program once, at its start.
void useTranslation(Translate translate);

/// Codes of ISO 639-1 of the languages that have a catalogue, English excluded.
std::span<const std::string_view> languages();

/// Sets the language by its code, `de` or `en`, as `useTranslation` does. False, and nothing changes, if it
/// has no catalogue.
bool useLanguage(std::string_view code);

/// The code of the language that `useLanguage` set last; `en` by default.
std::string_view languageInUse();

/// True if texts are translated at present: a language other than English is in use, and no `InEnglish` is
/// alive in this thread.
bool isTranslating();

/// While it is alive, texts that this thread composes are English: for files that programs read again.
class InEnglish {
public:
    InEnglish();
    ~InEnglish();
    InEnglish(const InEnglish&) = delete;
    InEnglish& operator=(const InEnglish&) = delete;

private:
    bool before_;
};

}  // namespace tenter::wording
