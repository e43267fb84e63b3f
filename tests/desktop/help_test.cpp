// The menu Help: every setting is explained, every key is listed, and the manual is the README's own text.
#include <QAbstractTextDocumentLayout>
#include <QTextBlock>
#include <QtTest>
#include <set>

#include "at_the_window.h"
#include "help/libraries.h"
#include "help/manual.h"
#include "help/manual_window.h"
#include "language/language.h"
#include "panels/setting_help.h"

namespace tenter::desktop {

class HelpTest : public AtTheWindow {
    Q_OBJECT

private:
    QAction* action(const QString& text) {
        for (QAction* one : window_->findChildren<QAction*>())
            if (one->text().remove('&') == text) return one;
        return nullptr;
    }
    std::vector<help::ShortcutGroup> shortcuts() { return help::shortcutsOf(*window_->menuBar()); }

private Q_SLOTS:
    void init() { open("shore-walks"); }
    void cleanup() { window_.reset(); }

    void explainsEverySetting() {
        QStringList unexplained;
        const auto topics = side().topics();
        QVERIFY(topics.size() > 90);
        for (const auto& topic : topics)
            if (topic.help.isEmpty()) unexplained << topic.title;
        QVERIFY2(unexplained.isEmpty(), qPrintable(unexplained.join('\n')));
    }

    // Also the fields that “Find setting” does not list one by one.
    void explainsEveryFieldOfThePanels() {
        QStringList unexplained;
        for (const auto kind :
             {panels::PanelKind::Row, panels::PanelKind::Text, panels::PanelKind::Spacing,
              panels::PanelKind::Colour, panels::PanelKind::Words, panels::PanelKind::Pictures}) {
            openPanel(kind);
            for (auto* editor : side().findChildren<controls::Editor*>())
                for (auto* field : editor->findChildren<QLineEdit*>())
                    if (field->isVisible() && panels::helpOf(field).isEmpty())
                        unexplained << field->accessibleName();
        }
        QVERIFY2(unexplained.isEmpty(), qPrintable(unexplained.join('\n')));
    }

    void saysWhatCanBeEntered() {
        openPanel(panels::PanelKind::Row);
        const QString help = panels::helpOf(field("Row column gap"));
        QVERIFY2(help.contains("space between columns"), qPrintable(help));
        QVERIFY2(help.contains("rem") && help.contains("10000"), qPrintable(help));
    }

    void listsEveryKeyOfAnAction() {
        std::set<QString> listed;
        for (const auto& group : shortcuts())
            for (const auto& shortcut : group.shortcuts)
                for (const QString& keys : shortcut.keys.split(", "))
                    listed.insert(keys);
        QStringList missing;
        int count = 0;
        for (const QAction* one : window_->findChildren<QAction*>())
            for (const QKeySequence& keys : one->shortcuts()) {
                ++count;
                if (!listed.contains(keys.toString(QKeySequence::NativeText)))
                    missing << one->text() + ": " + keys.toString();
            }
        QVERIFY(count > 40);
        QVERIFY2(missing.isEmpty(), qPrintable(missing.join('\n')));
        QVERIFY(listed.contains("Shift+Right"));
    }

    void givesNoKeyTwice() {
        std::map<QString, QStringList> uses;
        for (const QAction* one : window_->findChildren<QAction*>())
            for (const QKeySequence& keys : one->shortcuts())
                uses[keys.toString()] << one->text();
        for (const auto& [keys, texts] : uses)
            QVERIFY2(texts.size() == 1, qPrintable(keys + ": " + texts.join(", ")));
    }

    void takesItsChaptersFromTheReadme() {
        QFile readme(TENTER_SOURCE_DIR "/README.md");
        QVERIFY(readme.open(QIODevice::ReadOnly));
        const QString text = QString::fromUtf8(readme.readAll());
        for (const QString& title : {QString("A first session"), QString("Terms")}) {
            const QString chapter = help::readmeChapter(title);
            QVERIFY2(chapter.startsWith("## " + title), qPrintable(title));
            QVERIFY2(text.contains(chapter.trimmed()), qPrintable(title));
        }
    }

