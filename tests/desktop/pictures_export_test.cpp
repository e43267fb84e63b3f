// The dialog “Pictures”: what it will write, what it writes, and the markup that it copies.
#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QImageReader>
#include <QTemporaryDir>
#include <QtTest>

#include "export/pictures_dialog.h"
#include "showing.h"

namespace tenter::desktop::exporting {

class PicturesExportTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() {
        forgetSettings();
        folder_ = std::make_unique<QTemporaryDir>();
        QVERIFY(QDir(folder_->path()).mkdir("pictures"));
        for (const QFileInfo& file :
             QDir(TENTER_SOURCE_DIR "/sample-projects/pictures").entryInfoList(QDir::Files))
            QVERIFY(QFile::copy(file.filePath(), folder_->filePath("pictures/" + file.fileName())));
        QVERIFY(QFile::copy(TENTER_SOURCE_DIR "/sample-projects/shore-walks.tenter.json",
                            folder_->filePath("walks.tenter.json")));
        open();
    }
    void cleanup() {
        dialog_.reset();
        session_.reset();
    }

    void showsEveryFileBeforeWriting() {
        show();
        // Four pictures, two formats, four files for each.
        QCOMPARE(dialog_->plan().files.size(), std::size_t{32});
        for (const ExportFile& file : dialog_->plan().files) {
            QVERIFY(file.bytes > 0);
            QCOMPARE(file.state, QString("new"));
        }
        QCOMPARE(dialog_->destination().path(), folder_->filePath("walks-pictures"));
        QVERIFY(!QFileInfo::exists(dialog_->destination().path()));
    }

    void writesWhatItShowed() {
        show();
        const std::vector<ExportFile> planned = dialog_->plan().files;
        write();
        QVERIFY(dialog_->outcome()->failure.isEmpty());
        QCOMPARE(dialog_->outcome()->files.size(), planned.size());
        const QDir into(dialog_->destination().path());
        for (const ExportFile& file : planned) {
            QVERIFY2(into.exists(file.name), qPrintable(file.name));
            if (!file.name.endsWith(".jpg")) continue;
            const QSize size = QImageReader(into.filePath(file.name)).size();
            QCOMPARE(QString("%1 × %2\u00A0px").arg(size.width()).arg(size.height()), file.content);
        }
        for (const ExportFile& file : dialog_->outcome()->files) {
            QCOMPARE(file.bytes, QFileInfo(into.filePath(file.name)).size());
            QCOMPARE(file.state, QString("written"));
        }
    }

    void keepsFilesThatAreUpToDate() {
        show();
        write();
        open();
        show();
        for (const ExportFile& file : dialog_->plan().files)
            QCOMPARE(file.state, QString("up to date"));
        combo("Quality")->setCurrentText("50");
        QTRY_VERIFY(!dialog_->isPlanning());
        for (const ExportFile& file : dialog_->plan().files)
            QCOMPARE(file.state, QString("will be replaced"));
    }

    void followsTheChoices() {
        show();
        check("WebP")->setChecked(false);
        combo("Files for each picture and format")->setCurrentText("2");
        QTRY_VERIFY(!dialog_->isPlanning());
        QCOMPARE(dialog_->plan().files.size(), std::size_t{8});
        check("JPEG")->setChecked(false);
        QTRY_VERIFY(!dialog_->isPlanning());
        QCOMPARE(dialog_->plan().problem, QString("Choose at least one format."));
    }

    void remembersTheChoices() {
        show();
        check("AVIF")->setChecked(true);
        check("JPEG")->setChecked(false);
        check("WebP")->setChecked(false);
        combo("Files for each picture and format")->setCurrentText("1");
        QTRY_VERIFY(!dialog_->isPlanning());
        write();
        open();
        show();
        QVERIFY(check("AVIF")->isChecked());
        QVERIFY(!check("JPEG")->isChecked());
        QCOMPARE(combo("Files for each picture and format")->currentText(), QString("1"));
    }

    void copiesMarkupWithTheFiles() {
        show();
        write();
        const QString markup = dialog_->markup();
        QCOMPARE(markup.count("<picture "), 4);
        QCOMPARE(markup.count("srcset=\"walks-pictures/"), 8);
        named<QLineEdit>("Address on the site")->setText("/media");
        QCOMPARE(dialog_->markup().count("srcset=\"/media/"), 8);
        for (QPushButton* button : dialog_->findChildren<QPushButton*>())
            if (button->text() == "Copy &markup") {
                QVERIFY(button->isVisible());
                button->click();
            }
        QCOMPARE(QGuiApplication::clipboard()->text(), dialog_->markup());
    }

    void namesPicturesThatCannotBeRead() {
        QFile broken(folder_->filePath("pictures/creek.jpg"));
        QVERIFY(broken.open(QIODevice::WriteOnly | QIODevice::Truncate));
        broken.write("no picture");
        broken.close();
        show();
        QCOMPARE(dialog_->plan().files.size(), std::size_t{24});
        QVERIFY(dialog_->plan().notes.join(' ').contains("creek.jpg"));
    }

    void stopsInTheMiddle() {
        show();
        dialog_->writeOrStop();
        QTRY_VERIFY(!QDir(dialog_->destination().path()).entryList(QDir::Files).isEmpty());
        dialog_->writeOrStop();
        QTRY_VERIFY_WITH_TIMEOUT(dialog_->outcome().has_value(), 60000);
        const QDir into(dialog_->destination().path());
        for (const QString& name : into.entryList({"*.jpg"}, QDir::Files))
            QVERIFY2(!QImage(into.filePath(name)).isNull(), qPrintable(name));
        QVERIFY(into.entryList({".tenter*"}, QDir::Files | QDir::Hidden).isEmpty());
    }

private:
    void open() {
        dialog_.reset();
        session_ = std::make_unique<Session>();
        project::Problems problems;
        QVERIFY(session_->document.open(folder_->filePath("walks.tenter.json").toStdString(), problems));
        dialog_ = std::make_unique<PicturesDialog>(*session_, nullptr);
    }
    void show() {
        dialog_->show();
        QTRY_VERIFY_WITH_TIMEOUT(!dialog_->isPlanning(), 60000);
    }
    void write() {
        dialog_->writeOrStop();
        QVERIFY(dialog_->isWriting());
        QTRY_VERIFY_WITH_TIMEOUT(dialog_->outcome().has_value(), 120000);
    }
    template <class Widget>
    [[nodiscard]] Widget* named(const QString& name) const {
        for (Widget* widget : dialog_->findChildren<Widget*>())
            if (widget->accessibleName() == name) return widget;
        qFatal("no widget “%s”", qPrintable(name));
    }
    [[nodiscard]] QComboBox* combo(const QString& name) const { return named<QComboBox>(name); }
    [[nodiscard]] QCheckBox* check(const QString& text) const {
        for (QCheckBox* box : dialog_->findChildren<QCheckBox*>())
            if (box->text() == text) return box;
        qFatal("no check box “%s”", qPrintable(text));
    }

    std::unique_ptr<QTemporaryDir> folder_;
    std::unique_ptr<Session> session_;
    std::unique_ptr<PicturesDialog> dialog_;
};

}  // namespace tenter::desktop::exporting

QTEST_MAIN(tenter::desktop::exporting::PicturesExportTest)
#include "pictures_export_test.moc"
