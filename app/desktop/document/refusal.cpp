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
constexpr Label labels[] = {{"row/level", QT_TRANSLATE_NOOP("QObject", "Align parts")},
                            {"row/lastLine", QT_TRANSLATE_NOOP("QObject", "Last line of cards")},
                            {"row/maxWidth", QT_TRANSLATE_NOOP("QObject", "Maximum width")},
                            {"card/direction", QT_TRANSLATE_NOOP("QObject", "Picture")},
                            {"card/pictureShare", QT_TRANSLATE_NOOP("QObject", "Picture width")},
                            {"card/bleed", QT_TRANSLATE_NOOP("QObject", "Full-bleed picture")},
                            {"card/linked", QT_TRANSLATE_NOOP("QObject", "Whole card is a link")},
                            {"picture/ratio", QT_TRANSLATE_NOOP("QObject", "Aspect ratio")},
                            {"shadow/x", QT_TRANSLATE_NOOP("QObject", "Shadow offset x")},
                            {"shadow/y", QT_TRANSLATE_NOOP("QObject", "Shadow offset y")},
                            {"*/radius", QT_TRANSLATE_NOOP("QObject", "Corner radius")},
                            {"row/columns", QT_TRANSLATE_NOOP("QObject", "Columns")},
                            {"row/width", QT_TRANSLATE_NOOP("QObject", "Width")},
                            {"row/columnGap", QT_TRANSLATE_NOOP("QObject", "Column gap")},
                            {"row/rowGap", QT_TRANSLATE_NOOP("QObject", "Row gap")},
                            {"row/background", QT_TRANSLATE_NOOP("QObject", "Background")},
                            {"card/background", QT_TRANSLATE_NOOP("QObject", "Background")},
                            {"padding/top", QT_TRANSLATE_NOOP("QObject", "Padding top")},
                            {"padding/right", QT_TRANSLATE_NOOP("QObject", "Padding right")},
                            {"padding/bottom", QT_TRANSLATE_NOOP("QObject", "Padding bottom")},
                            {"padding/left", QT_TRANSLATE_NOOP("QObject", "Padding left")},
                            {"margin/top", QT_TRANSLATE_NOOP("QObject", "Margin top")},
                            {"margin/right", QT_TRANSLATE_NOOP("QObject", "Margin right")},
                            {"margin/bottom", QT_TRANSLATE_NOOP("QObject", "Margin bottom")},
                            {"margin/left", QT_TRANSLATE_NOOP("QObject", "Margin left")},
                            {"border/colour", QT_TRANSLATE_NOOP("QObject", "Border colour")},
                            {"border/width", QT_TRANSLATE_NOOP("QObject", "Border width")},
                            {"shadow/colour", QT_TRANSLATE_NOOP("QObject", "Shadow colour")},
                            {"shadow/blur", QT_TRANSLATE_NOOP("QObject", "Shadow blur")},
                            {"shadow/spread", QT_TRANSLATE_NOOP("QObject", "Shadow spread")},
                            {"hover/colour", QT_TRANSLATE_NOOP("QObject", "Hover colour")},
                            {"hover/background", QT_TRANSLATE_NOOP("QObject", "Hover background")},
                            {"hover/borderColour", QT_TRANSLATE_NOOP("QObject", "Hover border colour")},
                            {"focus/colour", QT_TRANSLATE_NOOP("QObject", "Focus colour")},
                            {"focus/width", QT_TRANSLATE_NOOP("QObject", "Focus width")},
                            {"focus/offset", QT_TRANSLATE_NOOP("QObject", "Focus offset")},
                            {"text/*/family", QT_TRANSLATE_NOOP("QObject", "Family")},
                            {"text/*/weight", QT_TRANSLATE_NOOP("QObject", "Weight")},
                            {"text/*/slant", QT_TRANSLATE_NOOP("QObject", "Slant")},
                            {"text/*/lineHeight", QT_TRANSLATE_NOOP("QObject", "Line height")},
                            {"text/*/letterSpacing", QT_TRANSLATE_NOOP("QObject", "Letter spacing")},
                            {"text/*/wordSpacing", QT_TRANSLATE_NOOP("QObject", "Word spacing")},
                            {"text/*/hyphens", QT_TRANSLATE_NOOP("QObject", "Hyphens")},
                            {"text/*/colour", QT_TRANSLATE_NOOP("QObject", "Colour")},
                            {"text/*/background", QT_TRANSLATE_NOOP("QObject", "Background")},
                            {"text/*/size", QT_TRANSLATE_NOOP("QObject", "Font size")},
                            {"text/*/follow", QT_TRANSLATE_NOOP("QObject", "Grows with")},
                            {"text/*/case", QT_TRANSLATE_NOOP("QObject", "Letter case")},
                            {"text/*/align", QT_TRANSLATE_NOOP("QObject", "Text align")},
                            {"text/*/wrap", QT_TRANSLATE_NOOP("QObject", "Text wrap")},
                            {"text/*/overflowWrap", QT_TRANSLATE_NOOP("QObject", "Long words")},
                            {"text/*/keepLines", QT_TRANSLATE_NOOP("QObject", "Minimum lines")},
                            {"text/*/place", QT_TRANSLATE_NOOP("QObject", "Alignment")},
                            {"range/from", QT_TRANSLATE_NOOP("QObject", "Smallest viewport width")},
                            {"range/to", QT_TRANSLATE_NOOP("QObject", "Largest viewport width")},
                            {"bands/*/upTo", QT_TRANSLATE_NOOP("QObject", "Breakpoint")},
                            {"variants/*/class", QT_TRANSLATE_NOOP("QObject", "Class")}};

