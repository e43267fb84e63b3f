// The arguments of the program, read before there is a display.
#pragma once

#include <QString>
#include <QStringList>
#include <optional>

namespace tenter::desktop {

struct Arguments {
    QString theme;     ///< of `window::useTheme`
    QString language;  ///< of `language::use`
    QString picture;   ///< PNG file to write the row to, instead of opening the window; empty: none
    QString project;   ///< project file to open; empty: none
};

/// The arguments in `words` (the first word is the program's name), or empty if the program must exit with
/// `exitCode` instead: 0 once help or version is on standard output, 2 once standard error says in one line
/// what is wrong. Options of Qt itself, such as `-platform`, are left to QApplication.
std::optional<Arguments> readArguments(const QStringList& words, int& exitCode);

}  // namespace tenter::desktop
