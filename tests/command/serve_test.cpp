// `serve` answers by JSON-RPC 2.0 what the verbs print as processes.
#include <gtest/gtest.h>

#include <filesystem>
#include <map>
#include <nlohmann/json.hpp>
#include <sstream>

#include "process.h"

namespace tenter::tests {
namespace {

using Json = nlohmann::json;
using Words = std::vector<std::string>;

class Serve : public ::testing::Test {
protected:
    void SetUp() override {
        std::filesystem::copy(TENTER_SAMPLES, folder_.path(), std::filesystem::copy_options::recursive);
    }

    static std::string request(const Json& id, const std::string& method, const Json& params) {
        return Json{{"jsonrpc", "2.0"}, {"id", id}, {"method", method}, {"params", params}}.dump() + "\n";
    }

    /// The responses to `lines`, in their order.
    std::vector<Json> answers(const std::string& lines) const {
        folder_.write("requests.jsonl", lines);
        const Finished finished = tenterCli({"serve", "--in", "requests.jsonl"}, folder_.path());
        EXPECT_EQ(finished.code, 0);
        EXPECT_EQ(finished.err, "");
        std::vector<Json> out;
        std::istringstream stream(finished.out);
        for (std::string line; std::getline(stream, line);) {
            out.push_back(Json::parse(line, nullptr, false));
            EXPECT_FALSE(out.back().is_discarded()) << line;
            EXPECT_EQ(out.back().value("jsonrpc", ""), "2.0") << line;
        }
        return out;
    }
    Json answer(const std::string& method, const Json& params) const {
        const std::vector<Json> all = answers(request(7, method, params));
        EXPECT_EQ(all.size(), 1U);
        EXPECT_EQ(all.at(0).value("id", Json()), 7) << all.at(0);
        return all.at(0);
    }
    Finished verb(const Words& words) const { return tenterCli(words, folder_.path()); }

