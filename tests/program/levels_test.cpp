// The schedule of levels as the real program gives it from a set-up.
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "tests/program/program_fixture.h"

namespace program_test {
namespace {

TEST(Levels, FromASetUpHaveTheirStaffReadings) {
  const ProgramRun run =
      stringcourse({"levels", demoPath("orchard-house"), "--set-up", "site", "--json"});
  ASSERT_EQ(run.exitCode, 0) << run.err;
  size_t read = 0;
  for (const auto& row : nlohmann::json::parse(run.out)) {
    if (row.at("staff m").is_null()) {
      EXPECT_NE(row.at("from there"), "") << row;
      continue;
    }
    // The bolt in the gate pier at 0.185 and the backsight 1.240 on it.
    EXPECT_NEAR(row.at("level m").get<double>() + row.at("staff m").get<double>(), 1.425, 0.0011);
    ++read;
  }
  EXPECT_GT(read, 20u);
}

TEST(Levels, FromASetUpThatTheJobHasNotAreAWrongCommandLine) {
  const ProgramRun run = stringcourse({"levels", demoPath("orchard-house"), "--set-up", "Roof"});
  EXPECT_EQ(run.exitCode, 2);
  EXPECT_NE(run.err.find("no set-up \"Roof\" in this job: Site, Cellar, Plate"), std::string::npos)
      << run.err;
  const ProgramRun none = stringcourse({"levels", demoPath("smallest"), "--set-up", "1"});
  EXPECT_EQ(none.exitCode, 2);
  EXPECT_NE(none.err.find("it has none; give [[set_up]] in the job file"), std::string::npos)
      << none.err;
}

}  // namespace
}  // namespace program_test
