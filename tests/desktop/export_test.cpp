// The frame of export dialogs: plan, writing, Stop, results, remembered choices.
#include <QCheckBox>
#include <QDir>
#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QtTest>
#include <atomic>
#include <thread>

#include "export/export_dialog.h"
#include "showing.h"

namespace tenter::desktop::exporting {

/// Writes one small file after the other until it may go on no longer.
class ThreeFiles : public ExportDialog {
    Q_OBJECT

public:
    ThreeFiles(Session& session, const QString& folder)
        : ExportDialog(session,
                       {"three",
                        "Three files",
                        "Write files",
                        "Writes three files.",
                        "Content",
                        Destination::Kind::Folder,
                        {}},
                       nullptr),
          folder_(folder),
          upper_(new QCheckBox("&Upper case", this)) {
        options()->addRow("Names", upper_);
        connect(upper_, &QCheckBox::toggled, this, &ThreeFiles::replan);
    }
    QCheckBox* upper() const { return upper_; }
    /// The files that may be written before the writer waits for more permits or a stop.
    std::shared_ptr<std::atomic<int>> permits = std::make_shared<std::atomic<int>>(3);
    std::shared_ptr<std::atomic<bool>> isOnGuiThread = std::make_shared<std::atomic<bool>>(false);
    QString failure;

protected:
    QString usualDestination() const override { return folder_; }
    void restore(const Choices& choices) override {
        upper_->setChecked(choices.value("upper", false).toBool());
    }
    void remember(const Choices& choices) const override { choices.set("upper", upper_->isChecked()); }
    Planner planner() const override {
        return [files = files(), seen = isOnGuiThread](const std::stop_token&) {
            if (QThread::currentThread() == qApp->thread()) *seen = true;
            Plan plan;
            plan.files = files;
            plan.notes = {"A note."};
            return plan;
        };
    }
    Writer writer() const override {
        return [files = files(), folder = QDir(destinationPath()), permits = permits, seen = isOnGuiThread,
                failure = failure](const std::stop_token& stop, const Report& report) {
            if (QThread::currentThread() == qApp->thread()) *seen = true;
            Outcome outcome;
            outcome.failure = failure;
            for (const ExportFile& planned : files) {
                report({static_cast<int>(outcome.files.size()), 3, planned.name});
                while (*permits <= 0 && !stop.stop_requested())
                    std::this_thread::sleep_for(std::chrono::milliseconds(2));
                if (stop.stop_requested()) {
                    outcome.isStopped = true;
                    break;
                }
                --*permits;
                QFile file(folder.filePath(planned.name));
                if (!file.open(QIODevice::WriteOnly)) break;
                file.write("12345");
                ExportFile written = planned;
                written.bytes = 5;
                written.state = "written";
                outcome.files.push_back(written);
            }
            return outcome;
        };
    }

private:
    [[nodiscard]] QString destinationPath() const { return destination().path(); }
    [[nodiscard]] std::vector<ExportFile> files() const {
        std::vector<ExportFile> files;
        for (const QString name : {"a.txt", "b.txt", "c.txt"})
            files.push_back({upper_->isChecked() ? name.toUpper() : name, "text", 1000, "new"});
        return files;
    }

    QString folder_;
    QCheckBox* upper_;
};

class ExportTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() {
        forgetSettings();
        session_ = std::make_unique<Session>();
        project::Problems problems;
        QVERIFY(
            session_->document.open(TENTER_SOURCE_DIR "/sample-projects/shore-walks.tenter.json", problems));
        folder_ = std::make_unique<QTemporaryDir>();
        dialog_ = std::make_unique<ThreeFiles>(*session_, folder_->path());
    }
    void cleanup() {
        dialog_.reset();
        session_.reset();
    }

    void showsWhatItWillWrite() {
        show();
        QCOMPARE(headline(), QString("Will be written: 3\u00A0files, about 3\u00A0kB"));
        QCOMPARE(list()->topLevelItemCount(), 3);
        QCOMPARE(list()->topLevelItem(0)->text(0), QString("a.txt"));
        QVERIFY(!*dialog_->isOnGuiThread);
        QVERIFY(!button("Open folder")->isVisible());
        QVERIFY(QDir(folder_->path()).isEmpty());
    }

    void plansAgainAfterAChange() {
        show();
        dialog_->upper()->setChecked(true);
        QTRY_COMPARE(list()->topLevelItem(0)->text(0), QString("A.TXT"));
    }