    const std::string file_ = "shore-walks.tenter.json";
    Folder folder_;
};

TEST_F(Serve, AnswersWhatTheVerbsPrint) {
    struct Case {
        std::string method;
        Json params;
        Words words;
    };
    const std::vector<Case> cases{
        {"geometry",
         {{"widths", "320,800"}, {"engine", "gecko"}},
         {"--widths", "320,800", "--engine", "gecko"}},
        {"wraps", {{"json", true}}, {"--json"}},
        {"wraps", {{"json", false}}, {}},
        {"check", {{"json", true}, {"audience", "visits.csv"}}, {"--json", "--audience", "visits.csv"}},
        {"check", {{"sarif", true}}, {"--sarif"}},
        {"stylesheet", {{"all-variants", true}, {"unit", "px"}}, {"--all-variants", "--unit", "px"}},
        {"solve", {{"wishes", {"body.size=-17", "heading.lines=2"}}}, {"body.size=-17", "heading.lines=2"}},
        {"report", Json::object(), {}},
        {"tokens", Json::object(), {}},
    };
    for (const Case& each : cases) {
        SCOPED_TRACE(each.method + each.params.dump());
        Json params = each.params;
        params["project"] = file_;
        Words words = each.words;
        words.insert(words.begin(), {each.method, file_});
        const Finished printed = verb(words);
        const Json result = answer(each.method, params).at("result");
        EXPECT_EQ(result.at("exit"), printed.code);
        if (result.contains("value")) {
            EXPECT_EQ(result.at("value"), Json::parse(printed.out));
        } else {
            EXPECT_EQ(result.at("text"), printed.out);
        }
        std::string notes;
        for (const Json& note : result.at("notes"))
            notes += note.get<std::string>() + "\n";
        // Empty lines between notes do not matter.
        std::erase(notes, '\n');
        std::string errors = printed.err;
        std::erase(errors, '\n');
        EXPECT_EQ(notes, errors);
    }
}

TEST_F(Serve, EncodesPictures) {
    const Finished printed = verb({"picture", file_, "--width", "400"});
    const std::string coded =
        answer("picture", {{"project", file_}, {"width", 400}}).at("result").at("base64");
    EXPECT_TRUE(coded.starts_with("iVBORw0KGgo")) << coded.substr(0, 20);  // the signature of PNG
    EXPECT_EQ(coded.size(), (printed.out.size() + 2) / 3 * 4);
}

TEST_F(Serve, TakesAProjectInPlaceOfItsFile) {
    const Json project = Json::parse(contentOf(folder_.file(file_)));
    const Json result =
        answer("wraps", {{"project", project}, {"folder", folder_.path().string()}, {"json", true}})
            .at("result");
    EXPECT_EQ(result.at("value"), Json::parse(verb({"wraps", file_, "--json"}).out));

    Json changed = project;
    changed["name"] = "Changed";
    const Json differs = answer("diff", {{"old", project}, {"new", changed}, {"json", true}}).at("result");
    EXPECT_EQ(differs.at("exit"), 1);
    EXPECT_NE(differs.at("value").dump().find("/name"), std::string::npos) << differs;
}

TEST_F(Serve, SaysWhereAProjectIsWrongAndHowToFixIt) {
    Json project = Json::parse(contentOf(folder_.file(file_)));
    project["variants"][0]["bands"][0]["set"]["row"]["columns"] = 0;
    const Json error = answer("check", {{"project", project}}).at("error");
    EXPECT_EQ(error.at("code"), 2);
    const Json problem = error.at("data").at("problems").at(0);
    EXPECT_EQ(problem.at("file"), "request.tenter.json");
    EXPECT_FALSE(problem.at("place").get<std::string>().empty());
    EXPECT_NE(problem.at("what").get<std::string>().find("columns"), std::string::npos);
    EXPECT_EQ(error.at("message").get<std::string>().find("request.tenter.json:"), 0U);
}

TEST_F(Serve, RefusesWhatIsNoRequest) {
    const std::vector<Json> all = answers(
        "{\n\n[]\n{\"jsonrpc\":\"2.0\",\"id\":1}\n" + request(2, "conjure", Json::object()) +
        request(3, "serve", Json::object()) + request(4, "wraps", {{"project", file_}, {"colour", "red"}}) +
        request(5, "wraps", {{"project", file_}, {"json", "yes"}}) +
        request(6, "wraps", {{"project", "--help"}}) + request(7, "wraps", Json::object()) +
        request("last", "size", {{"text", "20px"}}));
    const std::vector<std::pair<Json, int>> wanted{{nullptr, -32700},
                                                   {nullptr, -32600},
                                                   {1, -32600},
                                                   {2, -32601},
                                                   {3, -32601},
                                                   {4, 2},
                                                   {5, 2},
                                                   {6, 2},
                                                   {7, 2}};
    // Lines that are no requests are answered at once, before requests that wait.
    std::map<std::string, int> codes;
    ASSERT_EQ(all.size(), wanted.size() + 1);
    for (std::size_t i = 0; i < all.size(); ++i)
        if (all[i].contains("error"))
            codes[all[i].at("id").dump() + "/" + all[i].at("error").at("code").dump()]++;
    for (const auto& [id, code] : wanted)
        EXPECT_EQ(codes[id.dump() + "/" + std::to_string(code)], 1) << id << " " << code;
    EXPECT_EQ(all.back().at("id"), "last");
    EXPECT_EQ(all.back().at("result").at("text").get<std::string>().find("20"), 0U);
}

TEST_F(Serve, CancelsOneRequestAndAnswersTheOthers) {
    const auto cancel = [](int id) {
        return Json{{"jsonrpc", "2.0"}, {"method", "$/cancelRequest"}, {"params", {{"id", id}}}}.dump() +
               "\n";
    };
    const Json solve{{"project", "season.tenter.json"}, {"all-variants", true}};
    const std::vector<Json> all =
        answers(request(1, "solve", solve) + request(2, "wraps", {{"project", file_}, {"json", true}}) +
                request(3, "solve", solve) + cancel(3) + cancel(1) + cancel(99));
    ASSERT_EQ(all.size(), 3U);
    EXPECT_EQ(all[0].at("id"), 1);
    EXPECT_EQ(all[0].at("error").at("code"), -32800);
    EXPECT_EQ(all[1].at("id"), 2);
    EXPECT_TRUE(all[1].contains("result"));
    EXPECT_EQ(all[2].at("error").at("code"), -32800);
}

TEST_F(Serve, DoesNotAnswerNotificationsAndKeepsNothingOfARequest) {
    const std::string quiet =
        Json{{"jsonrpc", "2.0"}, {"method", "wraps"}, {"params", {{"project", file_}}}}.dump() + "\n";
    const std::vector<Json> all =
        answers(quiet + request(0, "check", {{"project", file_}, {"language", "de"}}) +
                request(1, "solve", {{"project", file_}, {"wishes", {"body.size=-12"}}}) +
                request(2, "wraps", {{"project", file_}, {"variant", "walks-quartet"}, {"json", true}}) +
                request(3, "wraps", {{"project", file_}, {"json", true}}) +
                request(4, "report", {{"project", file_}}));
    ASSERT_EQ(all.size(), 5U);
    EXPECT_EQ(all[4].at("result").at("text"), verb({"report", file_}).out);
    EXPECT_NE(all[0].at("result").at("text"), verb({"check", file_}).out);
    EXPECT_EQ(all[3].at("result").at("value"), Json::parse(verb({"wraps", file_, "--json"}).out));
}

}  // namespace
}  // namespace tenter::tests
