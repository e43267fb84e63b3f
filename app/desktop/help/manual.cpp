#include "help/manual.h"

#include <QFile>
#include <QTextDocumentFragment>

#include "language/language.h"

// The resources are in a static library, so they must be asked for. The macro must not be in a namespace.
static void loadResources() {
    Q_INIT_RESOURCE(help);
}

namespace tenter::desktop::help {

namespace {

const QString folder = ":/help/";

/// `text` without the characters that Markdown would take as markup.
QString escaped(QString text) {
    for (const QChar sign : {QChar('\\'), QChar('*'), QChar('_'), QChar('|'), QChar('<'), QChar('#')})
        text.replace(sign, QString('\\') + sign);
    return text;
}

/// The text of a resource; empty if there is no such file.
QString textOf(const QString& name) {
    loadResources();
    QFile file(folder + name);
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

/// “A first session” and “Terms” in the language of the window, or those of README.md with a note.
QString firstChapters() {
    const QString original = readmeChapter("A first session") + '\n' + readmeChapter("Terms");
    if (language::current() == "en") return original;
    const QString translated = textOf("manual_" + language::current() + ".md");
    if (!translated.isEmpty()) return translated;
    return escaped(QObject::tr("The chapters “A first session” and “Terms” are in English.")) + "\n\n" +
           original;
}

/// The text for What’s this without its first line, which is the title.
QString helpText(const QString& whatsThis) {
    const QString plain = QTextDocumentFragment::fromHtml(whatsThis).toPlainText();
    return escaped(plain.section('\n', 1)).replace("\n", "\n\n");
}

}  // namespace

QString readmeChapter(const QString& title) {
    const QString all = '\n' + textOf("README.md");
    const qsizetype from = all.indexOf("\n## " + title + '\n');
    if (from < 0) return {};
    return all.mid(from + 1, all.indexOf("\n## ", from + 1) - from - 1) + '\n';
}

QString manualText(const std::vector<panels::SidePanel::Topic>& topics,
                   const std::vector<ShortcutGroup>& shortcuts) {
    QString text = firstChapters() + "\n## " + escaped(QObject::tr("Settings")) + "\n\n";
    for (const panels::SidePanel::Topic& topic : topics)
        text += "### " + escaped(topic.title) + "\n\n" + helpText(topic.help) + "\n\n";
    text += "## " + escaped(QObject::tr("Keyboard shortcuts")) + "\n\n";
    for (const ShortcutGroup& group : shortcuts) {
        text += "### " + escaped(group.title) + "\n\n| " + escaped(QObject::tr("Keys")) + " | " +
                escaped(QObject::tr("Effect")) + " |\n| --- | --- |\n";
        for (const Shortcut& shortcut : group.shortcuts)
            text += "| " + escaped(shortcut.keys) + " | " + escaped(shortcut.does) + " |\n";
        text += '\n';
    }
    return text;
}

QString pictureFile(const QString& name) {
    loadResources();
    return folder + name;
}

}  // namespace tenter::desktop::help
