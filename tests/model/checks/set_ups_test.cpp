// Whether the instrument of a set-up can stand there.
#include <gtest/gtest.h>

#include <algorithm>

#include "model/checks/check_building.h"
#include "tests/support/demo_job.h"

namespace model {
namespace {

// On level ground at -0.150, with two storeys: floors at 0.000 and 2.700.
Job jobWith(const Vec2& at, double line, const std::string& floor = "") {
  Job job;
  job.outline = {{0, 0}, {8, 0}, {8, 6}, {0, 6}};
  job.storeys = {{"Ground floor", 0}, {"First floor", 2.7}};
  job.site.benchMark = BenchMark{"Gate", {-3, -3}, 0};
  SetUp setUp;
  setUp.name = "Site";
  setUp.at = at;
  setUp.backsight = line;
  setUp.floor = floor;
  job.setUps = {setUp};
  return job;
}

// What is said of its set-ups, empty when nothing is.
std::string said(const Job& job) {
  std::string text;
  for (const Problem& problem : checkBuilding(job, deriveSettingOut(job), "a.toml", {})) {
    if (problem.what.starts_with("set-up ")) text += problem.what + "; " + problem.instead;
  }
  return text;
}

TEST(SetUps, OnTheGroundStandAsHighAsATripod) {
  EXPECT_EQ(said(jobWith({-3, 3}, 1.250)), "");
  EXPECT_EQ(said(jobWith({-3, 3}, 2.100)),
            "set-up \"Site\": the line is 2250 above the ground; a tripod reaches 1700; check the "
            "backsight, its mark and where the instrument stands");
  EXPECT_NE(said(jobWith({-3, 3}, 0.300)).find("only 450 above the ground"), std::string::npos);
}

TEST(SetUps, OnAFloorStandOverThatFloor) {
  EXPECT_EQ(said(jobWith({3, 3}, 4.000, "First floor")), "");
  EXPECT_NE(said(jobWith({3, 3}, 5.000, "First floor")).find("above floor \"First floor\""),
            std::string::npos);
  EXPECT_NE(said(jobWith({-3, 3}, 4.000, "First floor")).find("is not on floor"),
            std::string::npos);
}

TEST(SetUps, WithoutTheirFloorAreOfferedTheOneThatFits) {
  EXPECT_NE(said(jobWith({3, 3}, 4.000)).find("write floor = \"First floor\""), std::string::npos);
  EXPECT_EQ(said(jobWith({-3, 3}, 4.000)).find("write floor"), std::string::npos);
}

TEST(SetUps, StandInTheCellarsDigBeforeAndAfterItsSlab) {
  Job job = jobWith({4, 3}, -1.500);
  job.cellar = Cellar{};
  EXPECT_EQ(said(job), "");
  job.setUps[0].floor = kCellarFloor;
  EXPECT_EQ(said(job), "");
  job.cellar.reset();
  job.setUps[0].floor.clear();
  EXPECT_NE(said(job), "");
}

TEST(SetUps, OfEveryDemoCanStand) {
  for (const std::string& name : test_support::demoNames())
    EXPECT_EQ(said(test_support::demoJob(name)), "") << name;
}

}  // namespace
}  // namespace model
