// Keeps the unsaved changes of a document in a recovery file.
#pragma once

#include <QLockFile>
#include <QObject>
#include <QTimer>
#include <memory>

#include "document/background_job.h"
#include "document/document.h"

namespace tenter::desktop::recovery {

/// After a change, the file is written within `delay`, off the GUI thread. It is removed when the document
/// has no unsaved changes any more. If the program ends in any other way, it stays (`leftovers`).
class Recorder : public QObject {
    Q_OBJECT

public:
    static constexpr int delay = 100;  ///< ms

    /// `folder` is made if it is missing.
    Recorder(const Document& document, const QString& folder, QObject* parent = nullptr);
    ~Recorder() override;
    /// Removes the file: the unsaved changes are no longer wanted.
    void discard();
    /// Makes the recovery file of an earlier program the own one. Its project is open now.
    void adopt(const QString& recoveryFile);
    /// Waits until everything is written; for tests.
    void finish();
    [[nodiscard]] const QString& file() const { return file_; }

Q_SIGNALS:
    /// The first failure after a success: changes are not kept at present. `why`: a sentence.
    void failed(const QString& why);

private:
    void follow();
    void record();

    const Document& document_;
    QString file_;
    std::unique_ptr<QLockFile> lock_;
    QTimer timer_;
    int recorded_ = -1;  ///< revision of the document in the file
    bool exists_ = false;
    bool hasFailed_ = false;
    BackgroundJob job_{this};
};

}  // namespace tenter::desktop::recovery
