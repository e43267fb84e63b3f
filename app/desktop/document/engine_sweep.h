// Where engines differ over all widths, found off the window's thread.
#pragma once

#include <QObject>
#include <QThreadPool>
#include <QTimer>
#include <atomic>
#include <memory>
#include <vector>

#include "document/viewing.h"
#include "sweep/differences.h"

namespace tenter::desktop {

/// Follows the row in view: once it has rested for a moment, every width is laid out under every profile.
class EngineSweep : public QObject {
    Q_OBJECT

public:
    explicit EngineSweep(Viewing& viewing, QObject* parent = nullptr);
    ~EngineSweep() override;

    /// Lines are counted under `text::profiles()`, in that order.
    [[nodiscard]] const std::vector<sweep::Stretch>& stretches() const { return stretches_; }
    [[nodiscard]] const std::vector<sweep::Span>& spans() const { return spans_; }
    /// False while what is told is of the row as it was before.
    [[nodiscard]] bool isFresh() const { return fresh_; }

signals:
    void changed();

private:
    using Stretches = std::vector<sweep::Stretch>;
    void leaveOff();
    void start();
    void take(int job, Stretches stretches);

    Viewing& viewing_;
    QTimer settled_;
    QThreadPool pool_;
    int job_ = 0;
    std::shared_ptr<std::atomic<bool>> goOn_;
    Stretches stretches_;
    std::vector<sweep::Span> spans_;
    bool fresh_ = false;
};

}  // namespace tenter::desktop
