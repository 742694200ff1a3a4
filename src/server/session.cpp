// SPDX-License-Identifier: MIT
#include "session.hpp"

#include "requests.hpp"
#include "scruple/server/server.hpp"
#include "uri.hpp"

namespace scruple::server {
namespace {

// The numbers that JSON-RPC and the protocol give to what goes wrong.
constexpr int parse_error = -32700, invalid_request = -32600, method_not_found = -32601, invalid_params = -32602,
              not_initialized = -32002, request_cancelled = -32800, internal_error = -32603;

struct Method {
    std::string_view name;
    Json (*answer)(Workspace&, const Json&);
};
constexpr Method methods[] = {
    {"textDocument/codeAction", code_actions},
    {"textDocument/hover", hover},
    {"textDocument/completion", completion},
    {"textDocument/definition", definition},
    {"textDocument/references", references},
    {"textDocument/documentHighlight", highlights},
    {"textDocument/prepareRename", prepare_rename},
    {"textDocument/rename", rename},
    {"textDocument/documentSymbol", document_symbols},
    {"workspace/symbol", workspace_symbols},
    {"textDocument/foldingRange", folding},
    {"textDocument/semanticTokens/full", semantic_tokens},
    {"textDocument/formatting", formatting},
    {"textDocument/inlayHint", inlay_hints},
    {"textDocument/codeLens", code_lenses},
    {"workspace/executeCommand", execute_command},
};

Json capabilities() {
    return {{"positionEncoding", "utf-16"},
            {"textDocumentSync", {{"openClose", true}, {"change", 2}}},
            {"codeActionProvider", {{"codeActionKinds", {"quickfix"}}}},
            {"hoverProvider", true},
            {"completionProvider", {{"triggerCharacters", {"(", " "}}}},
            {"definitionProvider", true},
            {"referencesProvider", true},
            {"documentHighlightProvider", true},
            {"renameProvider", {{"prepareProvider", true}}},
            {"documentSymbolProvider", true},
            {"workspaceSymbolProvider", true},
            {"foldingRangeProvider", true},
            {"semanticTokensProvider", {{"legend", token_legend()}, {"full", true}}},
            {"documentFormattingProvider", true},
            {"inlayHintProvider", true},
            {"codeLensProvider", Json::object()},
            {"executeCommandProvider", {{"commands", {"scruple.card"}}}}};
}

/// Of the first folder of the workspace, or of the older ways to say it.
std::string root_of(const Json& params) {
    const auto folders = params.find("workspaceFolders");
    if (folders != params.end() && folders->is_array() && !folders->empty())
        return path_of(folders->front().at("uri").get<std::string>()).value_or("");
    const auto root = params.find("rootUri");
    if (root != params.end() && root->is_string()) return path_of(root->get<std::string>()).value_or("");
    const auto path = params.find("rootPath");
    return path != params.end() && path->is_string() ? path->get<std::string>() : "";
}

bool is_change(const Json& message) {
    const auto method = message.find("method");
    return method != message.end() && *method == "textDocument/didChange";
}

std::vector<Edit> edits_of(const Json& changes) {
    std::vector<Edit> edits;
    for (const Json& change : changes) {
        Edit edit{std::nullopt, change.at("text").get<std::string>()};
        if (change.contains("range")) edit.range = range_of(change.at("range"));
        edits.push_back(std::move(edit));
    }
    return edits;
}

}  // namespace

int Session::run() {
    while (state_ != State::over && !vanished_ && !wire_.broken()) {
        wait_for_messages();
        if (messages_.empty()) continue;
        const Json message = std::move(messages_.front());
        messages_.pop_front();
        handle(message);
        // A burst of edits is checked once, when it is over.
        const bool more_edits = is_change(message) && !messages_.empty() && is_change(messages_.front());
        if (!more_edits) publish();
    }
    return state_ == State::over && !vanished_ ? 0 : 1;
}

/// Takes all that has come; what is left over of earlier edits is checked while nothing does.
void Session::wait_for_messages() {
    std::string body;
    for (;;) {
        const bool idle = messages_.empty() && !workspace_.has_more_to_check();
        switch (wire_.next(body, idle ? -1 : 0)) {
            case Wire::Arrival::message:
                take(body);
                break;
            case Wire::Arrival::malformed:
                refuse(nullptr, parse_error, "a message begins with its Content-Length");
                break;
            case Wire::Arrival::closed:
                vanished_ = messages_.empty();
                return;
            case Wire::Arrival::nothing:
                if (!messages_.empty()) return;
                if (!workspace_.has_more_to_check()) break;
                workspace_.check_some_more();
                publish();
        }
    }
}

void Session::take(const std::string& body) {
    Json message = Json::parse(body, nullptr, false);
    if (message.is_discarded()) return refuse(nullptr, parse_error, "this is no JSON");
    if (!message.is_object()) return refuse(nullptr, invalid_request, "a message is an object");
    const auto method = message.find("method");
    if (method == message.end()) {
        const bool response = message.contains("result") || message.contains("error");
        if (!response) refuse(message.value("id", Json()), invalid_request, "a request has a method");
        return;
    }
    if (!method->is_string()) return refuse(message.value("id", Json()), invalid_request, "a method is a string");
    if (*method == "$/cancelRequest" && message.contains("params") && message["params"].is_object())
        return cancel(message["params"].value("id", Json()));
    messages_.push_back(std::move(message));
}

void Session::cancel(const Json& id) {
    for (auto it = messages_.begin(); it != messages_.end(); ++it) {
        if (it->value("id", Json()) != id || id.is_null()) continue;
        messages_.erase(it);
        return refuse(id, request_cancelled, "cancelled");
    }
}

void Session::handle(const Json& message) {
    const auto method = message.at("method").get<std::string>();
    const Json params = message.value("params", Json::object());
    try {
        if (message.contains("id"))
            answer(message.at("id"), method, params);
        else
            notice(method, params);
    } catch (const Refused& refused) {
        if (message.contains("id")) refuse(message.at("id"), refused.code, refused.message);
    } catch (const Json::exception& error) {
        if (message.contains("id")) refuse(message.at("id"), invalid_params, error.what());
    } catch (const std::exception& error) {
        if (message.contains("id")) refuse(message.at("id"), internal_error, error.what());
    }
}

void Session::answer(const Json& id, const std::string& method, const Json& params) {
    if (state_ == State::before && method != "initialize") return refuse(id, not_initialized, "not before initialize");
    if (state_ == State::shut_down) return refuse(id, invalid_request, "not after shutdown");
    wire_.send({{"jsonrpc", "2.0"}, {"id", id}, {"result", result_of(method, params)}});
}

Json Session::result_of(const std::string& method, const Json& params) {
    if (method == "initialize") return initialize(params);
    if (method == "shutdown") {
        state_ = State::shut_down;
        return nullptr;
    }
    for (const Method& one : methods)
        if (one.name == method) return one.answer(workspace_, params);
    throw Refused{method_not_found, "there is no " + method + " here"};
}

Json Session::initialize(const Json& params) {
    if (state_ != State::before) throw Refused{invalid_request, "initialize comes once"};
    root_ = root_of(params);
    const Json::json_pointer watching("/capabilities/workspace/didChangeWatchedFiles/dynamicRegistration");
    can_watch_ = params.is_object() && params.contains(watching) && params.at(watching) == true;
    state_ = State::running;
    return {{"capabilities", capabilities()}, {"serverInfo", {{"name", "scruple"}, {"version", version_}}}};
}

void Session::notice(const std::string& method, const Json& params) {
    if (method == "exit") {
        vanished_ = state_ != State::shut_down;
        state_ = State::over;
        return;
    }
    if (state_ != State::running) return;
    if (method == "initialized") return read_workspace();
    if (method == "textDocument/didOpen") return open(params);
    if (method == "textDocument/didChange") return change(params);
    if (method == "textDocument/didClose") return close(params);
    if (method != "workspace/didChangeWatchedFiles") return;
    for (const Json& one : params.at("changes"))
        if (const auto path = path_of(one.at("uri").get<std::string>()); path && path->ends_with(".scruple"))
            workspace_.look_again(*path);
}

void Session::read_workspace() {
    if (root_.empty()) return;
    const std::string trouble = workspace_.read(root_);
    if (!trouble.empty()) tell("window/showMessage", {{"type", 1}, {"message", trouble}});
    if (can_watch_) watch_files();
}

void Session::watch_files() {
    const Json options{{"watchers", Json::array({{{"globPattern", "**/*.scruple"}}})}};
    const Json one{{"id", "recipes"}, {"method", "workspace/didChangeWatchedFiles"}, {"registerOptions", options}};
    wire_.send({{"jsonrpc", "2.0"},
                {"id", "watch"},
                {"method", "client/registerCapability"},
                {"params", {{"registrations", Json::array({one})}}}});
}

void Session::open(const Json& params) {
    const Json& document = params.at("textDocument");
    const auto path = path_of(document.at("uri").get<std::string>());
    if (path)
        workspace_.open(*path, document.at("version").get<std::int64_t>(), document.at("text").get<std::string>());
}

/// What is older than what is there already, and what was never opened, changes nothing.
void Session::change(const Json& params) {
    const Json& document = params.at("textDocument");
    const auto path = path_of(document.at("uri").get<std::string>());
    const auto number = path ? workspace_.find(*path) : std::nullopt;
    if (!number || !workspace_.file(*number).open) return;
    const auto version = document.at("version").get<std::int64_t>();
    if (version <= workspace_.file(*number).version.value_or(-1)) return;
    workspace_.edit(*number, version, edits_of(params.at("contentChanges")));
}

void Session::close(const Json& params) {
    const auto path = path_of(params.at("textDocument").at("uri").get<std::string>());
    if (const auto number = path ? workspace_.find(*path) : std::nullopt) workspace_.close(*number);
}

void Session::publish() {
    if (state_ != State::running) return;
    workspace_.settle();
    for (const FileNumber number : workspace_.untold()) {
        const File& file = workspace_.file(number);
        Json params{{"uri", file.uri}, {"diagnostics", diagnostics_of(workspace_, file)}};
        if (file.version) params["version"] = *file.version;
        tell("textDocument/publishDiagnostics", std::move(params));
    }
}

void Session::refuse(const Json& id, int code, const std::string& message) {
    wire_.send({{"jsonrpc", "2.0"}, {"id", id}, {"error", {{"code", code}, {"message", message}}}});
}

void Session::tell(const std::string& method, Json params) {
    wire_.send({{"jsonrpc", "2.0"}, {"method", method}, {"params", std::move(params)}});
}

int serve(int in, int out, std::string_view version) {
    return Session(in, out, version).run();
}

}  // namespace scruple::server
