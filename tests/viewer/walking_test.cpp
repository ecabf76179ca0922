#include "viewer/walking.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include <glm/geometric.hpp>

#include "model/geometry/polygon.h"
#include "tests/support/demo_job.h"

namespace viewer {
namespace {

struct House {
  model::Model model = model::buildModel(test_support::demoJob("orchard-house"));
  Scene scene = buildScene(model);
  Picker picker{scene};
  double time = double(model.programme.stages.size());
  Meets meets() const {
    return [this](const Ray& ray) {
      Frame frame;
      frame.time = time;
      frame.stage = int(time) - 1;
      return picker.pick(ray, frame);
    };
  }
  bool inside(const glm::vec3& local) const {
    const model::Vec3 at = scene.world(local);
    return model::contains(model.job.outline, {at.x, at.y});
  }
};

const House& house() {
  static const House house;
  return house;
}

TEST(Walking, OneBeginsOutsideAndGoesInThroughTheDoor) {
  Walking walking(house().model, house().scene);
  walking.begin(house().meets());
  EXPECT_FALSE(house().inside(walking.feet()));
  for (int i = 0; i < 14; ++i) walking.step(0.35f, 0, house().meets());
  EXPECT_TRUE(house().inside(walking.feet())) << walking.feet().x << " " << walking.feet().y;
  EXPECT_NEAR(walking.feet().z, 0, 0.05) << "on the finished floor";
}

TEST(Walking, WallsStopOne) {
  Walking walking(house().model, house().scene);
  walking.begin(house().meets());
  // Beside the door there is a wall.
  for (int i = 0; i < 6; ++i) walking.step(0, 0.35f, house().meets());
  int steps = 0;
  while (steps < 40 && walking.step(0.35f, 0, house().meets())) ++steps;
  EXPECT_LT(steps, 40);
  EXPECT_FALSE(house().inside(walking.feet()));
}

TEST(Walking, EveryWindowIsStoodAtAndLookedOutOf) {
  Walking walking(house().model, house().scene);
  walking.begin(house().meets());
  size_t windows = 0;
  // The light in the gable is over one's head.
  for (const auto& opening : house().model.job.openings)
    windows += opening.kind == model::OpeningKind::Window && opening.name != "Loft light";
  ASSERT_GT(windows, 2u);
  std::vector<glm::vec3> stood;
  for (size_t i = 0; i < windows; ++i) {
    ASSERT_TRUE(walking.toWindow(house().meets(), house().time));
    EXPECT_TRUE(house().inside(walking.feet()));
    for (const glm::vec3& other : stood)
      EXPECT_GT(glm::distance(other, walking.feet()), 0.1f)
          << i << " of " << windows << ": " << walking.feet().x << " " << walking.feet().y << " "
          << walking.feet().z;
    stood.push_back(walking.feet());
    const Camera camera = walking.camera();
    EXPECT_NEAR(camera.eye().z - walking.feet().z, Walking::kEye, 1e-3);
    const glm::vec3 out = camera.eye() + (camera.target - camera.eye()) * 4.0f;
    EXPECT_FALSE(house().inside(out)) << "looks out";
  }
}

TEST(Walking, NoWindowStandsBeforeItIsFitted) {
  Walking walking(house().model, house().scene);
  EXPECT_FALSE(walking.toWindow(house().meets(), 3));
}

TEST(Walking, OneGoesUpToTheFirstFloorAndDownAgain) {
  Walking walking(house().model, house().scene);
  walking.begin(house().meets());
  for (int i = 0; i < 14; ++i) walking.step(0.35f, 0, house().meets());
  const float ground = walking.feet().z;
  ASSERT_TRUE(walking.climb(1, house().meets()));
  EXPECT_NEAR(walking.feet().z, house().model.settingOut.levels.finishedFloor[1], 0.05);
  EXPECT_FALSE(walking.climb(1, house().meets())) << "there is no second floor";
  ASSERT_TRUE(walking.climb(-1, house().meets()));
  EXPECT_NEAR(walking.feet().z, ground, 1e-3);
}

// Set down where a flight begins or ends, and turned to go up (or down) it.
Walking before(const model::StairFlight& flight, double s, bool up, double aside = 0) {
  Walking walking(house().model, house().scene);
  walking.begin(house().meets());
  const double level = up ? flight.stands : flight.toFloor;
  const model::Vec3 at{flight.at(s, aside), level};
  walking.putAt(house().scene.local(at), up ? flight.along : -flight.along);
  return walking;
}

TEST(Walking, OneGoesUpEveryStairAndDownItWithoutAJolt) {
  for (const model::StairFlight& flight : house().model.settingOut.stairs) {
    SCOPED_TRACE(flight.name);
    for (const bool up : {true, false}) {
      const double run = flight.run();
      Walking walking = before(flight, up ? -0.4 : run + 0.6, up);
      float last = walking.camera().eye().z;
      for (int i = 0; i < int(std::ceil((run + 1.0) / 0.1)); ++i) {
        ASSERT_TRUE(walking.step(0.1f, 0, house().meets())) << i << " at " << walking.feet().z;
        const float eye = walking.camera().eye().z;
        const float by = up ? eye - last : last - eye;
        EXPECT_GT(by, -1e-3f) << i;
        EXPECT_LT(by, 0.2f) << i << ": steeper than the stair at its steepest, no step at once";
        last = eye;
      }
      EXPECT_NEAR(walking.feet().z, up ? flight.lands : flight.stands, 0.01);
    }
  }
}

TEST(Walking, TheGuardingKeepsOneFromTheWellAndOnTheFlight) {
  const model::StairFlight& flight = house().model.settingOut.stairs[0];
  // On the floor above, towards the well from its end and from beside it.
  Walking end = before(flight, flight.wellFrom - 0.8, false);
  const auto startOf = [](const Walking& walking) { return walking.feet().z; };
  const float floor = startOf(end);
  end.look(std::numbers::pi, 0);
  for (int i = 0; i < 20; ++i) end.step(0.1f, 0, house().meets());
  EXPECT_NEAR(end.feet().z, floor, 1e-3);
  const model::Vec3 there = house().scene.world(end.feet());
  EXPECT_FALSE(model::contains(flight.well(), {there.x, there.y}));
  // Half way up, to either side.
  for (const float right : {-0.05f, 0.05f}) {
    Walking half = before(flight, -0.3, true);
    for (int i = 0; i < 18; ++i) ASSERT_TRUE(half.step(0.1f, 0, house().meets()));
    const float level = half.feet().z;
    for (int i = 0; i < 30; ++i) half.step(0, right, house().meets());
    EXPECT_NEAR(half.feet().z, level, 0.01);
    const model::Vec2 at(house().scene.world(half.feet()));
    EXPECT_LT(std::abs(glm::dot(at - flight.foot, flight.left)), flight.width / 2);
  }
}

TEST(Walking, WhileBoardsLieOverTheWellOneWalksOverIt) {
  House boarded;
  boarded.time = double(*boarded.model.programme.indexOf({model::StageKind::Stairs, 1}));
  const model::StairFlight& flight = boarded.model.settingOut.stairs[0];
  Walking walking(boarded.model, boarded.scene);
  const double middle = (flight.wellFrom + flight.wellTo) / 2;
  walking.putAt(boarded.scene.local({flight.at(middle, 1.2), flight.toFloor}), -flight.left);
  for (int i = 0; i < 24; ++i) ASSERT_TRUE(walking.step(0.1f, 0, boarded.meets())) << i;
  EXPECT_NEAR(walking.feet().z, flight.lands, 0.01);
}

TEST(Walking, OneLooksRoundFromWhereOneStands) {
  Walking walking(house().model, house().scene);
  walking.begin(house().meets());
  const glm::vec3 eye = walking.camera().eye();
  walking.look(1.2, 0.4);
  EXPECT_LT(glm::distance(walking.camera().eye(), eye), 1e-4f);
  walking.look(0, 10);
  EXPECT_LT(std::abs(walking.camera().elevation), 1.5);
}

}  // namespace
}  // namespace viewer
