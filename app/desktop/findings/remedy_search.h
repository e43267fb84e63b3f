// Tries the remedies of a finding on a background thread.
#pragma once

#include <QObject>
#include <QTimer>
#include <filesystem>
#include <memory>
#include <optional>
#include <vector>

#include "document/background_fonts.h"
#include "document/background_job.h"
#include "remedy/remedies.h"

namespace tenter::desktop::findings {

/// Answers the newest question only; an answer that comes after another question is dropped.
class RemedySearch : public QObject {
    Q_OBJECT

public:
    /// The arguments of `remedy::remediesFor`, and the folder with the project's fonts.
    struct Question {
        project::Project project;
        std::size_t variant = 0;
        checks::Finding finding;
        checks::Options checks;
        std::optional<project::Trial> trial;
        std::filesystem::path folder;
    };
    using Answer = std::vector<remedy::Remedy>;

    explicit RemedySearch(QObject* parent = nullptr);

    /// Starts after a short pause, because a value that is dragged asks at every frame.
    void ask(Question question);
    /// Drops question and answer.
    void cancel();
    /// True between a question and its answer.
    [[nodiscard]] bool isRunning() const { return question_ && !answer_; }
    /// The remedies of the newest question; empty until they are known.
    [[nodiscard]] const std::optional<Answer>& answer() const { return answer_; }
    /// Waits for at most `milliseconds`; true if the answer is there then.
    bool waitFor(int milliseconds);

Q_SIGNALS:
    void answered();  ///< `answer()` is known

private:
    void start();

    std::optional<Question> question_;
    std::optional<Answer> answer_;
    QTimer timer_;
    std::shared_ptr<BackgroundFonts> fonts_ = std::make_shared<BackgroundFonts>();
    BackgroundJob job_;
};

}  // namespace tenter::desktop::findings
