#include "call.h"

#include <algorithm>
#include <cctype>
#include <stdexcept>

#include "outcome.h"
#include "program.h"
#include "units/base64.h"
#include "wording/language.h"

namespace tenter::command {

namespace {

using Json = nlohmann::json;

/// A project that stands in a request has this name in messages, and in its folder.
constexpr const char* givenName = "request.tenter.json";

/// The text of a value as it would stand on a command line.
std::string argumentOf(const Json& value, const std::string& name) {
    if (value.is_string()) return value.get<std::string>();
    if (value.is_number()) return value.dump();
    throw std::invalid_argument("The value of \"" + name + "\" must be a string or a number.");
}

std::string lower(std::string text) {
    std::ranges::transform(text, text.begin(),
                           [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return text;
}

bool isNamed(const CLI::Option& option) {
    return !option.get_lnames().empty();
}

/// The name of its parameter.
std::string nameOf(const CLI::Option& option) {
    return isNamed(option) ? option.get_lnames().front() : lower(option.get_name());
}

/// Turns parameters into the arguments of a verb.
class ParameterReader {
public:
    ParameterReader(const CLI::App& verb, const Json& params, Request& request)
        : verb_(verb), params_(params), request_(request) {}

    /// Options first, then what has no name in the order of the verb. Throws std::invalid_argument if a
    /// parameter is not one of the verb's, or has a wrong type.
    std::vector<std::string> read() {
        std::size_t used = 0;
        std::vector<std::string> unnamed;
        std::vector<std::string> words{verb_.get_name()};
        for (const CLI::Option* option : verb_.get_options()) {
            const std::string name = nameOf(*option);
            const auto found = params_.find(name);
            if (found == params_.end() || name == "help") continue;
            ++used;
            const bool isFlag = isNamed(*option) && option->get_items_expected_max() == 0;
            if (isFlag) {
                if (!found->is_boolean())
                    throw std::invalid_argument("\"" + name + "\" must be true or false.");
                if (found->get<bool>()) words.push_back("--" + name);
                continue;
            }
            const Json values = found->is_array() ? *found : Json::array({*found});
            for (const Json& value : values)
                isNamed(*option) ? words.push_back("--" + name + "=" + argumentOf(value, name))
                                 : unnamed.push_back(positional(value, name));
        }
        if (params_.contains("folder") && usesFolder_) ++used;
        if (used < params_.size()) refuseUnknown();
        words.emplace_back("--");
        words.insert(words.end(), unnamed.begin(), unnamed.end());
        return words;
    }

private:
    /// An object in the place of a file is its content. Its folder is that of the parameter `folder`.
    std::string positional(const Json& value, const std::string& name) {
        if (!value.is_object()) return argumentOf(value, name);
        std::string path = givenName;
        if (const auto folder = params_.find("folder"); folder != params_.end()) {
            path = argumentOf(*folder, "folder") + "/" + givenName;
            usesFolder_ = true;
        }
        // Two projects in one request need two names.
        if (request_.files.contains(path))
            path.insert(path.size() - std::string(givenName).size(), "second-");
        request_.files[path] = value.dump(2);
        return path;
    }

    void refuseUnknown() const {
        std::string known;
        for (const CLI::Option* option : verb_.get_options()) {
            const std::string name = nameOf(*option);
            if (name != "help") known += (known.empty() ? "" : ", ") + name;
        }
        throw std::invalid_argument("A parameter is not known. " + verb_.get_name() + " has: " + known + ".");
    }

    const CLI::App& verb_;
    const Json& params_;
    Request& request_;
    bool usesFolder_ = false;
};

std::string wrongInputResponse(const Json& id, const project::Problems& problems) {
    std::string message;
    for (const project::Problem& problem : problems)
        message += (message.empty() ? "" : " ") + problem.line();
    return errorResponse(id, RpcError::WrongInput, message, problems);
}

}  // namespace

std::string errorResponse(const Json& id, RpcError code, const std::string& message,
                          const project::Problems& problems) {
    Json error{{"code", static_cast<int>(code)}, {"message", message}};
    for (const project::Problem& problem : problems) {
        const std::string& place = problem.position.empty() ? problem.place : problem.position;
        error["data"]["problems"].push_back(
            {{"file", problem.file}, {"place", place}, {"what", problem.what}, {"fix", problem.fix}});
    }
    return Json{{"jsonrpc", "2.0"}, {"id", id}, {"error", error}}.dump(-1, ' ', false,
                                                                       Json::error_handler_t::replace);
}

std::string response(const Json& id, int exit, const Request& request) {
    std::string out =
        R"({"jsonrpc":"2.0","id":)" + id.dump() + R"(,"result":{"exit":)" + std::to_string(exit);
    const std::string& result = request.result;
    if ((result.starts_with('{') || result.starts_with('[')) && Json::accept(result)) {
        // It goes out as it is; its line feeds are all between values.
        const std::size_t at = out.append(R"(,"value":)").size();
        out += result;
        std::replace(out.begin() + static_cast<std::ptrdiff_t>(at), out.end(), '\n', ' ');
    } else {
        try {
            const std::string text = Json(result).dump();
            out.append(R"(,"text":)").append(text);
        } catch (const Json::exception&) {  // not UTF-8
            out.append(R"(,"base64":")").append(units::base64(result)).append("\"");
        }
    }
    Json notes = request.notes;
    for (const project::Problem& problem : request.problems)
        notes.push_back(problem.line());
    out += R"(,"notes":)" + notes.dump(-1, ' ', false, Json::error_handler_t::replace);
    return out + "}}";
}

std::string call(const Json& id, const std::string& method, const Json& params, Request& request) {
    const InRequest here(request);
    // The language of an earlier request does not last.
    wording::useLanguage("en");
    try {
        Action action;
        const std::unique_ptr<CLI::App> program = makeProgram(action, method);
        const auto verbs = program->get_subcommands([](const CLI::App*) { return true; });
        if (verbs.empty())
            return errorResponse(id, RpcError::MethodNotFound, "There is no method \"" + method + "\".");
        const int exit = runWith(*program, action, ParameterReader(*verbs.front(), params, request).read());
        if (request.cancellation.stop_requested())
            return errorResponse(id, RpcError::Cancelled, "The request was cancelled.");
        return exit == wrongInput ? wrongInputResponse(id, request.problems) : response(id, exit, request);
    } catch (const std::invalid_argument& error) {
        return errorResponse(
            id, RpcError::WrongInput, error.what(),
            {{"params", "", error.what(), "\"tenter-cli " + method + " --help\" lists them."}});
    } catch (const std::exception& error) {
        return errorResponse(id, RpcError::InternalError, error.what());
    }
}

}  // namespace tenter::command
