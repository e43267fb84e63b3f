#include "document/refusal.h"

#include <QRegularExpression>
#include <QStringList>
#include <algorithm>

#include "document/wording.h"
#include "project/rules.h"

namespace tenter::desktop {

namespace {

/// The label of a setting whose key in the file has other words.
struct Label {
    const char* where;  ///< end of its path or pointer; `*` matches any one step
    const char* label;
};
constexpr Label labels[] = {{"row/level", "Align parts"},
                            {"row/lastLine", "Last line of cards"},
                            {"row/maxWidth", "Maximum width"},
                            {"card/direction", "Picture"},
                            {"card/pictureShare", "Picture width"},
                            {"card/bleed", "Full-bleed picture"},
                            {"card/linked", "Whole card is a link"},
                            {"picture/ratio", "Aspect ratio"},
                            {"shadow/x", "Shadow offset x"},
                            {"shadow/y", "Shadow offset y"},
                            {"*/radius", "Corner radius"},
                            {"text/*/size", "Font size"},
                            {"text/*/follow", "Grows with"},
                            {"text/*/case", "Letter case"},
                            {"text/*/align", "Text align"},
                            {"text/*/wrap", "Text wrap"},
                            {"text/*/overflowWrap", "Long words"},
                            {"text/*/keepLines", "Minimum lines"},
                            {"text/*/place", "Alignment"},
                            {"range/from", "Smallest viewport width"},
                            {"range/to", "Largest viewport width"},
                            {"bands/*/upTo", "Breakpoint"},
                            {"variants/*/class", "Class"}};

/// Words of messages about files, and what the window calls the same.
struct Wording {
    const char* inFile;
    const char* inWindow;
};
constexpr Wording wordings[] = {{R"(set "bleed" to true)", "turn on “Full-bleed picture”"},
                                {R"("level")", "“Align parts”"},
                                {R"("subgrid")", "“On”"},
                                {R"("none")", "“Off”"},
                                {R"("start")", "“At start”"},
                                {R"("viewport")", "“Viewport width”"},
                                {R"("from" must be smaller than "to".)",
                                 "“Smallest viewport width” must be smaller than “Largest viewport width”."}};

/// `maxWidth` as `max width`.
QString wordsOf(const QString& key) {
    QString words;
    for (const QChar letter : key) {
        if (letter.isUpper()) words += ' ';
        words += letter.toLower();
    }
    return words;
}

QString labelOf(const QString& path) {
    for (const Label& one : labels)
        if (project::endsWith(path.toStdString(), one.where)) return one.label;
    return {};
}

/// The name of what a JSON pointer leads to, in quotes, and the variant and band it belongs to.
QString pointerTitle(const project::Project& project, const QString& pointer) {
    static const QRegularExpression layers(
        R"(^/(?:style|variants/(\d+)(?:/bands/(\d+))?/set)/((?:row|card|picture|text)/.+)$)");
    const QRegularExpressionMatch match = layers.match(pointer);
    if (!match.hasMatch()) {
        const QString label = labelOf(pointer);
        return "“" + (label.isEmpty() ? wordsOf(pointer.section('/', -1)) : label) + "”";
    }
    const QString title = "“" + settingTitle(match.captured(3).toStdString()) + "”";
    const std::size_t at = match.captured(1).toULongLong();
    if (match.captured(1).isEmpty() || at >= project.row().variants.size()) return title;
    const project::Variant& variant = project.row().variants[at];
    const QString ofVariant = " of the variant “" + variantTitle(variant) + "”";
    const std::size_t band = match.captured(2).toULongLong();
    if (match.captured(2).isEmpty() || band >= variant.bands.size()) return title + ofVariant;
    return title + " in the band " + bandWidths(variant, band) + ofVariant;
}

/// The sentence about a list with too many entries; empty for another problem.
QString aboutCount(const project::Problem& problem) {
    static const QRegularExpression counted(R"re(^"(\w+)" has \d+ entries; at most (\d+) are allowed\.$)re");
    const QRegularExpressionMatch match = counted.match(QString::fromStdString(problem.what));
    if (!match.hasMatch()) return {};
    const QString list = match.captured(1);
    const char* const owner = list == "parts" ? "A card" : list == "bands" ? "A variant" : "A project";
    return QString("%1 can have at most %2 %3.").arg(owner, match.captured(2), wordsOf(list));
}

/// The sentences about a picture whose size is not known; empty for another problem.
QString aboutPicture(const project::Problem& problem) {
    static const QRegularExpression part(R"(^/cards/(\d+)/parts/\d+$)");
    const QRegularExpressionMatch match = part.match(QString::fromStdString(problem.place));
    if (!match.hasMatch()) return {};
    return QString(
               "The size of the picture in card %1 is not known, so it cannot be shown at its own ratio. "
               "Choose the picture file again, or set another aspect ratio.")
        .arg(match.captured(1).toInt() + 1);
}

}  // namespace

QString settingTitle(const std::string& path) {
    QStringList steps = QString::fromStdString(path).split('/');
    if (steps.front() == "text" && steps.size() > 1) steps.removeFirst();
    const QString subject = roleTitle(steps.takeFirst().toStdString());
    QString label = labelOf(QString::fromStdString(path));
    if (label.isEmpty()) label = wordsOf(steps.join(' '));
    if (label.isEmpty()) return subject;
    return subject + ' ' + label.at(0).toLower() + label.mid(1);
}

QString refusal(const project::Project& project, const project::Problem& problem) {
    for (const QString& words : {aboutCount(problem), aboutPicture(problem)})
        if (!words.isEmpty()) return words;
    QString words = QString::fromStdString(problem.sentence());
    for (const Wording& one : wordings)
        words.replace(one.inFile, one.inWindow);
    const QString place = QString::fromStdString(problem.place);
    const QString subject = '"' + place.section('/', -1) + '"';
    if (words.startsWith(subject)) words.replace(0, subject.size(), pointerTitle(project, place));
    static const QRegularExpression pointer(R"(/(?:style|variants|cards|page|range|wishes)(?:/[\w~-]+)+)");
    for (QRegularExpressionMatch match = pointer.match(words); match.hasMatch(); match = pointer.match(words))
        words.replace(match.capturedStart(), match.capturedLength(),
                      pointerTitle(project, match.captured()).replace('/', ' '));
    return words;
}

}  // namespace tenter::desktop
