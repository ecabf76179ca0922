// `lines` and `pegs` with the real program.
#include <gtest/gtest.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "tests/program/program_fixture.h"
#include "tests/support/csv_reader.h"

namespace program_test {
namespace {

using test_support::demoNames;

const std::vector<std::string> kParts{"boards", "lines", "tape", "limits", "pins"};

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

// What is read on a peg and its level make the height of the instrument's line.
void expectReadings(const nlohmann::json& rows, const std::string& level, size_t least) {
  size_t read = 0;
  for (const auto& row : rows) {
    if (row.at("staff m").is_null()) {
      EXPECT_NE(row.at("from there"), "") << row;
      continue;
    }
    EXPECT_NEAR(row.at(level).get<double>() + row.at("staff m").get<double>(), 1.425, 0.0011)
        << row;
    ++read;
  }
  EXPECT_GT(read, least);
}

TEST(PegsCommand, FromASetUpHaveTheirStaffReadings) {
  const ProgramRun run =
      stringcourse({"pegs", demoPath("orchard-house"), "--set-up", "Site", "--json"});
  ASSERT_EQ(run.exitCode, 0) << run.err;
  expectReadings(nlohmann::json::parse(run.out), "level m", 80);
  const ProgramRun none = stringcourse({"pegs", demoPath("orchard-house"), "--set-up", "Roof"});
  EXPECT_EQ(none.exitCode, 2);
  EXPECT_NE(none.err.find("Site, Cellar, Plate"), std::string::npos) << none.err;
}

TEST(LinesCommand, GivesThePinsOverTrenchesAndSlabsAndWhatIsReadOnThem) {
  const ProgramRun run = stringcourse(
      {"lines", demoPath("orchard-house"), "--part", "pins", "--set-up", "site", "--json"});
  ASSERT_EQ(run.exitCode, 0) << run.err;
  const auto rows = nlohmann::json::parse(run.out);
  expectReadings(rows, "top m", 30);
  const auto count = [&](const std::string& in) {
    return std::count_if(rows.begin(), rows.end(),
                         [&](const auto& row) { return row.at("in") == in; });
  };
  EXPECT_GT(count("trench F-A"), 2);
  EXPECT_GT(count("ground slab"), 8);
  EXPECT_GT(count("cellar slab"), 8);
  // The pegs for the total station are the same pins.
  const auto pegs =
      nlohmann::json::parse(stringcourse({"pegs", demoPath("orchard-house"), "--json"}).out);
  for (const auto& row : rows) {
    const auto peg = std::find_if(pegs.begin(), pegs.end(), [&](const auto& each) {
      return each.at("name") == "P" + row.at("pin").template get<std::string>();
    });
    ASSERT_NE(peg, pegs.end()) << row;
    EXPECT_EQ(peg->at("east m"), row.at("east m"));
    EXPECT_EQ(peg->at("level m"), row.at("top m"));
  }
  const ProgramRun people = stringcourse({"lines", demoPath("orchard-house"), "--part", "pins"});
  EXPECT_NE(people.out.find("K-A1"), std::string::npos) << people.out;
  EXPECT_NE(people.out.find("the letters go up the drawing"), std::string::npos) << people.out;
  const ProgramRun boards =
      stringcourse({"lines", demoPath("orchard-house"), "--part", "boards", "--set-up", "Site"});
  EXPECT_EQ(boards.exitCode, 2);
  EXPECT_NE(boards.err.find("--part pins"), std::string::npos) << boards.err;
}

}  // namespace
}  // namespace program_test
