// Reads CSS with core/css for check_css.js: questions as a JSON array on standard input, answers as a JSON
// array on standard output.
#include <iostream>
#include <iterator>
#include <nlohmann/json.hpp>

#include "css/match.h"
#include "css/math.h"
#include "css/media.h"
#include "css/rules.h"
#include "css/tokens.h"

namespace {

using namespace tenter::css;
using Json = nlohmann::json;

// Elements from JSON: [{"tag", "attributes", "parent", "previous", "next", "first", "empty"}]. References are
// indices into the array, null for none.
class JsonElements : public Elements {
public:
    explicit JsonElements(const Json& nodes) : nodes_(nodes) {}

    std::string_view tag(Element element) const override { return text(nodes_[element]["tag"]); }
    std::optional<std::string_view> attribute(Element element, std::string_view name) const override {
        const Json& attributes = nodes_[element]["attributes"];
        const auto found = attributes.find(std::string(name));
        if (found == attributes.end()) return std::nullopt;
        return text(*found);
    }
    std::optional<Element> parent(Element element) const override { return link(element, "parent"); }
    std::optional<Element> previousSibling(Element element) const override {
        return link(element, "previous");
    }
    std::optional<Element> nextSibling(Element element) const override { return link(element, "next"); }
    std::optional<Element> firstChild(Element element) const override { return link(element, "first"); }
    bool isEmpty(Element element) const override { return nodes_[element]["empty"]; }

private:
    static std::string_view text(const Json& value) { return value.get_ref<const std::string&>(); }
    std::optional<Element> link(Element element, const char* name) const {
        const Json& to = nodes_[element][name];
        if (to.is_null()) return std::nullopt;
        return to.get<Element>();
    }

    const Json& nodes_;
};

Json tokensOf(const std::string& text) {
    Json out = Json::array();
    for (const Token& token : tokenise(text))
        out.push_back({static_cast<int>(token.kind), token.begin, token.end});
    return out;
}

Json selectorOf(const Json& question) {
    Problems problems;
    const auto list = readSelectors(question["text"].get<std::string>(), problems);
    if (!list) return {{"valid", false}, {"why", problems.back().what}};
    Json specificities = Json::array();
    for (const Complex& selector : *list) {
        const Specificity one = specificityOf(selector);
        specificities.push_back({one.a, one.b, one.c});
    }
    const JsonElements elements(question["tree"]);
    Json selected = Json::array();
    for (std::size_t i = 0; i < question["tree"].size(); ++i) {
        if (matches(*list, elements, i)) selected.push_back(i);
    }
    return {{"valid", true}, {"specificities", specificities}, {"selected", selected}};
}

Json sheetOf(const std::string& text) {
    const Sheet sheet = readSheet(text);
    Json out = Json::array();
    for (const StyleRule& rule : sheet.rules) {
        Json declarations = Json::array();
        for (const Declaration& each : rule.declarations)
            declarations.push_back({each.property, each.value, each.important});
        Json conditions = Json::array();
        for (const Condition* each : sheet.conditionsOf(rule))
            conditions.push_back(each->text);
        out.push_back(
            {{"selector", rule.selectorText}, {"declarations", declarations}, {"conditions", conditions}});
    }
    return out;
}

// The font size at each width, with a parent of `em` px and a container that is the share `container` of the
// viewport.
Json sizesOf(const Json& question) {
    CalculationBasis basis;
    basis.least = 100;
    basis.most = 3000;
    basis.em = Line{question["em"], 0};
    basis.percentage = basis.em;
    basis.container = Line{0, question["container"]};
    Problems problems;
    const auto value = calculate(question["text"].get<std::string>(), basis, problems);
    if (!value || value->isNumber)
        return {{"valid", false}, {"why", value ? "a number" : problems.back().what}};
    Json sizes = Json::array();
    for (const double width : question["widths"])
        sizes.push_back(value->length.at(width));
    return {{"valid", true}, {"sizes", sizes}};
}

Json mediaOf(const Json& question) {
    Json out = Json::array();
    for (const double width : question["widths"])
        out.push_back(static_cast<int>(mediaHolds(question["text"].get<std::string>(), width)));
    return out;
}

Json answer(const Json& question) {
    const std::string& what = question["what"].get_ref<const std::string&>();
    if (what == "tokens") return tokensOf(question["text"]);
    if (what == "selector") return selectorOf(question);
    if (what == "sheet") return sheetOf(question["text"]);
    if (what == "sizes") return sizesOf(question);
    return mediaOf(question);
}

}  // namespace

int main() {
    const std::string input(std::istreambuf_iterator<char>(std::cin), {});
    Json answers = Json::array();
    for (const Json& question : Json::parse(input))
        answers.push_back(answer(question));
    std::cout << answers.dump(-1, ' ', false, Json::error_handler_t::replace) << '\n';
}
