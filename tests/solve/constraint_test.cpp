#include <fstream>
#include <sstream>

#include "solve/wish_key.h"
#include "solving.h"

namespace tenter::test {
namespace {

std::string contentOf(const std::filesystem::path& file) {
    std::ostringstream content;
    content << std::ifstream(file).rdbuf();
    return content.str();
}

TEST(Constraints, have_names_and_keys_that_differ) {
    std::set<std::string_view> names;
    for (const solve::Constraint* kind : solve::registry()) {
        EXPECT_TRUE(names.insert(kind->traits.name).second) << kind->traits.name;
        EXPECT_EQ(solve::constraintNamed(kind->traits.name), kind);
    }
    EXPECT_EQ(solve::constraintNamed("none"), nullptr);
    std::set<std::string_view> keys;
    for (const solve::WishKey* key : solve::wishKeys())
        EXPECT_TRUE(keys.insert(key->name).second) << key->name;
    EXPECT_GT(keys.size(), 5U);
}

// The names stand in one file each and in the registry, so that adding a kind touches nothing else.
TEST(Constraints, are_named_in_their_own_file_only) {
    const std::filesystem::path folder = TENTER_SOURCE_DIR "/core/solve";
    std::size_t general = 0;
    std::map<std::string_view, int> files;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder)) {
        const std::string file = entry.path().filename().string();
        if (!entry.is_regular_file() || file == "constraints.def") continue;
        const std::string content = contentOf(entry.path());
        const bool own = entry.path().parent_path().filename() == "constraints";
        general += own ? 0 : 1;
        for (const solve::Constraint* kind : solve::registry()) {
            const std::string name(kind->traits.name);
            if (own && content.find("const Constraint& " + name + "()") != std::string::npos)
                ++files[kind->traits.name];
            if (own) continue;
            for (const std::string& mention :
                 {'"' + name + '"', "RoleWishes::" + name, "constraints::" + name, "entry." + name + '.'})
                EXPECT_EQ(content.find(mention), std::string::npos) << file << " has " << mention;
        }
    }
    EXPECT_GT(general, 30U);
    for (const solve::Constraint* kind : solve::registry())
        EXPECT_EQ(files[kind->traits.name], 1) << kind->traits.name;
}

// Every figure that a project can state is read back as it was written.
TEST(Constraints, read_back_what_they_write) {
    const project::Project project = samples().at("shore-walks.tenter.json");
    for (const char* stated :
         {"heading.lines=2", "body.measure=35-75", "heading.size=15-60", "body.growth=0.8", "body.zoom=250%",
          "body.size=locked", "body.column=with", "body.breakpoints=same", "heading.breakpoints=proportional",
          "heading.ratio=body*1.25", "heading.ratio=body*1.25-", "heading.lines=2@600-980"}) {
        const project::Project wished = wishing(project, {stated});
        const auto wishes = solve::singleWishes(wished, project::effectiveWishes(wished));
        project::Wishes again = project::effectiveWishes(project);
        for (const solve::Wish& wish : wishes)
            if (wish.kind != kindOf("words")) again.roles.push_back(solve::toRoleWishes(wish));
        const auto reread = solve::singleWishes(project, again);
        ASSERT_EQ(reread.size(), wishes.size()) << stated;
        for (std::size_t i = 0; i < wishes.size(); ++i)
            EXPECT_EQ(solve::describe(reread[i]), solve::describe(wishes[i])) << stated;
    }
}

}  // namespace
}  // namespace tenter::test
