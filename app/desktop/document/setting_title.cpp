#include "document/setting_title.h"

#include <QCoreApplication>
#include <QStringList>

#include "document/wording.h"
#include "project/differences/setting_names.h"

namespace tenter::desktop {

namespace {

/// A text of a panel in the language of the window. The panels have it too, so catalogues list it.
QString translated(std::string_view text) {
    return QCoreApplication::translate("QObject", std::string(text).c_str());
}

QString labelOf(const project::SettingLabel& setting) {
    const QString label = translated(setting.label);
    if (setting.section.empty()) return label;
    return QObject::tr("%1 %2", "section and setting: Border width")
        .arg(translated(setting.section), inSentence(label));
}

QString withSubject(const QString& subject, const QString& label) {
    return QObject::tr("%1 %2", "role and setting: Heading font size").arg(subject, inSentence(label));
}

}  // namespace

QString wordsOfKey(const QString& key) {
    QString words;
    for (const QChar letter : key) {
        if (letter.isUpper()) words += ' ';
        words += letter.toLower();
    }
    return words;
}

QString settingTitle(const std::string& path) {
    if (const auto setting = project::settingLabel(path))
        return withSubject(roleTitle(std::string(setting->subject)), labelOf(*setting));
    QStringList steps = QString::fromStdString(path).split('/');
    if (steps.front() == "text" && steps.size() > 1) steps.removeFirst();
    const QString subject = roleTitle(steps.takeFirst().toStdString());
    return steps.isEmpty() ? subject : withSubject(subject, wordsOfKey(steps.join(' ')));
}

QString settingPlaceTitle(const std::string& path) {
    const auto setting = project::settingLabel(path);
    if (!setting) return settingTitle(path);
    return translated(setting->panel) + QStringLiteral(" › ") +
           (setting->isSubjectObvious() ? labelOf(*setting) : settingTitle(path));
}

}  // namespace tenter::desktop
