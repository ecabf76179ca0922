#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>

#include "model/works/parts.h"
#include "model/works/profile_places.h"
#include "tests/support/demo_job.h"
#include "tests/support/random_job.h"

namespace model {
namespace {

struct Profiles {
  Job job;
  SettingOut out;
  Works works;

  explicit Profiles(Job from) : job(std::move(from)), out(deriveSettingOut(job)) {
    buildProfiles(job, out, works);
  }
};

double shortest(const Polygon& outline, const Polygon& figure) {
  double least = 1e300;
  for (const Vec2& p : figure) {
    least = std::min(least, contains(outline, p) ? 0.0 : distanceToOutline(outline, p));
  }
  return least;
}

TEST(Profiles, EveryWallLineHasABoardBeyondBothEnds) {
  const Profiles profiles(test_support::demoJob("orchard-house"));
  for (const WallLine& wall : profiles.out.walls) {
    EXPECT_EQ(std::count_if(profiles.works.elements.begin(), profiles.works.elements.end(),
                            [&](const Element& e) {
                              return e.kind == ElementKind::ProfileBoard && e.wall == wall.name;
                            }),
              2)
        << wall.name;
  }
}

// Canadian Wood-Frame House Construction (CMHC): boards at least 1.2 m past the edge of the dig.
TEST(Profiles, BoardsStandClearOfTheDig) {
  const Job job = test_support::demoJob("orchard-house");
  const SettingOut out = deriveSettingOut(job);
  const double project = (job.foundations.width - job.walls.total()) / 2;
  const Polygon trench = offsetMitred(out.outline, -project);
  const Polygon hole = offsetMitred(out.cellarOutline, -job.ground.workingSpace);
  for (const LineEnds& line : placeProfiles(job, out)) {
    for (const auto& end : {line.atStart, line.atEnd}) {
      ASSERT_TRUE(end);
      EXPECT_GE(shortest(trench, end->board), 1.2 - 1e-6);
      EXPECT_GE(shortest(hole, end->board), 1.2 - 1e-6);
    }
  }
}

TEST(Profiles, TopsAreAllAtOneLevelOverTheDampCourseAndTheGround) {
  for (const std::string& name : test_support::demoNames()) {
    const Profiles profiles(test_support::demoJob(name));
    double top = -1e300;
    for (const Element& e : profiles.works.elements) {
      if (e.kind != ElementKind::ProfileBoard) continue;
      if (top > -1e300) {
        EXPECT_NEAR(e.top, top, 1e-9);
      }
      top = e.top;
      EXPECT_GE(e.top, profiles.out.levels.dampCourse + 0.3 - 1e-9);
      EXPECT_GE(e.top - e.underside, 0.6 - 1e-9);
    }
  }
}

TEST(Profiles, StringsComeOffForTheDigAndTheFaceLinesComeBack) {
  const Profiles profiles(test_support::demoJob("orchard-house"));
  std::map<std::string, std::vector<const StringLine*>> byName;
  for (const StringLine& line : profiles.works.strings) byName[line.name].push_back(&line);
  ASSERT_EQ(byName["A-B outer face"].size(), 2u);
  const StringLine& first = *byName["A-B outer face"][0];
  const StringLine& second = *byName["A-B outer face"][1];
  EXPECT_EQ(first.placed.stage.kind, StageKind::SettingOut);
  ASSERT_TRUE(first.removed && second.removed);
  EXPECT_EQ(first.removed->stage.kind, StageKind::CellarDig);
  EXPECT_EQ(second.placed.stage.kind, StageKind::LinesBack);
  EXPECT_EQ(byName["A-B foundation outer edge"].size(), 1u);
  EXPECT_EQ(byName["F-A inner face"].size(), 2u);
}

TEST(Profiles, StringsLieOnTheFacesTheyAreNamedAfter) {
  const Profiles profiles(test_support::demoJob("garage"));
  const double total = profiles.job.walls.total();
  for (const StringLine& line : profiles.works.strings) {
    if (line.name == "A-B outer face") {
      EXPECT_NEAR(line.a.y, 0, 1e-9);
      EXPECT_NEAR(line.b.y, 0, 1e-9);
      EXPECT_LT(line.a.x, -1.2);
      EXPECT_GT(line.b.x, 3.590 + 1.2);
    }
    if (line.name == "A-B inner face") {
      EXPECT_NEAR(line.a.y, total, 1e-9);
    }
    if (line.name == "A-B foundation outer edge") {
      EXPECT_NEAR(line.a.y, (total - profiles.job.foundations.width) / 2, 1e-9);
    }
  }
}

TEST(Profiles, OnATightSiteBoardsMoveInAndNeverStandOffIt) {
  Job job = test_support::demoJob("garage");
  job.site.boundary = {{-0.9, -0.9}, {6, -0.9}, {6, 9}, {-0.9, 9}};
  const SettingOut out = deriveSettingOut(job);
  int boards = 0, closer = 0;
  for (const LineEnds& line : placeProfiles(job, out)) {
    for (const auto& end : {line.atStart, line.atEnd}) {
      if (!end) continue;
      for (const Vec2& p : end->board) EXPECT_TRUE(contains(job.site.boundary, p));
      ++boards;
      if (shortest(out.outline, end->board) < 1.2) ++closer;
    }
  }
  EXPECT_EQ(boards, 8);
  EXPECT_GE(closer, 2);
}

TEST(Profiles, BoardsOfDrawnJobsStandOnTheSiteClearOfBuildingsAndEachOther) {
  for (unsigned seed = 0; seed < 150; ++seed) {
    const Job job = test_support::seededJob(seed);
    const SettingOut out = deriveSettingOut(job);
    std::vector<Polygon> boards;
    for (const LineEnds& line : placeProfiles(job, out)) {
      for (const auto& end : {line.atStart, line.atEnd}) {
        if (!end) continue;
        for (const Vec2& p : end->board) {
          ASSERT_TRUE(contains(out.terrain.boundary, p)) << seed;
          ASSERT_FALSE(contains(out.outline, p)) << seed;
          for (const StandingBuilding& building : job.site.buildings) {
            if (building.kind == BuildingKind::Demolish) continue;
            ASSERT_FALSE(contains(building.outline, p)) << seed;
          }
        }
        for (const Polygon& other : boards) ASSERT_FALSE(overlapping(other, end->board)) << seed;
        boards.push_back(end->board);
      }
    }
  }
}

// A barn 400 beyond B: A-B's and C-D's lines have no boards there.
TEST(Profiles, WhereBoardsHaveNoRoomTwoStakesHoldAnOffsetLine) {
  Job job;
  job.outline = {{0, 0}, {6, 0}, {6, 5}, {0, 5}};
  job.site.buildings.push_back(
      {"Barn", BuildingKind::Existing, {{6.4, -1}, {11, -1}, {11, 6}, {6.4, 6}}, 3, 0.5});
  const Profiles profiles(job);
  const auto& elements = profiles.works.elements;
  EXPECT_EQ(std::count_if(elements.begin(), elements.end(),
                          [](const Element& e) {
                            return e.id.rfind("offset stake/wall A-B/", 0) == 0 &&
                                   e.kind == ElementKind::Peg;
                          }),
            2);
  const auto line = std::find_if(profiles.works.strings.begin(), profiles.works.strings.end(),
                                 [](const StringLine& s) { return s.name == "A-B offset line"; });
  ASSERT_NE(line, profiles.works.strings.end());
  EXPECT_NEAR(line->a.y, -1.5, 1e-9);  // clear of the dig by what the job asks for
  EXPECT_NEAR(line->b.y, -1.5, 1e-9);
  EXPECT_TRUE(std::none_of(profiles.works.strings.begin(), profiles.works.strings.end(),
                           [](const StringLine& s) { return s.name == "A-B outer face"; }));
}

}  // namespace
}  // namespace model
