// `lines` and `pegs` with the real program.
#include <gtest/gtest.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "tests/program/program_fixture.h"
#include "tests/support/csv_reader.h"

namespace program_test {
namespace {

using test_support::demoNames;

const std::vector<std::string> kParts{"boards", "lines", "tape", "limits"};

TEST(LinesCommand, EveryPartOfEveryDemoReadsAsCsvAndAsJsonAndTheyAgree) {
  for (const std::string& demo : demoNames()) {
    const auto whole = nlohmann::json::parse(stringcourse({"lines", demoPath(demo), "--json"}).out);
    ASSERT_EQ(whole.size(), kParts.size());
    for (const std::string& part : kParts) {
      const ProgramRun run = stringcourse({"lines", demoPath(demo), "--part", part, "--csv"});
      ASSERT_EQ(run.exitCode, 0) << demo << part << run.err;
      const auto rows = test_support::readCsv(run.out);
      EXPECT_EQ(rows.size(), whole.at(part).size() + 1) << demo << part;
      EXPECT_GT(rows.size(), 1u) << demo << part;
    }
    const ProgramRun people = stringcourse({"lines", demoPath(demo)});
    EXPECT_EQ(people.exitCode, 0);
    EXPECT_NE(people.out.find("Profile boards of"), std::string::npos);
    EXPECT_NE(people.out.find("Limits of"), std::string::npos);
  }
}

TEST(LinesCommand, GivesTheMarksOfTheHouseOnItsDrawing) {
  const auto boards = nlohmann::json::parse(
      stringcourse({"lines", demoPath("orchard-house"), "--part", "boards", "--json"}).out);
  const auto& first = boards.at(0);
  EXPECT_EQ(first.at("wall"), "A-B");
  EXPECT_EQ(first.at("beyond corner"), "A");
  EXPECT_EQ(first.at("marks from"), "right-hand end");
  const double outer = first.at("outer face mm");
  EXPECT_NEAR(first.at("inner face mm").get<double>() - outer, 352.5, 1);
  EXPECT_NEAR(first.at("foundation outer mm").get<double>() - outer, -198.75, 1);
}

TEST(LinesCommand, WrongUseIsSaid) {
  const ProgramRun csv = stringcourse({"lines", demoPath("smallest"), "--csv"});
  EXPECT_EQ(csv.exitCode, 2);
  EXPECT_NE(csv.err.find("--part"), std::string::npos);
  EXPECT_EQ(stringcourse({"lines", demoPath("smallest"), "--part", "pegs"}).exitCode, 2);
  EXPECT_EQ(stringcourse({"lines", "/no/such/job.toml"}).exitCode, 1);
}

TEST(PegsCommand, GivesATotalStationNamesAndCoordinates) {
  for (const std::string& demo : demoNames()) {
    const ProgramRun run = stringcourse({"pegs", demoPath(demo), "--csv"});
    ASSERT_EQ(run.exitCode, 0) << run.err;
    const auto rows = test_support::readCsv(run.out);
    const std::vector<std::string> first{"name", "east m", "north m", "level m", "code"};
    ASSERT_TRUE(std::equal(first.begin(), first.end(), rows.at(0).begin())) << demo;
    const auto corner =
        std::find_if(rows.begin(), rows.end(), [](const auto& row) { return row[0] == "A-OF"; });
    ASSERT_NE(corner, rows.end()) << demo;
    EXPECT_EQ(corner->at(4), "outer-face");
    EXPECT_GT(rows.size(), 8u);
  }
}

}  // namespace
}  // namespace program_test
