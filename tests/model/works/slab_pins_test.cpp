// Level pins on their grid over slabs of concrete.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>

#include <glm/geometric.hpp>

#include "model/works/build_works.h"
#include "model/works/ground_floor.h"
#include "model/works/level_pins.h"
#include "tests/support/demo_job.h"
#include "tests/support/random_job.h"

namespace {

using namespace model;

struct Pins {
  Job job;
  SettingOut out;
  std::vector<LevelPin> all;

  explicit Pins(Job from)
      : job(std::move(from)), out(deriveSettingOut(job)), all(slabPins(job, out)) {}

  std::vector<LevelPin> of(PinnedConcrete concrete) const {
    std::vector<LevelPin> some;
    for (const LevelPin& pin : all)
      if (pin.concrete == concrete) some.push_back(pin);
    return some;
  }
  const LevelPin& named(const std::string& name) const {
    const auto found =
        std::find_if(all.begin(), all.end(), [&](const LevelPin& pin) { return pin.name == name; });
    if (found == all.end()) throw std::runtime_error("no pin " + name);
    return *found;
  }
};

Job rectangle(double x, double y, double turn = 0) {
  Job job;
  const double c = std::cos(turn), s = std::sin(turn);
  for (const Vec2& p : Outline{{0, 0}, {x, 0}, {x, y}, {0, y}})
    job.outline.push_back({p.x * c - p.y * s, p.x * s + p.y * c});
  job.settingOut.pinSpacing = 2;
  return job;
}

double nearestOther(const std::vector<LevelPin>& pins, const LevelPin& pin) {
  double least = 1e9;
  for (const LevelPin& other : pins)
    if (other.name != pin.name) least = std::min(least, glm::distance(other.at, pin.at));
  return least;
}

TEST(SlabPins, StandOnAnEvenGridClearOfTheWalls) {
  const Pins pins(rectangle(8, 6));
  // Inside the walls 7.395 by 5.395 m; 300 clear all round leaves 6.795 by 4.795: four spaces and
  // three.
  ASSERT_EQ(pins.all.size(), 20u);
  const double inner = pins.out.faceDistances.innerFace;
  EXPECT_NEAR(pins.named("A1").at.x, inner + 0.300, 1e-9);
  EXPECT_NEAR(pins.named("A1").at.y, inner + 0.300, 1e-9);
  EXPECT_NEAR(pins.named("A5").at.x, 8 - inner - 0.300, 1e-9);
  EXPECT_NEAR(pins.named("D1").at.y, 6 - inner - 0.300, 1e-9);
  EXPECT_NEAR(pins.named("B3").at.x, 4, 1e-9);
  const double across = (8 - 2 * inner - 0.600) / 4;
  EXPECT_NEAR(pins.named("C3").at.x - pins.named("C2").at.x, across, 1e-9);
  for (const LevelPin& pin : pins.all) {
    EXPECT_EQ(pin.top, pins.out.levels.structuralFloor[0]);
    EXPECT_EQ(pin.foot, pins.out.levels.slabUnderside);
    const WallLine& wall = pins.out.walls[pin.wall];
    EXPECT_EQ(wall.name, "A-B");
    EXPECT_LT(glm::distance(wall.at(pin.along, pin.inward), pin.at), 1e-9);
  }
}

TEST(SlabPins, TurnWithTheBuildingAndAreTapedAlike) {
  const Pins straight(rectangle(8, 6)), turned(rectangle(8, 6, 0.4));
  ASSERT_EQ(straight.all.size(), turned.all.size());
  for (const LevelPin& pin : straight.all) {
    const LevelPin& other = turned.named(pin.name);
    EXPECT_NEAR(other.along, pin.along, 1e-9) << pin.name;
    EXPECT_NEAR(other.inward, pin.inward, 1e-9) << pin.name;
  }
}

TEST(SlabPins, StandInBothArmsOfAnAngleBesideItsInnerCorner) {
  Job job;
  job.outline = {{0, 0}, {10, 0}, {10, 4}, {4, 4}, {4, 9}, {0, 9}};
  job.settingOut.pinSpacing = 1.8;
  const Pins pins(job);
  const double inner = pins.out.faceDistances.innerFace;
  const auto beside = [&](const Vec2& p) {
    return std::any_of(pins.all.begin(), pins.all.end(),
                       [&](const LevelPin& pin) { return glm::distance(pin.at, p) < 1e-6; });
  };
  EXPECT_TRUE(beside({4 - inner - 0.3, 9 - inner - 0.3}));
  EXPECT_TRUE(beside({10 - inner - 0.3, 4 - inner - 0.3}));
  EXPECT_TRUE(beside({4 - inner - 0.3, 4 - inner - 0.3}));
}

// Whatever the job: inside and clear, near enough to one another, each called by a name of its own.
TEST(SlabPins, OfAnyJobAreInsideClearAndNamed) {
  size_t seen = 0, cellars = 0;
  for (unsigned seed = 0; seed < 120; ++seed) {
    Job job = test_support::seededJob(seed);
    job.settingOut.pinSpacing = 0.9 + 0.3 * (seed % 4);
    const Pins pins(job);
    std::set<std::string> names;
    for (const LevelPin& pin : levelPins(pins.job, pins.out)) {
      EXPECT_TRUE(names.insert(pin.name).second) << seed << " " << pin.name;
      EXPECT_EQ(pin.name.find_first_of("IO"), std::string::npos) << pin.name;
      EXPECT_GE(pin.share, 0);
      EXPECT_LT(pin.share, 1);
    }
    for (const LevelPin& pin : pins.of(PinnedConcrete::GroundSlab)) {
      const Polygon inside = pins.out.ring(pins.out.faceDistances.innerFace);
      EXPECT_TRUE(contains(inside, pin.at)) << seed << " " << pin.name;
      EXPECT_GT(distanceToOutline(inside, pin.at), 0.299) << seed << " " << pin.name;
      if (!pins.out.cellarOutline.empty()) {
        EXPECT_FALSE(contains(pins.out.cellarOutline, pin.at)) << seed << " " << pin.name;
      }
      ++seen;
    }
    for (const LevelPin& pin : pins.of(PinnedConcrete::CellarSlab)) {
      const Polygon inside = offsetMitred(pins.out.cellarOutline, job.cellar->wall);
      EXPECT_TRUE(contains(inside, pin.at)) << seed << " " << pin.name;
      EXPECT_GT(distanceToOutline(inside, pin.at), 0.299) << seed << " " << pin.name;
      EXPECT_EQ(pin.name.substr(0, 2), "K-");
      EXPECT_EQ(pin.top, pins.out.levels.cellarSlabTop);
      ++cellars;
    }
    for (const PinnedConcrete concrete : {PinnedConcrete::GroundSlab, PinnedConcrete::CellarSlab}) {
      const auto some = pins.of(concrete);
      for (const LevelPin& pin : some)
        if (some.size() > 1) {
          EXPECT_GT(nearestOther(some, pin), 0.016) << seed << " " << pin.name;
        }
    }
  }
  EXPECT_GT(seen, 500u);
  EXPECT_GT(cellars, 100u);
}

TEST(SlabPins, FewerWhereTheJobSetsThemFartherApart) {
  size_t before = 1000;
  for (const double spacing : {1.0, 1.8, 3.0}) {
    Job job = rectangle(9, 7);
    job.settingOut.pinSpacing = spacing;
    const Pins pins(job);
    EXPECT_LT(pins.all.size(), before);
    before = pins.all.size();
    for (const LevelPin& pin : pins.all) EXPECT_LE(nearestOther(pins.all, pin), spacing + 1e-9);
  }
}

TEST(SlabPins, AFloorOfBeamsHasNone) {
  Job job = rectangle(8, 6);
  job.groundFloor.kind = GroundFloorKind::Suspended;
  EXPECT_TRUE(Pins(job).all.empty());
}

// Wide foundations that come up into the slab give its level themselves.
TEST(SlabPins, KeepOffConcreteThatComesUpIntoTheSlab) {
  Job job = rectangle(8, 6);
  job.foundations.kind = FoundationKind::TrenchFill;
  job.foundations.width = 1.6;
  const double underside = deriveSettingOut(job).levels.slabUnderside;
  job.foundations.top = underside - 0.400;
  const size_t all = Pins(job).all.size();
  job.foundations.top = underside + 0.050;
  const Pins pins(job);
  EXPECT_LT(pins.all.size(), all);
  ASSERT_FALSE(pins.all.empty());
  for (const HighConcrete& high : concreteAbove(pins.out, pins.out.levels.slabUnderside))
    for (const Region& region : high.area)
      for (const LevelPin& pin : pins.all) EXPECT_FALSE(contains(region, pin.at)) << pin.name;
}

TEST(SlabPins, AreSetOnTheBedAndCastInAsTheConcreteReachesThem) {
  int grounds = 0, cellars = 0;
  for (const bool thinBed : {false, true}) {
    Job job = test_support::demoJob("orchard-house");
    if (thinBed) job.cellar->blinding = job.groundFloor.hardcore = 0;
    const SettingOut out = deriveSettingOut(job);
    const Works works = buildWorks(job, out);
    for (const Element& pin : works.elements) {
      if (pin.kind != ElementKind::LevelPin || !pin.wall.empty()) continue;
      const bool cellar = pin.id.find("cellar") != std::string::npos;
      (cellar ? cellars : grounds)++;
      const auto slab = std::find_if(works.elements.begin(), works.elements.end(), [&](auto& e) {
        return e.kind == (cellar ? ElementKind::CellarSlab : ElementKind::GroundSlab);
      });
      ASSERT_NE(slab, works.elements.end());
      EXPECT_EQ(pin.top, slab->top) << pin.id;
      EXPECT_EQ(pin.underside, slab->underside) << pin.id;
      ASSERT_TRUE(pin.removed) << pin.id;
      EXPECT_EQ(pin.removed->stage, slab->placed.stage) << pin.id;
      for (const Vec3& p : pin.solid.points)
        EXPECT_NEAR(fractionAt(*pin.removed, p), fractionAt(slab->placed, p), 1e-9) << pin.id;
      if (thinBed) {
        EXPECT_EQ(pin.placed.stage, slab->placed.stage) << pin.id;
      } else {
        EXPECT_EQ(pin.placed.stage.kind, cellar ? StageKind::CellarBlinding : StageKind::Oversite);
      }
    }
  }
  EXPECT_GT(grounds, 8);
  EXPECT_GT(cellars, 8);
}

TEST(SlabPins, RowsHaveLettersThatNobodyReadsAsFigures) {
  EXPECT_EQ(pinRowLetter(0), "A");
  EXPECT_EQ(pinRowLetter(7), "H");
  EXPECT_EQ(pinRowLetter(8), "J");
  EXPECT_EQ(pinRowLetter(23), "Z");
  EXPECT_EQ(pinRowLetter(24), "AA");
  EXPECT_EQ(pinRowLetter(47), "AZ");
  EXPECT_EQ(pinRowLetter(48), "BA");
}

}  // namespace
