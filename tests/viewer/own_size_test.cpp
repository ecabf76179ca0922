// A thing's size is told along its own axes, however it stands on the site.
#include "viewer/own_size.h"

#include <gtest/gtest.h>

#include <cmath>

#include <glm/geometric.hpp>

#include "model/job/read_job.h"
#include "tests/support/demo_job.h"

namespace viewer {
namespace {

using model::ElementKind;

model::Model demo(const std::string& name) {
  return model::buildModel(test_support::demoJob(name));
}

std::vector<const model::Element*> things(const model::Model& model, ElementKind kind) {
  std::vector<const model::Element*> found;
  for (const auto& element : model.works.elements)
    if (element.kind == kind) found.push_back(&element);
  return found;
}

TEST(OwnSize, OfALeafIsAsThickAsTheJobSaysOnEveryWallOfASkewPlan) {
  const model::Model model = demo("skew-corner");
  const auto leaves = things(model, ElementKind::OuterLeaf);
  ASSERT_GE(leaves.size(), 4u);
  for (const auto* leaf : leaves) {
    const OwnSize size = ownSize(model.settingOut, *leaf);
    EXPECT_EQ(size.axes, SizeAxes::Wall);
    EXPECT_NEAR(size.b, model.job.walls.outerLeaf, 1e-6) << leaf->name;
    const auto& wall = model.settingOut.walls[*model.settingOut.wallNamed(leaf->wall)];
    EXPECT_LE(size.a, wall.length + 1e-6) << leaf->name;
    EXPECT_NEAR(size.c, leaf->top - leaf->underside, 1e-6) << leaf->name;
  }
}

TEST(OwnSize, OfARafterIsItsSectionAndItsLengthUpTheSlope) {
  for (const std::string& name : test_support::demoNames()) {
    const model::Model model = demo(name);
    int common = 0;
    for (const auto* rafter : things(model, ElementKind::Rafter)) {
      if (rafter->name.rfind("Rafter", 0) != 0) continue;
      const OwnSize size = ownSize(model.settingOut, *rafter);
      ASSERT_EQ(size.axes, SizeAxes::Bar) << rafter->name;
      EXPECT_NEAR(size.a, model.job.roof.rafterWidth, 1e-6) << rafter->name;
      // The quantity is the length of the timber.
      EXPECT_NEAR(size.c, rafter->quantity.amount, 0.25) << rafter->name;
      ++common;
    }
    EXPECT_GT(common, 10) << name;
  }
}

TEST(OwnSize, OfARoofSlopeIsItsCoveringsThicknessSquareToTheSlope) {
  const model::Model model = demo("orchard-house");
  for (const auto* slope : things(model, ElementKind::RoofCovering)) {
    const OwnSize size = ownSize(model.settingOut, *slope);
    ASSERT_EQ(size.axes, SizeAxes::Slope);
    EXPECT_NEAR(size.c, model.job.roof.covering, 1e-6) << slope->name;
    const double rise = slope->top - slope->underside;
    EXPECT_GT(size.b, rise) << "longer than it is high";
    const auto& wall = model.settingOut.walls[*model.settingOut.wallNamed(slope->wall)];
    EXPECT_GE(size.a, wall.length * 0.5);
  }
}

// A slab turned on plan keeps its size: rotating the site must not change it.
TEST(OwnSize, OfASlabDoesNotChangeWhenTheSiteTurns) {
  for (const double angle : {0.0, 0.3, 0.7, 1.2, 2.9}) {
    model::Element slab;
    slab.kind = ElementKind::GroundSlab;
    slab.solid = model::box({1, 2, 0}, {9, 5, 0.15});
    for (auto& p : slab.solid.points)
      p = {p.x * std::cos(angle) - p.y * std::sin(angle),
           p.x * std::sin(angle) + p.y * std::cos(angle), p.z};
    EXPECT_EQ(sizeWords(ownSize({}, slab)), "Over all on plan 8000 x 3000 mm, 150 thick") << angle;
  }
}

TEST(OwnSize, OfABarIsTheSameWhicheverWayItPoints) {
  for (const model::Vec3 end : {model::Vec3{4, 0, 0}, {0, 0, 4}, {1, 2, 3}, {-2, 0.1, 1}}) {
    model::Element bar;
    bar.kind = ElementKind::Rafter;
    bar.solid = model::bar({0, 0, 0}, end, 0.047, 0.150);
    const OwnSize size = ownSize({}, bar);
    ASSERT_EQ(size.axes, SizeAxes::Bar);
    EXPECT_NEAR(size.a, 0.047, 1e-6);
    EXPECT_NEAR(size.b, 0.150, 1e-6);
    EXPECT_NEAR(size.c, glm::length(end), 1e-6);
  }
}

TEST(OwnSize, IsWrittenWithTenthsOnlyWhereAThingIsThin) {
  EXPECT_EQ(sizeWords({SizeAxes::Wall, 4.3114, 0.1025, 1.35}),
            "Length 4311 x thickness 102.5 x height 1350 mm");
  EXPECT_EQ(sizeWords({SizeAxes::Bar, 0.05, 0.15, 4.3}), "Section 50 x 150 mm, length 4300 mm");
}

}  // namespace
}  // namespace viewer
