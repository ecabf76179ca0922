// How deep, how high over the ground, what hangs in front of openings and what stands before them.
#include <gtest/gtest.h>

#include "model/checks/check_building.h"
#include "model/checks/findings.h"

namespace model {
namespace {

bool says(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

// All that is said with these words in it, one a line.
std::string about(const Job& job, const std::string& words) {
  std::string text;
  for (const Problem& p : checkBuilding(job, deriveSettingOut(job), "a.toml", {}))
    if (says(p.what, words))
      text += std::string(p.severity == Severity::Error ? "error: " : "") + p.what + "; " +
              p.instead + "\n";
  return text;
}

Job oblong() {
  Job job;
  job.outline = {{0, 0}, {8, 0}, {8, 6}, {0, 6}};
  return job;
}

// Falling from -0.2 along D-A to `low` along B-C.
Job onASlope(double low) {
  Job job = oblong();
  job.site.spots = {{{0, 0}, -0.2}, {{0, 6}, -0.2}, {{8, 0}, low}, {{8, 6}, low}};
  return job;
}

Opening openingIn(const std::string& wall, const std::string& from, OpeningKind kind) {
  Opening opening;
  opening.name = "Way through";
  opening.kind = kind;
  opening.wall = wall;
  opening.from = from;
  opening.at = 2;
  return opening;
}

TEST(CheckDeepFill, SaysHowDeepAndWhere) {
  EXPECT_EQ(about(onASlope(-0.6), "of fill"), "");
  Job job = onASlope(-1.5);
  const std::string text = about(job, "of fill");
  // Near B-C, inside the walls, stripped of 150 under ground at about -1.45; slab at -0.325.
  EXPECT_TRUE(says(text, "lies on up to 1276 mm") && says(text, "B-C (1276 mm)")) << text;
  EXPECT_FALSE(says(text, "D-A")) << text;
  EXPECT_TRUE(says(text, "suspended floor is usual")) << text;
  job.groundFloor.kind = GroundFloorKind::Suspended;
  EXPECT_EQ(about(job, "of fill"), "");
}

TEST(CheckTrenchDepths, WarnBelowTwoAndAHalfMetres) {
  Job job = oblong();  // on ground at -0.150
  job.foundations.thickness = 0.5;
  job.foundations.top = -2.1;
  EXPECT_EQ(about(job, "trenches"), "");
  job.foundations.top = -2.2;
  const std::string text = about(job, "trenches");
  EXPECT_TRUE(says(text, "A-B, B-C, C-D and D-A are up to 2550 mm deep")) << text;
  EXPECT_TRUE(says(text, "engineer")) << text;
}

TEST(CheckBareCellarWalls, NameTheWallAndByHowMuch) {
  Job job = oblong();
  job.cellar = Cellar{};
  EXPECT_EQ(about(job, "bare"), "");
  job = onASlope(-1.0);
  job.cellar = Cellar{};
  const std::string text = about(job, "bare");
  EXPECT_TRUE(says(text, "B-C (675 mm)") && says(text, "ground -1.000 m")) << text;
  EXPECT_FALSE(says(text, "D-A")) << text;
}

TEST(CheckOpeningsOverDrops, AskOfDoorsNotOfWindows) {
  Job job = onASlope(-0.9);
  job.openings = {openingIn("B-C", "B", OpeningKind::Door)};
  const std::string text = about(job, "threshold");
  EXPECT_TRUE(says(text, "at 0.000 m") && says(text, "over the ground outside it")) << text;
  job.openings[0].kind = OpeningKind::Window;
  EXPECT_EQ(about(job, "threshold"), "");
  job.openings[0] = openingIn("D-A", "D", OpeningKind::Door);
  EXPECT_EQ(about(job, "threshold"), "") << "200 is a step";
}

TEST(CheckOpeningsFacingBuildings, SayWhatTheyOpenOnTo) {
  Job job = oblong();
  job.openings = {openingIn("B-C", "B", OpeningKind::Opening)};
  const auto barnAt = [&](double gap, BuildingKind kind) {
    job.site.buildings = {{"Barn", kind, {{8 + gap, -1}, {12, -1}, {12, 7}, {8 + gap, 7}}, 3, 2}};
    return about(job, "opens on to");
  };
  const std::string touching = barnAt(0, BuildingKind::Existing);
  EXPECT_TRUE(says(touching, "Way through in B-C opens on to \"Barn\";")) << touching;
  EXPECT_TRUE(says(touching, "engineer")) << touching;
  EXPECT_TRUE(says(barnAt(0.8, BuildingKind::Neighbour), "\"Barn\", 800 mm in front"));
  EXPECT_EQ(barnAt(1.2, BuildingKind::Neighbour), "");
  EXPECT_EQ(barnAt(0.2, BuildingKind::Demolish), "");
  job.openings[0] = openingIn("D-A", "D", OpeningKind::Opening);
  EXPECT_EQ(barnAt(0, BuildingKind::Existing), "");
}

TEST(CheckEavesOverOpenings, SayWhereTheRoofHangsInFrontOfADoor) {
  Job job = oblong();
  job.openings = {openingIn("A-B", "A", OpeningKind::Door)};
  EXPECT_EQ(about(job, "hangs down"), "");
  job.roof.pitch = 50;
  job.roof.eaves = 0.6;
  const std::string text = about(job, "hangs down");
  EXPECT_TRUE(says(text, "in front of Way through (head +2.100 m)")) << text;
  job.roof.edges = {{"A-B", EavesKind::Gable}, {"C-D", EavesKind::Gable}};
  EXPECT_EQ(about(job, "hangs down"), "") << "a gable has no eaves";
}

TEST(CheckEavesOverGround, RefuseARoofThatComesDownToIt) {
  Job job = oblong();
  job.roof.pitch = 60;
  job.roof.eaves = 0.8;
  EXPECT_EQ(about(job, "comes down to"), "");
  job.roof.eaves = 1.2;
  std::string text = about(job, "comes down to");
  EXPECT_TRUE(says(text, "error: ") && says(text, "where the ground is -0.150 m;")) << text;
  EXPECT_FALSE(says(text, "in the ground")) << text;
  job.roof.eaves = 1.5;
  text = about(job, "comes down to");
  EXPECT_TRUE(says(text, "it would be in the ground")) << text;
}

TEST(DigsBesideBuildings, NameEveryWallTheLongestBesideItFirst) {
  Job job = oblong();
  job.site.buildings = {
      {"Barn", BuildingKind::Existing, {{-3, 6}, {11, 6}, {11, 9}, {-3, 9}}, 3, 0.3}};
  const auto found = digsBesideBuildings(job, deriveSettingOut(job));
  ASSERT_EQ(found.size(), 1u);
  EXPECT_FALSE(found[0].cellar);
  ASSERT_EQ(found[0].walls.size(), 3u);
  EXPECT_EQ(found[0].walls[0], "C-D");
  const std::string text = about(job, "may undermine");
  EXPECT_TRUE(says(text, "the trenches for C-D, ") && says(text, "\"Barn\" at the nearest"))
      << text;
}

TEST(CheckScaffoldRoom, NamesASideThatIsTooShortForOne) {
  // C-D of an L, between its inner corner and the house that the other leg runs up to.
  Job job;
  job.outline = {{0, 0}, {8, 0}, {8, 3.6}, {4.5, 3.6}, {4.5, 6}, {0, 6}};
  job.site.buildings = {
      {"House", BuildingKind::Existing, {{-2, 6}, {10, 6}, {10, 12}, {-2, 12}}, 5, 2}};
  EXPECT_TRUE(says(about(job, "no scaffold stands along"), "D-E")) << about(job, "scaffold");
  job.site.buildings.clear();
  EXPECT_EQ(about(job, "scaffold"), "");
}

}  // namespace
}  // namespace model
