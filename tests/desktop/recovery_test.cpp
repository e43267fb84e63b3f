// What is left when the program is killed: unsaved changes of all but the last second, and whole files. The
// program of this test is also the program that is killed: `--edit` edits a project in a window, `--save`
// saves one again and again. TENTER_KILLS is the number of kills of each; README.md has the figures of 200
// and 300.
#include <QMessageBox>
#include <QProcess>
#include <QRandomGenerator>
#include <QTemporaryDir>
#include <QtTest>
#include <csignal>
#include <ctime>

#include "at_the_window.h"
#include "recovery/failure_report.h"
#include "recovery/offer.h"
#include "recovery/recorder.h"
#include "recovery/unsaved_work.h"

namespace tenter::desktop {

namespace {

constexpr int usualKills = 24;
constexpr qint64 promised = 1000;  // ms

/// Time since the machine has started, ms: the same in every process.
qint64 now() {
    timespec time{};
    clock_gettime(CLOCK_MONOTONIC, &time);
    return time.tv_sec * 1000LL + time.tv_nsec / 1000000;
}

int kills() {
    const int wanted = qEnvironmentVariableIntValue("TENTER_KILLS");
    return wanted > 0 ? wanted : usualKills;
}

/// The number at the end of the project's name: that of the last edit.
int editOf(const project::Project& project) {
    return QString::fromStdString(project.name).section(' ', -1).toInt();
}

QString nameOfEdit(int number) {
    return QString("Edit %1").arg(number);
}

/// Edits the project at irregular times, and says the time of each edit on standard output.
int editUntilKilled(const QString& project, const QString& folder) {
    auto window = shownWindow(project);
    window->keepUnsavedWork(folder);
    QRandomGenerator random = QRandomGenerator::securelySeeded();
    QTimer timer;
    int number = 0;
    QObject::connect(&timer, &QTimer::timeout, window.get(), [&] {
        ++number;
        window->session.document.edit(nameOfEdit(number), [&](project::Project& edited) {
            edited.name = nameOfEdit(number).toStdString();
        });
        window->session.view.setWidth(400 + number * 7 % 1000);
        std::printf("%d %lld\n", number, static_cast<long long>(now()));
        std::fflush(stdout);
        timer.setInterval(static_cast<int>(random.bounded(5, 60)));
    });
    timer.start(20);
    return QApplication::exec();
}

/// Saves the project again and again, each time with another name.
int saveUntilKilled(const QString& project) {
    Document document;
    project::Problems problems;
    if (!document.open(project.toStdString(), problems)) return 1;
    std::printf("ready\n");
    std::fflush(stdout);
    for (int number = 1;; ++number) {
        document.edit("Edit",
                      [&](project::Project& edited) { edited.name = nameOfEdit(number).toStdString(); });
        if (!document.save(problems)) return 1;
    }
}

}  // namespace

class RecoveryTest : public AtTheWindow {
    Q_OBJECT

private Q_SLOTS:
    void init() {
        state_ = std::make_unique<QTemporaryDir>();
        open("shore-walks");
    }
    void cleanup() { window_.reset(); }

    void keepsUnsavedChangesWithinASecondAndRemovesThemWhenSaved() {
        window_->keepUnsavedWork(state_->path());
        const QString before = QString::fromStdString(project().name);
        const qint64 start = now();
        rename("Changed");
        QTRY_COMPARE_WITH_TIMEOUT(kept().size(), 1, 2000);
        QVERIFY(now() - start < promised);
        project::Problems problems;
        const auto work = recovery::readRecovery(kept().front(), problems);
        QVERIFY(work.has_value());
        QVERIFY(work->project == project());
        QCOMPARE(work->file, document().file());
        // Another window does not offer the changes of one that runs.
        QVERIFY(recovery::leftovers(recoveryFolder()).empty());
        QVERIFY(document().save(problems));
        QTRY_VERIFY(kept().isEmpty());
        // The same when the changes are undone.
        rename("Again");
        QTRY_COMPARE(kept().size(), 1);
        document().undoStack().undo();
        QTRY_VERIFY(kept().isEmpty());
        QVERIFY(before != QString::fromStdString(project().name));
    }

    void offersTheChangesAndRestoresThemAsOneStep() {
        leave("Left over", document().file());
        window_->keepUnsavedWork(state_->path());
        auto* offer = window_->findChild<recovery::Offer*>();
        QVERIFY(offer->isVisible());
        QVERIFY(label("unsaved changes of “shore-walks.tenter.json”") != nullptr);
        auto* picture = named<QLabel>("Thumbnail of the unsaved row");
        QTRY_VERIFY_WITH_TIMEOUT(!picture->pixmap(Qt::ReturnByValue).isNull(), 10000);
        const QByteArray saved = contentOf(QString::fromStdString(document().file().string()));
        press("&Restore changes");
        QCOMPARE(project().name, std::string("Left over"));
        QCOMPARE(document().undoStack().undoText(), QString("Restore unsaved changes"));
        QVERIFY(document().isModified());
        QVERIFY(!offer->isVisible());
        // The saved file is not overwritten, and the changes stay kept until they are saved.
        QCOMPARE(contentOf(QString::fromStdString(document().file().string())), saved);
        QCOMPARE(kept().size(), 1);
        document().undoStack().undo();
        QVERIFY(project().name != "Left over");
    }

