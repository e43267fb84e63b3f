// The program started from a shell: help, version and errors in arguments need no display.
#include <QProcess>
#include <QTemporaryDir>
#include <QtTest>

namespace tenter::desktop {

class StartTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void printsItsHelpWithoutADisplay() {
        for (const char* option : {"--help", "-h"}) {
            const Run run = start({option});
            QVERIFY2(run.exitedNormally, run.err.constData());
            QCOMPARE(run.code, 0);
            QVERIFY2(run.err.isEmpty(), run.err.constData());
            const QList<QByteArray> lines = run.out.split('\n');
            QVERIFY(!lines[0].isEmpty() && lines[0].size() <= 70);
            for (const char* part : {"tenter [OPTIONS] [PROJECT]", "--theme", "light", "dark", "--picture",
                                     "--version", "Examples:", "Exit codes:"})
                QVERIFY2(run.out.contains(part), part);
            for (const QByteArray& line : lines)
                QVERIFY2(line.size() <= 100, line.constData());
        }
    }

    void printsItsVersionWithoutADisplay() {
        for (const char* option : {"--version", "-v"}) {
            const Run run = start({option});
            QVERIFY2(run.exitedNormally, run.err.constData());
            QCOMPARE(run.code, 0);
            static const QRegularExpression shape(
                "^tenter \\d+\\.\\d+\\.\\d+\\nCommit: (unknown|[0-9a-f]{12,40}(-modified)?)\\nLibraries:\\n"
                "  Qt 6\\.[\\d.]+\\n(  \\w[^\\n]* [\\d.]+\\n){12}$");
            QVERIFY2(shape.match(run.out).hasMatch(), run.out.constData());
        }
    }

    void refusesWrongArgumentsInOneLine_data() {
        QTest::addColumn<QStringList>("arguments");
        QTest::addColumn<QByteArray>("line");
        QTest::newRow("unknown option") << QStringList{"--thme=dark"} << QByteArray("--thme");
        QTest::newRow("unknown letter") << QStringList{"-x"} << QByteArray("-x");
        QTest::newRow("no theme") << QStringList{"--theme"} << QByteArray("--theme");
        QTest::newRow("wrong theme") << QStringList{"--theme", "sepia"} << QByteArray("\"sepia\"");
        QTest::newRow("value for a flag") << QStringList{"--version=2"} << QByteArray("--version");
        QTest::newRow("two projects") << QStringList{"a.tenter.json", "b.tenter.json"} << QByteArray("2");
        QTest::newRow("no project") << QStringList{"--picture", "row.png"} << QByteArray("--picture");
        QTest::newRow("value of Qt") << QStringList{"-platform"} << QByteArray("-platform");
    }

    void refusesWrongArgumentsInOneLine() {
        QFETCH(QStringList, arguments);
        QFETCH(QByteArray, line);
        const Run run = start(arguments);
        QVERIFY2(run.exitedNormally, run.err.constData());
        QCOMPARE(run.code, 2);
        QVERIFY2(run.out.isEmpty(), run.out.constData());
        QVERIFY2(run.err.startsWith("tenter: ") && run.err.endsWith('\n'), run.err.constData());
        QCOMPARE(run.err.count('\n'), 1);
        QVERIFY2(run.err.contains(line), run.err.constData());
    }

    void paintsThePictureOfAProjectWithoutADisplay() {
        QTemporaryDir folder;
        const QString file = folder.filePath("row.png");
        const QString project = QStringLiteral(TENTER_SOURCE_DIR "/sample-projects/night-sky.tenter.json");
        const Run run = start({"--picture", file, project});
        QVERIFY2(run.exitedNormally && run.code == 0, run.err.constData());
        QVERIFY(QImage(file).width() > 600);
        const Run missing = start({"--picture", file, folder.filePath("none.tenter.json")});
        QVERIFY(missing.exitedNormally);
        QCOMPARE(missing.code, 2);
        QVERIFY2(missing.err.contains("none.tenter.json"), missing.err.constData());
    }

private:
    struct Run {
        bool exitedNormally = false;
        int code = -1;
        QByteArray out, err;
    };
    /// Runs the program without a display.
    static Run start(const QStringList& arguments) {
        QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
        for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"})
            environment.remove(name);
        QProcess process;
        process.setProcessEnvironment(environment);
        process.start(TENTER_PROGRAM, arguments);
        Run run;
        run.exitedNormally = process.waitForFinished(60000) && process.exitStatus() == QProcess::NormalExit;
        run.code = process.exitCode();
        run.out = process.readAllStandardOutput();
        run.err = process.readAllStandardError();
        return run;
    }
};

}  // namespace tenter::desktop

QTEST_GUILESS_MAIN(tenter::desktop::StartTest)
#include "start_test.moc"
