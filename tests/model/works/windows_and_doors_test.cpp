#include <algorithm>
#include <cmath>

#include <gtest/gtest.h>
#include <glm/geometric.hpp>

#include "model/geometry/check_solid.h"
#include "model/works/parts.h"
#include "tests/support/demo_job.h"
#include "tests/support/random_job.h"

namespace {

using namespace model;
using test_support::demoJob;

Works fitted(const Job& job, const SettingOut& out) {
  Works works;
  buildWindowsAndDoors(job, out, works);
  return works;
}

const Element* find(const Works& works, const std::string& id) {
  for (const Element& e : works.elements) {
    if (e.id == id) return &e;
  }
  return nullptr;
}

TEST(WindowsAndDoors, OfEveryJobAreClosedAndComeAtTheirStage) {
  for (unsigned seed = 0; seed < 100; ++seed) {
    const Job job = test_support::seededJob(seed);
    for (const Element& e : fitted(job, deriveSettingOut(job)).elements) {
      EXPECT_EQ(solidFault(e.solid), "") << seed << " " << e.id;
      EXPECT_EQ(e.placed.stage.kind, StageKind::WindowsAndDoors);
    }
  }
}

TEST(WindowsAndDoors, StandInsideTheirOpeningsAndInsideTheWallButForTheSill) {
  for (const auto& name : test_support::demoNames()) {
    const Job job = demoJob(name);
    const SettingOut out = deriveSettingOut(job);
    for (const Element& e : fitted(job, out).elements) {
      const WallLine& wall = out.walls[out.wallNamed(e.wall).value()];
      const bool sill = e.id.find("/sill") != std::string::npos;
      bool inside = false;
      for (const BuiltOpening& o : out.openings) {
        inside =
            inside || std::all_of(e.solid.points.begin(), e.solid.points.end(), [&](const Vec3& p) {
              const double s = glm::dot(Vec2(p) - wall.start, wall.along);
              const double in = -glm::dot(Vec2(p) - wall.start, wall.outward);
              return s > o.s0 - 1e-9 && s < o.s1 + 1e-9 && p.z > o.sill - 1e-9 &&
                     p.z < o.head + 1e-9 && in > (sill ? -0.1 : 0.0) - 1e-9 &&
                     in < job.walls.total() + 1e-9;
            });
      }
      EXPECT_TRUE(inside) << e.id;
    }
  }
}

TEST(WindowsAndDoors, AFrameAndItsGlassFillTheOpeningSeenFromTheFront) {
  const Job job = demoJob("orchard-house");
  const Works works = fitted(job, deriveSettingOut(job));
  const Element* frame = find(works, "wall A-B/Living room window/frame");
  const Element* glass = find(works, "wall A-B/Living room window/glass");
  ASSERT_NE(frame, nullptr);
  ASSERT_NE(glass, nullptr);
  EXPECT_EQ(frame->material, Material::Timber);
  EXPECT_EQ(glass->material, Material::Glass);
  // 70 deep; 1810 wide and 1050 high less two lights parted by one 60 mullion.
  const double light = (1.810 - 3 * 0.060) * (1.050 - 2 * 0.060);
  EXPECT_NEAR(glass->quantity.amount, light, 1e-9);
  EXPECT_NEAR(volume(frame->solid) / 0.070, 1.810 * 1.050 - light, 1e-9);
  EXPECT_EQ(frame->quantity.unit, Unit::Each);
}

TEST(WindowsAndDoors, DoorsHaveLeavesAndPlainOpeningsStayEmpty) {
  Job job = demoJob("garage");
  Works works = fitted(job, deriveSettingOut(job));
  const Element* leaf = find(works, "wall A-B/Garage door/leaf");
  ASSERT_NE(leaf, nullptr);
  EXPECT_EQ(leaf->kind, ElementKind::Door);
  EXPECT_EQ(leaf->material, Material::Steel);
  EXPECT_NE(find(works, "wall B-C/Side door/leaf"), nullptr);
  for (Opening& o : job.openings) o.kind = OpeningKind::Opening;
  EXPECT_TRUE(fitted(job, deriveSettingOut(job)).elements.empty());
}

TEST(WindowsAndDoors, OpeningsOfOneNameKeepDifferentIds) {
  Job job = demoJob("smallest");
  for (const char* wall : {"A-B", "A-B"}) {
    Opening o;
    o.name = "Window";
    o.wall = wall;
    o.from = "A";
    o.at = job.openings.empty() ? 1.0 : 3.0;
    job.openings.push_back(o);
  }
  const Works works = fitted(job, deriveSettingOut(job));
  EXPECT_NE(find(works, "wall A-B/Window/frame"), nullptr);
  EXPECT_NE(find(works, "wall A-B/Window (2)/frame"), nullptr);
}

}  // namespace
