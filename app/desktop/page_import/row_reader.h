// Reads the row of cards from a page while the user pastes or types it. Waits for a pause in typing, and
// reads large pages on a background thread.
#pragma once

#include <QObject>
#include <QTimer>
#include <memory>

#include "compare/page_run.h"
#include "document/background_job.h"
#include "document/document.h"
#include "page_import/row_import.h"

namespace tenter::desktop::page_import {

/// Size in bytes above which a page is read on a background thread and cannot be edited in a text box.
inline constexpr qsizetype largePage = 200 * 1000;

class RowReader : public QObject {
    Q_OBJECT

public:
    explicit RowReader(Document& document, QObject* parent = nullptr);
    /// Sets the page; empty bytes: none. Reads it at once, or after a pause in typing.
    void setPage(const QByteArray& bytes, const std::filesystem::path& file, bool atOnce);
    void assignRole(const RoleAssignment& assignRole) { start(assignRole); }
    void setSelector(const markup::RoleChoice& choice) { start(choice); }
    /// Uses this theme CSS instead of the CSS of the page. Reads the page again after a pause in typing.
    void setTheme(const std::string& css);
    /// Sets the root font size of the theme in CSS px, for a stylesheet alone. Reads it again.
    void setRootSize(double px);
    /// Discards the roles, selectors and theme CSS that the user has set, and reads the page again.
    void guessAgain();
    /// Whether the row goes into a new project. Reads the page again.
    void setIntoNew(bool on);
    [[nodiscard]] bool isIntoNew() const { return intoNew_; }
    /// Measures the container and the root font size of the page in `browser` from now on; empty: not.
    void setMeasuring(const std::optional<compare::Browser>& browser);
    [[nodiscard]] bool isMeasuring() const { return run_ != nullptr; }
    /// The folder in which a new project looks for its pictures.
    [[nodiscard]] std::filesystem::path folderOfNew() const;
    /// Reads the page again, for example because the project has changed.
    void readAgain();
    [[nodiscard]] bool hasPage() const { return !bytes_.isEmpty(); }
    [[nodiscard]] bool isReading() const { return reading_ || typingTimer_.isActive() || isMeasuring(); }
    /// The saved page; empty for pasted or typed HTML.
    [[nodiscard]] const std::filesystem::path& file() const { return file_; }
    [[nodiscard]] bool hasChoices() const { return !result_.choices.empty() || theme_.has_value(); }
    [[nodiscard]] const std::optional<std::string>& typedTheme() const { return theme_; }
    [[nodiscard]] const ImportResult& result() const { return result_; }

Q_SIGNALS:
    void started();   ///< a page is being read; `result` is out of date
    void finished();  ///< `result` is up to date
    /// The row has the values of the CSS.
    void measuringFailed(const QString& why);  ///< `why` is a message for the user

private:
    void start(decltype(ImportRequest::change) change);
    void onResult(ImportResult result);
    void measure();

    Document& document_;
    QTimer typingTimer_;
    QByteArray bytes_;
    std::filesystem::path file_;
    std::optional<std::string> theme_;
    ImportResult result_;
    bool intoNew_ = false;
    double rootSize_ = 16;
    bool reading_ = false;
    quint64 serial_ = 0;  // of the newest reading; what a browser measured for others is dropped
    std::optional<compare::Browser> browser_;
    Measurement measured_;
    std::unique_ptr<compare::PageRun> run_;
    BackgroundJob job_;  // last, so that its thread ends before what it reports to
};

}  // namespace tenter::desktop::page_import
