// Settings and their values as the window shows them.
#pragma once

#include <string>

#include "project/json_text.h"

namespace tenter::project {

/// The panel and the label of the setting at `path`, a path as in `settingAt` (project/file.h): `Row › Column
/// gap` for `row/columnGap`, `Text › Font size of Heading` for `text/heading/size`.
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