    void restoresAProjectThatWasNeverSaved() {
        leave("Never saved", {});
        window_->keepUnsavedWork(state_->path());
        QVERIFY(label("This project was never saved.") != nullptr);
        press("&Restore changes");
        QCOMPARE(project().name, std::string("Never saved"));
        QVERIFY(document().isUnsaved() && document().file().empty());
    }

    void keepsForTheNextStartWhatIsNotRestoredNow() {
        leave("First", {});
        leave("Second", {});
        window_->keepUnsavedWork(state_->path());
        QVERIFY(label("1 more can be restored") != nullptr);
        press("No&t now");
        QVERIFY(!window_->findChild<recovery::Offer*>()->isVisible());
        QCOMPARE(recovery::leftovers(recoveryFolder()).size(), std::size_t(2));
    }

    void saysThatARecoveryFileIsDamagedAndLeavesIt() {
        leave("Damaged", {});
        const QByteArray whole = contentOf(kept().front());
        for (const int size :
             {0, 10, static_cast<int>(whole.indexOf('\n')), static_cast<int>(whole.size()) - 3}) {
            QFile file(kept().front());
            QVERIFY(file.open(QIODevice::WriteOnly));
            file.write(whole.left(size));
            file.close();
            project::Problems problems;
            QVERIFY(!recovery::readRecovery(kept().front(), problems));
            QVERIFY(!problems.empty());
            QVERIFY(recovery::leftovers(recoveryFolder()).empty());
            QCOMPARE(kept().size(), 1);
        }
    }

    void asksBeforeItSavesOverAFileThatAnotherProgramHasChanged() {
        const QString file = QString::fromStdString(document().file().string());
        rename("Mine");
        changeOnDisk("Theirs");
        const QByteArray theirs = contentOf(file);
        answer("Cancel");
        window_->findChild<window::FileController*>()->save();
        QCOMPARE(contentOf(file), theirs);
        QCOMPARE(project().name, std::string("Mine"));
        answer("Save &over it");
        QVERIFY(window_->findChild<window::FileController*>()->save());
        QVERIFY(contentOf(file).contains("Mine"));
    }

    void loadsAFileThatAnotherProgramHasChangedAsOneStep() {
        rename("Mine");
        changeOnDisk("Theirs");
        auto* files = window_->findChild<window::FileController*>();
        answer("&Load it");
        files->checkDisk();
        QCOMPARE(project().name, std::string("Theirs"));
        QVERIFY(!document().isModified());
        document().undoStack().undo();
        QCOMPARE(project().name, std::string("Mine"));
        changeOnDisk("Theirs again");
        answer("&Keep mine");
        files->checkDisk();
        QCOMPARE(project().name, std::string("Mine"));
        // Asked once for each change: no box that nobody answers.
        files->checkDisk();
    }

    void losesAtMostTheLastSecondWhenItIsKilled() {
        qint64 worst = 0;
        for (int done = 0; done < kills();) {
            std::vector<std::unique_ptr<Editing>> all;
            for (int i = 0; i < 4 && done < kills(); ++i, ++done)
                all.push_back(std::make_unique<Editing>(sample_));
            for (auto& one : all)
                one->killAfter(static_cast<int>(QRandomGenerator::global()->bounded(100, 2500)));
            for (auto& one : all) {
                QTRY_VERIFY_WITH_TIMEOUT(one->isDead(), 60000);
                const qint64 lost = one->lost();
                QVERIFY2(lost >= 0, "a file is damaged");
                worst = std::max(worst, lost);
            }
        }
        qInfo("%d kills while editing: the oldest lost edit was %lld ms old", kills(),
              static_cast<long long>(worst));
        QVERIFY2(worst <= promised, qPrintable(QString::number(worst)));
    }

    void leavesAWholeFileWhenItIsKilledWhileSaving() {
        int changed = 0;
        for (int i = 0; i < kills(); ++i) {
            QProcess process;
            process.start(QCoreApplication::applicationFilePath(), {"--save", sample_});
            QVERIFY(process.waitForReadyRead(30000));
            QTest::qSleep(static_cast<int>(QRandomGenerator::global()->bounded(0, 60)));
            process.kill();
            QVERIFY(process.waitForFinished());
            project::Problems problems;
            const auto saved = project::read(sample_.toStdString(), problems);
            QVERIFY2(saved.has_value(), problems.empty() ? "" : problems.front().line().c_str());
            changed += editOf(*saved) > 0 ? 1 : 0;
        }
        qInfo("%d kills while saving: every file whole", kills());
        QVERIFY(changed > 0);
    }

