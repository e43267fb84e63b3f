// The offer to restore unsaved changes, above the row: what they are, when they were made, and a thumbnail.
#pragma once

#include <QFrame>
#include <QLabel>
#include <QPushButton>
#include <vector>

#include "document/background_job.h"
#include "recovery/unsaved_work.h"

namespace tenter::desktop::recovery {

class Offer : public QFrame {
    Q_OBJECT

public:
    explicit Offer(QWidget* parent = nullptr);
    /// Offers one leftover after the other, the newest first.
    void offer(std::vector<Leftover> leftovers);
    /// The leftover that is offered now, or null.
    [[nodiscard]] const Leftover* current() const {
        return leftovers_.empty() ? nullptr : &leftovers_.front();
    }
    /// Goes on to the next one, after `restoreRequested` was answered.
    void next();

Q_SIGNALS:
    void restoreRequested();

private:
    void showCurrent();
    void discard();

    std::vector<Leftover> leftovers_;
    QLabel* picture_;
    QLabel* text_;
    BackgroundJob job_{this};
};

}  // namespace tenter::desktop::recovery
