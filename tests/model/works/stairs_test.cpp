#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

#include "model/job/read_job.h"
#include "model/works/parts.h"
#include "model/works/stair_parts.h"
#include "tests/support/demo_job.h"
#include "tests/support/stair_job.h"

namespace model {
namespace {

constexpr double kTiny = 1e-6;

struct House {
  Job job;
  SettingOut out;
  Works works;

  explicit House(Job from) : job(std::move(from)), out(deriveSettingOut(job)) {
    EXPECT_FALSE(hasErrors(validateJob(job, "", {}))) << "a job to build from";
    buildGroundFloor(job, out, works);
    buildUpperFloors(job, out, works);
    buildStairs(job, out, works);
  }
  std::vector<const Element*> ofKind(ElementKind kind, const std::string& part = "") const {
    std::vector<const Element*> found;
    for (const Element& e : works.elements)
      if (e.kind == kind && e.id.find(part) != std::string::npos) found.push_back(&e);
    return found;
  }
  const StairFlight& flight() const { return out.stairs.at(0); }
};

TEST(Stairs, EveryStepRisesTheSameFromFloorToFloor) {
  const House house(test_support::jobWithStair());
  auto treads = house.ofKind(ElementKind::StairTread);
  ASSERT_EQ(treads.size(), 14u) << "13 treads and the nosing at the top";
  std::sort(treads.begin(), treads.end(),
            [](const Element* a, const Element* b) { return a->top < b->top; });
  for (size_t i = 0; i < treads.size(); ++i) {
    EXPECT_NEAR(treads[i]->top, 2.7 / 14 * double(i + 1), kTiny);
    EXPECT_NEAR(bounds(treads[i]->solid).low.x, 2 + 0.235 * double(i) - kNosing, kTiny);
  }
  EXPECT_NEAR(treads.back()->top, house.out.levels.finishedFloor[1], kTiny);
  const auto risers = house.ofKind(ElementKind::StairRiser);
  ASSERT_EQ(risers.size(), 14u);
  EXPECT_NEAR(risers[0]->underside, 0, kTiny) << "on the finished floor";
  EXPECT_NEAR(risers[1]->top - risers[1]->underside, 2.7 / 14, kTiny);
}

TEST(Stairs, OpenTreadsLeaveNoGapThatAHundredMillimetresGoThrough) {
  Job job = test_support::jobWithStair();
  job.stairs[0].riserKind = RiserKind::Open;
  const House house(job);
  const auto treads = house.ofKind(ElementKind::StairTread),
             bars = house.ofKind(ElementKind::StairRiser);
  ASSERT_EQ(bars.size(), 14u);
  for (size_t i = 0; i < bars.size(); ++i) {
    const double under = i == 0 ? 0 : treads[i - 1]->top;
    EXPECT_GT(bars[i]->underside - under, 0.05) << "open";
    EXPECT_LT(bars[i]->underside - under, 0.1);
  }
}

TEST(Stairs, TheWellLeavesTwoMetresOverThePitchLineAndNoMoreThanItNeeds) {
  const House house(test_support::jobWithStair());
  const StairFlight& flight = house.flight();
  EXPECT_GE(flight.headroom(), 2.0 - kTiny);
  EXPECT_LT(flight.headroom(), 2.0 + 0.010 * flight.slope() + kTiny);
  const double half = 0.43 + 0.032;
  const double hole = (flight.wellTo - flight.wellFrom) * 2 * half;
  const double inside = signedArea(house.out.ring(house.job.walls.total()));
  EXPECT_NEAR(house.ofKind(ElementKind::Deck)[0]->quantity.amount, inside - hole, 1e-4);
}

TEST(Stairs, TheWellIsAsLongAsItIsDrawn) {
  Job job = test_support::jobWithStair();
  job.stairs[0].well = 3.1;
  const House house(job);
  EXPECT_NEAR(house.flight().wellTo - house.flight().wellFrom, 3.1, kTiny);
}

// No joist in the well, and every one that is cut ends at a trimmer.
TEST(Stairs, JoistsAreTrimmedRoundTheWell) {
  for (const bool across : {true, false}) {
    for (const int thick : {1, 2}) {
      Job job = test_support::jobWithStair();
      if (thick == 2) job.stairs[0].trimming = TrimmingKind::Double;
      if (!across) {
        job.outline = {{0, 0}, {6, 0}, {6, 9}, {0, 9}};
      }
      if (!across) job.stairs[0].foot = {1.2, 4};
      const House house(job);
      const Bounds well = bounds(prism(Region{house.flight().well(), {}}, 0, 1));
      const auto joists = house.ofKind(ElementKind::Joist, "/joist "),
                 beside = house.ofKind(ElementKind::Joist, "/trimming joist "),
                 trimmers = house.ofKind(ElementKind::Joist, "/trimmer ");
      EXPECT_EQ(beside.size(), size_t(2 * thick));
      EXPECT_EQ(trimmers.size(), size_t(2 * thick));
      const int along = across ? 1 : 0;  // the axis of the joists
      size_t cut = 0;
      for (const Element* joist : house.ofKind(ElementKind::Joist)) {
        const Bounds b = bounds(joist->solid);
        const bool clear = b.high.x < well.low.x + kTiny || b.low.x > well.high.x - kTiny ||
                           b.high.y < well.low.y + kTiny || b.low.y > well.high.y - kTiny;
        EXPECT_TRUE(clear) << joist->id << " in the well";
      }
      for (const Element* joist : joists) {
        const Bounds b = bounds(joist->solid);
        if (b.high[1 - along] < well.low[1 - along] || b.low[1 - along] > well.high[1 - along])
          continue;
        ++cut;
        const bool low = std::abs(b.high[along] - (well.low[along] - 0.047 * thick)) < 1e-5;
        const bool high = std::abs(b.low[along] - (well.high[along] + 0.047 * thick)) < 1e-5;
        EXPECT_TRUE(low || high) << joist->id << " ends at the trimmer";
        for (const Element* trimmer : trimmers)
          EXPECT_GE(joist->placed.begin, trimmer->placed.begin) << "hung on it";
      }
      EXPECT_GE(cut, across ? 10u : 4u);
      for (const Element* trimmer : trimmers) {
        const Bounds b = bounds(trimmer->solid);
        EXPECT_NEAR(b.low[1 - along], well.low[1 - along], 1e-5);
        EXPECT_NEAR(b.high[1 - along], well.high[1 - along], 1e-5) << "between trimming joists";
      }
    }
  }
}

TEST(Stairs, BesideTheWellJoistsAreNoFartherApartThanTheirSpacing) {
  for (const double shift : {0.0, 0.07, 0.13, 0.2, 0.31}) {
    Job job = test_support::jobWithStair();
    job.stairs[0].foot.x += shift;
    const House house(job);
    std::vector<double> lines;  // of those that go past the well or lie beside it, wall to wall
    for (const Element* joist : house.ofKind(ElementKind::Joist)) {
      const Bounds b = bounds(joist->solid);
      if (b.high.y - b.low.y > 5) lines.push_back((b.low.x + b.high.x) / 2);
    }
    std::sort(lines.begin(), lines.end());
    const Bounds well = bounds(prism(Region{house.flight().well(), {}}, 0, 1));
    for (size_t i = 1; i < lines.size(); ++i) {
      const bool overWell = lines[i - 1] < well.low.x && lines[i] > well.high.x;
      if (!overWell) {
        EXPECT_LE(lines[i] - lines[i - 1], 0.4 + 1e-5) << lines[i - 1] << " at " << shift;
      }
    }
  }
}

TEST(Stairs, AlongAWallTheWellGoesUpToItAndNothingGuardsThatSide) {
  Job job = test_support::jobWithStair();
  const double inner = job.walls.total();
  job.stairs[0].foot.y = inner + 0.43 + 0.032 + 0.020;
  const House house(job);
  EXPECT_NEAR(house.ofKind(ElementKind::Deck)[0]->quantity.amount,
              signedArea(house.out.ring(inner)) -
                  (house.flight().wellTo - house.flight().wellFrom) * (0.924 + 0.020),
              1e-4);
  EXPECT_TRUE(house.ofKind(ElementKind::Newel, "right").empty());
  EXPECT_EQ(house.ofKind(ElementKind::Newel, "left").size(), 3u);
  // Trimmers bear on the wall where no trimming joist is.
  const auto trimmers = house.ofKind(ElementKind::Joist, "/trimmer ");
  ASSERT_EQ(trimmers.size(), 1u);
}

TEST(Stairs, GuardingStandsAsHighAsDrawnWithNarrowGaps) {
  Job job = test_support::jobWithStair();
  job.stairs[0].guard = 1.1;
  const House house(job);
  const auto rails = house.ofKind(ElementKind::Handrail, "round the well");
  ASSERT_EQ(rails.size(), 2u);
  for (const Element* rail : rails) EXPECT_NEAR(rail->top, 2.7 + 1.1, kTiny);
  for (const Element* balusters : house.ofKind(ElementKind::Baluster)) {
    // Each baluster is a shell of eight points.
    const auto& points = balusters->solid.points;
    ASSERT_EQ(points.size() % 8, 0u);
    ASSERT_EQ(points.size() / 8, size_t(balusters->quantity.amount));
    for (size_t i = 8; i < points.size(); i += 8) {
      const double apart = glm::distance(Vec2(points[i]), Vec2(points[i - 8]));
      EXPECT_LT(apart - kBaluster, 0.1) << balusters->id;
    }
  }
}

TEST(Stairs, BoardsLieOverTheWellUntilTheStairIsFixed) {
  const House house(test_support::demoJob("orchard-house"));
  const auto covers = house.ofKind(ElementKind::WellCover);
  ASSERT_EQ(covers.size(), 2u);
  for (const Element* cover : covers) {
    const StairFlight& flight = house.out.stairs[cover == covers[0] ? 0 : 1];
    EXPECT_EQ(cover->placed.stage.kind,
              flight.inTimber() ? StageKind::UpperFloor : StageKind::FloorOverCellar);
    ASSERT_TRUE(cover->removed);
    EXPECT_EQ(cover->removed->stage, (StageKey{StageKind::Stairs, int(flight.to)}));
    EXPECT_NEAR(cover->top, house.out.levels.structuralFloor[flight.to], kTiny);
    // Nothing is left open: gaps of some millimetres between boards.
    const Bounds b = bounds(cover->solid);
    EXPECT_NEAR((b.high.x - b.low.x) * (b.high.y - b.low.y),
                (flight.wellTo - flight.wellFrom) * 2 * flight.half(), 0.02);
  }
}

TEST(Stairs, OneFromTheCellarComesUpThroughAHoleInEveryLayerOfTheFloor) {
  const House house(test_support::demoJob("orchard-house"));
  Job without = house.job;
  without.stairs.clear();
  const House plain(without);
  const StairFlight& flight = house.out.stairs[1];
  ASSERT_TRUE(flight.fromCellar);
  EXPECT_NEAR(flight.rise * 12, 2.525, kTiny);
  const double hole = (flight.wellTo - flight.wellFrom) * 2 * flight.half();
  for (const ElementKind kind : {ElementKind::BeamFloor, ElementKind::FloorInsulation}) {
    const double by =
        plain.ofKind(kind)[0]->quantity.amount - house.ofKind(kind)[0]->quantity.amount;
    EXPECT_NEAR(by, hole, 1e-4) << nameOf(kind);
  }
  EXPECT_NEAR(house.ofKind(ElementKind::StairRiser, "Ground floor")[0]->underside,
              house.out.levels.cellarFinishedFloor, kTiny);
}

}  // namespace
}  // namespace model
