#include "arguments.h"

#include <QCommandLineParser>
#include <algorithm>
#include <array>
#include <cstdio>

#include "about/about.h"
#include "language/language.h"

namespace tenter::desktop {

namespace {

constexpr int wrongArguments = 2;

constexpr const char* help = R"(Design a row of cards that works at every viewport width

Usage: tenter [OPTIONS] [PROJECT]

  PROJECT             A project file (.tenter.json) to open.
                      Default: the start page with samples and recent projects.

Options:
  --theme THEME       Colours of the window: light, dark, contrast-light or
                      contrast-dark. Default: as in the system.
  --language CODE     Language of the window: en (English) or de (German).
                      Default: as in the system (LANGUAGE, LANG). Example: --language de
  --picture FILE      Write the row at six viewport widths to FILE, a PNG image, and exit.
                      Needs PROJECT, but no display. Example: --picture row.png
  -h, --help          Print this help and exit.
  -v, --version       Print the version, the commit and the versions of
                      libraries, and exit.

Examples:
  tenter --theme dark sample-projects/shore-walks.tenter.json
  tenter --picture row.png sample-projects/shore-walks.tenter.json

Exit codes:
  0  Done.
  2  An argument is wrong, the project cannot be read, or the image cannot be written.
)";

// QGuiApplication and QApplication read these and remove them. Qt 6, QGuiApplication § Supported Command Line
// Options.
constexpr std::array ownedByQt{"reverse", "nograb", "dograb", "sync"};
constexpr std::array ownedByQtWithValue{
    "platform",        "platformpluginpath", "platformtheme", "plugin",  "display", "geometry",
    "qwindowgeometry", "qwindowicon",        "qwindowtitle",  "session", "style",   "stylesheet"};

void print(FILE* stream, const QString& text) {
    std::fputs(text.toUtf8().constData(), stream);
}

void refuse(const QString& why) {
    print(stderr, "tenter: " + why + '\n');
}

/// Removes Qt's own options from `words`; false, with a message, if the value of one is missing.
bool removeQtOptions(QStringList& words) {
    const auto isOneOf = [](const QString& word, const auto& names) {
        if (!word.startsWith('-')) return false;
        const QString bare = word.mid(word.startsWith("--") ? 2 : 1).section('=', 0, 0);
        return std::any_of(names.begin(), names.end(), [&](const char* name) { return bare == name; });
    };
    QStringList kept;
    for (qsizetype i = 0; i < words.size(); ++i) {
        if (words[i] == "--") {
            kept += words.mid(i);
            break;
        }
        if (isOneOf(words[i], ownedByQt)) continue;
        if (!isOneOf(words[i], ownedByQtWithValue)) {
            kept << words[i];
            continue;
        }
        if (words[i].contains('=')) continue;
        if (++i == words.size()) {
            refuse("missing value after '" + words.last() + "'; see tenter --help.");
            return false;
        }
    }
    words = kept;
    return true;
}

}  // namespace

std::optional<Arguments> readArguments(const QStringList& words, int& exitCode) {
    exitCode = wrongArguments;
    QStringList own = words;
    if (!removeQtOptions(own)) return std::nullopt;

    QCommandLineParser parser;
    const QCommandLineOption helpOption(QStringList{"h", "help"});
    const QCommandLineOption versionOption(QStringList{"v", "version"});
    const QCommandLineOption theme("theme", {}, "theme");
    const QCommandLineOption picture("picture", {}, "FILE");
    const QCommandLineOption code("language", {}, "CODE");
    parser.addOptions({helpOption, versionOption, theme, code, picture});
    if (!parser.parse(own)) {
        QString why = parser.errorText();
        if (const QStringList unknown = parser.unknownOptionNames(); !unknown.isEmpty())
            why = "unknown option '" + QString(unknown[0].size() == 1 ? "-" : "--") + unknown[0] + '\'';
        why[0] = why[0].toLower();
        if (why.endsWith('.')) why.chop(1);
        refuse(why + "; see tenter --help.");
        return std::nullopt;
    }
    if (parser.isSet(helpOption) || parser.isSet(versionOption)) {
        exitCode = 0;
        print(stdout, parser.isSet(helpOption)
                          ? QString::fromUtf8(help)
                          : QString::fromStdString(about::versionText("tenter", {{"Qt", qVersion()}})));
        return std::nullopt;
    }

    const QStringList projects = parser.positionalArguments();
    Arguments arguments{parser.value(theme), parser.value(code), parser.value(picture), projects.value(0)};
    static const QStringList themes{"light", "dark", "contrast-light", "contrast-dark"};
    if (parser.isSet(theme) && !themes.contains(arguments.theme)) {
        refuse("--theme must be light, dark, contrast-light or contrast-dark; it is \"" + arguments.theme +
               "\".");
        return std::nullopt;
    }
    if (const QStringList codes = language::available();
        parser.isSet(code) && !codes.contains(arguments.language)) {
        refuse("--language must be " + codes.join(" or ") + "; it is \"" + arguments.language + "\".");
        return std::nullopt;
    }
    if (projects.size() > 1) {
        refuse(QString("PROJECT must be one file; %1 are given.").arg(projects.size()));
        return std::nullopt;
    }
    if (parser.isSet(picture) && (arguments.picture.isEmpty() || projects.isEmpty())) {
        refuse("--picture needs FILE and PROJECT, as in: tenter --picture row.png row.tenter.json");
        return std::nullopt;
    }
    return arguments;
}

}  // namespace tenter::desktop
