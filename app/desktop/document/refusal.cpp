#include "document/refusal.h"

#include <QRegularExpression>
#include <QStringList>

#include "document/setting_title.h"
#include "document/wording.h"
#include "project/rules.h"

namespace tenter::desktop {

namespace {

/// The label of what is no setting of the row.
struct Label {
    const char* where;  ///< end of its pointer; `*` matches any one step
    const char* label;
};
constexpr Label labels[] = {{"range/from", QT_TRANSLATE_NOOP("QObject", "Smallest viewport width")},
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

/// The label of what `pointer` leads to, or the words of its key.
QString labelOf(const QString& pointer) {
    for (const Label& one : labels)
        if (project::endsWith(pointer.toStdString(), one.where)) return QObject::tr(one.label);
    return wordsOfKey(pointer.section('/', -1));
}

QString quoted(const QString& words) {
    return QObject::tr("“%1”").arg(words);
}

/// The name of what a JSON pointer leads to, in quotes, and the variant and band it belongs to.
QString pointerTitle(const project::Project& project, const QString& pointer) {
    static const QRegularExpression layers(
        R"(^/(?:style|variants/(\d+)(?:/bands/(\d+))?/set)/((?:row|card|picture|text)/.+)$)");
    const QRegularExpressionMatch match = layers.match(pointer);
    if (!match.hasMatch()) return quoted(labelOf(pointer));
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
    return QObject::tr("A project can have at most %1 %2.").arg(match.captured(2), wordsOfKey(list));
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
