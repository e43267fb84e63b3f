// The text of the manual: chapters of README.md or their translation, help on every setting, all keys.
#pragma once

#include <QString>
#include <vector>

#include "help/shortcuts.h"
#include "panels/side_panel.h"

namespace tenter::desktop::help {

/// The chapter of README.md with this title, as Markdown with its heading; empty if there is none. The file
/// is a resource of the program, so that manual and README.md cannot differ.
QString readmeChapter(const QString& title);
/// The manual as Markdown. The headings of settings are the titles of `topics`.
QString manualText(const std::vector<panels::SidePanel::Topic>& topics,
                   const std::vector<ShortcutGroup>& shortcuts);
/// The file of a picture that the manual names, as a resource.
QString pictureFile(const QString& name);

}  // namespace tenter::desktop::help
