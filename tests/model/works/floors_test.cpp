#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "model/works/parts.h"
#include "tests/support/demo_job.h"

namespace model {
namespace {

struct Floors {
  Job job;
  SettingOut out;
  Works works;

  explicit Floors(Job from) : job(std::move(from)), out(deriveSettingOut(job)) {
    buildGroundFloor(job, out, works);
    buildUpperFloors(job, out, works);
  }
  std::vector<const Element*> ofKind(ElementKind kind) const {
    std::vector<const Element*> found;
    for (const Element& e : works.elements) {
      if (e.kind == kind) found.push_back(&e);
    }
    return found;
  }
  double insideArea() const { return signedArea(out.ring(job.walls.total())); }
};

Job plainJob() {
  Job job;
  job.outline = {{0, 0}, {8, 0}, {8, 6}, {0, 6}};
  return job;
}

Job twoStoreys(Outline outline) {
  Job job;
  job.outline = std::move(outline);
  job.storeys = {{"Ground floor", 0}, {"First floor", 2.7}};
  return job;
}

TEST(GroundFloor, LiesFromInnerFaceToInnerFaceInItsLayers) {
  const Floors floors(plainJob());
  const GroundFloor& floor = floors.job.groundFloor;
  const auto slab = floors.ofKind(ElementKind::GroundSlab);
  ASSERT_EQ(slab.size(), 1u);
  EXPECT_NEAR(slab[0]->quantity.amount, floors.insideArea() * floor.slab, 1e-9);
  EXPECT_NEAR(slab[0]->top, 0 - floor.screed - floor.insulation, 1e-12);
  const auto screed = floors.ofKind(ElementKind::Screed);
  ASSERT_EQ(screed.size(), 1u);
  EXPECT_NEAR(screed[0]->top, 0, 1e-12);
  EXPECT_NEAR(screed[0]->quantity.amount, floors.insideArea() * floor.screed, 1e-9);
}

TEST(GroundFloor, ASuspendedFloorIsBeams) {
  Job job = plainJob();
  job.groundFloor.kind = GroundFloorKind::Suspended;
  const Floors floors(job);
  EXPECT_TRUE(floors.ofKind(ElementKind::GroundSlab).empty());
  ASSERT_EQ(floors.ofKind(ElementKind::BeamFloor).size(), 1u);
  EXPECT_NEAR(floors.ofKind(ElementKind::BeamFloor)[0]->quantity.amount, floors.insideArea(), 1e-6);
}

TEST(GroundFloor, OverTheCellarBeamsBearOnItsWallsAndTheRestIsSlab) {
  Job job = test_support::demoJob("orchard-house");
  job.stairs.clear();  // which leave holes
  const Floors floors(job);
  const auto beams = floors.ofKind(ElementKind::BeamFloor);
  const auto slab = floors.ofKind(ElementKind::GroundSlab);
  ASSERT_EQ(beams.size(), 1u);
  ASSERT_EQ(slab.size(), 1u);
  EXPECT_EQ(beams[0]->placed.stage.kind, StageKind::FloorOverCellar);
  EXPECT_NEAR(beams[0]->underside, floors.out.levels.cellarWallTop, 1e-9);
  EXPECT_NEAR(beams[0]->quantity.amount + slab[0]->quantity.amount / floors.job.groundFloor.slab,
              floors.insideArea(), 1e-4);
  // From the cellar wall's far side to the inner face of the east wall.
  EXPECT_NEAR(bounds(beams[0]->solid).low.x, 6.290, 1e-6);
  EXPECT_NEAR(bounds(beams[0]->solid).high.x, 11.240 - 0.3525, 1e-6);
}

TEST(GroundFloor, WithoutScreedAndInsulationThereIsOnlySlab) {
  Job job = plainJob();
  job.groundFloor.screed = job.groundFloor.insulation = 0;
  const Floors floors(job);
  EXPECT_TRUE(floors.ofKind(ElementKind::Screed).empty());
  EXPECT_TRUE(floors.ofKind(ElementKind::FloorInsulation).empty());
}

TEST(UpperFloor, JoistsSpanTheShorterWay) {
  for (const bool wide : {true, false}) {
    const Floors floors(twoStoreys(wide ? Outline{{0, 0}, {8, 0}, {8, 6}, {0, 6}}
                                        : Outline{{0, 0}, {6, 0}, {6, 8}, {0, 8}}));
    const double clear = 6 - 2 * floors.job.walls.total();
    for (const Element* joist : floors.ofKind(ElementKind::Joist)) {
      const Bounds b = bounds(joist->solid);
      EXPECT_NEAR(wide ? b.high.y - b.low.y : b.high.x - b.low.x, clear, 1e-5);
      EXPECT_NEAR(joist->quantity.amount, clear, 1e-5);
    }
  }
}

TEST(UpperFloor, JoistsAreNoFartherApartThanTheirSpacing) {
  const Floors floors(twoStoreys({{0, 0}, {8, 0}, {8, 6}, {0, 6}}));
  const auto joists = floors.ofKind(ElementKind::Joist);
  ASSERT_GT(joists.size(), 15u);
  for (size_t i = 1; i < joists.size(); ++i) {
    const double gap = bounds(joists[i]->solid).low.x - bounds(joists[i - 1]->solid).low.x;
    EXPECT_LE(gap, floors.job.upperFloor.spacing + 1e-5);
    EXPECT_LT(joists[i - 1]->placed.begin, joists[i]->placed.begin);
  }
  EXPECT_LT(bounds(joists.front()->solid).low.x - floors.job.walls.total(), 0.1);
  EXPECT_LT(8 - floors.job.walls.total() - bounds(joists.back()->solid).high.x, 0.1);
}

TEST(UpperFloor, DeckLiesOnTheJoistsAndReachesTheStructuralFloor) {
  const Floors floors(twoStoreys({{0, 0}, {8, 0}, {8, 6}, {0, 6}}));
  const auto deck = floors.ofKind(ElementKind::Deck);
  ASSERT_EQ(deck.size(), 1u);
  EXPECT_NEAR(deck[0]->top, floors.out.levels.structuralFloor[1], 1e-9);
  EXPECT_NEAR(deck[0]->quantity.amount, floors.insideArea(), 1e-9);
  for (const Element* joist : floors.ofKind(ElementKind::Joist)) {
    EXPECT_NEAR(joist->top, deck[0]->underside, 1e-9);
    EXPECT_NEAR(joist->underside, floors.out.levels.joistBearing[1], 1e-9);
  }
}

TEST(UpperFloor, JoistsStayInsideAnLShapedPlan) {
  const Floors floors(test_support::demoJob("orchard-house"));
  const Polygon inside = floors.out.ring(floors.job.walls.total());
  ASSERT_GT(floors.ofKind(ElementKind::Joist).size(), 20u);
  for (const Element* joist : floors.ofKind(ElementKind::Joist)) {
    for (const Vec3& p : joist->solid.points) {
      EXPECT_TRUE(contains(inside, Vec2(p), 1e-5)) << joist->id;
    }
  }
}

TEST(UpperFloor, AFloorHighInTheRoofKeepsUnderTheRafters) {
  Job job = twoStoreys({{0, 0}, {10, 0}, {10, 8}, {0, 8}});
  job.walls.top = 2.4;
  job.storeys[1].floor = 3.2;
  const Floors floors(job);
  const auto deck = floors.ofKind(ElementKind::Deck);
  ASSERT_EQ(deck.size(), 1u);
  for (const Vec3& p : deck[0]->solid.points) {
    EXPECT_GT(floors.out.rafterUndersideAt(Vec2(p)), p.z);
  }
  EXPECT_LT(deck[0]->quantity.amount, floors.insideArea());
}

}  // namespace
}  // namespace model
