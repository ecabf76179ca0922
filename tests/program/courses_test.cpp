// Courses and packs by the real program: the picture of a course, heights, loading out.
#include <gtest/gtest.h>

#include <cmath>
#include <nlohmann/json.hpp>

#include "tests/program/program_fixture.h"
#include "tests/support/png_reader.h"

namespace program_test {
namespace {

using nlohmann::json;

class Courses : public InFolder {
 protected:
  test_support::Picture at(const std::string& course) {
    const std::string out = inFolder("course-" + course + ".png");
    const ProgramRun run =
        stringcourse({"picture", demoPath("garage"), "--course", course, "--corner", "c", "--view",
                      "south", "--size", "640x360", "--out", out});
    EXPECT_EQ(run.exitCode, 0) << run.err;
    return test_support::readPng(out);
  }
  // Rows of the picture in which there is brick.
  static int brickRows(const test_support::Picture& picture) {
    int rows = 0;
    for (int y = 0; y < picture.height; ++y) {
      int red = 0;
      for (int x = 0; x < picture.width; ++x) {
        const unsigned p = picture.at(x, y);
        const int r = int(p >> 16 & 255), g = int(p >> 8 & 255), b = int(p & 255);
        red += r > 110 && r - g > 35 && r - b > 45 && g < 140;
      }
      rows += red > 20;
    }
    return rows;
  }
};

TEST_F(Courses, AreHigherTheFurtherTheWorkIs) {
  const int few = brickRows(at("4")), more = brickRows(at("12"));
  EXPECT_GT(few, 0);
  EXPECT_GT(more, few + 20);
}

TEST(CourseOptions, SayWhatThereIsInstead) {
  const auto asked = [](const std::vector<std::string>& options) {
    std::vector<std::string> call{"picture", demoPath("garage"), "--out", "never.png"};
    call.insert(call.end(), options.begin(), options.end());
    const ProgramRun run = stringcourse(call);
    EXPECT_EQ(run.exitCode, 2);
    return run.err;
  };
  EXPECT_NE(asked({"--course", "99"}).find("no brick is laid in course 99; courses run from -"),
            std::string::npos);
  EXPECT_NE(asked({"--course", "3", "--corner", "Q"}).find("A, B, C, D"), std::string::npos);
  EXPECT_NE(asked({"--course", "0"}).find("there is no course 0"), std::string::npos);
  EXPECT_NE(asked({"--course", "3", "--stage", "1"}).find("excludes"), std::string::npos);
  EXPECT_NE(asked({"--corner", "C"}).find("requires --course"), std::string::npos);
}

TEST(Loading, BringsTheBricksAndBlocksOfTheTakeoff) {
  const auto rows =
      json::parse(stringcourse({"takeoff", demoPath("garage"), "--loading", "--json"}).out);
  double bricks = 0, runs = 0, packs = 0;
  for (const auto& row : rows) {
    if (row.at("bricks").is_null() || row.at("bricks") == "") continue;
    (row.at("wall") == "bring" ? bricks : runs) += row.at("bricks").get<double>();
    if (row.at("wall") != "bring") continue;
    packs += std::atof(row.at("packs of bricks").get<std::string>().c_str());
  }
  EXPECT_EQ(bricks, runs);
  double net = 0;
  for (const auto& row : json::parse(stringcourse({"takeoff", demoPath("garage"), "--json"}).out))
    if (row.at("item") == "Facing bricks") net = row.at("net").get<double>();
  ASSERT_GT(net, 1000);
  // Cuts are shared within a run here and within a stage there.
  EXPECT_NEAR(bricks, net * 1.05, net * 0.02);
  EXPECT_EQ(packs, std::ceil(bricks / 400));
  const ProgramRun people = stringcourse({"takeoff", demoPath("garage"), "--loading"});
  EXPECT_NE(people.out.find("Never overload a scaffold"), std::string::npos);
}

TEST(Heights, SayWhichCourseIsCut) {
  const ProgramRun run = stringcourse({"bond", demoPath("orchard-house"), "--part", "heights"});
  EXPECT_EQ(run.exitCode, 0);
  EXPECT_NE(run.out.find("course 33 cut to 48"), std::string::npos) << run.out;
  EXPECT_NE(run.out.find("As read: corner E is 12 low"), std::string::npos);
}

}  // namespace
}  // namespace program_test
