// Work on a background thread, of which only the newest counts.
#pragma once

#include <QObject>
#include <QThreadPool>
#include <deque>
#include <functional>
#include <memory>
#include <mutex>
#include <stop_token>
#include <utility>

namespace tenter::desktop {

/// Runs tasks one after the other off the GUI thread and delivers their results on it. Starting or cancelling
/// drops the results of earlier tasks, even if they are ready.
class BackgroundJob : public QObject {
    Q_OBJECT

public:
    explicit BackgroundJob(QObject* parent = nullptr);
    /// Cancels, and waits for the task that is running.
    ~BackgroundJob() override;

    /// Cancels all tasks, then runs `work(std::stop_token)` in the background and `done(result)` on the GUI
    /// thread. `work` must not touch what the GUI thread uses; it should return soon after a stop request.
    template <class Work, class Done>
    void start(Work work, Done done) {
        cancel();
        add(std::move(work), std::move(done));
    }
    /// The same after the tasks that are waiting or running.
    template <class Work, class Done>
    void add(Work work, Done done) {
        run([work = std::move(work),
             done = std::move(done)](const std::stop_token& stop) mutable -> Delivery {
            auto result = std::make_shared<decltype(work(stop))>(work(stop));
            return [done = std::move(done), result] { done(std::move(*result)); };
        });
    }
    /// Asks the running task to stop, and drops every result that has not been delivered.
    void cancel();
    /// True from a start until the last result is delivered or dropped.
    [[nodiscard]] bool isRunning() const { return pending_ > 0; }
    /// Waits for at most `milliseconds` and delivers the results that are ready then. Returns true if none is
    /// left to wait for.
    bool waitFor(int milliseconds);

Q_SIGNALS:
    void runningChanged(bool running);

private:
    using Delivery = std::function<void()>;
    using Task = std::function<Delivery(const std::stop_token&)>;
    struct Waiting {
        int serial = 0;
        std::stop_token stop;
        Task task;
    };
    struct Ready {
        int serial = 0;
        Delivery delivery;
    };
    void run(Task task);
    /// Runs the first waiting task; on the worker.
    void runNext();
    /// Delivers the first result that is ready, unless it was dropped.
    Q_INVOKABLE void deliverNext();
    /// Emits `runningChanged` if it has.
    void announce();

    QThreadPool pool_;
    // Tasks and results go through queues of our own: the thread sanitizer does not see what Qt orders,
    // because Qt is not built with it.
    std::mutex mutex_;
    std::deque<Waiting> tasks_;
    std::deque<Ready> results_;
    std::stop_source stop_;
    int serial_ = 0;   // of the newest start; results of others are dropped
    int pending_ = 0;  // tasks of that start whose result has not been delivered
    bool wasRunning_ = false;
};

}  // namespace tenter::desktop