    // The German chapters have the same steps, pictures, keys, names of files and terms as the README, and
    // name the labels as the German window has them.
    void hasItsChaptersInGerman() {
        language::use("de");
        const auto restore = qScopeGuard([] { language::use("en"); });
        const QString german = help::manualText({}, {}).section("\n## " + QObject::tr("Settings"), 0, 0);
        language::use("en");
        const QString english = help::readmeChapter("A first session") + help::readmeChapter("Terms");
        const auto all = [](const QString& text, const char* pattern) {
            QStringList found;
            auto matches = QRegularExpression(pattern, QRegularExpression::MultilineOption).globalMatch(text);
            while (matches.hasNext())
                found << matches.next().captured(1);
            found.sort();
            return found;
        };
        QString keys = english;
        keys.replace("Ctrl", "Strg").replace("Shift", "Umschalt").replace("`Enter`", "`Eingabe`");
        QCOMPARE(all(german, "`([^`]*)`"), all(keys, "`([^`]*)`"));
        QCOMPARE(all(german, "\\]\\(([^)]*)\\)"), all(english, "\\]\\(([^)]*)\\)"));
        QCOMPARE(all(german, "^(\\d\\. )"), all(english, "^(\\d\\. )"));
        QCOMPARE(all(german, "^(\\|)"), all(english, "^(\\|)"));
        QFile catalogue(TENTER_SOURCE_DIR "/resources/translations/tenter_de.ts");
        QVERIFY(catalogue.open(QIODevice::ReadOnly));
        const QString texts = QString::fromUtf8(catalogue.readAll()).remove("&amp;");
        QStringList unknown;
        int count = 0;
        QString plain = german;
        // Strong is not a label.
        plain.remove(QRegularExpression("\\*\\*[^*]*\\*\\*")).replace(QRegularExpression("\\s+"), " ");
        for (const QString& labels : all(plain, "\\*([^*]+)\\*"))
            for (const QString& label : labels.split(" › ")) {
                ++count;
                if (!texts.contains("<translation>" + label + "<")) unknown << label;
            }
        QVERIFY(count > 20);
        QVERIFY2(unknown.isEmpty(), qPrintable(unknown.join('\n')));
    }

    void opensAtTheSettingThatHasTheFocus() {
        openPanel(panels::PanelKind::Text);
        auto* field = this->field("Heading line height");
        QVERIFY(field != nullptr);
        field->setFocus();
        QVERIFY(action("Manual") != nullptr);
        action("Manual")->trigger();
        auto* manual = window_->findChild<help::ManualWindow*>();
        QVERIFY(manual != nullptr && manual->isVisible());
        QVERIFY2(manual->page().textCursor().block().text().startsWith("Line height"),
                 qPrintable(manual->page().textCursor().block().text()));
    }

    void findsWordsAndShowsPictures() {
        action("Manual")->trigger();
        auto* manual = window_->findChild<help::ManualWindow*>();
        help::ManualPage& page = manual->page();
        QStringList headings;
        for (const auto& heading : page.headings())
            headings << heading.words;
        for (const QString& chapter : {QString("A first session"), QString("Terms"), QString("Settings"),
                                       QString("Keyboard shortcuts")})
            QVERIFY2(headings.contains(chapter), qPrintable(headings.join('\n')));
        // A picture has no empty space below it.
        for (QTextBlock block = page.document()->begin(); block.isValid(); block = block.next()) {
            if (!block.text().contains(QChar::ObjectReplacementCharacter)) continue;
            const QTextImageFormat image = block.begin().fragment().charFormat().toImageFormat();
            QVERIFY(image.isValid());
            const double height = page.document()
                                      ->resource(QTextDocument::ImageResource, QUrl(image.name()))
                                      .value<QImage>()
                                      .height();
            const double laid = page.document()->documentLayout()->blockBoundingRect(block).height();
            QVERIFY2(laid >= height && laid < height * 1.15, qPrintable(QString::number(laid / height)));
        }
        QVERIFY(page.findNext("soft hyphens"));
        QVERIFY(!page.findNext("no such words"));
        for (const QString& picture : {QString("finding"), QString("solve"), QString("compare")})
            QVERIFY(!QImage(help::pictureFile("resources/screenshots/" + picture + ".png")).isNull());
    }

    void namesTheLibrariesWithTheirLicences() {
        const auto libraries = help::libraries();
        QVERIFY(libraries.size() >= 10);
        for (const auto& library : libraries)
            QVERIFY2(!library.licence.isEmpty() && !library.use.isEmpty(), qPrintable(library.name));
        QCOMPARE(libraries.front().version, QString(qVersion()));
    }
};

}  // namespace tenter::desktop

QTEST_MAIN(tenter::desktop::HelpTest)
#include "help_test.moc"
