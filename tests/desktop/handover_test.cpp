// The exports of stylesheet, page folder and design tokens: what they show beforehand, and that they write
// what tenter-cli prints.
#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>
#include <QDir>
#include <QFile>
#include <QGuiApplication>
#include <QProcess>
#include <QTemporaryDir>
#include <QtTest>

#include "export/page_folder_dialog.h"
#include "export/stylesheet_dialog.h"
#include "export/tokens_dialog.h"
#include "showing.h"

namespace tenter::desktop::exporting {

class HandoverTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() {
        forgetSettings();
        session_ = std::make_unique<Session>();
        project::Problems problems;
        QVERIFY(session_->document.open(sample.toStdString(), problems));
        folder_ = std::make_unique<QTemporaryDir>();
    }
    void cleanup() { session_.reset(); }

    void writesTheStylesheetInTheChosenForm() {
        StylesheetDialog dialog(*session_, nullptr);
        show(dialog, "row.css");
        QVERIFY2(row(dialog, 0).contains("minified"), qPrintable(row(dialog, 0)));
        for (const char* name : {"Custom properties on the row", "Cascade layer", "Comments"})
            check(dialog, name);
        write(dialog);
        QCOMPARE(contentOf("row.css"), printed({"stylesheet", sample, "--all-variants", "--properties",
                                                "--layer", "--no-comments"}));
    }

    void copiesTheStylesheetInTheChosenForm() {
        StylesheetDialog dialog(*session_, nullptr);
        show(dialog, "row.css");
        check(dialog, "Minified");
        button(dialog, "Copy stylesheet")->click();
        QCOMPARE(QGuiApplication::clipboard()->text().toUtf8(),
                 printed({"stylesheet", sample, "--all-variants", "--minified"}));
        QVERIFY(!QFile::exists(folder_->filePath("row.css")));
    }

    void reportsWhatFallbackFontsChange() {
        StylesheetDialog dialog(*session_, nullptr);
        show(dialog, "row.css");
        check(dialog, "Fallback fonts for late web fonts");
        QTRY_VERIFY_WITH_TIMEOUT(!dialog.isPlanning(), 30000);
        QTRY_VERIFY(!dialog.plan().notes.isEmpty());
        QVERIFY2(dialog.plan().notes.first().contains("with the fallback fonts, at"),
                 qPrintable(dialog.plan().notes.first()));
        write(dialog);
        QCOMPARE(contentOf("row.css"), printed({"stylesheet", sample, "--all-variants", "--late-fonts"}));
    }

    void remembersTheFormForTheProject() {
        {
            StylesheetDialog dialog(*session_, nullptr);
            show(dialog, "row.css");
            check(dialog, "Minified");
            write(dialog);
        }
        StylesheetDialog again(*session_, nullptr);
        again.show();
        QVERIFY(box(again, "Minified")->isChecked());
        QVERIFY(!box(again, "Comments")->isEnabled());
        QCOMPARE(again.destination().path(), folder_->filePath("row.css"));
    }

    void writesAPageFolderAndListsItBeforehand() {
        PageFolderDialog dialog(*session_, nullptr);
        show(dialog, "site");
        QStringList names;
        for (const ExportFile& file : dialog.plan().files)
            names << file.name;
        QVERIFY(names.contains("index.html") && names.contains("row.css"));
        QVERIFY(names.filter("pictures/").size() >= 3);
        QVERIFY(!QDir(folder_->filePath("site")).exists());
        write(dialog);
        for (const QString& name : names)
            QVERIFY2(QFile::exists(folder_->filePath("site/" + name)), qPrintable(name));
        QCOMPARE(dialog.outcome()->files.size(), dialog.plan().files.size());
        QCOMPARE(contentOf("site/row.css"), printed({"stylesheet", sample}));
    }

