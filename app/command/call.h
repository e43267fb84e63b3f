// A call of `serve`: JSON-RPC 2.0, with the verbs of tenter-cli as methods and their options as parameters.
#pragma once

#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <vector>

#include "request.h"

namespace tenter::command {

/// JSON-RPC 2.0 § 5.1, and the code of the Language Server Protocol for a cancelled request.
enum class RpcError {
    ParseError = -32700,
    InvalidRequest = -32600,
    MethodNotFound = -32601,
    InternalError = -32603,
    Cancelled = -32800,
    WrongInput = 2,  ///< the exit code of the verb
};

/// An error response on one line. `problems`: each with file, place, what is wrong and how to fix it.
std::string errorResponse(const nlohmann::json& id, RpcError code, const std::string& message,
                          const project::Problems& problems = {});

/// The response of a verb that ended with `exit`, on one line: `value` if it printed JSON, `text` if it
/// printed text, otherwise `base64`; and its notes.
std::string response(const nlohmann::json& id, int exit, const Request& request);

/// Runs the verb `method` with `params` for `request`. Returns the response on one line.
std::string call(const nlohmann::json& id, const std::string& method, const nlohmann::json& params,
                 Request& request);

}  // namespace tenter::command
