// What is said about the stages is so on that job, and what is not so is not said.
#include <gtest/gtest.h>

#include <algorithm>

#include "model/checks/findings.h"
#include "model/level_text.h"
#include "model/model.h"
#include "tests/support/demo_job.h"
#include "tests/support/random_job.h"

namespace model {
namespace {

const Stage* stageOf(const Model& m, StageKind kind) {
  for (const Stage& stage : m.programme.stages)
    if (stage.key.kind == kind) return &stage;
  return nullptr;
}

std::string said(const Model& m, StageKind kind) {
  const Stage* stage = stageOf(m, kind);
  return stage ? stage->name + " | " + stage->what + " | " + stage->atEnd + " | " + stage->caution
               : "";
}

bool says(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

// 8 x 6 m, hips all round.
Job oblong() {
  Job job;
  job.outline = {{0, 0}, {8, 0}, {8, 6}, {0, 6}};
  return job;
}

Job withGables() {
  Job job = oblong();
  job.roof.edges = {{"B-C", EavesKind::Gable}, {"D-A", EavesKind::Gable}};
  return job;
}

Job withCellar() {
  Job job = oblong();
  job.cellar = Cellar{};
  job.cellar->outline = {{0, 0}, {4, 0}, {4, 6}, {0, 6}};
  return job;
}

TEST(TrueWords, LeanConcreteBesideTheCellarIsNoBlinding) {
  Job job = withCellar();
  std::string text = said(buildModel(job), StageKind::TrenchBlinding);
  EXPECT_TRUE(says(text, "Lean concrete beside the cellar | Where the foundations cross")) << text;
  EXPECT_FALSE(says(text, "Blind") || says(text, "trench bottoms")) << text;
  job.foundations.blinding = 0.05;
  text = said(buildModel(job), StageKind::TrenchBlinding);
  EXPECT_TRUE(says(text, "Blind the trenches") && says(text, "Then pour 50 of it")) << text;
  EXPECT_TRUE(says(text, "lean concrete to")) << text;
  job.cellar.reset();
  text = said(buildModel(job), StageKind::TrenchBlinding);
  EXPECT_TRUE(says(text, "Pour 50 of lean concrete on the trench bottoms")) << text;
  EXPECT_FALSE(says(text, "cellar")) << text;
}

// A house between two others, joined to the one at two corners and to the other at one.
TEST(TrueWords, WhatHoldsForEveryJunctionIsSaidOnce) {
  Job job = oblong();
  StandingBuilding west, east;
  west.name = "House";
  west.outline = {{-6, -2}, {0, -2}, {0, 8}, {-6, 8}};
  east.name = "Barn";
  east.outline = {{8, 3}, {12, 3}, {12, 9}, {8, 9}};
  west.height = east.height = 5;
  job.site.buildings = {west, east};
  job.junctions = {{"A-B", "A", "House", JunctionKind::Toothed},
                   {"C-D", "D", "House", JunctionKind::Toothed},
                   {"C-D", "C", "Barn", JunctionKind::StarterTies}};
  const std::string text = said(buildModel(job), StageKind::RaiseCorners);
  const auto times = [&](const std::string& part) {
    int count = 0;
    for (size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + 1))
      ++count;
    return count;
  };
  EXPECT_EQ(times("The designer says whether it is right there"), 1) << text;
  EXPECT_EQ(times("are cut into"), 1) << text;
  EXPECT_EQ(times("solid in mortar and pinned at the top"), 1) << text;
  EXPECT_TRUE(says(text, "Pockets at corners A and D are cut into \"House\"")) << text;
  EXPECT_TRUE(says(text, "maker's fixings, at corner C.")) << text;
  EXPECT_TRUE(says(text, "pockets into \"House\" first")) << text;
  EXPECT_TRUE(says(text, "fix the starter strip first, plumb, to \"Barn\" from")) << text;
}

TEST(TrueWords, CoursesThatStandOutAreNamedWhereTheyAreLaid) {
  Job job = oblong();
  for (const char* wall : {"A-B", "B-C"}) job.corbels.push_back({wall, 1.8, 2, 0.015});
  job.corbels.push_back({"C-D", 0.6, 1, 0.02});
  const Model m = buildModel(job);
  int high = 0, low = 0;
  for (const Stage& stage : m.programme.stages) {
    const bool walls =
        stage.key.kind == StageKind::RaiseCorners || stage.key.kind == StageKind::RunIn;
    const bool two =
        says(stage.what, "Courses 25 to 26 on A-B and B-C stand out, each 15 past the one below.");
    const bool one = says(stage.what, "Course 9 on C-D stands out 20 past the face.");
    high += two;
    low += one;
    EXPECT_EQ(says(stage.caution, "tip while they are green"), two || one) << stage.name;
    EXPECT_TRUE(walls || !(two || one)) << stage.name;
  }
  EXPECT_EQ(high, 2);
  EXPECT_EQ(low, 2);
}

TEST(TrueWords, PinsAreSetOverSlabsWhereThereAreAny) {
  Job job = withCellar();
  Model m = buildModel(job);
  const std::string slab =
      "level pins to top of slab " + levelText(m.settingOut.levels.structuralFloor[0]);
  EXPECT_TRUE(says(said(m, StageKind::Oversite), "Then set the " + slab));
  EXPECT_TRUE(says(said(m, StageKind::CellarBlinding), "While it is green set the level pins"));
  EXPECT_FALSE(says(said(m, StageKind::GroundSlab), "level pins"));
  EXPECT_FALSE(says(said(m, StageKind::CellarSlab), "level pins"));
  job.groundFloor.hardcore = job.cellar->blinding = 0;
  m = buildModel(job);
  EXPECT_TRUE(says(said(m, StageKind::GroundSlab), "Set the level pins"));
  EXPECT_TRUE(says(said(m, StageKind::CellarSlab), "Set the level pins"));
  job.groundFloor.kind = GroundFloorKind::Suspended;
  m = buildModel(job);
  EXPECT_FALSE(says(said(m, StageKind::GroundSlab), "pins"));
}

TEST(TrueWords, AFloorOfBeamsIsNotPoured) {
  Job job = oblong();
  job.groundFloor.kind = GroundFloorKind::Suspended;
  const Model beams = buildModel(job), slab = buildModel(oblong());
  const std::string text = said(beams, StageKind::GroundSlab);
  EXPECT_TRUE(says(text, "beams across") && says(text, "grout") && says(text, "150 or more"))
      << text;
  EXPECT_FALSE(says(text, "lorry") || says(text, "depth on a grid")) << text;
  EXPECT_EQ(stageOf(beams, StageKind::GroundSlab)->waitDays, 1);
  EXPECT_EQ(stageOf(slab, StageKind::GroundSlab)->waitDays, 3);
  EXPECT_TRUE(says(said(slab, StageKind::GroundSlab), "depth on a grid"));
  for (const Model* m : {&beams, &slab})
    EXPECT_FALSE(says(said(*m, StageKind::TrenchBackfill), "level ground"));
}

TEST(TrueWords, TheCellarsDigIsHeldUpOrSlopedBackNeverEither) {
  Job job = withCellar();
  const Model upright = buildModel(job);
  job.ground.batter = 60;
  const Model sloped = buildModel(job);
  for (const StageKind kind : {StageKind::CellarDig, StageKind::CellarBackfill}) {
    EXPECT_TRUE(says(said(upright, kind), "support") || says(said(upright, kind), "Support"));
    EXPECT_FALSE(says(said(upright, kind), "slope")) << said(upright, kind);
    EXPECT_TRUE(says(said(sloped, kind), "slope")) << said(sloped, kind);
    EXPECT_FALSE(says(said(sloped, kind), "upport")) << said(sloped, kind);
  }
  EXPECT_TRUE(says(said(sloped, StageKind::CellarDig), "at 60 degrees"));
}

TEST(TrueWords, OnlyBuildingsThatAreThereArePhotographed) {
  EXPECT_FALSE(says(said(buildModel(oblong()), StageKind::SiteSetUp), "hotograph"));
  Job job = oblong();
  job.site.buildings = {
      {"Forge", BuildingKind::Neighbour, {{14, 0}, {18, 0}, {18, 5}, {14, 5}}, 3, 0.9},
      {"Shed", BuildingKind::Demolish, {{1, 1}, {2, 1}, {2, 2}, {1, 2}}, 2, 0.2}};
  const Model m = buildModel(job);
  EXPECT_TRUE(says(said(m, StageKind::SiteSetUp), "Photograph \"Forge\" as it stands"));
  EXPECT_TRUE(says(said(m, StageKind::SettingOut), "the distance to \"Forge\""));
  EXPECT_FALSE(says(said(m, StageKind::SettingOut), "boundary"));
}

TEST(TrueWords, TheRoofIsNamedByWhatItHas) {
  const Model hips = buildModel(oblong()), gables = buildModel(withGables());
  EXPECT_TRUE(says(said(hips, StageKind::Rafters), "fix ridge, hips and rafters"));
  EXPECT_FALSE(says(said(hips, StageKind::Rafters), "gable")) << said(hips, StageKind::Rafters);
  EXPECT_FALSE(says(said(hips, StageKind::Rafters), "strapped"));
  EXPECT_TRUE(says(said(gables, StageKind::Rafters), "fix ridge and rafters"));
  EXPECT_TRUE(says(said(gables, StageKind::Rafters), "strap the gables."));
  EXPECT_TRUE(says(said(hips, StageKind::WallPlate), "at the corners"));
  EXPECT_FALSE(says(said(gables, StageKind::WallPlate), "at the corners"));
  EXPECT_TRUE(says(said(gables, StageKind::RoofCovering), "both slopes"));
  EXPECT_TRUE(says(said(hips, StageKind::RoofCovering), "all slopes"));
  Job square = oblong();
  square.outline = {{0, 0}, {6, 0}, {6, 6}, {0, 6}};
  const Model pyramid = buildModel(square);
  EXPECT_TRUE(says(said(pyramid, StageKind::Rafters), "fix hips and rafters"));
  EXPECT_FALSE(says(said(pyramid, StageKind::RoofCovering), "ridge"));
}

TEST(TrueWords, StepsOddHeightsAndDiagonalsAreOnlyNamedWhereThereAreSome) {
  Job job = oblong();
  job.foundations.top = -0.975;
  const Model plain = buildModel(job);
  EXPECT_FALSE(says(said(plain, StageKind::LevelPins), "steps"));
  EXPECT_TRUE(says(said(plain, StageKind::WallsBelowDampCourse), "in whole courses"));
  EXPECT_TRUE(says(said(plain, StageKind::LinesBack), "diagonals"));
  job.foundations.steps = {{"A-B", 4, std::nullopt, -1.2}};
  EXPECT_TRUE(says(said(buildModel(job), StageKind::LevelPins), "Shutter the steps"));
  job.foundations.steps.clear();
  job.foundations.top = -1.0;
  const Model odd = buildModel(job);
  EXPECT_FALSE(says(said(odd, StageKind::WallsBelowDampCourse), "in whole courses"));
  EXPECT_TRUE(says(said(odd, StageKind::WallsBelowDampCourse), "From -1.000 that is no whole"));
  job.outline = {{0, 0}, {8, 0}, {2, 6}};
  EXPECT_FALSE(says(said(buildModel(job), StageKind::SettingOut), "diagonals"));
}

TEST(TrueWords, WhatIsFittedAndLaidIsWhatThereIs) {
  Job job = oblong();
  Opening door;
  door.kind = OpeningKind::Door;
  door.name = "Door";
  door.wall = "A-B";
  door.from = "A";
  door.at = 2;
  job.openings = {door};
  job.groundFloor.insulation = 0;
  job.walls.insulation = 0;
  const Model m = buildModel(job);
  EXPECT_TRUE(says(said(m, StageKind::WindowsAndDoors), "Fit the doors"));
  EXPECT_TRUE(says(said(m, StageKind::FloorFinish), "Screed the floors | Lay the screed up"));
  EXPECT_FALSE(says(said(m, StageKind::RunIn), "insulation"));
  EXPECT_TRUE(says(said(m, StageKind::DampCourse), "every opening marked"));
  EXPECT_FALSE(says(said(buildModel(oblong()), StageKind::DampCourse), "opening"));
}

TEST(TrueWords, EveryLevelIsKnownAndEverySentenceWhole) {
  for (unsigned seed = 1; seed < 40; ++seed) {
    const Model m = buildModel(test_support::seededJob(seed));
    for (const Stage& stage : m.programme.stages) {
      const std::string text = stage.name + " | " + stage.what + " | " + stage.atEnd;
      for (const char* part :
           {"its level", "its course", "the building,", "  ", " ,", " .", "..", ",,", "{"})
        EXPECT_FALSE(says(text, part)) << "seed " << seed << ", " << stage.id << ": " << text;
      EXPECT_TRUE(stage.what.ends_with(".") && stage.atEnd.ends_with(".")) << text;
    }
  }
}

TEST(TrueWords, ADeepTrenchIsHeldUp) {
  Job job = oblong();
  job.foundations.width = 0.75;
  job.foundations.top = -1.5;
  EXPECT_TRUE(
      says(said(buildModel(job), StageKind::TrenchDig), "hold up the sides where it is deep"));
  job.foundations.top = -0.75;
  EXPECT_TRUE(says(said(buildModel(job), StageKind::TrenchDig), "keep the sides upright"));
}

// A building along C-D, where there is no room for a scaffold then.
Job besideABarn(BuildingKind kind) {
  Job job = withGables();
  job.site.buildings = {{"Barn", kind, {{-3, 6.1}, {11, 6.1}, {11, 9}, {-3, 9}}, 2, 0.2}};
  return job;
}

TEST(TrueWords, SidesWithoutScaffoldAreNamedWhereOneWorksHigh) {
  const Model bare = buildModel(besideABarn(BuildingKind::Existing));
  const Model round = buildModel(besideABarn(BuildingKind::Demolish));
  EXPECT_TRUE(says(said(bare, StageKind::ScaffoldRoof), "none along C-D"))
      << said(bare, StageKind::ScaffoldRoof);
  EXPECT_TRUE(says(said(round, StageKind::ScaffoldRoof), "Rails all round above"));
  for (const StageKind kind :
       {StageKind::ScaffoldLift, StageKind::ScaffoldRoof, StageKind::WallPlate, StageKind::Gables,
        StageKind::Rafters, StageKind::Fascia, StageKind::RoofCovering}) {
    EXPECT_TRUE(says(said(bare, kind), "No scaffold along C-D: agree")) << said(bare, kind);
    EXPECT_FALSE(says(said(round, kind), "No scaffold")) << said(round, kind);
  }
  for (const Stage& stage : bare.programme.stages) {
    if (stage.key.kind != StageKind::RunIn) continue;
    EXPECT_EQ(says(stage.caution, "No scaffold along C-D"), stage.key.lift > 1) << stage.caution;
  }
}

TEST(TrueWords, WithNoRoomForAnyScaffoldNobodyWorksFromOne) {
  Job job = oblong();
  job.site.boundary = job.outline;
  const Model m = buildModel(job);
  EXPECT_EQ(stageOf(m, StageKind::ScaffoldRoof), nullptr);
  const std::string text = said(m, StageKind::Fascia);
  EXPECT_TRUE(says(text, "No scaffold along A-B, B-C, C-D and D-A: agree")) << text;
  EXPECT_FALSE(says(text, "from the scaffold")) << text;
  job.walls.render = 0.02;
  const std::string render = said(buildModel(job), StageKind::Render);
  EXPECT_TRUE(says(render, "No scaffold along A-B")) << render;
  EXPECT_FALSE(says(render, "caffold ties")) << render;
}

TEST(TrueWords, TheDigNamesTheBuildingItGoesDeepBeside) {
  EXPECT_TRUE(says(said(buildModel(besideABarn(BuildingKind::Neighbour)), StageKind::TrenchDig),
                   "beside the foundations of \"Barn\""));
  EXPECT_FALSE(
      says(said(buildModel(besideABarn(BuildingKind::Demolish)), StageKind::TrenchDig), "Barn"));
}

TEST(TrueWords, AVeryDeepTrenchTakesAnEngineerAndMoreThanItsShareOfDays) {
  Job job = oblong();
  job.foundations.thickness = 0.5;
  const auto at = [&](double top) {
    job.foundations.top = top;
    return buildModel(job);
  };
  const Model usual = at(-2.0), deep = at(-8.0);
  EXPECT_FALSE(says(said(usual, StageKind::TrenchDig), "engineer"));
  EXPECT_TRUE(says(said(deep, StageKind::TrenchDig), "Up to 8350 deep"))
      << said(deep, StageKind::TrenchDig);
  EXPECT_TRUE(says(said(deep, StageKind::WallsBelowDampCourse), "inside the engineer's support"));
  EXPECT_GT(stageOf(deep, StageKind::TrenchDig)->days,
            6 * stageOf(usual, StageKind::TrenchDig)->days);
}

TEST(TrueWords, ADoorOverADropIsMindedWhenFittedAndAtTheEnd) {
  Job job = oblong();
  Opening door;
  door.kind = OpeningKind::Door;
  door.name = "Back door";
  door.wall = "A-B";
  door.from = "A";
  door.at = 2;
  job.openings = {door};
  EXPECT_FALSE(says(said(buildModel(job), StageKind::WindowsAndDoors), "drop"));
  job.site.spots = {{{0, 0}, -0.9}};
  const Model m = buildModel(job);
  EXPECT_TRUE(says(said(m, StageKind::WindowsAndDoors), "Back door (900) opens over a drop"));
  EXPECT_TRUE(says(said(m, StageKind::Completion), "Back door (900) opens over a drop"));
}

TEST(TrueWords, EachLintelIsBeddedInOneStageAndSaidThere) {
  Job job = oblong();
  for (int i = 0; i < 3; ++i) {
    Opening window;
    window.name = "Window " + std::to_string(i + 1);
    window.wall = "A-B";
    window.from = "A";
    window.at = 1 + 2 * i;
    window.head = i == 2 ? 1.95 : 2.1;
    job.openings.push_back(window);
  }
  const Model m = buildModel(job);
  const std::string own = said(m, StageKind::Lintels);
  EXPECT_TRUE(says(own, "+2.100") && !says(own, "+1.950")) << own;
  size_t rising = 0;
  for (const Stage& stage : m.programme.stages)
    rising += says(stage.what, "Bed the lintels at +1.950 as the wall comes up") ? 1 : 0;
  EXPECT_EQ(rising, 1u);
}

TEST(TrueWords, ThePitchIsSaidToATenthOfADegree) {
  Job job = oblong();
  job.roof.pitch = 26.565051177;
  EXPECT_TRUE(says(said(buildModel(job), StageKind::Rafters), "at 26.6 degrees,"));
  job.roof.pitch = 40;
  EXPECT_TRUE(says(said(buildModel(job), StageKind::Rafters), "at 40 degrees,"));
}

TEST(TrueWords, AScaffoldServesAllThatIsBuiltFromIt) {
  Job job = oblong();
  Opening window;
  window.wall = "A-B";
  window.from = "A";
  window.at = 2;
  window.head = 2.1;
  job.openings = {window};
  const Model m = buildModel(job);
  const std::string top = levelText(m.settingOut.lifts.back().top);
  size_t platforms = 0;
  for (const Stage& stage : m.programme.stages)
    platforms += stage.key.kind == StageKind::ScaffoldLift ? 1 : 0;
  ASSERT_EQ(platforms, 1u);
  EXPECT_TRUE(says(said(m, StageKind::ScaffoldLift), "to " + top + ", and hand"))
      << said(m, StageKind::ScaffoldLift);
}

// Where somebody stands in a hole, at an edge, under a load or beside a machine.
TEST(TrueWords, CautionsSitWhereWorkCanHurt) {
  const auto check = [](const Model& m) {
    for (const Stage& stage : m.programme.stages) {
      const StageKind kind = stage.key.kind;
      // At the end only of a door that opens over a drop.
      const bool done =
          kind == StageKind::Completion && openingsOverDrops(m.job, m.settingOut).empty();
      const bool without = kind == StageKind::SettingOut || kind == StageKind::CavityFill ||
                           kind == StageKind::DampCourse || done;
      EXPECT_EQ(stage.caution.empty(), without) << stage.id;
    }
  };
  for (const std::string& name : test_support::demoNames())
    check(buildModel(test_support::demoJob(name)));
  for (unsigned seed = 1; seed < 10; ++seed) check(buildModel(test_support::seededJob(seed)));
}

}  // namespace
}  // namespace model
