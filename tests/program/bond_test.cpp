// `bond` with the real program.
#include <gtest/gtest.h>

#include <map>
#include <nlohmann/json.hpp>

#include "tests/program/program_fixture.h"
#include "tests/support/csv_reader.h"

namespace program_test {
namespace {

TEST(BondCommand, SumsTheBricksOfTheWalls) {
  const ProgramRun run =
      stringcourse({"bond", demoPath("skew-corner"), "--part", "bricks", "--csv"});
  ASSERT_EQ(run.exitCode, 0) << run.err;
  std::map<std::string, int> walls, all;
  for (const auto& row : test_support::readCsv(run.out)) {
    if (row.at(0) == "wall") continue;
    (row.at(0) == "all" ? all : walls)[row.at(1) + row.at(2)] += std::stoi(row.at(3));
  }
  EXPECT_EQ(walls, all);
  EXPECT_GT(all.at("whole215"), 3000);
  int angleBricks = 0;
  for (const auto& [piece, number] : all)
    if (piece.starts_with("angle brick, ") && piece.ends_with(" degrees")) angleBricks += number;
  EXPECT_GT(angleBricks, 0);
}

TEST(BondCommand, SaysWhatComesOutAndWhatWouldHaveToMove) {
  const ProgramRun house = stringcourse({"bond", demoPath("orchard-house")});
  EXPECT_EQ(house.exitCode, 0);
  EXPECT_NE(house.out.find("Every wall comes out in brick sizes as drawn."), std::string::npos);
  EXPECT_EQ(house.out.find("bond broken"), std::string::npos);
  const auto moves = nlohmann::json::parse(
      stringcourse({"bond", demoPath("skew-corner"), "--part", "moves", "--json"}).out);
  ASSERT_EQ(moves.size(), 3u);
  EXPECT_EQ(moves.at(1).at("what"), "East window");
  EXPECT_EQ(moves.at(1).at("towards"), "corner C");
}

TEST(BondCommand, AsksForAPartForCsv) {
  const ProgramRun run = stringcourse({"bond", demoPath("garage"), "--csv"});
  EXPECT_EQ(run.exitCode, 2);
  EXPECT_NE(run.err.find("--csv needs --part: stretches, bricks, moves, units or heights"),
            std::string::npos)
      << run.err;
}

}  // namespace
}  // namespace program_test
