// Remedies of every finding of the projects in a folder: each does what it says.
#include <iostream>

#include "checks/registry.h"
#include "remedy/verifying.h"

namespace {

std::filesystem::path folder;  // NOLINT(cppcoreguidelines-avoid-non-const-global-variables)

TEST(Remedies, DoWhatTheySayForTheCorpus) {
    std::size_t remedies = 0;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        if (!entry.path().string().ends_with(tenter::project::fileEnding)) continue;
        SCOPED_TRACE(entry.path().filename());
        tenter::project::Problems problems;
        const auto project = tenter::project::read(entry.path(), problems, tenter::checks::isCheckName);
        ASSERT_TRUE(project.has_value());
        tenter::text::Fonts fonts;
        fonts.use(project->fonts, folder);
        tenter::text::ParagraphStore store(fonts);
        remedies += tenter::test::expectTrueRemedies(*project, store);
    }
    std::cout << remedies << " remedies are true\n";
    EXPECT_GT(remedies, 20U);
}

}  // namespace

int main(int count, char** words) {
    testing::InitGoogleTest(&count, words);
    if (count != 2) {
        std::cerr << "usage: corpus-remedies FOLDER\n";
        return EXIT_FAILURE;
    }
    folder = words[1];
    return RUN_ALL_TESTS();
}