    void writesOffTheGuiThreadAndShowsWhatWasWritten() {
        show();
        dialog_->writeOrStop();
        QVERIFY(dialog_->isWriting());
        QVERIFY(!dialog_->destination().isEnabled());
        QTRY_VERIFY(dialog_->outcome().has_value());
        QVERIFY(!*dialog_->isOnGuiThread);
        QCOMPARE(headline(), QString("Written: 3\u00A0files, 15\u00A0bytes"));
        QCOMPARE(list()->topLevelItem(2)->text(3), QString("written"));
        QVERIFY(button("Open folder")->isVisible());
        QCOMPARE(QDir(folder_->path()).entryList(QDir::Files), QStringList({"a.txt", "b.txt", "c.txt"}));
    }

    void stopsAndKeepsWhatIsComplete() {
        *dialog_->permits = 1;
        show();
        dialog_->writeOrStop();
        QTRY_VERIFY(QFile::exists(folder_->filePath("a.txt")));
        QCOMPARE(button("Stop")->isEnabled(), true);
        dialog_->writeOrStop();
        QTRY_VERIFY(dialog_->outcome().has_value());
        QVERIFY(dialog_->outcome()->isStopped);
        QVERIFY(headline().startsWith("Stopped. Complete so far: 1\u00A0file"));
        QVERIFY(!QFile::exists(folder_->filePath("b.txt")));
    }

    void closesAfterTheWriterHasStopped() {
        *dialog_->permits = 0;
        show();
        dialog_->writeOrStop();
        dialog_->close();
        QTRY_VERIFY(!dialog_->isVisible());
        QVERIFY(!dialog_->isWriting());
    }

    void endsTheWriterIfItIsDestroyed() {
        *dialog_->permits = 0;
        show();
        dialog_->writeOrStop();
        dialog_.reset();
        QVERIFY(QDir(folder_->path()).isEmpty());
    }

    void saysWhyItFailed() {
        dialog_->failure = "The disk is full.";
        show();
        dialog_->writeOrStop();
        QTRY_VERIFY(dialog_->outcome().has_value());
        QCOMPARE(headline(), QString("The disk is full."));
    }

    void remembersChoicesForEachProject() {
        show();
        const QString other = folder_->filePath("other");
        QVERIFY(QDir().mkpath(other));
        dialog_->destination().setPath(other);
        dialog_->upper()->setChecked(true);
        QTRY_VERIFY(!dialog_->isPlanning());
        dialog_->writeOrStop();
        QTRY_VERIFY(dialog_->outcome().has_value());

        dialog_ = std::make_unique<ThreeFiles>(*session_, folder_->path());
        show();
        QCOMPARE(dialog_->destination().path(), other);
        QVERIFY(dialog_->upper()->isChecked());

        project::Problems problems;
        QVERIFY(session_->document.open(TENTER_SOURCE_DIR "/sample-projects/season.tenter.json", problems));
        dialog_ = std::make_unique<ThreeFiles>(*session_, folder_->path());
        show();
        QCOMPARE(dialog_->destination().path(), folder_->path());
        QVERIFY(!dialog_->upper()->isChecked());
    }

    void saysWhatIsWrongWithTheDestination_data() {
        QTest::addColumn<QString>("path");
        QTest::newRow("none") << "";
        QTest::newRow("relative") << "pictures";
        QTest::newRow("a file") << TENTER_SOURCE_DIR "/README.md";
        QTest::newRow("inside a file") << TENTER_SOURCE_DIR "/README.md/pictures";
    }
    void saysWhatIsWrongWithTheDestination() {
        QFETCH(QString, path);
        show();
        QVERIFY(button("Write files")->isEnabled());
        dialog_->destination().setPath(path);
        Q_EMIT dialog_->destination().changed();
        QTRY_VERIFY(!dialog_->isPlanning());
        QTRY_COMPARE(headline(), dialog_->destination().problem());
        QVERIFY(!headline().isEmpty());
        QVERIFY(!button("Write files")->isEnabled());
    }

private:
    void show() {
        dialog_->show();
        QTRY_VERIFY(!dialog_->isPlanning());
        QTRY_VERIFY(button("Write files")->isEnabled());
    }
    [[nodiscard]] QString headline() const { return named<QLabel>("Result")->text(); }
    [[nodiscard]] FileList* list() const { return dialog_->findChild<FileList*>(); }
    template <class Widget>
    [[nodiscard]] Widget* named(const QString& name) const {
        for (Widget* widget : dialog_->findChildren<Widget*>())
            if (widget->accessibleName() == name) return widget;
        return nullptr;
    }
    [[nodiscard]] QPushButton* button(const QString& text) const {
        for (QPushButton* button : dialog_->findChildren<QPushButton*>())
            if (QString(button->text()).remove('&') == text) return button;
        return nullptr;
    }

    std::unique_ptr<Session> session_;
    std::unique_ptr<QTemporaryDir> folder_;
    std::unique_ptr<ThreeFiles> dialog_;
};

}  // namespace tenter::desktop::exporting

QTEST_MAIN(tenter::desktop::exporting::ExportTest)
#include "export_test.moc"