    void reportsAnInternalErrorWithoutContentOfFiles() {
        QProcess process;
        QTemporaryDir state;
        process.start(QCoreApplication::applicationFilePath(), {"--crash", state.path()});
        QVERIFY(process.waitForFinished(30000));
        QCOMPARE(process.exitStatus(), QProcess::CrashExit);
        const QString report = recovery::crashReports(state.path());
        QVERIFY2(report.contains("Signal: SIGSEGV"), qPrintable(report));
        QVERIFY(report.startsWith("Tenter ") && report.contains(qVersion()));
        QVERIFY(report.contains("test-desktop-recovery"));
        recovery::removeCrashReports(state.path());
        QVERIFY(recovery::crashReports(state.path()).isEmpty());
    }

private:
    /// A program that edits a copy of the sample, and what it said.
    class Editing {
    public:
        explicit Editing(const QString& sample) {
            QFile::copy(sample, folder_.filePath("row.tenter.json"));
            QFile::link(QStringLiteral(TENTER_SOURCE_DIR "/sample-projects/pictures"),
                        folder_.filePath("pictures"));
            process_.start(QCoreApplication::applicationFilePath(),
                           {"--edit", folder_.filePath("row.tenter.json"), folder_.filePath("state")});
        }
        /// From the first edit, ms.
        void killAfter(int time) {
            QObject::connect(&process_, &QProcess::readyReadStandardOutput, &process_, [this, time] {
                if (!std::exchange(isCounting_, true))
                    QTimer::singleShot(time, &process_, [this] {
                        killed_ = now();
                        process_.kill();
                    });
            });
        }
        bool isDead() const { return killed_ > 0 && process_.state() == QProcess::NotRunning; }
        /// The age of the oldest edit that is lost, ms; −1 if a file is damaged.
        qint64 lost() {
            int kept = 0;
            project::Problems problems;
            for (const recovery::Leftover& one : recovery::leftovers(folder_.filePath("state/recovery")))
                kept = editOf(one.work.project);
            const QDir recoveries(folder_.filePath("state/recovery"));
            if (kept == 0 && !recoveries.entryList({"*.recovery"}).isEmpty()) return -1;
            if (!project::read(folder_.filePath("row.tenter.json").toStdString(), problems)) return -1;
            for (const QByteArray& line : process_.readAllStandardOutput().split('\n')) {
                const QList<QByteArray> words = line.split(' ');
                if (words.size() == 2 && words[0].toInt() > kept) return killed_ - words[1].toLongLong();
            }
            return 0;
        }

    private:
        QTemporaryDir folder_;
        QProcess process_;
        bool isCounting_ = false;
        qint64 killed_ = 0;
    };

    QString recoveryFolder() const { return state_->filePath("recovery"); }
    QStringList kept() const {
        QStringList files;
        for (const QFileInfo& info : QDir(recoveryFolder()).entryInfoList({"*.recovery"}, QDir::Files))
            files << info.filePath();
        return files;
    }
    void rename(const std::string& name) {
        document().endGesture();
        document().edit("Rename", [&](project::Project& project) { project.name = name; });
    }
    /// Leaves unsaved changes behind, as a program does that is killed.
    void leave(const std::string& name, const std::filesystem::path& file) {
        QDir().mkpath(recoveryFolder());
        project::Project changed = project();
        changed.name = name;
        project::Problems problems;
        static int number = 0;
        QVERIFY(project::replaceFile(
            recoveryFolder().toStdString() + "/" + std::to_string(++number) + ".recovery",
            recovery::recoveryText({changed, file, document().folder(), QDateTime::currentDateTimeUtc()}),
            problems));
    }
    void changeOnDisk(const std::string& name) {
        project::Project other = project();
        other.name = name;
        project::Problems problems;
        QVERIFY(project::replaceFile(document().file(), project::write(other), problems));
    }
    static QByteArray contentOf(const QString& file) {
        QFile in(file);
        return in.open(QIODevice::ReadOnly) ? in.readAll() : QByteArray();
    }
    /// Answers the next question by its button.
    static void answer(const QString& text) {
        QTimer::singleShot(100, qApp, [text] {
            auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
            QVERIFY(box != nullptr);
            for (QAbstractButton* button : box->buttons())
                if (button->text() == text) return button->click();
            box->reject();
            QFAIL(qPrintable("no button " + text));
        });
    }

    std::unique_ptr<QTemporaryDir> state_;
};

}  // namespace tenter::desktop

int main(int argc, char** argv) {
    using namespace tenter::desktop;
    const QByteArray mode = argc > 1 ? argv[1] : "";
    if (mode == "--save") return saveUntilKilled(argv[2]);
    QApplication application(argc, argv);
    if (mode == "--edit") return editUntilKilled(argv[2], argv[3]);
    if (mode == "--crash") {
        recovery::watchForCrashes(argv[2]);
        std::raise(SIGSEGV);
    }
    RecoveryTest test;
    return QTest::qExec(&test, argc, argv);
}

#include "recovery_test.moc"
