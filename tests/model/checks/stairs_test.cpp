#include <gtest/gtest.h>

#include <functional>

#include "model/checks/check_building.h"
#include "model/job/read_job.h"
#include "tests/support/stair_job.h"

namespace model {
namespace {

// What the check says of the stair after a change; empty when nothing.
std::string saidAfter(const std::function<void(Job&)>& change) {
  Job job = test_support::jobWithStair();
  change(job);
  for (const Problem& problem : validateJob(job, "", {}))
    EXPECT_NE(problem.severity, Severity::Error) << problem.what;
  for (const Problem& problem : checkBuilding(job, deriveSettingOut(job), "", {}))
    if (problem.what.find("Main stair") != std::string::npos) {
      EXPECT_EQ(problem.severity, Severity::Warning);
      EXPECT_NE(problem.instead.find("the designer decide"), std::string::npos);
      return problem.what;
    }
  return "";
}

// Approved Document K (England), 2013 edition, table 1.1 with its notes, private stair; headroom;
// diagram 3.1. Source: ADK.
TEST(StairChecks, SayWhatIsOutsideThePublishedLimitsAndNothingElse) {
  const auto steps = [](int risers, double going) {
    return saidAfter([&](Job& job) {
      job.stairs[0].risers = risers;
      job.stairs[0].going = going;
      job.stairs[0].foot.x = 1.6;
    });
  };
  EXPECT_EQ(steps(14, 0.235), "");
  EXPECT_EQ(steps(13, 0.240), "");
  EXPECT_EQ(
      steps(12, 0.240),
      R"(stair "Main stair": rise 225 mm (150 mm to 220 mm); pitch 43.2 degrees (at most 42))");
  EXPECT_EQ(
      steps(14, 0.210),
      R"(stair "Main stair": going 210 mm (220 mm to 300 mm); pitch 42.6 degrees (at most 42))");
  EXPECT_EQ(
      steps(13, 0.310),
      R"(stair "Main stair": going 310 mm (220 mm to 300 mm); twice the rise and the going 725.4 mm (550 mm to 700 mm))");
}

TEST(StairChecks, SayWhereHeadroomGuardingAndLandingsAreShort) {
  EXPECT_NE(saidAfter([](Job& job) { job.stairs[0].well = 2.3; }).find("headroom"),
            std::string::npos);
  EXPECT_EQ(saidAfter([](Job& job) { job.stairs[0].well = 2.9; }), "");
  EXPECT_NE(saidAfter([](Job& job) { job.stairs[0].guard = 0.8; }).find("guarding 800 mm"),
            std::string::npos);
  EXPECT_EQ(saidAfter([](Job& job) { job.stairs[0].foot.x = 1.25; }).find("before its foot") ==
                std::string::npos,
            true);
  EXPECT_NE(saidAfter([](Job& job) { job.stairs[0].foot.x = 1.0; }).find("before its foot"),
            std::string::npos);
  EXPECT_NE(saidAfter([](Job& job) { job.stairs[0].foot.x = 5.0; }).find("at its top"),
            std::string::npos);
}

}  // namespace
}  // namespace model
