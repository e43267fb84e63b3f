// The frame of every export dialog: destination, choices, what will be written, progress, what was written.
#pragma once

#include <QDialog>
#include <QFormLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QTimer>
#include <optional>
#include <stop_token>

#include "document/background_job.h"
#include "export/choices.h"
#include "export/destination.h"
#include "export/file_list.h"
#include "export/plan.h"
#include "session/session.h"

namespace tenter::desktop::exporting {

/// What distinguishes one export from another.
struct ExportKind {
    QString key;           ///< under which choices are remembered, such as `pictures`
    QString title;         ///< of the dialog
    QString verb;          ///< label of the button that writes, such as `Write pictures`
    QString about;         ///< one or two sentences: what it writes and what it is for
    QString contentTitle;  ///< of the second column of the list, such as `Pixels`
    Destination::Kind destination = Destination::Kind::Folder;
    QString filter;  ///< of the file dialog; unused for a folder
};

/// A derived class adds its choices to `options()`, calls `replan()` whenever one of them changes, and
/// implements the virtual functions. The frame runs plan and work off the GUI thread, one at a time.
class ExportDialog : public QDialog {
    Q_OBJECT

public:
    ExportDialog(Session& session, ExportKind kind, QWidget* parent);
    ~ExportDialog() override;
    [[nodiscard]] bool isWriting() const { return writing_.has_value(); }
    /// True until the plan for the current choices is there.
    [[nodiscard]] bool isPlanning() const { return planning_.isRunning() || pause_.isActive(); }
    [[nodiscard]] const Plan& plan() const { return plan_; }
    /// Of the last writing; nothing before it and after a change of the choices.
    [[nodiscard]] const std::optional<Outcome>& outcome() const { return outcome_; }
    [[nodiscard]] Destination& destination() const { return *destination_; }
    /// Writes the files, or stops writing them.
    void writeOrStop();

protected:
    /// The layout for rows of choices, below the destination.
    [[nodiscard]] QFormLayout* options() const { return options_; }
    [[nodiscard]] Session& session() const { return session_; }
    [[nodiscard]] QPushButton* writeButton() const { return write_; }
    /// Adds a button that shows after writing, beside *Open folder*.
    void addResultButton(QPushButton* button);
    /// Plans again soon: several calls in a row make one plan.
    void replan();

    /// Where to write if nothing was chosen before: an absolute path.
    [[nodiscard]] virtual QString usualDestination() const = 0;
    /// Where to write if the last file or folder was `last`: there again.
    [[nodiscard]] virtual QString destinationAfter(const QString& last) const { return last; }
    /// Shows the choices of this project. Called before the dialog is shown.
    virtual void restore(const Choices& choices) = 0;
    /// Remembers them. Called before writing.
    virtual void remember(const Choices& choices) const = 0;
    /// The planner for the current choices. It must hold copies of everything it uses.
    [[nodiscard]] virtual Planner planner() const = 0;
    /// The writer for the current choices. It must hold copies of everything it uses.
    [[nodiscard]] virtual Writer writer() const = 0;

    /// The folder of the project, or the person's documents if that folder is read-only or not known.
    [[nodiscard]] QString projectFolder() const;
    /// The name of the project file without its ending, or of the project, as a file name.
    [[nodiscard]] QString projectName() const;

    void showEvent(QShowEvent* event) override;
    void reject() override;

private:
    QWidget* buildState();
    void startPlan();
    void showPlan(Plan plan);
    void startWriting();
    void showProgress(const Progress& progress);
    void showOutcome(Outcome outcome);
    void updateState();
    void openFolder();
    [[nodiscard]] Choices choices() const;

    Session& session_;
    ExportKind kind_;
    Plan plan_;
    std::optional<Outcome> outcome_;
    std::optional<std::stop_source> writing_;
    bool closesAtEnd_ = false;
    QTimer pause_;
    Destination* destination_;
    QFormLayout* options_;
    FileList* list_;
    QLabel *headline_, *notes_, *doing_;
    QProgressBar* progress_;
    QPushButton *open_, *write_, *close_;
    QList<QPushButton*> resultButtons_;
    BackgroundJob planning_, work_;  // last, so that their threads end before what they report to
};

}  // namespace tenter::desktop::exporting
