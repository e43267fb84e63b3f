// Work on a background thread: order, cancelling, late results.
#include <QElapsedTimer>
#include <QSemaphore>
#include <QSignalSpy>
#include <QtTest>
#include <thread>

#include "document/background_job.h"

namespace tenter::desktop {

class JobsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void deliversTheResultOnTheGuiThread() {
        BackgroundJob job;
        QSignalSpy running(&job, &BackgroundJob::runningChanged);
        std::thread::id worker;
        int result = 0;
        std::thread::id delivered;
        job.start(
            [&worker](const std::stop_token&) {
                worker = std::this_thread::get_id();
                return 7;
            },
            [&](int value) {
                result = value;
                delivered = std::this_thread::get_id();
            });
        QVERIFY(job.isRunning());
        QTRY_COMPARE(result, 7);
        QCOMPARE(delivered, std::this_thread::get_id());
        QVERIFY(worker != delivered);
        QVERIFY(!job.isRunning());
        QCOMPARE(running.size(), 2);
    }

    void dropsTheResultOfAnEarlierStart() {
        BackgroundJob job;
        QSemaphore begun;
        QSemaphore proceed;
        QStringList delivered;
        job.start(
            [&](const std::stop_token&) {
                begun.release();
                proceed.acquire();
                return 1;
            },
            [&](int) { delivered << "earlier"; });
        begun.acquire();
        job.start([](const std::stop_token&) { return 2; }, [&](int) { delivered << "newest"; });
        proceed.release();
        QTRY_COMPARE(delivered, QStringList{"newest"});
        QTest::qWait(20);
        QCOMPARE(delivered, QStringList{"newest"});
    }

    // A result may be ready, in the event queue, when it is no longer wanted.
    void dropsAResultThatIsReadyButNotDelivered() {
        BackgroundJob job;
        QSemaphore ready;
        bool delivered = false;
        job.start(
            [&](const std::stop_token&) {
                ready.release();
                return 1;
            },
            [&](int) { delivered = true; });
        ready.acquire();
        std::this_thread::sleep_for(std::chrono::milliseconds(20));
        job.cancel();
        QVERIFY(!job.isRunning());
        QTest::qWait(20);
        QVERIFY(!delivered);
    }

    // As where a result changes what the job was started for.
    void saysThatItHasEndedWhenItIsCancelledByItsOwnResult() {
        BackgroundJob job;
        QSignalSpy running(&job, &BackgroundJob::runningChanged);
        job.start([](const std::stop_token&) { return 1; }, [&](int) { job.cancel(); });
        QTRY_COMPARE(running.size(), 2);
        QVERIFY(!running.last().first().toBool());
        QVERIFY(!job.isRunning());
    }

    void asksTheTaskToStop() {
        BackgroundJob job;
        QSemaphore begun;
        QSemaphore stopped;
        job.start(
            [&](const std::stop_token& stop) {
                begun.release();
                while (!stop.stop_requested())
                    std::this_thread::yield();
                stopped.release();
                return 0;
            },
            [](int) { QFAIL("a cancelled task was delivered"); });
        begun.acquire();
        job.cancel();
        QVERIFY(stopped.tryAcquire(1, 5000));
    }

    void runsAddedTasksInOrder() {
        BackgroundJob job;
        QList<int> results;
        const auto note = [&](int value) { results << value; };
        job.start([](const std::stop_token&) { return 1; }, note);
        job.add([](const std::stop_token&) { return 2; }, note);
        job.add([](const std::stop_token&) { return 3; }, note);
        QTRY_COMPARE(results, (QList<int>{1, 2, 3}));
    }

    void waitsForAResultNoLongerThanAsked() {
        BackgroundJob job;
        int result = 0;
        job.start([](const std::stop_token&) { return 5; }, [&](int value) { result = value; });
        QVERIFY(job.waitFor(5000));
        QCOMPARE(result, 5);
        QSemaphore proceed;
        job.start(
            [&](const std::stop_token&) {
                proceed.acquire();
                return 6;
            },
            [&](int value) { result = value; });
        QElapsedTimer time;
        time.start();
        QVERIFY(!job.waitFor(10));
        QVERIFY(time.elapsed() < 4000);
        QCOMPARE(result, 5);
        proceed.release();
        QTRY_COMPARE(result, 6);
    }

    void waitsForTheTaskWhenItIsDestroyed() {
        std::atomic<bool> ended = false;
        {
            BackgroundJob job;
            QSemaphore begun;
            job.start(
                [&](const std::stop_token& stop) {
                    begun.release();
                    while (!stop.stop_requested())
                        std::this_thread::yield();
                    ended = true;
                    return 0;
                },
                [](int) {});
            begun.acquire();
        }
        QVERIFY(ended);
    }
};

}  // namespace tenter::desktop

QTEST_MAIN(tenter::desktop::JobsTest)
#include "jobs_test.moc"
