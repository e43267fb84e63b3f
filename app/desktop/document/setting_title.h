// Names of settings by their paths in the project file, as the panels show them.
#pragma once

#include <QString>
#include <string>

namespace tenter::desktop {

/// `Heading font size`: the name of the setting at `path` (such as `text/heading/size`), as its field has it.
QString settingTitle(const std::string& path);

/// The panel and the setting: `Text › Heading font size`, `Row › Column gap`.
QString settingPlaceTitle(const std::string& path);

/// `maxWidth` as `max width`: a key of the project file for which the window has no label.
QString wordsOfKey(const QString& key);

}  // namespace tenter::desktop
