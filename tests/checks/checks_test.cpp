// What all checks have in common: silence, limits, profiles, order, audience.
#include "../sweep/sweeping.h"
#include "checking.h"
#include "checks/phrases.h"
#include "checks/registry.h"

namespace tenter::checks {
namespace {

using namespace test;  // NOLINT(google-build-using-namespace)

TEST(Quotations, AreShortAndShowOnlyVisibleCharacters) {
    EXPECT_EQ(inQuotation(" Low\n tide "), "“Low tide”");
    EXPECT_EQ(inQuotation("Gezeiten\u00ADf\u00E4hre"), "“Gezeitenf\u00E4hre”");
    EXPECT_EQ(inQuotation("Dune mornings for under-12s and whoever minds them"),
              "“Dune mornings for under-12s and…”");
}

TEST(Checks, AreSilencedWithAReason) {
    project::Project project = headed("Tern Holm/Causeway/Sluice/Quay/Old Creek/Saltmarsh");
    ASSERT_TRUE(has(project, "engines"));
    const std::size_t before = findingsOf(project).size();
    project.checking.silenced.push_back({"engines", "the client's visitors have one browser"});
    EXPECT_FALSE(has(project, "engines"));
    const Checked checked = checkAll(project, 0, checkStore());
    EXPECT_EQ(checked.findings.size() + checked.silenced.size(), before);
    ASSERT_FALSE(checked.silenced.empty());
    EXPECT_EQ(checked.silenced[0].finding.check, "engines");
    EXPECT_EQ(checked.silenced[0].reason, "the client's visitors have one browser");
}

TEST(Checks, HaveNamesThatFilesCanSilence) {
    for (const std::string_view name : checkNames()) {
        EXPECT_TRUE(project::isWellFormedCheckName(name)) << name;
        EXPECT_TRUE(isCheckName(name)) << name;
    }
    EXPECT_FALSE(isCheckName("hole"));
    EXPECT_FALSE(isCheckName(""));
    for (const Check* check : registry())
        EXPECT_NE(check->run == nullptr, check->compare == nullptr) << check->name;
}

TEST(Checks, OfUnknownNamesAreRefusedWithPlaceAndFix) {
    project::Project project = quiet();
    const auto problemOf = [&](const std::string& check, project::CheckNameTest isName) {
        project.checking.silenced = {{check, "a reason"}};
        project::Problems problems;
        const auto parsed = project::parse(project::write(project), "row.json", {}, problems, isName);
        EXPECT_EQ(parsed.has_value(), problems.empty());
        return problems.empty() ? std::string() : problems[0].place + ": " + problems[0].what;
    };
    const std::string rule =
        "/checks/silenced/0/check: \"check\" must be the name of a check, as its findings give it; it is ";
    EXPECT_EQ(problemOf("holes", isCheckName), "");
    EXPECT_EQ(problemOf("hole", isCheckName), rule + "\"hole\".");
    // Whoever does not know the checks accepts any name that one could have.
    EXPECT_EQ(problemOf("hole", project::isWellFormedCheckName), "");
    for (const char* name : {"", "Holes", "-holes", "late--font", "late-", "late font"})
        EXPECT_EQ(problemOf(name, project::isWellFormedCheckName), rule + "\"" + name + "\".");
}

TEST(Checks, TakeTheirLimitsFromTheProject) {
    project::Project project = quiet("[" + card("Low tide", "Out.") + "]");
    set(project, "text/button/padding",
        R"({"top": "12px", "bottom": "12px", "left": "20px", "right": "20px"})");
    project.checking.limits.comfortTarget = 30;
    EXPECT_FALSE(has(project, "target", Severity::Note));
    project.checking.limits.comfortTarget = 60;
    EXPECT_TRUE(has(project, "target", Severity::Note));
}

TEST(Checks, NameTheOnlyBrowserThatHasAFinding) {
    project::Project project = headed("Tern Holm/Causeway/Sluice/Quay/Old Creek/Saltmarsh/Dunes/Lamp");
    set(project, "text/heading/size", "60");
    const Finding cut = findingOf(project, "word");
    EXPECT_EQ(cut.says.rfind("Chromium only: from ", 0), 0U) << cut.says;
    Options options;
    options.profile = &text::gecko();
    EXPECT_FALSE(has(project, "word", std::nullopt, options));
    options.profile = &text::blink();
    EXPECT_EQ(findingOf(project, "word", std::nullopt, options).says.rfind("From ", 0), 0U);
}

TEST(Checks, AreSortedBySeverityThenShare) {
    project::Project project = quiet("[" + card("Saltmarshwatchersassociation", longText) + "]");
    set(project, "text/heading/size", "[[320, 40], [1920, 16]]");
    set(project, "text/body/colour", R"("#999999")");
    project.unit = units::Unit::Px;
    const std::vector<Finding> all = findingsOf(project);
    ASSERT_GE(all.size(), 4U);
    EXPECT_EQ(all.front().severity, Severity::Error);
    EXPECT_EQ(all.back().severity, Severity::Note);
    for (std::size_t i = 1; i < all.size(); ++i) {
        EXPECT_GE(all[i - 1].severity, all[i].severity);
        if (all[i - 1].severity == all[i].severity) {
            EXPECT_GE(all[i - 1].share, all[i].share);
        }
    }
}

TEST(Checks, AreWeightedByAnAudience) {
    project::Project project = quiet();
    set(project, "text/body/size", "[[320, 11], [1120, 13]]");  // under 12 up to 720
    Options options;
    options.audience.visits = {{360, 300}, {1440, 100}};
    EXPECT_DOUBLE_EQ(findingOf(project, "small-type", std::nullopt, options).share, 0.75);
}

/// Expects what every finding of every project must satisfy.
void expectSound(const project::Project& project, const std::vector<Finding>& findings) {
    for (const Finding& finding : findings) {
        // Every check can be silenced.
        EXPECT_NE(std::ranges::find(checkNames(), finding.check), checkNames().end()) << finding.check;
        EXPECT_GE(finding.share, 0);
        EXPECT_LE(finding.share, 1);
        EXPECT_FALSE(finding.says.empty());
        EXPECT_FALSE(finding.source.empty());
        EXPECT_EQ(finding.says.find("nan"), std::string::npos) << finding.says;
        EXPECT_EQ(finding.says.find("inf"), std::string::npos) << finding.says;
        ASSERT_FALSE(finding.widths.empty()) << finding.says;
        for (std::size_t i = 0; i < finding.widths.size(); ++i) {
            const sweep::Interval& span = finding.widths[i];
            EXPECT_LE(span.from, span.to) << finding.says;
            EXPECT_LE(span.to, project.mostWidth) << finding.says;
            if (finding.check != "reflow") {
                EXPECT_GE(span.from, project.leastWidth) << finding.says;
            }
            if (i > 0) {
                EXPECT_GT(span.from, finding.widths[i - 1].to) << finding.says;
            }
        }
    }
}

TEST(Checks, GiveSoundFindingsForRandomProjects) {
    project::RandomProject random(20261126);
    for (int i = 0; i < 60; ++i) {
        project::Problems problems;
        const auto project = project::parse(project::prettyJson(random.next()), "random", {}, problems);
        ASSERT_TRUE(project.has_value());
        for (std::size_t variant = 0; variant < project->row().variants.size(); ++variant)
            expectSound(*project, check(*project, variant, checkStore()));
    }
}

// The samples are accessible; axe-core finds no violation in them either.
TEST(Checks, FindNoErrorInTheSamples) {
    for (const auto& entry : std::filesystem::directory_iterator(TENTER_SOURCE_DIR "/sample-projects")) {
        if (!entry.path().string().ends_with(".tenter.json")) continue;
        project::Problems problems;
        const auto project = project::read(entry.path(), problems);
        ASSERT_TRUE(project.has_value());
        for (std::size_t variant = 0; variant < project->row().variants.size(); ++variant) {
            const std::vector<Finding> findings = check(*project, variant, checkStore());
            expectSound(*project, findings);
            for (const Finding& finding : findings)
                expectReadable(finding, *project);
            for (const Finding& finding : findings)
                EXPECT_NE(finding.severity, Severity::Error) << entry.path() << ": " << finding.says;
        }
    }
}

TEST(Checks, AcceptARowWithoutCards) {
    project::Project project = quiet();
    project.row().cards.clear();
    EXPECT_TRUE(findingsOf(project).empty());
}

}  // namespace
}  // namespace tenter::checks
