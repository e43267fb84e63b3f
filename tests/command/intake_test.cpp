// `tenter-cli intake --json`, stylesheets of other authors, and `diff` with a stylesheet.
#include <gtest/gtest.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "process.h"

namespace tenter::tests {
namespace {

using Json = nlohmann::json;

const std::string sheet =
    ".deck { display: grid; grid-template-columns: repeat(3, 1fr); gap: 24px }\n"
    ".deck article { padding: 18px; background: #abc; opacity: .9 }\n"
    ".deck h3 { font-size: 21px } .deck p { color: #333 }\n";
const std::string row =
    "<main><div class=deck><article><h3>Low water</h3><p>At noon, on the steps.</p></article>"
    "<article><h3>High water</h3><p>At six, by the wall.</p></article></div></main>";

class IntakeVerb : public ::testing::Test {
protected:
    [[nodiscard]] Json found(const std::string& file) const {
        const Finished read = tenterCli({"intake", folder_.file(file), "--json"});
        EXPECT_EQ(read.code, 0) << read.err;
        return Json::parse(read.out, nullptr, false);
    }
    static Json element(const Json& found, const std::string& role) {
        for (const Json& one : found.value("elements", Json::array()))
            if (one["role"] == role) return one;
        return {};
    }
    /// The declaration of a property of a role.
    static Json declaration(const Json& found, const std::string& role, const std::string& property) {
        for (const Json& one : element(found, role).value("declarations", Json::array()))
            if (one["property"] == property) return one;
        return {};
    }

    Folder folder_;
};

TEST_F(IntakeVerb, PrintsTheDeclarationsOfAPageWithTheirPlaces) {
    folder_.write("look.css", sheet);
    folder_.write("page.html",
                  "<html><head><link rel=stylesheet href=look.css>\n<style>\n  .deck p { margin: 3px }\n"
                  "</style></head><body>" +
                      row + "</body></html>");
    const Json json = found("page.html");
    EXPECT_EQ(json["format"], "tenter-intake");
    EXPECT_EQ(json["form"], "page");
    EXPECT_EQ(element(json, "card")["count"], 2);
    EXPECT_EQ(element(json, "heading")["selector"], "h3");
    const Json size = declaration(json, "heading", "font-size");
    EXPECT_EQ(size["value"], "21px");
    EXPECT_EQ(size["rule"],
              Json({{"selector", ".deck h3"}, {"file", "look.css"}, {"line", 3}, {"column", 1}}));
    EXPECT_EQ(size["widths"], Json::parse("[[320.0, 1920.0]]"));
    EXPECT_EQ(declaration(json, "body", "margin")["rule"],
              Json({{"selector", ".deck p"}, {"file", "page.html"}, {"line", 3}, {"column", 3}}));
    ASSERT_FALSE(json["notUnderstood"].empty());
    const Json& unread = json["notUnderstood"][0];
    EXPECT_EQ(unread["property"], "opacity");
    EXPECT_EQ(unread["rule"]["line"], 2);
    EXPECT_NE(unread["says"].get<std::string>().find("not in the project"), std::string::npos);
}

TEST_F(IntakeVerb, PrintsAProjectOfAStylesheetAlone) {
    folder_.write("look.css", sheet);
    const Finished read =
        tenterCli({"intake", folder_.file("look.css"), "--out", folder_.file("row.tenter.json")});
    EXPECT_EQ(read.code, 0) << read.err;
    EXPECT_NE(read.err.find("Card: recognised by the rules for article."), std::string::npos) << read.err;
    const Finished printed = tenterCli({"stylesheet", folder_.file("row.tenter.json")});
    EXPECT_EQ(printed.code, 0);
    EXPECT_NE(printed.out.find("gap: 24px"), std::string::npos);
    EXPECT_EQ(found("look.css")["form"], "stylesheet");
    folder_.write("other.css", "body { color: red }");
    const Finished refused = tenterCli({"intake", folder_.file("other.css")});
    EXPECT_EQ(refused.code, 2);
    EXPECT_EQ(refused.out, "");
    EXPECT_EQ(std::ranges::count(refused.err, '\n'), 1);
}

TEST_F(IntakeVerb, ReportsTheFormOfOwnFiles) {
    const std::string sample = std::string(TENTER_SAMPLES) + "/shore-walks.tenter.json";
    ASSERT_EQ(tenterCli({"stylesheet", sample, "--out", folder_.file("own.css")}).code, 0);
    const Json json = found("own.css");
    EXPECT_EQ(json["form"], "own stylesheet");
    EXPECT_TRUE(json["notUnderstood"].empty());
    EXPECT_EQ(declaration(json, "row", "display")["value"], "grid");
}

TEST_F(IntakeVerb, ComparesAProjectWithAStylesheet) {
    const std::string sample = std::string(TENTER_SAMPLES) + "/shore-walks.tenter.json";
    const std::string css = folder_.file("live.css");
    ASSERT_EQ(tenterCli({"stylesheet", sample, "--all-variants", "--out", css}).code, 0);
    const Finished same = tenterCli({"diff", sample, css});
    EXPECT_EQ(same.code, 0) << same.out << same.err;
    EXPECT_EQ(same.out, "The stylesheet has the values of the project.\n");
    folder_.write("deck.css", sheet);
    const Finished other = tenterCli({"diff", sample, folder_.file("deck.css"), "--json"});
    EXPECT_EQ(other.code, 1) << other.err;
    const Json json = Json::parse(other.out, nullptr, false);
    ASSERT_GT(json.size(), 1U);
    const auto background = std::ranges::find_if(
        json, [](const Json& one) { return one.value("setting", "") == "card/background"; });
    ASSERT_NE(background, json.end());
    EXPECT_EQ((*background)["value"], "#abc");
    const std::string number = std::to_string((*background)["number"].get<int>());
    const Finished taken = tenterCli({"diff", sample, folder_.file("deck.css"), "--take", number});
    EXPECT_EQ(taken.code, 0) << taken.err;
    EXPECT_NE(taken.out.find("#abc"), std::string::npos);
    EXPECT_EQ(taken.out.find("21px"), std::string::npos);
    const Finished wrong = tenterCli({"diff", sample, folder_.file("deck.css"), "--take", "1,999"});
    EXPECT_EQ(wrong.code, 2);
    EXPECT_NE(wrong.err.find("no difference with the number \"999\""), std::string::npos);
    EXPECT_EQ(tenterCli({"diff", sample, sample, "--take", "all"}).code, 2);
}

}  // namespace
}  // namespace tenter::tests
