// Settings and their values as the window shows them.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "project/json_text.h"

namespace tenter::project {

/// Where the window has a setting, in the English words of its panels.
struct SettingLabel {
    std::string_view subject;  ///< row, card, picture or a role of text: a part of the path
    std::string_view panel;    ///< `Colour`
    std::string_view section;  ///< `Border`: before the label where it is needed; else empty
    std::string_view label;    ///< `Width`

    /// True if the panel itself names the subject.
    [[nodiscard]] bool isSubjectObvious() const;
};

/// The label of the setting at `path`, a path as in `settingAt` (project/file.h). Empty if the window has no
/// field for it. The views last as long as `path`.
std::optional<SettingLabel> settingLabel(std::string_view path);

/// The panel and the label of the setting at `path`: `Row › Column gap` for `row/columnGap`, `Text › Font
/// size of Heading` for `text/heading/size`.
std::string settingName(const std::string& path);

/// A value of that setting in the words of the window: `1.5em`, `12 px`, `Centred`, `21 px at 360 px, 27 px
/// at 590 px`.
std::string settingWords(const std::string& path, const Json& value);

/// A role with a capital at its start.
std::string roleTitle(const std::string& role);

/// A value that is not a setting: numbers, lengths and colours as in sentences, texts in quotation marks.
std::string valueWords(const Json& value);
/// A text in quotation marks, cut after 60 bytes.
std::string quoted(const std::string& text);

}  // namespace tenter::project
