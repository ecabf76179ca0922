#include "model/checks/check_building.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdio>

#include "model/job/write_job.h"
#include "model/settingout/coursing.h"
#include "tests/support/demo_job.h"
#include "tests/support/random_job.h"

namespace model {
namespace {

bool says(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

Problems all(const Job& job, const KeyPlaces& places = {}) {
  return checkBuilding(job, deriveSettingOut(job), "a.toml", places);
}

bool ofRoom(const Problem& problem) {
  return says(problem.what, "no room for a scaffold") || says(problem.what, "no room for profile");
}

bool ofBond(const Problem& problem) { return says(problem.what, "not in brick sizes"); }

// All but what is said of room for scaffold and boards, which most jobs with something near have,
// and of piers, whose sizes these jobs do not mind.
Problems found(const Job& job, const KeyPlaces& places = {}) {
  Problems problems = all(job, places);
  std::erase_if(problems, [](const Problem& p) { return ofRoom(p) || ofBond(p); });
  return problems;
}

Problems roomFor(const Job& job) {
  Problems problems = all(job);
  std::erase_if(problems, [](const Problem& p) { return !ofRoom(p); });
  return problems;
}

// What is said that has these words in it.
Problems about(const Job& job, const std::string& words, const KeyPlaces& places = {}) {
  Problems problems = found(job, places);
  std::erase_if(problems, [&](const Problem& p) { return !says(p.what, words); });
  return problems;
}

// The one warning, or nothing when there is none or several.
std::string only(const Problems& problems) {
  return problems.size() == 1 ? problems[0].what + "; " + problems[0].instead : "";
}

Job oblong() {
  Job job;
  job.outline = {{0, 0}, {8, 0}, {8, 6}, {0, 6}};
  return job;
}

Job withBuilding(BuildingKind kind, double gap, double depth) {
  Job job = oblong();
  job.site.buildings.push_back(
      {"Barn", kind, {{8 + gap, 1}, {12 + gap, 1}, {12 + gap, 5}, {8 + gap, 5}}, 3, depth});
  return job;
}

Opening window(double at, double width, double head) {
  Opening opening;
  opening.name = "Hall window";
  opening.wall = "A-B";
  opening.from = "A";
  opening.at = at;
  opening.width = width;
  opening.head = head;
  return opening;
}

TEST(CheckBuilding, HasNothingToSayOfAPlainJob) { EXPECT_TRUE(all(oblong()).empty()); }

TEST(CheckBuilding, NamesThePlaceOfTheKeyOrOfWhatHoldsIt) {
  const Job job = withBuilding(BuildingKind::Neighbour, 1, 0.3);
  const Problems problems = found(job, {{"site.building", {4, 1}}, {"site.building[0]", {9, 2}}});
  ASSERT_EQ(problems.size(), 1u);
  EXPECT_EQ(problems[0].place.line, 9);
  EXPECT_EQ(problems[0].severity, Severity::Warning);
}

// ---- openings --------------------------------------------------------------------

TEST(CheckLintels, SayWhereTheRoofLeavesNoRoomForOne) {
  Job job = oblong();
  job.openings = {window(3, 0.910, 0)};
  job.openings[0].head = deriveSettingOut(job).levels.outerLeafTop;
  EXPECT_TRUE(says(only(about(job, "lintel")), "no room for a lintel"));
  job.openings[0].head = *job.openings[0].head - 0.150;
  EXPECT_TRUE(found(job).empty());
}

TEST(CheckLintels, SayWhereTheBearingIsShort) {
  Job job = oblong();
  job.openings = {window(3, 0.910, 2.1), window(4.110, 0.910, 2.1)};  // a pier of 200
  const Problems problems = found(job);
  ASSERT_EQ(problems.size(), 2u);
  EXPECT_TRUE(says(problems[0].what, "bearing of only 100 mm")) << problems[0].what;
  job.openings[1].at = 4.210;
  EXPECT_TRUE(found(job).empty());
}

TEST(CheckOpeningWidths, NameAllThatAreNotWholeHalfBricksInOneLine) {
  Job job = oblong();
  job.openings = {window(1, 0.900, 2.1), window(3, 0.910, 2.1), window(5, 1.2, 2.1)};
  job.openings[1].name = "Landing window";
  const std::string text = only(found(job));
  EXPECT_TRUE(says(text, "Hall window (900 mm, nearest 910 mm)")) << text;
  EXPECT_TRUE(says(text, "(1200 mm, nearest 1247.5 mm)")) << text;
  EXPECT_FALSE(says(text, "Landing")) << text;
}

TEST(CheckOpeningCourses, SayWhereADefaultOrTheDrawingCutsBricks) {
  Job job = oblong();
  job.openings = {window(3, 0.910, 2.1)};
  job.openings[0].head.reset();
  EXPECT_TRUE(found(job).empty()) << "28 courses of 75";
  job.walls.brickLength = 0.19368;  // 2 2/3 in courses
  job.walls.brickHeight = 0.0582;
  job.walls.joint = 0.00953;
  job.openings[0].width = 0.60961 + 0.00953;
  std::string text = only(found(job));
  EXPECT_TRUE(says(text, "head +2.100 m (the default), nearest +2.032 m or +2.100 m") ||
              says(text, "sill +1.050 m (the default), nearest +1.016 m or +1.084 m"))
      << text;
  job.openings[0].sill = 1.01595;
  job.openings[0].head = 1.98;
  text = only(found(job));
  EXPECT_TRUE(says(text, "head +1.980 m, nearest +1.964 m or +2.032 m")) << text;
  EXPECT_TRUE(says(text, "the drawing decides")) << text;
}

// ---- foundations -----------------------------------------------------------------

Job onASlope() {
  Job job;
  job.outline = {{0, 0}, {12, 0}, {12, 6}, {0, 6}};
  job.site.spots = {{{0, 0}, -0.2}, {{0, 6}, -0.2}, {{12, 0}, -1.1}, {{12, 6}, -1.1}};
  job.foundations.thickness = 0.9;  // into good ground everywhere
  job.foundations.top = -0.825;
  return job;
}

TEST(CheckConcreteInTheGround, NameTheWallsThatStandOutOfIt) {
  const Problems problems = about(onASlope(), "top of concrete", {{"foundations.top", {7, 1}}});
  ASSERT_EQ(problems.size(), 1u);
  EXPECT_TRUE(says(problems[0].what, "under A-B, B-C and C-D")) << problems[0].what;
  EXPECT_TRUE(says(problems[0].what, "-0.825 m where the ground is -1.100 m")) << problems[0].what;
  EXPECT_EQ(problems[0].place.line, 7);
}

TEST(CheckConcreteInTheGround, AreContentWithStepsThatFollowTheGround) {
  Job job = onASlope();
  job.foundations.steps = {
      {"A-B", 6, std::nullopt, -1.275}, {"B-C", 0, std::nullopt, -1.275}, {"C-D", 0, 6.0, -1.275}};
  EXPECT_TRUE(about(job, "top of concrete").empty());
  job.foundations.steps[1].top = -1.05;  // over the ground at B
  const Problems problems = about(job, "top of concrete", {{"foundations.step[1].top", {9, 1}}});
  ASSERT_EQ(problems.size(), 1u);
  EXPECT_TRUE(says(problems[0].what, "under B-C")) << problems[0].what;
  EXPECT_EQ(problems[0].place.line, 9);
}

// ---- good ground -----------------------------------------------------------------

TEST(CheckGoodGround, SaysNothingWhereTheFormationIsWorkedOutFromIt) {
  Job job = oblong();
  for (const double depth : {0.3, 0.6, 1.5, 2.4}) {
    job.ground.goodGround = depth;
    for (const auto kind : {FoundationKind::Strip, FoundationKind::TrenchFill}) {
      job.foundations.kind = kind;
      for (const Problem& problem : found(job)) EXPECT_FALSE(says(problem.what, "good ground"));
    }
  }
}

TEST(CheckGoodGround, SaysHowFarAFormationIsAboveIt) {
  Job job = oblong();  // on level ground at -0.150
  job.foundations.top = -0.675;
  job.foundations.thickness = 0.2;
  job.ground.goodGround = 0.725;  // at -0.875, just where the concrete ends
  EXPECT_TRUE(found(job).empty());
  job.ground.goodGround = 1.5;  // at -1.650
  const Problems problems = found(job, {{"foundations.top", {7, 1}}});
  const std::string text = only(problems);
  EXPECT_TRUE(says(text, "along A-B, B-C, C-D and D-A")) << text;
  EXPECT_TRUE(says(text, "-0.875 m is up to 775 mm above it")) << text;
  EXPECT_TRUE(says(text, "1500 mm under the surface")) << text;
  EXPECT_TRUE(says(text, "ask the designer")) << text;
  EXPECT_EQ(problems[0].place.line, 7);
}

TEST(CheckGoodGround, SpeaksOfTheStepThatIsTooHighAndLeavesTheOthersAlone) {
  Job job = oblong();
  job.foundations.top = -1.125;
  job.foundations.thickness = 0.2;
  job.foundations.steps = {{"B-C", 0, 3, -0.675}};
  job.ground.goodGround = 1.0;  // at -1.150
  const Problems problems = found(job, {{"foundations.step[0].top", {9, 1}}});
  ASSERT_EQ(problems.size(), 1u);
  EXPECT_TRUE(says(problems[0].what, "along B-C: ")) << problems[0].what;
  EXPECT_TRUE(says(problems[0].what, "275 mm above")) << problems[0].what;
  EXPECT_EQ(problems[0].place.line, 9);
}

TEST(CheckGoodGround, AsksInTheDemoWhenItsGroundIsWorseThanItsDrawingThought) {
  Job job = test_support::demoJob("orchard-house");
  const auto ofGround = [&] {
    std::string text;
    for (const Problem& problem : all(job))
      if (says(problem.what, "good ground")) text += problem.what + "\n";
    return text;
  };
  EXPECT_EQ(ofGround(), "");
  job.ground.goodGround = 1.5;
  EXPECT_TRUE(says(ofGround(), "do not reach good ground along ")) << ofGround();
}

// ---- starter job -----------------------------------------------------------------

TEST(CheckBuilding, HasNothingToSayOfAFreshJobFile) {
  const ReadResult read = readJob(starterJob(), "new.toml");
  for (const Problem& problem : read.problems) ADD_FAILURE() << format(problem);
  ASSERT_TRUE(read.job);
  for (const Problem& problem : all(*read.job, read.places)) ADD_FAILURE() << format(problem);
}

// ---- digs ------------------------------------------------------------------------

TEST(CheckStripsOverTheDig, NameTheWallsThatCrossTheWorkingSpace) {
  Job job = oblong();
  job.cellar = Cellar{};
  EXPECT_TRUE(found(job).empty()) << "a cellar under all of it has no strip beside it";
  job.cellar->outline = {{4, 0}, {8, 0}, {8, 6}, {4, 6}};
  EXPECT_TRUE(says(only(found(job)), "A-B and C-D cross")) << only(found(job));
  EXPECT_TRUE(says(only(found(job)), "ask the designer"));
}

TEST(CheckNearBuildings, AskOfADigDeeperThanANeighbourWithinThreeMetres) {
  // The trench goes down 600 under ground at 150 under the floor, 850 to 900 with courses.
  const std::string text = only(found(withBuilding(BuildingKind::Neighbour, 2.5, 0.5)));
  EXPECT_TRUE(says(text, "the trenches for B-C, A-B and C-D go")) << text;
  EXPECT_TRUE(says(text, "ask whether notice")) << text;
  EXPECT_TRUE(found(withBuilding(BuildingKind::Neighbour, 2.5, 1.2)).empty());
  EXPECT_TRUE(found(withBuilding(BuildingKind::Neighbour, 3.5, 0.5)).empty());
}

TEST(CheckNearBuildings, AskOfACellarUnderTheLineWithinSixMetres) {
  Job job = withBuilding(BuildingKind::Neighbour, 0, 0.5);
  job.cellar = Cellar{};
  const double formation = deriveSettingOut(job).levels.cellarFormation;
  const double fall = -0.650 - formation;  // from the barn's foundations to the cellar's bottom
  ASSERT_LT(fall, 6);
  const auto barnAt = [&](double fromDig) {
    Job moved = withBuilding(BuildingKind::Neighbour, job.ground.workingSpace + fromDig, 0.5);
    moved.cellar = Cellar{};
    return found(moved);
  };
  ASSERT_LT(fall, 3) << "the first 3 m ask anyway";
  EXPECT_TRUE(says(only(barnAt(2.9)), "the cellar"));
  EXPECT_TRUE(barnAt(3.1).empty());
  job.cellar->floor = -4.5;
  const auto deeperAt = [&](double fromDig) {
    Job moved = withBuilding(BuildingKind::Neighbour, job.ground.workingSpace + fromDig, 0.5);
    moved.cellar = job.cellar;
    return found(moved);
  };
  const double line = -0.650 - deriveSettingOut(job).levels.cellarFormation;
  ASSERT_GT(line, 3.1);
  EXPECT_TRUE(says(only(deeperAt(line - 0.05)), "the cellar"));
  EXPECT_TRUE(deeperAt(line + 0.05).empty());
}

TEST(CheckNearBuildings, AskOfAnOwnBuildingOnlyUnderTheLineAndNeverOfNotice) {
  EXPECT_TRUE(found(withBuilding(BuildingKind::Existing, 2.5, 0.5)).empty());
  const std::string text = only(found(withBuilding(BuildingKind::Existing, 0.3, 0.3)));
  EXPECT_TRUE(says(text, "engineer")) << text;
  EXPECT_FALSE(says(text, "notice")) << text;
  EXPECT_TRUE(found(withBuilding(BuildingKind::Demolish, 0.5, 0.1)).empty());
}

TEST(CheckNearBuildings, SayWhenTheDigMayUndermine) {
  const auto text = [](double gap) {
    return only(found(withBuilding(BuildingKind::Neighbour, gap, 0.2)));
  };
  EXPECT_TRUE(says(text(0.4), "may undermine")) << text(0.4);
  EXPECT_TRUE(says(text(2.5), "the trenches for B-C, A-B and C-D go")) << text(2.5);
  EXPECT_FALSE(says(text(2.5), "may undermine")) << text(2.5);
}

// The barn stands on the same ground, at -0.150, beside a cellar under all of the plan.
Job withSlopes(double batter, double fromDig) {
  Job job = withBuilding(BuildingKind::Neighbour, 0.6 + fromDig, 3);
  job.cellar = Cellar{};
  job.ground.workingSpace = 0.6;
  job.ground.batter = batter;
  return job;
}

TEST(CheckSlopes, RefuseASlopeThatRunsUnderABuildingAndSayByHowMuch) {
  const double formation = deriveSettingOut(withSlopes(45, 9)).levels.cellarFormation;
  const double needed = -0.150 - 0.150 - formation;  // at 45 degrees, up to the bare subsoil
  const Problems problems = found(withSlopes(45, 1));
  ASSERT_EQ(problems.size(), 1u);
  EXPECT_EQ(problems[0].severity, Severity::Error);
  char under[64];
  std::snprintf(under, sizeof under, "runs %.0f mm under \"Barn\"", (needed - 1) * 1000);
  EXPECT_TRUE(says(problems[0].what, under)) << problems[0].what << " for " << under;
  EXPECT_TRUE(says(problems[0].what, "1000 mm from the dig's bottom")) << problems[0].what;
  EXPECT_TRUE(says(problems[0].instead, "ground.batter = 90")) << problems[0].instead;
  EXPECT_TRUE(found(withSlopes(45, needed + 0.01)).empty());
  EXPECT_FALSE(found(withSlopes(45, needed - 0.02)).empty());
}

TEST(CheckSlopes, FollowTheGround) {
  Job job = withSlopes(45, 3.2);
  EXPECT_TRUE(found(job).empty());
  // It rises by 1 in 4 towards the barn: the slope comes out of it later.
  job.site.spots = {{{0, 0}, -0.15}, {{0, 6}, -0.15}, {{8, 0}, -0.15},
                    {{8, 6}, -0.15}, {{16, 0}, 1.85}, {{16, 6}, 1.85}};
  const Problems problems = found(job);
  ASSERT_FALSE(problems.empty());
  EXPECT_EQ(problems[0].severity, Severity::Error);
}

TEST(CheckSlopes, SayThatOneGoesOverTheBoundary) {
  Job job = withSlopes(60, 30);
  job.site.boundary = {{-10, -10}, {9.6, -10}, {9.6, 16}, {-10, 16}};
  const std::string text = only(found(job));
  EXPECT_TRUE(says(text, "over the boundary")) << text;
  EXPECT_EQ(found(job)[0].severity, Severity::Warning);
  job.ground.batter = 90;
  EXPECT_TRUE(found(job).empty());
}

// ---- roof ------------------------------------------------------------------------

TEST(CheckRoofOnSite, SaysThatTheEavesGoOverTheBoundary) {
  Job job = oblong();
  job.site.boundary = {{-2, -2}, {8.2, -2}, {8.2, 8}, {-2, 8}};
  EXPECT_TRUE(says(only(found(job)), "edge of the roof goes over the boundary"));
  job.site.boundary[1].x = job.site.boundary[2].x = 8.4;
  EXPECT_TRUE(found(job).empty());
}

TEST(CheckRoofOnSite, SaysThatTheEavesReachOverABuildingAsHigh) {
  Job job = withBuilding(BuildingKind::Existing, 0.2, 2);
  EXPECT_TRUE(says(only(found(job)), "reaches over \"Barn\"")) << only(found(job));
  job.site.boundary.clear();
  job.site.buildings[0].height = 1;
  EXPECT_TRUE(found(job).empty());
}

// ---- room beside it ----------------------------------------------------------------

TEST(CheckScaffoldRoom, NamesTheWallTheRoomAndWhatIsInTheWay) {
  std::string text = only(roomFor(withBuilding(BuildingKind::Existing, 0.6, 2)));
  EXPECT_TRUE(says(text, "scaffold along B-C")) << text;
  EXPECT_TRUE(says(text, "600 mm to \"Barn\"")) << text;
  EXPECT_TRUE(roomFor(withBuilding(BuildingKind::Existing, 2.5, 2)).empty());
  EXPECT_TRUE(roomFor(withBuilding(BuildingKind::Demolish, 0.6, 0.1)).empty());
  Job job = oblong();
  job.site.boundary = {{-10, -0.8}, {20, -0.8}, {20, 16}, {-10, 16}};
  text = only(roomFor(job));
  EXPECT_TRUE(says(text, "scaffold along A-B: 800 mm to the boundary")) << text;
  job.site.boundary[0].y = job.site.boundary[1].y = -3;
  EXPECT_TRUE(roomFor(job).empty());
}

TEST(CheckScaffoldRoom, SaysOneThingOfOneObstacle) {
  Job job = oblong();
  job.site.boundary = {{-0.8, -0.8}, {20, -0.8}, {20, 16}, {-0.8, 16}};
  const std::string text = only(roomFor(job));
  EXPECT_TRUE(says(text, "A-B and D-A")) << text;
}

TEST(CheckProfileRoom, NamesTheLinesThatHaveNoBoards) {
  // The barn is in the way of A-B's lines beyond B, and nearer than a board's width to the dig.
  Job job = oblong();
  job.site.buildings.push_back(
      {"Barn", BuildingKind::Existing, {{8.3, -3}, {12, -3}, {12, 3}, {8.3, 3}}, 2, 2});
  std::string text;
  for (const Problem& problem : roomFor(job)) text += problem.what + "\n";
  EXPECT_TRUE(
      says(text, "profile boards between the dig and \"Barn\" for the lines of A-B beyond B"))
      << text;
  EXPECT_FALSE(says(text, "C-D")) << text;
  for (Vec2& p : job.site.buildings[0].outline) p.x += 2;
  EXPECT_TRUE(roomFor(job).empty());
}

TEST(CheckProfileRoom, OffersOffsetLines) {
  Job job = oblong();
  job.site.buildings.push_back(
      {"Barn", BuildingKind::Existing, {{8.3, -3}, {12, -3}, {12, 3}, {8.3, 3}}, 2, 2});
  std::string text;
  for (const Problem& problem : roomFor(job)) text += problem.instead + "\n";
  EXPECT_TRUE(says(text, "string offset lines: ")) << text;
  EXPECT_TRUE(says(text, " the outer face of A-B")) << text;
}

// ---- limits ------------------------------------------------------------------------

TEST(CheckLimits, WarnOfWhatIsOverAndAtTheLimit) {
  Job job = oblong();
  const double ridge = deriveSettingOut(job).levels.ridge;
  Limit over, close, clear;
  over.kind = close.kind = clear.kind = LimitKind::Ridge;
  over.most = ridge - 0.040;
  over.note = "permission, condition 4";
  close.most = ridge + 0.004;
  clear.most = ridge + 0.100;
  job.limits = {clear, over, close};
  std::string text;
  int warnings = 0;
  for (const Problem& problem : all(job)) {
    if (!says(problem.what, "ridge")) continue;
    ++warnings;
    text += problem.what + "; " + problem.instead + "\n";
  }
  EXPECT_EQ(warnings, 2) << text;
  EXPECT_TRUE(says(text, "over by 40; ask the designer")) << text;
  EXPECT_TRUE(says(text, "(permission, condition 4)")) << text;
  EXPECT_TRUE(says(text, "at the limit: 4 to spare")) << text;
}

// ---- all together ------------------------------------------------------------------

TEST(CheckBuilding, SaysLittleAndTrueThingsOfTheDemonstrationJobs) {
  for (const std::string& name : test_support::demoNames()) {
    const Problems problems = all(test_support::demoJob(name));
    // A skew corner brings piers that are in no brick size.
    const bool ofPiers = std::any_of(problems.begin(), problems.end(), ofBond);
    EXPECT_EQ(ofPiers, name == "skew-corner") << name;
    if (ofPiers) continue;
    // Scaffold and boards have no room at the two buildings that it is joined to.
    const size_t expected = name == "orchard-house" ? 2 : name == "row-end" ? 4 : 0;
    EXPECT_EQ(problems.size(), expected) << name;
  }
}

TEST(CheckBuilding, OnlyWarnsAndNeverSpeaksOfSafety) {
  for (unsigned seed = 0; seed < 200; ++seed) {
    for (const Problem& problem : all(test_support::seededJob(seed))) {
      EXPECT_EQ(problem.severity, Severity::Warning);
      EXPECT_FALSE(problem.what.empty());
      EXPECT_FALSE(problem.instead.empty());
      EXPECT_FALSE(says(problem.what + problem.instead, "safe")) << problem.what;
    }
  }
}

}  // namespace
}  // namespace model
