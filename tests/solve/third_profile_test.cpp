// A third break profile, of which nothing but `text::profiles()` knows.
#include <algorithm>

#include "../checks/checking.h"
#include "checks/room_for_copy.h"
#include "emit/findings.h"
#include "emit/report.h"
#include "project/role_wishes.h"
#include "solve/solve.h"
#include "sweep/wraps.h"

namespace tenter {
namespace {

using namespace test;  // NOLINT(google-build-using-namespace)

/// The rules of blink, except that no line breaks after a hyphen.
class Third final : public text::BreakProfile {
public:
    explicit Third(const text::BreakProfile& base) : base_(base) {}
    [[nodiscard]] std::string_view name() const override { return "third"; }
    [[nodiscard]] std::string_view title() const override { return "Third"; }
    [[nodiscard]] std::string_view browsers() const override { return "Third"; }
    [[nodiscard]] std::unique_ptr<BreakProfile> withRatio(double ratio) const override {
        return std::make_unique<Third>(text::atRatio(base_, ratio));
    }
    [[nodiscard]] text::BreakMap breaks(std::u16string_view text,
                                        const std::string& language) const override {
        text::BreakMap map = base_.breaks(text, language);
        for (std::size_t i = 1; i < text.size(); ++i)
            if (text[i - 1] == u'-') map[i] = false;
        return map;
    }
    [[nodiscard]] bool needsTwoBefore(std::u16string_view text, std::size_t i) const override {
        return base_.needsTwoBefore(text, i);
    }
    [[nodiscard]] bool reservesHyphen() const override { return base_.reservesHyphen(); }
    [[nodiscard]] bool breaksOverflowingWordBefore(std::u16string_view text, std::size_t i) const override {
        return base_.breaksOverflowingWordBefore(text, i);
    }
    [[nodiscard]] text::CaseEdits uppercase(std::u16string_view text,
                                            const std::string& language) const override {
        return base_.uppercase(text, language);
    }
    [[nodiscard]] text::CaseEdits capitalize(std::u16string_view text,
                                             const std::string& language) const override {
        return base_.capitalize(text, language);
    }
    [[nodiscard]] bool reshapesAtBreaks() const override { return base_.reshapesAtBreaks(); }
    [[nodiscard]] bool makesSpaces() const override { return base_.makesSpaces(); }
    [[nodiscard]] bool kerns(std::string_view script) const override { return base_.kerns(script); }
    [[nodiscard]] bool drawsHyphenMinus() const override { return base_.drawsHyphenMinus(); }
    [[nodiscard]] double leastSize(const std::string& language) const override {
        return base_.leastSize(language);
    }
    [[nodiscard]] hb_script_t scriptOfCommon() const override { return base_.scriptOfCommon(); }
    [[nodiscard]] bool resolvesScriptsByPiece() const override { return base_.resolvesScriptsByPiece(); }
    [[nodiscard]] bool shapesAcross(char16_t unit) const override { return base_.shapesAcross(unit); }
    [[nodiscard]] bool composes() const override { return base_.composes(); }
    [[nodiscard]] bool spacesGraphemes() const override { return base_.spacesGraphemes(); }
    [[nodiscard]] bool spacesAfter(char32_t character, hb_script_t script) const override {
        return base_.spacesAfter(character, script);
    }
    [[nodiscard]] bool spacesMinContent() const override { return base_.spacesMinContent(); }
    [[nodiscard]] bool addsGapToMinHeight() const override { return base_.addsGapToMinHeight(); }
    [[nodiscard]] double halfOfGap(double gap) const override { return base_.halfOfGap(gap); }
    [[nodiscard]] bool breaksAtLineStart(std::u16string_view text, std::size_t i) const override {
        return base_.breaksAtLineStart(text, i);
    }
    [[nodiscard]] bool shapesSoftHyphens() const override { return base_.shapesSoftHyphens(); }
    [[nodiscard]] double borderAllowance() const override { return base_.borderAllowance(); }
    [[nodiscard]] bool spacesHyphen() const override { return base_.spacesHyphen(); }
    [[nodiscard]] bool dropsLineFeedBetweenIdeographs() const override {
        return base_.dropsLineFeedBetweenIdeographs();
    }
    [[nodiscard]] bool vwExcludesSteadyScrollbar() const override {
        return base_.vwExcludesSteadyScrollbar();
    }
    [[nodiscard]] double snapped(double length) const override { return base_.snapped(length); }
    [[nodiscard]] double snapped(double length, const units::Length& declared) const override {
        return base_.snapped(length, declared);
    }
    [[nodiscard]] double columnWidth(double room, int columns, int column) const override {
        return base_.columnWidth(room, columns, column);
    }
    [[nodiscard]] double lineHeight(double size, double number) const override {
        return base_.lineHeight(size, number);
    }
    [[nodiscard]] double lineHeight(double length, const units::Length& declared) const override {
        return base_.lineHeight(length, declared);
    }
    [[nodiscard]] double fluidStep() const override { return base_.fluidStep(); }
    [[nodiscard]] double drawnSize(double size, const text::Face* face) const override {
        return base_.drawnSize(size, face);
    }
    [[nodiscard]] double drawnAdvance(double advance) const override { return base_.drawnAdvance(advance); }
    [[nodiscard]] double drawnInline(double width) const override { return base_.drawnInline(width); }
    [[nodiscard]] double meanTruncation() const override { return base_.meanTruncation(); }
    [[nodiscard]] double fitAllowance() const override { return base_.fitAllowance(); }
    [[nodiscard]] double sizeTolerance() const override { return base_.sizeTolerance(); }
    [[nodiscard]] text::LineExtent extent(const text::Face& face, double size,
                                          double lineHeight) const override {
        return base_.extent(face, size, lineHeight);
    }
    [[nodiscard]] bool usesEngineData(std::u16string_view text) const override {
        return base_.usesEngineData(text);
    }
    [[nodiscard]] std::vector<std::uint32_t> balanced(const text::Paragraph& paragraph,
                                                      const text::LineQuery& query) const override {
        return base_.balanced(paragraph, query);
    }
    [[nodiscard]] std::uint32_t balancedLines(const text::Paragraph& paragraph,
                                              const text::LineQueryOf<units::Linear>& query,
                                              std::uint32_t greedy, double& until) const override {
        return base_.balancedLines(paragraph, query, greedy, until);
    }

private:
    const text::BreakProfile& base_;
};

class ThirdProfile : public testing::Test {
protected:
    static const text::BreakProfile& third() {
        static const Third profile(text::blink());
        return profile;
    }
    text::AddedProfile added_{third()};
};

/// The most lines of the first part at any whole width under `profile`.
std::uint32_t mostLines(const project::Project& project, const text::BreakProfile& profile) {
    const layout::PreparedRow row(project, 0, checkStore(), profile);
    std::uint32_t most = 0;
    for (int width = 320; width <= 1920; ++width)
        most = std::max(most, layout::layOut(row, width).parts[0].lineCount);
    return most;
}

const std::string slashes = "Tern Holm/Causeway/Sluice/Quay/Old Creek/Saltmarsh/Dunes/Lamp";
/// A large heading whose long word may break after a hyphen under two of the profiles.
project::Project compound() {
    project::Project project = headed("Tern-Holm-Causeway at Sluice-Quay");
    set(project, "text/heading/size", "40");
    return project;
}

const std::string hyphens = "Tern-Holm-Causeway-Sluice-Quay-Old-Creek-Saltmarsh-Dunes-Lamp";

TEST_F(ThirdProfile, IsKnownByItsName) {
    EXPECT_EQ(text::profiles().size(), 3U);
    EXPECT_EQ(text::profile("third"), &third());
    EXPECT_EQ(text::profileOfBrowser("Third"), &third());
    EXPECT_EQ(&text::defaultProfile(), &text::blink());
}

TEST_F(ThirdProfile, SharesAFindingWithAnother) {
    project::Project project = headed(slashes);
    set(project, "text/heading/size", "60");
    const std::vector<Finding> all = checks::check(project, 0, checkStore());
    const Finding* cut = find(all, "word");
    ASSERT_NE(cut, nullptr);
    EXPECT_EQ(cut->profiles, (checks::Profiles{&text::blink(), &third()}));
    EXPECT_EQ(cut->says.rfind("Chromium and Third only: from ", 0), 0U) << cut->says;
    EXPECT_NE(emit::findingsJson({*cut}).find(R"("engine": ["blink", "third"])"), std::string::npos);
    const Finding* engines = find(all, "engines");
    ASSERT_NE(engines, nullptr);
    EXPECT_NE(engines->says.find(" in Chromium and Third and "), std::string::npos) << engines->says;
    EXPECT_NE(engines->says.find("Only Firefox breaks a line after “/”"), std::string::npos) << engines->says;
    EXPECT_NE(engines->says.find("to allow the break in all browsers"), std::string::npos) << engines->says;
}

TEST_F(ThirdProfile, HasFindingsOfItsOwn) {
    project::Project project = headed(hyphens);
    set(project, "text/heading/size", "60");
    const std::vector<Finding> all = checks::check(project, 0, checkStore());
    const auto own = std::ranges::find(all, checks::Profiles{&third()}, &Finding::profiles);
    ASSERT_NE(own, all.end());
    EXPECT_EQ(own->says.rfind("Third only: ", 0), 0U) << own->says;
    const Finding* engines = find(all, "engines");
    ASSERT_NE(engines, nullptr);
    EXPECT_NE(engines->says.find("Only Chromium and Firefox break a line after “-”"), std::string::npos)
        << engines->says;
}

TEST_F(ThirdProfile, LimitsTheSizesThatSolveFinds) {
    project::Project project = compound();
    project::ownWishesOrNew(project, "heading", {}).lines = 3;
    solve::Options two;
    two.profile = &text::blink();
    const solve::Answer withOne = solve::solve(project, {0}, checkStore(), two);
    const solve::Answer withAll = solve::solve(project, {0}, checkStore());
    ASSERT_TRUE(withOne.solved.has_value());
    ASSERT_TRUE(withAll.solved.has_value());
    const auto widest = [](const project::Project& solved) {
        const layout::PreparedRow row(solved, 0, checkStore(), text::blink());
        return layout::layOut(row, 320).parts[0].fontSize;
    };
    EXPECT_LT(widest(*withAll.solved), widest(*withOne.solved));
    for (const text::BreakProfile* profile : text::profiles())
        EXPECT_LE(mostLines(*withAll.solved, *profile), 3U) << profile->name();
}

TEST_F(ThirdProfile, HasWrapPointsAndIsInTheReport) {
    const project::Project project = compound();
    const layout::PreparedRow own(project, 0, checkStore(), third());
    const layout::PreparedRow other(project, 0, checkStore(), text::blink());
    EXPECT_NE(sweep::wrapPoints(own, 320, 1920), sweep::wrapPoints(other, 320, 1920));
    const std::string report = emit::report(project, checkStore(), third());
    EXPECT_NE(report.find("line breaks as in Third"), std::string::npos) << report;
    EXPECT_NE(report.find("Chromium, Firefox and Third give different line counts"), std::string::npos)
        << report;
    EXPECT_FALSE(checks::roomForCopy(project, 0, checkStore()).empty());
}

}  // namespace
}  // namespace tenter