    void cutsPicturesOrCopiesThem() {
        PageFolderDialog dialog(*session_, nullptr);
        show(dialog, "site");
        const auto pictures = [&] {
            QStringList names;
            for (const ExportFile& file : dialog.plan().files)
                if (file.content == "picture") names << file.name;
            return names;
        };
        QVERIFY(dialog.plan().isEstimate);
        QVERIFY(pictures().contains("pictures/low-tide-1200x800.jpg"));
        for (const ExportFile& file : dialog.plan().files)
            QVERIFY2(file.bytes > 0, qPrintable(file.name));
        write(dialog);
        QVERIFY(contentOf("site/index.html").contains(" srcset=\"pictures/low-tide-"));
        auto* const choice = dialog.findChild<QComboBox*>("pictures");
        choice->setCurrentIndex(1);
        Q_EMIT choice->activated(1);
        QTRY_VERIFY_WITH_TIMEOUT(!dialog.isPlanning(), 30000);
        QTRY_VERIFY(pictures().contains("pictures/low-tide.jpg"));
        QVERIFY(!dialog.plan().isEstimate);
        write(dialog);
        QVERIFY(!contentOf("site/index.html").contains("srcset"));
        QVERIFY(!QFile::exists(folder_->filePath("site/pictures/low-tide-1200x800.jpg")));
    }

    void leavesOutFontsAndRefusesAFolderOfOthers() {
        PageFolderDialog dialog(*session_, nullptr);
        show(dialog, "site");
        check(dialog, "Include fonts that allow it");
        QTRY_VERIFY_WITH_TIMEOUT(!dialog.isPlanning(), 30000);
        QTRY_VERIFY(dialog.plan().notes.join(' ').contains("it is left out, as asked"));
        for (const ExportFile& file : dialog.plan().files)
            QVERIFY2(!file.name.startsWith("fonts"), qPrintable(file.name));
        QVERIFY(QDir().mkpath(folder_->filePath("site")));
        QFile mine(folder_->filePath("site/mine.txt"));
        QVERIFY(mine.open(QIODevice::WriteOnly));
        mine.close();
        check(dialog, "Include fonts that allow it");
        QTRY_VERIFY(dialog.plan().problem.contains("mine.txt"));
        QVERIFY(!button(dialog, "Write folder")->isEnabled());
    }

    void writesDesignTokens() {
        TokensDialog dialog(*session_, nullptr);
        show(dialog, "row.tokens.json");
        QVERIFY2(row(dialog, 0).contains("tokens"), qPrintable(row(dialog, 0)));
        write(dialog);
        QCOMPARE(contentOf("row.tokens.json"), printed({"tokens", sample}));
    }

private:
    void show(ExportDialog& dialog, const QString& name) {
        dialog.show();
        dialog.destination().setPath(folder_->filePath(name));
        Q_EMIT dialog.destination().changed();
        QTRY_VERIFY_WITH_TIMEOUT(!dialog.isPlanning(), 30000);
        QTRY_VERIFY(!dialog.plan().files.empty());
    }
    static void write(ExportDialog& dialog) {
        QTRY_VERIFY_WITH_TIMEOUT(!dialog.isPlanning(), 30000);
        dialog.writeOrStop();
        QTRY_VERIFY(dialog.outcome().has_value());
        QCOMPARE(dialog.outcome()->failure, QString());
    }
    static QCheckBox* box(ExportDialog& dialog, const QString& text) {
        for (QCheckBox* box : dialog.findChildren<QCheckBox*>())
            if (QString(box->text()).remove('&') == text) return box;
        return nullptr;
    }
    static void check(ExportDialog& dialog, const QString& text) { box(dialog, text)->click(); }
    static QPushButton* button(ExportDialog& dialog, const QString& text) {
        for (QPushButton* button : dialog.findChildren<QPushButton*>())
            if (QString(button->text()).remove('&') == text) return button;
        return nullptr;
    }
    /// The texts of a line of the list of files.
    static QString row(ExportDialog& dialog, int index) {
        const QTreeWidgetItem* item = dialog.findChild<FileList*>()->topLevelItem(index);
        QStringList texts;
        for (int column = 0; column < item->columnCount(); ++column)
            texts << item->text(column);
        return texts.join(" | ");
    }
    [[nodiscard]] QByteArray contentOf(const QString& name) const {
        QFile file(folder_->filePath(name));
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }
    static QByteArray printed(const QStringList& arguments) {
        QProcess process;
        process.start(TENTER_CLI, arguments);
        process.waitForFinished();
        return process.readAllStandardOutput();
    }

    const QString sample = TENTER_SOURCE_DIR "/sample-projects/shore-walks.tenter.json";
    std::unique_ptr<Session> session_;
    std::unique_ptr<QTemporaryDir> folder_;
};

}  // namespace tenter::desktop::exporting

QTEST_MAIN(tenter::desktop::exporting::HandoverTest)
#include "handover_test.moc"
