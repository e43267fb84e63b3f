// Comparison with a browser: with a real one if it is installed, and with recorded results in any case.
#include <QDir>
#include <QFileInfo>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QListWidget>
#include <QSettings>
#include <QSignalSpy>
#include <QStandardPaths>
#include <QTcpSocket>
#include <QTemporaryDir>
#include <QtTest>
#include <nlohmann/json.hpp>
#include <set>

#include "axis/axis_pane.h"
#include "axis/comparison_lane.h"
#include "compare/browser_run.h"
#include "compare/compare_dialog.h"
#include "compare/comparison.h"
#include "compare/page_host.h"
#include "compare/width_order.h"
#include "compare/wording.h"
#include "document/handover.h"
#include "document/wording.h"
#include "markup/adopt.h"

namespace tenter::desktop::compare {

class CompareTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() {
        QStandardPaths::setTestModeEnabled(true);
        session_ = std::make_unique<Session>();
        project::Problems problems;
        QVERIFY(
            session_->document.open(TENTER_SOURCE_DIR "/sample-projects/shore-walks.tenter.json", problems));
    }
    void cleanup() { session_.reset(); }

    // Source: the browser itself.
    void agreesWithABrowser_data() {
        QTest::addColumn<QString>("title");
        QTest::newRow("chromium") << "Chromium";
        QTest::newRow("firefox") << "Firefox";
    }
    void agreesWithABrowser() {
        QFETCH(QString, title);
        const Browser browser = installed(title);
        if (browser.program.isEmpty()) QSKIP("this browser is not installed");
        const QStringList before = folders();
        Comparison comparison(session_->layouts, session_->document);
        QSignalSpy finished(&comparison, &Comparison::finished);
        QSignalSpy failed(&comparison, &Comparison::failed);
        comparison.start(browser, {320, 560, 561, 1120, 1920});
        QVERIFY(comparison.isRunning());
        QTRY_VERIFY_WITH_TIMEOUT(!finished.isEmpty() || !failed.isEmpty(), 240000);
        QVERIFY2(failed.isEmpty(), failed.isEmpty() ? "" : qPrintable(failed.first().first().toString()));
        QVERIFY(!comparison.isRunning());
        QCOMPARE(folders(), before);
        QCOMPARE(comparison.summary().widths, std::size_t{5});
        QVERIFY(comparison.summary().parts >= 5 * 4);
        for (const judge::DifferingRun& run : comparison.runs()) {
            const QByteArray says = differenceTitle(comparison, run.worst).toUtf8();
            QVERIFY2(run.worst.what != judge::Difference::What::Lines, says.constData());
        }
        // Measured: Firefox truncates lengths in `vw` to 1/60 px; the layout does not round them.
        QVERIFY(comparison.summary().largestSize < 1.0 / 60);
        QVERIFY(comparison.summary().largestBox < 1);
        if (browser.kind == Browser::Kind::Chromium) {
            QCOMPARE(comparison.summary().differingWidths, std::size_t{0});
            QVERIFY(headline(comparison).contains("agrees"));
        }
        QVERIFY(comparison.isFresh());
        session_->scope.setSetting("Gap", "row/columnGap", "77px");
        QVERIFY(!comparison.isFresh());
        session_->document.undoStack().undo();
        QVERIFY(comparison.isFresh());
    }

