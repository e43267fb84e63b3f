// Reads pages as they are pasted and typed: not at each letter, and large ones beside the window's thread.
#pragma once

#include <QObject>
#include <QThreadPool>
#include <QTimer>

#include "document/document.h"
#include "given/row_reading.h"

namespace tenter::desktop::given {

/// Bytes above which a page is read on another thread, and is not put into a box to be edited.
inline constexpr qsizetype largePage = 200 * 1000;

class RowReader : public QObject {
    Q_OBJECT

public:
    explicit RowReader(Document& document, QObject* parent = nullptr);
    ~RowReader() override;
    /// What is there to be read; empty bytes: nothing. Read at once, or when typing rests.
    void setPage(const QByteArray& bytes, const std::filesystem::path& file, bool atOnce);
    void pick(const Pick& pick) { start(pick); }
    void say(const markup::RoleChoice& choice) { start(choice); }
    /// Says the theme's CSS instead of having it read from the page; read when typing rests.
    void sayTheme(const std::string& css);
    /// Forgets what was said of roles and of the theme.
    void guessAnew();
    /// Reads it again: the project may be another one.
    void readAgain();
    [[nodiscard]] bool hasPage() const { return !bytes_.isEmpty(); }
    [[nodiscard]] bool isReading() const { return reading_ || settled_.isActive(); }
    [[nodiscard]] bool hasChoices() const { return !last_.choices.empty() || theme_.has_value(); }
    [[nodiscard]] const std::optional<std::string>& saidTheme() const { return theme_; }
    [[nodiscard]] const RowReading& last() const { return last_; }

signals:
    void started();   ///< what `last` says is being replaced
    void finished();  ///< `last` is new

private:
    void start(decltype(RowRequest::change) change);
    void take(RowReading reading);

    Document& document_;
    QThreadPool pool_;
    QTimer settled_;
    QByteArray bytes_;
    std::filesystem::path file_;
    std::optional<std::string> theme_;
    RowReading last_;
    bool reading_ = false;
    quint64 job_ = 0;
};

}  // namespace tenter::desktop::given
