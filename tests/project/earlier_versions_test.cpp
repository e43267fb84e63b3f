// Project files of every version of the format are kept in the folder versions, as that version of Tenter
// wrote them. All must open. A new version of the format adds a folder; the kept files never change.
#include <zlib.h>

#include <map>

#include "given.h"

namespace tenter::project {
namespace {

/// CRC-32 of each kept file, by version and name.
const std::map<int, std::map<std::string, unsigned long>> kept{{1,
                                                                {{"every-setting.tenter.json", 0xc5f941d8},
                                                                 {"imported.tenter.json", 0xa81a5f35},
                                                                 {"sample.tenter.json", 0x48212e07}}},
                                                               {2, {{"sentences.tenter.json", 0xffff5e90}}}};

class EarlierVersion : public ::testing::TestWithParam<int> {
protected:
    static std::string textOf(const std::string& name) {
        return contentOf(testFile("versions/" + std::to_string(GetParam()) + "/" + name));
    }
};

TEST_P(EarlierVersion, IsKeptUnchanged) {
    ASSERT_TRUE(kept.contains(GetParam())) << "keep files of version " << GetParam();
    for (const auto& [name, sum] : kept.at(GetParam())) {
        const std::string text = textOf(name);
        EXPECT_EQ(crc32(0, reinterpret_cast<const Bytef*>(text.data()), static_cast<uInt>(text.size())), sum)
            << name;
        EXPECT_EQ(Json::parse(text)["version"], GetParam()) << name;
    }
}

// So a program of that version can open what this one saves, if it can hold it.
TEST_P(EarlierVersion, OpensAndIsWrittenAgainInItsVersion) {
    for (const auto& [name, sum] : kept.at(GetParam())) {
        const Project project = sound(textOf(name));
        const std::string written = write(project);
        EXPECT_EQ(sound(written), project) << name;
        EXPECT_EQ(Json::parse(written), Json::parse(textOf(name))) << name;
    }
}

INSTANTIATE_TEST_SUITE_P(All, EarlierVersion, ::testing::Range(1, formatVersion + 1));

TEST(EarlierVersions, AreAllTested) {
    EXPECT_EQ(kept.size(), static_cast<std::size_t>(formatVersion));
    const Project imported = sound(contentOf(testFile("versions/1/imported.tenter.json")));
    EXPECT_TRUE(imported.row().given.has_value());
    EXPECT_EQ(imported.row().variants.front().className, "walks-trio");
    const Project sentences = sound(contentOf(testFile("versions/2/sentences.tenter.json")));
    EXPECT_FALSE(sentences.row().given->unread.front().isVerbatim());
}

}  // namespace
}  // namespace tenter::project
