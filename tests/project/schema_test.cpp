#include <set>

#include "given.h"
#include "project/settings_json.h"

namespace tenter::project {
namespace {

// JSON Schema 2020-12.
class Schema {
public:
    Schema() : root_(Json::parse(contentOf(TENTER_SOURCE_DIR "/resources/project.schema.json"))) {}

    [[nodiscard]] const Json& root() const { return root_; }
    [[nodiscard]] const Json& definition(const std::string& name) const { return root_["$defs"].at(name); }
    /// The schema that a reference leads to.
    [[nodiscard]] const Json& followed(const Json& schema) const {
        if (!schema.contains("$ref")) return schema;
        return followed(root_.at(Json::json_pointer(schema["$ref"].get<std::string>().substr(1))));
    }

private:
    Json root_;
};

std::set<std::string> keysIn(const Json& object) {
    std::set<std::string> keys;
    for (const auto& [key, value] : object.items())
        keys.insert(key);
    return keys;
}

template <class T>
void expectSame(const Schema& /*schema*/, const Json& value, const std::optional<T>* /*type*/) {
    EXPECT_FALSE(value.contains("properties"));
}
void expectSame(const Schema& schema, const Json& value, const RoleStyles* type);
template <HasMembers T>
void expectSame(const Schema& schema, const Json& value, const T* /*type*/) {
    const std::vector<std::string> known = keysOf<T>();
    EXPECT_EQ(keysIn(value.at("properties")), std::set<std::string>(known.begin(), known.end()));
    EXPECT_EQ(value.at("additionalProperties"), false);
    EXPECT_TRUE(value.at("patternProperties").contains("^x-"));
    T::members([&](const char* key, auto pointer) {
        SCOPED_TRACE(key);
        using Member = std::remove_reference_t<decltype(std::declval<T&>().*pointer)>;
        expectSame(schema, schema.followed(value["properties"].at(key)), static_cast<const Member*>(nullptr));
    });
}
void expectSame(const Schema& schema, const Json& value, const RoleStyles* /*type*/) {
    const Json& role = schema.followed(value.at("patternProperties").at("^(?!x-)"));
    expectSame(schema, role, static_cast<const TextStyle*>(nullptr));
}

TEST(Schema, has_the_keys_of_settings_and_no_others) {
    const Schema schema;
    expectSame(schema, schema.definition("settings"), static_cast<const Settings*>(nullptr));
}

// The keys that the reader knows at a place, from its message about one that it does not know.
std::set<std::string> keysKnownAt(const std::string& place) {
    Json project = Json::parse(contentOf(testFile("rich.tenter.json")));
    project[Json::json_pointer(place + "/qqqqqqqqqqqqqqqqqqqqqqqqqqqq")] = 1;
    const Problems problems = problemsOf(project.dump());
    if (problems.size() != 1) return {linesOf(problems)};
    std::string fix = problems[0].fix;
    fix = fix.substr(std::string("Use ").size());
    fix = fix.substr(0, fix.find('.'));
    std::set<std::string> keys;
    for (std::size_t at = 0; at < fix.size();) {
        const std::size_t end = std::min({fix.find(", ", at), fix.find(" or ", at), fix.size()});
        keys.insert(fix.substr(at, end - at));
        at = end == fix.size() ? end : end + (fix[end] == ',' ? 2 : 4);
    }
    return keys;
}

TEST(Schema, has_the_keys_the_reader_knows_and_no_others) {
    const Schema schema;
    EXPECT_EQ(keysIn(schema.root()["properties"]), keysKnownAt(""));
    EXPECT_EQ(keysIn(schema.root()["properties"]["range"]["properties"]), keysKnownAt("/range"));
    const std::vector<std::pair<std::string, std::string>> places{
        {"page", "/page"},
        {"scrollbar", "/page/scrollbar"},
        {"container", "/page/container"},
        {"pageRange", "/page/ranges/0"},
        {"container", "/page/ranges/0/container"},
        {"font", "/fonts/0"},
        {"card", "/cards/0"},
        {"picturePart", "/cards/0/parts/0"},
        {"textPart", "/cards/0/parts/1"},
        {"variant", "/variants/0"},
        {"band", "/variants/0/bands/0"},
        {"settings", "/style"},
        {"given", "/given"},
        {"wishes", "/wishes"},
        {"roleWishes", "/wishes/roles/0"},
        {"checks", "/checks"},
        {"silence", "/checks/silenced/0"},
        {"limits", "/checks/limits"},
        {"outerPadding", "/page/container/padding"}};
    for (const auto& [name, place] : places) {
        EXPECT_EQ(keysIn(schema.definition(name)["properties"]), keysKnownAt(place)) << place;
    }
}

TEST(Schema, requires_what_the_reader_requires) {
    const Schema schema;
    for (const Json& key : schema.root()["required"])
        problemsOf(smallProjectWithout(key.get<std::string>()));
    EXPECT_EQ(schema.root()["required"].size(), 5U);
}

TEST(Schema, has_the_words_the_reader_knows) {
    const Schema schema;
    const Json& style = schema.definition("textStyle")["properties"];
    for (const auto& [key, value] : style.items()) {
        if (!value.contains("enum")) continue;
        for (const Json& word : value["enum"]) {
            Settings settings;
            Problems problems;
            EXPECT_TRUE(setSetting(settings, "text/body/" + key, word, problems)) << linesOf(problems);
        }
    }
}

TEST(Schema, describes_everything) {
    const Schema schema;
    for (const auto& [name, definition] : schema.root()["$defs"].items()) {
        if (!definition.contains("properties")) continue;
        for (const auto& [key, value] : definition["properties"].items()) {
            EXPECT_TRUE(schema.followed(value).contains("description") || value.contains("description"))
                << name << "/" << key;
        }
    }
}

}  // namespace
}  // namespace tenter::project