    // The invented themes of tests/engines: saved pages whose CSS interferes with the row in different ways.
    void agreesInASavedPage_data() {
        QTest::addColumn<QString>("title");
        QTest::addColumn<QString>("theme");
        QTest::newRow("chromium, a wide container and ids") << "Chromium"
                                                            << "almanac";
        QTest::newRow("firefox, a flex row") << "Firefox"
                                             << "halyard";
        QTest::newRow("chromium, a list and a root of 10 px") << "Chromium"
                                                              << "windfall";
    }
    void agreesInASavedPage() {
        QFETCH(QString, title);
        QFETCH(QString, theme);
        const Browser browser = installed(title);
        if (browser.program.isEmpty()) QSKIP("this browser is not installed");
        const QString themes = QStringLiteral(TENTER_SOURCE_DIR "/tests/engines/themes/");
        const QString file = themes + theme + ".html";
        project::Problems problems;
        QVERIFY(session_->document.open((themes + "base.tenter.json").toStdString(), problems));
        importRow(file);
        Comparison comparison(session_->layouts, session_->document);
        QSignalSpy finished(&comparison, &Comparison::finished);
        QSignalSpy failed(&comparison, &Comparison::failed);
        comparison.start(browser, {320, 500, 700, 980, 1240, 1920}, file);
        QTRY_VERIFY_WITH_TIMEOUT(!finished.isEmpty() || !failed.isEmpty(), 240000);
        QVERIFY2(failed.isEmpty(), failed.isEmpty() ? "" : qPrintable(failed.first().first().toString()));
        QVERIFY(comparison.summary().parts >= 6 * 6);
        for (const judge::DifferingRun& run : comparison.runs())
            QFAIL(qPrintable(QString::number(run.first) + ": " + differenceTitle(comparison, run.worst)));
    }

    // The page is changed so that a heading has one more line than computed, which also makes its card
    // taller.
    void reportsTheDifferencesOfAChangedPage() {
        const Browser browser = installed("Chromium");
        if (browser.program.isEmpty()) QSKIP("Chromium is not installed");
        QByteArray html = page();
        const qsizetype at = html.indexOf("data-tenter-part=\"1.1\"");
        QVERIFY(at > 0);
        html.insert(html.indexOf('>', at) + 1, "Changed<br>");
        BrowserRun run(browser, html, {700});
        judge::Verdict verdict;
        std::string wrong;
        connect(&run, &BrowserRun::measured, this,
                [&](const std::vector<double>& widths, const QByteArray& json) {
                    const auto read = judge::parseBrowserLayouts(json.toStdString(), wrong);
                    if (!read || read->size() != 1 || widths.size() != 1) return;
                    const layout::PreparedRow row(session_->document.project(), 0, session_->document.store(),
                                                  browser.profile());
                    verdict = judge::judge(row, layout::layOutDrawn(row, widths[0]), read->front());
                });
        QSignalSpy finished(&run, &BrowserRun::finished);
        QSignalSpy failed(&run, &BrowserRun::failed);
        run.start();
        QTRY_VERIFY_WITH_TIMEOUT(!finished.isEmpty() || !failed.isEmpty(), 240000);
        QVERIFY2(failed.isEmpty(), failed.isEmpty() ? "" : qPrintable(failed.first().first().toString()));
        QCOMPARE(wrong, std::string());
        QVERIFY(!verdict.agrees());
        const auto runs = judge::differingRuns({{700, verdict}});
        QCOMPARE(runs.size(), std::size_t{1});
        QCOMPARE(runs[0].worst.what, judge::Difference::What::Lines);
        QCOMPARE(runs[0].worst.card, std::optional<std::size_t>(1));
        QCOMPARE(runs[0].worst.part, std::optional<std::size_t>(1));
        QVERIFY(runs[0].worst.measured >= runs[0].worst.computed + 1);
        QVERIFY(verdict.largestBox > 5);
        QCOMPARE(axis::barOf(verdict), 1.0);
    }

    // Uses a result as a browser would send it, with one more line at one width.
    void marksAndListsDifferences() {
        QTemporaryDir folder;
        axis::AxisPane pane(*session_);
        Comparison comparison(session_->layouts, session_->document);
        pane.addComparisonLane(comparison);
        pane.resize(900, 300);
        pane.show();
        CompareDialog dialog(comparison, *session_, nullptr);
        dialog.show();
        auto* lane = pane.findChild<axis::ComparisonLane*>();
        QVERIFY(lane != nullptr && !lane->isVisible());

        QSignalSpy finished(&comparison, &Comparison::finished);
        comparison.start(recorder(folder), {700, 900});
        const QUrl frame = recorded(folder);
        QCOMPARE(post(frame, R"({"layouts": []})"), QByteArray(R"({"widths": [700,900]})"));
        QCOMPARE(post(frame, layoutsOf({700, 900}, 900)), QByteArray(R"({"widths": []})"));
        QTRY_VERIFY_WITH_TIMEOUT(!finished.isEmpty(), 20000);
        QCOMPARE(headline(comparison), QString("Chromium differs from Tenter at 1 of 2 widths"));
        QVERIFY(lane->isVisible());
        QVERIFY2(lane->toolTipAt(pane.scale().x(700)).contains("agrees"),
                 qPrintable(lane->toolTipAt(pane.scale().x(700))));
        QVERIFY2(lane->toolTipAt(pane.scale().x(900)).contains("differs"),
                 qPrintable(lane->toolTipAt(pane.scale().x(900))));
        auto* list = dialog.findChild<QListWidget*>();
        QCOMPARE(list->count(), 1);
        QVERIFY2(list->item(0)->text().contains("heading, card 2"), qPrintable(list->item(0)->text()));
        list->setCurrentRow(0);
        QCOMPARE(session_->view.width(), 900.0);
        QCOMPARE(session_->selection.place(), std::optional(Place{1, 1}));
    }

