// Reading an audience: RFC 4180, and the variations that analytics reports commonly have.
#include "checks/audience.h"

#include <gtest/gtest.h>

#include <fstream>
#include <iterator>

namespace tenter::checks {
namespace {

struct Read {
    std::optional<Audience> audience;
    project::Problems problems;
};

Read reading(const std::string& text) {
    Read read;
    read.audience = readAudience(text, "visits.csv", read.problems);
    return read;
}

using Visits = std::vector<std::pair<double, double>>;

TEST(AudienceTest, FindsItsColumnsByTheirHeadings) {
    const Read read = reading("Country,Sessions,Viewport width\nX,40,390\nY,10,1440\nZ,2,390\n");
    ASSERT_TRUE(read.audience.has_value());
    EXPECT_EQ(read.audience->visits, (Visits{{390, 42}, {1440, 10}}));
    EXPECT_TRUE(read.problems.empty());
}

TEST(AudienceTest, ReadsSemicolonsQuotesMarksAndBothLineEnds) {
    const Read read =
        reading("\xEF\xBB\xBF\"width\";\"the \"\"visits\"\"\"\r\n\"390\";\"1,204\"\r\n1440px;7\r\n\r\n");
    ASSERT_TRUE(read.audience.has_value());
    EXPECT_EQ(read.audience->visits, (Visits{{390, 1204}, {1440, 7}}));
}

TEST(AudienceTest, ReadsScreenResolutions) {
    const Read read = reading("screen resolution,users\n390x844,5\n");
    ASSERT_TRUE(read.audience.has_value());
    EXPECT_EQ(read.audience->visits, (Visits{{390, 5}}));
}

TEST(AudienceTest, ReportsBadLinesByNumberAndKeepsTheOthers) {
    const Read read = reading("width,visits\n390,5\nwide,6\n\"a\nb\",3\n800\n1200,-1\n1300,9\n");
    ASSERT_TRUE(read.audience.has_value());
    EXPECT_EQ(read.audience->visits, (Visits{{390, 5}, {1300, 9}}));
    ASSERT_EQ(read.problems.size(), 4U);
    EXPECT_EQ(read.problems[0].place, "3");
    EXPECT_EQ(read.problems[1].place, "4");
    EXPECT_EQ(read.problems[2].place, "6");
    EXPECT_EQ(read.problems[3].place, "7");
}

TEST(AudienceTest, RefusesFilesWithoutAnAudience) {
    for (const char* text : {"", "\n\n", "width,height\n1,2\n", "visits\n3\n", "width,visits\n",
                             "width,visits\n390,0\n", "\"width", "\xFF\xFE\x01"}) {
        const Read read = reading(text);
        EXPECT_FALSE(read.audience.has_value()) << text;
        EXPECT_FALSE(read.problems.empty()) << text;
    }
}

TEST(AudienceTest, CountsBadLinesBeyondAFew) {
    std::string text = "width,visits\n390,1\n";
    for (int i = 0; i < 50; ++i)
        text += "x,y\n";
    EXPECT_EQ(reading(text).problems.size(), 6U);
}

// A breakpoint belongs to the band below it.
TEST(AudienceTest, SharesVisitsByHalfOpenSpans) {
    const Audience audience{{{320, 1}, {600, 2}, {900, 1}}};
    EXPECT_DOUBLE_EQ(audience.share({{320, 600}}, 320), 0.75);
    EXPECT_DOUBLE_EQ(audience.share({{600, 900}}, 320), 0.25);
    EXPECT_DOUBLE_EQ(audience.share({{600, 600}}, 320), 0.5);
    EXPECT_DOUBLE_EQ(audience.share({}, 320), 0);
}

TEST(AudienceTest, ReadsTheSample) {
    std::ifstream file(TENTER_SOURCE_DIR "/sample-projects/visits.csv");
    const std::string text((std::istreambuf_iterator<char>(file)), std::istreambuf_iterator<char>());
    const Read read = reading(text);
    ASSERT_TRUE(read.audience.has_value());
    EXPECT_TRUE(read.problems.empty());
    EXPECT_GT(read.audience->visits.size(), 50U);
    const double phones = read.audience->share({{320, 480}}, 320);
    EXPECT_GT(phones, 0.4);
    EXPECT_LT(phones, 0.6);
}

}  // namespace
}  // namespace tenter::checks