/// Words of messages about files, and what the window calls the same.
struct Wording {
    const char* inFile;
    const char* inWindow;
};
constexpr Wording wordings[] = {
    {R"(set "bleed" to true)", QT_TRANSLATE_NOOP("QObject", "turn on “Full-bleed picture”")},
    {R"("level")", QT_TRANSLATE_NOOP("QObject", "“Align parts”")},
    {R"("subgrid")", QT_TRANSLATE_NOOP("QObject", "“On”")},
    {R"("none")", QT_TRANSLATE_NOOP("QObject", "“Off”")},
    {R"("start")", QT_TRANSLATE_NOOP("QObject", "“At start”")},
    {R"("viewport")", QT_TRANSLATE_NOOP("QObject", "“Viewport width”")},
    {R"("from" must be smaller than "to".)",
     QT_TRANSLATE_NOOP("QObject",
                       "“Smallest viewport width” must be smaller than “Largest viewport width”.")}};

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
        if (project::endsWith(path.toStdString(), one.where)) return QObject::tr(one.label);
    return {};
}

QString quoted(const QString& words) {
    return QObject::tr("“%1”").arg(words);
}

/// The name of what a JSON pointer leads to, in quotes, and the variant and band it belongs to.
QString pointerTitle(const project::Project& project, const QString& pointer) {
    static const QRegularExpression layers(
        R"(^/(?:style|variants/(\d+)(?:/bands/(\d+))?/set)/((?:row|card|picture|text)/.+)$)");
    const QRegularExpressionMatch match = layers.match(pointer);
    if (!match.hasMatch()) {
        const QString label = labelOf(pointer);
        return quoted(label.isEmpty() ? wordsOf(pointer.section('/', -1)) : label);
    }
    const QString title = quoted(settingTitle(match.captured(3).toStdString()));
    const std::size_t at = match.captured(1).toULongLong();
    if (match.captured(1).isEmpty() || at >= project.row().variants.size()) return title;
    const project::Variant& variant = project.row().variants[at];
    const std::size_t band = match.captured(2).toULongLong();
    if (match.captured(2).isEmpty() || band >= variant.bands.size())
        return QObject::tr("%1 of the variant “%2”", "setting in quotes").arg(title, variantTitle(variant));
    return QObject::tr("%1 in the band %2 of the variant “%3”", "setting in quotes")
        .arg(title, bandWidths(variant, band), variantTitle(variant));
}

/// The sentence about a list with too many entries; empty for another problem.
QString aboutCount(const project::Problem& problem) {
    static const QRegularExpression counted(R"re(^"(\w+)" has \d+ entries; at most (\d+) are allowed\.$)re");
    const QRegularExpressionMatch match = counted.match(QString::fromStdString(problem.what));
    if (!match.hasMatch()) return {};
    const QString list = match.captured(1);
    const int most = match.captured(2).toInt();
    if (list == "parts") return QObject::tr("A card can have at most %n part(s).", nullptr, most);
    if (list == "bands") return QObject::tr("A variant can have at most %n band(s).", nullptr, most);
    if (list == "cards") return QObject::tr("A project can have at most %n card(s).", nullptr, most);
    if (list == "variants") return QObject::tr("A project can have at most %n variant(s).", nullptr, most);
    return QObject::tr("A project can have at most %1 %2.").arg(match.captured(2), wordsOf(list));
}

/// The sentences about a picture whose size is not known; empty for another problem.
QString aboutPicture(const project::Problem& problem) {
    static const QRegularExpression part(R"(^/cards/(\d+)/parts/\d+$)");
    const QRegularExpressionMatch match = part.match(QString::fromStdString(problem.place));
    if (!match.hasMatch()) return {};
    return QObject::tr(
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
    return QObject::tr("%1 %2", "role and setting: Heading font size").arg(subject, inSentence(label));
}

QString refusal(const project::Project& project, const project::Problem& problem) {
    for (const QString& words : {aboutCount(problem), aboutPicture(problem)})
        if (!words.isEmpty()) return words;
    QString words = QString::fromStdString(problem.sentence());
    for (const Wording& one : wordings)
        words.replace(one.inFile, QObject::tr(one.inWindow));
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