    void refusesAnInvalidResult() {
        for (const auto& [sent, says] : std::vector<std::pair<QByteArray, QString>>{
                 {"nonsense", "cannot be understood"},
                 {R"({"layouts": []})", "the number of widths"},
                 {layoutsOf({640, 900}, 0), pixels(640) + " wide instead of " + pixels(700)}}) {
            QTemporaryDir folder;
            Comparison comparison(session_->layouts, session_->document);
            QSignalSpy failed(&comparison, &Comparison::failed);
            comparison.start(recorder(folder), {700, 900});
            const QUrl frame = recorded(folder);
            post(frame, R"({"layouts": []})");
            post(frame, sent);
            QTRY_VERIFY_WITH_TIMEOUT(!failed.isEmpty(), 20000);
            const QString why = failed.first().first().toString();
            QVERIFY2(why.contains(says), qPrintable(why));
            QVERIFY(!comparison.isRunning());
        }
    }

    void stopsTheBrowserAndRemovesItsFolderWhenCancelled() {
        const Browser browser = installed("Chromium");
        if (browser.program.isEmpty()) QSKIP("Chromium is not installed");
        const QStringList before = folders();
        Comparison comparison(session_->layouts, session_->document);
        comparison.start(browser);
        QTRY_VERIFY_WITH_TIMEOUT(comparison.done() > 0, 240000);
        QVERIFY(folders().size() > before.size());
        comparison.cancel();
        QVERIFY(!comparison.isRunning());
        QVERIFY(comparison.done() < comparison.total());
        QTRY_COMPARE_WITH_TIMEOUT(folders(), before, 20000);
        // The results so far are kept.
        QVERIFY(comparison.summary().widths > 0);
        QVERIFY(headline(comparison).contains("so far"));
    }

    void reportsWhyABrowserDidNotStart() {
        QTemporaryDir folder;
        Comparison comparison(session_->layouts, session_->document);
        QSignalSpy failed(&comparison, &Comparison::failed);
        comparison.start({Browser::Kind::Chromium, "Chromium", folder.filePath("nothing-here")}, {320});
        QTRY_VERIFY_WITH_TIMEOUT(!failed.isEmpty(), 60000);
        const QString why = failed.first().first().toString();
        QVERIFY2(why.contains("could not be started"), qPrintable(why));
        QVERIFY(!comparison.isRunning());
    }

