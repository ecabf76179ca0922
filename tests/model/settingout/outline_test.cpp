#include <algorithm>
#include <cmath>
#include <numbers>

#include <gtest/gtest.h>
#include <glm/geometric.hpp>

#include "model/settingout/setting_out.h"
#include "tests/support/demo_job.h"

namespace {

using model::Job;
using model::Vec2;

Job lPlan() {
  Job job;
  job.outline = {{0, 0}, {9, 0}, {9, 5}, {4, 5}, {4, 8}, {0, 8}};
  model::Opening window;
  window.name = "Window";
  window.wall = "C-D";
  window.from = "C";
  window.at = 1.2;
  window.width = 0.9;
  job.openings.push_back(window);
  return job;
}

// The same building drawn clockwise: A stays, the letters run the other way.
Job clockwise(const Job& job) {
  Job other = job;
  std::reverse(other.outline.begin() + 1, other.outline.end());
  return other;
}

TEST(Outline, LettersGoOnAfterZ) {
  EXPECT_EQ(model::cornerLetter(0), "A");
  EXPECT_EQ(model::cornerLetter(25), "Z");
  EXPECT_EQ(model::cornerLetter(26), "AA");
  EXPECT_EQ(model::cornerLetter(27), "AB");
  EXPECT_EQ(model::cornerLetter(51), "AZ");
  EXPECT_EQ(model::cornerLetter(52), "BA");
  EXPECT_EQ(model::cornerLetter(701), "ZZ");
  EXPECT_EQ(model::cornerLetter(702), "AAA");
}

TEST(Outline, WallsAreNamedRoundTheOutlineAndLookOutward) {
  const auto out = model::deriveSettingOut(lPlan());
  ASSERT_EQ(out.walls.size(), 6u);
  EXPECT_EQ(out.walls[0].name, "A-B");
  EXPECT_EQ(out.walls[5].name, "F-A");
  EXPECT_DOUBLE_EQ(out.walls[0].length, 9);
  EXPECT_EQ(out.walls[0].outward, Vec2(0, -1));
  EXPECT_EQ(out.walls[1].outward, Vec2(1, 0));
  EXPECT_EQ(out.walls[0].at(2, 0.1), Vec2(2, 0.1));
}

TEST(Outline, AClockwiseOutlineTurnsRoundAndKeepsItsLetters) {
  const auto out = model::deriveSettingOut(clockwise(lPlan()));
  ASSERT_EQ(out.corners.size(), 6u);
  EXPECT_GT(model::signedArea(out.outline), 0);
  EXPECT_EQ(out.corners[0].letter, "A");
  EXPECT_EQ(out.corners[1].letter, "F");
  EXPECT_EQ(out.corners[5].letter, "B");
  EXPECT_EQ(out.corners[1].at, Vec2(9, 0));
  EXPECT_EQ(out.walls[0].name, "F-A");
  EXPECT_EQ(out.walls[5].name, "A-B");
  EXPECT_EQ(out.walls[2].name, "D-E");
}

TEST(Outline, WallsAreFoundByEitherWayOfSayingTheirName) {
  const auto out = model::deriveSettingOut(lPlan());
  EXPECT_EQ(out.wallNamed("C-D"), 2u);
  EXPECT_EQ(out.wallNamed("D-C"), 2u);
  EXPECT_EQ(out.wallNamed("A-F"), 5u);
  EXPECT_FALSE(out.wallNamed("A-C"));
  EXPECT_FALSE(out.wallNamed(""));
  EXPECT_EQ(out.cornerNamed("D"), 3u);
  EXPECT_FALSE(out.cornerNamed("G"));
}

TEST(Outline, AnglesAreInteriorAndReEntrantOnesOverAHalfTurn) {
  const auto out = model::deriveSettingOut(lPlan());
  EXPECT_NEAR(out.corners[0].angle, std::numbers::pi / 2, 1e-12);
  EXPECT_NEAR(out.corners[3].angle, 3 * std::numbers::pi / 2, 1e-12);
  double sum = 0;
  for (const auto& corner : out.corners) sum += corner.angle;
  EXPECT_NEAR(sum, 4 * std::numbers::pi, 1e-9);
}

TEST(Outline, OpeningsAreMeasuredFromTheCornerThatIsNamed) {
  Job job = lPlan();
  auto out = model::deriveSettingOut(job);
  ASSERT_EQ(out.openings.size(), 1u);
  EXPECT_NEAR(out.openings[0].s0, 1.2, 1e-12);
  EXPECT_NEAR(out.openings[0].s1, 2.1, 1e-12);
  job.openings[0].from = "D";
  out = model::deriveSettingOut(job);
  EXPECT_NEAR(out.openings[0].s0, 5 - 1.2 - 0.9, 1e-12);
  job.openings[0].wall = "D-C";
  EXPECT_NEAR(model::deriveSettingOut(job).openings[0].s0, 5 - 1.2 - 0.9, 1e-12);
}

TEST(Outline, OpeningsStandAtTheSamePlaceHoweverTheOutlineRuns) {
  Job job = lPlan();
  Job other = clockwise(job);
  // C-D of the one is E-D of the other.
  other.openings[0].wall = "D-E";
  other.openings[0].from = "E";
  const auto a = model::deriveSettingOut(job), b = model::deriveSettingOut(other);
  const auto place = [](const model::SettingOut& out) {
    const auto& opening = out.openings[0];
    return out.walls[opening.wall].at((opening.s0 + opening.s1) / 2);
  };
  EXPECT_NEAR(glm::distance(place(a), place(b)), 0, 1e-12);
}

TEST(Outline, OpeningLevelsDefaultFromTheFloorOfTheirStorey) {
  Job job = lPlan();
  job.storeys = {{"Ground floor", 0.1}, {"First floor", 2.8}};
  job.openings.push_back(job.openings[0]);
  job.openings[1].storey = 1;
  job.openings.push_back(job.openings[0]);
  job.openings[2].kind = model::OpeningKind::Door;
  const auto out = model::deriveSettingOut(job);
  EXPECT_NEAR(out.openings[0].sill, 1.15, 1e-12);
  EXPECT_NEAR(out.openings[0].head, 2.2, 1e-12);
  EXPECT_NEAR(out.openings[1].sill, 3.85, 1e-12);
  EXPECT_NEAR(out.openings[1].head, 4.9, 1e-12);
  EXPECT_NEAR(out.openings[2].sill, 0.1, 1e-12);
}

}  // namespace
