#include "findings/remedy_search.h"

#include <utility>

namespace tenter::desktop::findings {

namespace {

constexpr int pause = 120;  // ms

}  // namespace

RemedySearch::RemedySearch(QObject* parent) : QObject(parent) {
    timer_.setSingleShot(true);
    timer_.setInterval(pause);
    connect(&timer_, &QTimer::timeout, this, &RemedySearch::start);
}

void RemedySearch::ask(Question question) {
    job_.cancel();
    answer_.reset();
    question_ = std::move(question);
    timer_.start();
}

void RemedySearch::cancel() {
    timer_.stop();
    job_.cancel();
    question_.reset();
    answer_.reset();
}

void RemedySearch::start() {
    job_.start(
        [fonts = fonts_, question = *question_](const std::stop_token& stop) {
            remedy::Options options;
            options.checks = question.checks;
            options.trial = question.trial;
            options.cancellation = stop;
            return remedy::remediesFor(question.project, question.variant, question.finding,
                                       fonts->use(question.project, question.folder), options);
        },
        [this](Answer answer) {
            answer_ = std::move(answer);
            Q_EMIT answered();
        });
}

bool RemedySearch::waitFor(int milliseconds) {
    if (timer_.isActive()) {
        timer_.stop();
        start();
    }
    job_.waitFor(milliseconds);
    return answer_.has_value();
}

}  // namespace tenter::desktop::findings