    void reportsTheLastMessageOfABrowserThatClosesEarly() {
        QTemporaryDir folder;
        QFile script(folder.filePath("browser"));
        QVERIFY(script.open(QIODevice::WriteOnly));
        script.write("#!/bin/sh\necho first >&2\necho 'no display of any kind' >&2\nexit 3\n");
        script.setPermissions(QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
        script.close();
        Comparison comparison(session_->layouts, session_->document);
        QSignalSpy failed(&comparison, &Comparison::failed);
        comparison.start({Browser::Kind::Chromium, "Chromium", script.fileName()}, {320});
        QTRY_VERIFY_WITH_TIMEOUT(!failed.isEmpty(), 60000);
        const QString why = failed.first().first().toString();
        QVERIFY2(why.contains("no display of any kind"), qPrintable(why));
    }

    void explainsHowToInstallABrowser() {
        Comparison comparison(session_->layouts, session_->document);
        CompareDialog dialog(comparison, *session_, nullptr);
        dialog.show();
        dialog.setBrowsers({});
        const auto shows = [&](const QString& words) {
            for (const QLabel* label : dialog.findChildren<QLabel*>())
                if (label->isVisible() && label->text().contains(words)) return true;
            return false;
        };
        QVERIFY(shows("apt install"));
        dialog.setBrowsers({{Browser::Kind::Firefox, "Firefox", "firefox"}});
        QVERIFY(!shows("apt install"));
    }

    void servesOnlyItsPagesAndOnlyOnThisComputer() {
        PageHost host;
        QVERIFY(host.listen());
        host.addPage("row", "<p>the row</p>");
        host.addAnswer("readings", [](const QByteArray& sent) { return "[" + sent + "]"; });
        const QUrl row = host.address("row");
        QCOMPARE(row.host(), QString("127.0.0.1"));
        const QByteArray path = row.path().toUtf8();
        QVERIFY(path.size() > 32);
        const QByteArray here = "127.0.0.1:" + QByteArray::number(row.port());
        const auto ask = [&](const QByteArray& what) {
            return answer(static_cast<quint16>(row.port()), what);
        };
        // RFC 9112 § 3: method, target, version; § 6: Content-Length.
        QVERIFY(ask("GET " + path + " HTTP/1.1\r\nHost: " + here + "\r\n\r\n")
                    .endsWith("\r\n\r\n<p>the row</p>"));
        const QByteArray post = host.address("readings").path().toUtf8();
        QVERIFY(ask("POST " + post + " HTTP/1.1\r\nHost: " + here + "\r\nContent-Length: 3\r\n\r\n7,8")
                    .endsWith("\r\n\r\n[7,8]"));
        for (const QByteArray& refused : {"GET /row HTTP/1.1\r\nHost: " + here + "\r\n\r\n",
                                          "GET / HTTP/1.1\r\nHost: " + here + "\r\n\r\n",
                                          "GET " + path + " HTTP/1.1\r\nHost: elsewhere.example\r\n\r\n",
                                          "GET " + path + " HTTP/1.1\r\n\r\n",
                                          "POST " + path + " HTTP/1.1\r\nHost: " + here + "\r\n\r\n"})
            QVERIFY2(ask(refused).startsWith("HTTP/1.1 404"), refused.constData());
        for (const QByteArray& bad :
             {QByteArray("nonsense\r\n\r\n"), "POST " + post + " HTTP/1.1\r\nContent-Length: -1\r\n\r\n",
              "POST " + post + " HTTP/1.1\r\nContent-Length: 9999999999\r\n\r\n"})
            QVERIFY2(ask(bad).startsWith("HTTP/1.1 400"), bad.constData());
    }

    void ordersEachWholeWidthOnceAndKeyWidthsFirst() {
        const auto order = widthOrder(320, 420, {360.5});
        QCOMPARE(order.size(), std::size_t{101});
        QCOMPARE(std::set<double>(order.begin(), order.end()).size(), std::size_t{101});
        QCOMPARE(order[0], 320.0);
        QCOMPARE(order[1], 420.0);
        QCOMPARE(order[2], 360.0);
        QCOMPARE(order[3], 361.0);
    }

private:
    /// Imports the row of a saved page.
    void importRow(const QString& file) {
        QFile page(file);
        QVERIFY(page.open(QIODevice::ReadOnly));
        const std::string bytes = page.readAll().toStdString();
        markup::PageToAdopt asked;
        asked.bytes = bytes;
        asked.file = file.toStdString();
        asked.projectFolder = session_->document.folder();
        project::Problems problems;
        const auto adopted = markup::adopt(session_->document.project(), asked, problems);
        QVERIFY(adopted.has_value());
        session_->document.edit("Import row from page",
                                [&](project::Project& project) { project = adopted->project; });
    }
    /// A fake browser that only writes the address of the page into a file.
    static Browser recorder(const QTemporaryDir& folder) {
        QFile script(folder.filePath("browser"));
        if (!script.open(QIODevice::WriteOnly)) return {};
        script.write("#!/bin/sh\nfor page; do :; done\necho \"$page\" > \"$0.page\"\nsleep 300\n");
        script.setPermissions(QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
        return {Browser::Kind::Chromium, "Chromium", script.fileName()};
    }
    static QUrl recorded(const QTemporaryDir& folder) {
        QByteArray page;
        const bool came = QTest::qWaitFor(
            [&] {
                QFile file(folder.filePath("browser.page"));
                page = file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
                return page.endsWith('\n');
            },
            60000);
        return came ? QUrl(QString::fromUtf8(page.trimmed())) : QUrl();
    }
    /// Posts layouts to the server of `frame` and returns the body of the answer.
    static QByteArray post(const QUrl& frame, const QByteArray& readings) {
        const QUrl to = frame.resolved(QUrl("layouts"));
        const QByteArray received = answer(
            static_cast<quint16>(to.port()),
            "POST " + to.path().toUtf8() + " HTTP/1.1\r\nHost: 127.0.0.1:" + QByteArray::number(to.port()) +
                "\r\nContent-Length: " + QByteArray::number(readings.size()) + "\r\n\r\n" + readings);
        return received.mid(received.indexOf("\r\n\r\n") + 4);
    }
    /// The result of a browser that agrees with Tenter, except for one more line in the heading of card 2 at
    /// width `changed`.
    QByteArray layoutsOf(const std::vector<double>& widths, double changed) {
        const layout::PreparedRow row(session_->document.project(), 0, session_->document.store(),
                                      text::blink());
        const auto box = [](const layout::Box& one) {
            return QJsonArray{one.x, one.y, one.width, one.height};
        };
        QJsonArray layouts;
        for (const double width : widths) {
            const layout::Layout laid = layout::layOutDrawn(row, width);
            QJsonArray cards;
            QJsonArray parts;
            for (std::size_t c = 0; c < laid.cards.size(); ++c) {
                cards.append(box(laid.cards[c].box));
                for (std::uint32_t i = 0; i < laid.cards[c].partCount; ++i) {
                    const layout::LaidPart& part = laid.parts[laid.cards[c].firstPart + i];
                    QJsonObject read{{"name", QString("%1.%2").arg(c).arg(part.index)},
                                     {"box", box(part.box)},
                                     {"fontSize", QJsonValue()},
                                     {"lines", QJsonValue()}};
                    const bool more = width == changed && c == 1 && part.index == 1;
                    if (!part.picture) {
                        read["fontSize"] = part.fontSize;
                        read["lines"] = static_cast<int>(part.lineCount) + (more ? 1 : 0);
                    }
                    parts.append(read);
                }
            }
            layouts.append(
                QJsonObject{{"width", width}, {"row", box(laid.row)}, {"cards", cards}, {"parts", parts}});
        }
        return QJsonDocument(QJsonObject{{"layouts", layouts}}).toJson(QJsonDocument::Compact);
    }
    static Browser installed(const QString& title) {
        for (const Browser& browser : installedBrowsers())
            if (browser.title == title) return browser;
        return {};
    }
    static QStringList folders() {
        return QDir::temp().entryList({QCoreApplication::applicationName() + "-??????"}, QDir::Dirs,
                                      QDir::Name);
    }
    QByteArray page() {
        project::Problems problems;
        return QByteArray::fromStdString(pageOf(session_->document.project(), 0, session_->document.folder(),
                                                session_->document.store(), problems));
    }
    static QByteArray answer(quint16 port, const QByteArray& request) {
        QTcpSocket socket;
        socket.connectToHost("127.0.0.1", port);
        if (!socket.waitForConnected(5000)) return "no connection";
        socket.write(request);
        QByteArray received;
        // The server runs on this thread, so events must be processed.
        const bool ended = QTest::qWaitFor([&] {
            received += socket.readAll();
            return socket.state() == QAbstractSocket::UnconnectedState;
        });
        return ended ? received + socket.readAll() : QByteArray("no end");
    }

    std::unique_ptr<Session> session_;
};

}  // namespace tenter::desktop::compare

QTEST_MAIN(tenter::desktop::compare::CompareTest)
#include "compare_test.moc"
