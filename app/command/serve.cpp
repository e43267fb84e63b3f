#include <condition_variable>
#include <deque>
#include <fstream>
#include <iostream>
#include <memory>
#include <mutex>
#include <thread>

#include "call.h"
#include "help.h"
#include "opened.h"
#include "outcome.h"
#include "verbs.h"

namespace tenter::command {

namespace {

using Json = nlohmann::json;

struct ServeArguments : Arguments {
    std::string in;
};

/// A request that waits or runs.
struct Task {
    Json id;
    bool isNotification = false;
    std::string method;
    Json params;
    std::stop_source stop;
};

/// Reads requests on one thread and runs them in their order on another, so that a cancellation arrives while
/// a request runs.
class RequestLoop {
public:
    /// `sink` accepts the responses, each a line; it is called by one thread at a time.
    explicit RequestLoop(Sink sink) : sink_(std::move(sink)) {}

    void serve(std::istream& in) {
        std::thread worker([this] { work(); });
        for (std::string line; std::getline(in, line);)
            if (line.find_first_not_of(" \t\r") != std::string::npos) read(line);
        {
            const std::lock_guard lock(mutex_);
            isEnded_ = true;
        }
        changed_.notify_one();
        worker.join();
    }

private:
    void read(const std::string& line) {
        const Json message = Json::parse(line, nullptr, false);
        if (message.is_discarded())
            return write(errorResponse(nullptr, RpcError::ParseError,
                                       "The line is not JSON. Write one object on a line."));
        auto task = std::make_shared<Task>();
        if (message.is_object() && message.contains("id")) task->id = message["id"];
        const bool isSound = message.is_object() && message.value("jsonrpc", Json()) == "2.0" &&
                             message.value("method", Json()).is_string() &&
                             message.value("params", Json::object()).is_object() &&
                             (task->id.is_null() || task->id.is_string() || task->id.is_number_integer());
        if (!isSound)
            return write(
                errorResponse(task->id.is_primitive() ? task->id : Json(), RpcError::InvalidRequest,
                              "A request must be a JSON-RPC 2.0 object with method, params as an object, and "
                              "an id that is a string or a whole number."));
        task->isNotification = !message.contains("id");
        task->method = message["method"];
        task->params = message.value("params", Json::object());
        if (task->method == "$/cancelRequest") return cancel(task->params.value("id", Json()));
        const std::lock_guard lock(mutex_);
        waiting_.push_back(std::move(task));
        changed_.notify_one();
    }

    /// A request that has ended already is not cancelled: that is no error.
    void cancel(const Json& id) {
        const std::lock_guard lock(mutex_);
        if (running_ != nullptr && running_->id == id) running_->stop.request_stop();
        for (const std::shared_ptr<Task>& task : waiting_)
            if (task->id == id) task->stop.request_stop();
    }

    void work() {
        while (true) {
            std::unique_lock lock(mutex_);
            running_ = nullptr;
            changed_.wait(lock, [this] { return isEnded_ || !waiting_.empty(); });
            if (waiting_.empty()) return;
            running_ = waiting_.front();
            waiting_.pop_front();
            const std::shared_ptr<Task> task = running_;
            lock.unlock();
            const std::string answer = answerTo(*task);
            if (!task->isNotification) write(answer);
        }
    }

    std::string answerTo(const Task& task) {
        if (task.stop.stop_requested())
            return errorResponse(task.id, RpcError::Cancelled, "The request was cancelled.");
        if (task.method == "serve")
            return errorResponse(task.id, RpcError::MethodNotFound, "There is no method \"serve\".");
        Request request;
        request.cancellation = task.stop.get_token();
        request.workshops = &workshops_;
        return call(task.id, task.method, task.params, request);
    }

    void write(const std::string& line) {
        const std::lock_guard lock(output_);
        sink_(line + '\n');
    }

    Sink sink_;
    std::mutex mutex_, output_;
    std::condition_variable changed_;
    std::deque<std::shared_ptr<Task>> waiting_;
    std::shared_ptr<Task> running_;
    bool isEnded_ = false;
    Workshops workshops_;  ///< of the working thread
};

int runServe(const ServeArguments& arguments) {
    std::ifstream file;
    if (!arguments.in.empty()) {
        file.open(arguments.in);
        if (!file)
            return refuse(arguments.in, "The file cannot be read.",
                          "Check its name, its folder and its permissions.");
    }
    std::istream& in = arguments.in.empty() ? std::cin : file;
    if (!arguments.out.empty())
        return deliver(arguments, [&](const Sink& sink) { RequestLoop(sink).serve(in); });
    RequestLoop([](const std::string& line) { std::cout << line << std::flush; }).serve(in);
    return std::cout ? done : refuse("standard output", "It could not be written completely.", "");
}

}  // namespace

void addServe(CLI::App& app, Action& action) {
    auto arguments = std::make_shared<ServeArguments>();
    CLI::App* verb =
        app.add_subcommand("serve", "Answer many requests in one process, one JSON object a line");
    verb->add_option("--in", arguments->in,
                     "Read requests from this file. Default: standard input, until it ends.")
        ->type_name("FILE");
    verb->add_option("--out", arguments->out,
                     "Write all responses to this file after the last request. Default: each to standard "
                     "output at once.")
        ->type_name("FILE");
    setHelpEnd(
        *verb,
        "Requests and responses are those of JSON-RPC 2.0, one on a line. The method is a verb, and params "
        "are "
        "its options without hyphens: {\"jsonrpc\": \"2.0\", \"id\": 1, \"method\": \"check\", \"params\": "
        "{\"project\": \"row.tenter.json\", \"json\": true}}. An argument without a name, such as PROJECT, "
        "has "
        "its name in small letters. In place of a file, project can be the object of a project; its pictures "
        "and fonts are then looked up in \"folder\". Flags are true or false; options that can be given "
        "again "
        "are arrays.\nThe result has exit (the exit code), notes (the lines of standard error) and what "
        "the verb prints: value if it is JSON, else text, or base64 if it is a picture or a PDF. An error "
        "with "
        "the code 2 has problems: file, place, what is wrong and how to fix it. Requests are answered in "
        "their order. The notification $/cancelRequest with the id of a request cancels it: one that waits "
        "does not start, solve stops within about 50 ms, other verbs run to their end, and the response is "
        "an "
        "error with the code -32800. Fonts and shaped texts are kept from one request to the next.",
        {"serve --in requests.jsonl", "serve --in requests.jsonl --out responses.jsonl"},
        {exitDone(), exitWrongInput()});
    verb->callback([&action, arguments] { action = [arguments] { return runServe(*arguments); }; });
}

}  // namespace tenter::command
