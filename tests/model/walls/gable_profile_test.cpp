#include <algorithm>
#include <cmath>

#include <gtest/gtest.h>

#include "model/geometry/check_solid.h"
#include "tests/support/demo_job.h"
#include "tests/support/random_job.h"
#include "tests/support/wall_works.h"

namespace {

using namespace model;
using test_support::demoJob;
using test_support::find;
using test_support::wallsOf;

// 3.590 wide, 35 degrees: the triangle over the eaves line, worked by hand.
TEST(Gable, OfTheGarageFillsTheTriangleUnderTheRafters) {
  const Job job = demoJob("garage");
  const SettingOut out = deriveSettingOut(job);
  const Works works = wallsOf(job, out);
  const double slope = std::tan(35 * M_PI / 180);
  // The seat takes a quarter of the rafter's 150.
  const double under = out.levels.plateTop - 0.2025 * slope - 0.0375 / std::cos(35 * M_PI / 180);
  ASSERT_NEAR(out.levels.eavesUnderside, under, 1e-9);
  // Height over the outer leaf's level top, as a function of the distance x from the corner, and
  // the mitre: at x the leaf is min(x, 0.1025) thick near the ends.
  const double base = out.levels.outerLeafTop;
  double expected = 0;
  const int parts = 20000;
  for (int i = 0; i < parts; ++i) {
    const double x = (i + 0.5) * (3.590 / 2) / parts;
    expected += 2 * (3.590 / 2 / parts) * std::min(x, 0.1025) * (under + x * slope - base);
  }
  for (const char* wall : {"A-B", "C-D"}) {
    const Element* gable = find(works, std::string("wall ") + wall + "/outer leaf/gable");
    ASSERT_NE(gable, nullptr);
    // Over the door's tray four cross joints are left open to weep.
    const double weeps = std::string(wall) == "A-B" ? 4 * 0.010 * 0.065 * 0.1025 : 0;
    EXPECT_NEAR(volume(gable->solid), expected - weeps, 1e-6);
    EXPECT_NEAR(gable->top, under + 1.795 * slope, 1e-9);
    EXPECT_EQ(gable->placed.stage.kind, StageKind::Gables);
  }
  EXPECT_EQ(find(works, "wall B-C/outer leaf/gable"), nullptr);
}

// The roof stops at the inner face of a wall that goes up past it.
bool hasParapet(const Job& job, const std::string& wall) {
  return std::any_of(job.roof.edges.begin(), job.roof.edges.end(),
                     [&](const RoofEdge& edge) { return edge.wall == wall && edge.parapet > 0; });
}

TEST(Gable, NeverEntersTheRafters) {
  for (unsigned seed = 0; seed < 250; ++seed) {
    const Job job = test_support::seededJob(seed);
    const SettingOut out = deriveSettingOut(job);
    for (const Element& e : wallsOf(job, out).elements) {
      if (e.top < out.levels.eavesUnderside - 1e-6 || hasParapet(job, e.wall)) continue;
      for (const Vec3& p : e.solid.points) {
        // What carries the plate stands where the birdsmouths are cut out.
        const bool hip = out.walls[*out.wallNamed(e.wall)].eaves == EavesKind::Hip;
        if (hip && e.kind == ElementKind::InnerLeaf && p.z <= out.levels.wallTop + 1e-9) continue;
        if (p.z < out.levels.eavesUnderside - 1e-6) continue;
        EXPECT_LE(p.z, out.rafterUndersideAt({p.x, p.y}) + 1e-5) << "seed " << seed << " " << e.id;
      }
    }
  }
}

// A gable askew to its ridge: both faces of both leaves meet the rafters' underside exactly.
TEST(Gable, AskewRunsUpToTheRaftersOnBothFaces) {
  Job job = demoJob("garage");
  job.outline = {{0, 0}, {3.59, 0}, {3.59, 6.8}, {0, 5.4}};
  job.openings.clear();
  const SettingOut out = deriveSettingOut(job);
  const Works works = wallsOf(job, out);
  for (const char* leaf : {"outer leaf", "inner leaf"}) {
    const Element* gable = find(works, std::string("wall C-D/") + leaf + "/gable");
    ASSERT_NE(gable, nullptr);
    EXPECT_EQ(solidFault(gable->solid), "");
    int onSlope = 0;
    for (const Vec3& p : gable->solid.points) {
      if (p.z < gable->underside + 1e-6) continue;
      EXPECT_NEAR(p.z, out.rafterUndersideAt({p.x, p.y}), 1e-6);
      ++onSlope;
    }
    // Two ends and the ridge on each face.
    EXPECT_EQ(onSlope, 6);
  }
}

TEST(Gable, KeepsAHoleForItsWindow) {
  Job job = demoJob("orchard-house");
  const auto areaWith = [&] {
    const SettingOut out = deriveSettingOut(job);
    const Works works = wallsOf(job, out);
    const Element* lintel = find(works, "wall E-F/outer leaf/lintel over Loft light");
    return find(works, "wall E-F/outer leaf/gable")->quantity.amount +
           (lintel != nullptr ? volume(lintel->solid) / 0.1025 : 0);
  };
  const double with = areaWith();
  std::erase_if(job.openings, [](const Opening& o) { return o.name == "Loft light"; });
  // Two weep holes over its tray, a cross joint each, go with it.
  EXPECT_NEAR(areaWith() - with, 0.685 * 0.9 + 2 * 0.010 * 0.065, 1e-5);
}

}  // namespace
