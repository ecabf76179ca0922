#include "viewer/picking.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include <glm/geometric.hpp>

#include "tests/support/sample_model.h"
#include "viewer/triangle_tree.h"

namespace {

using namespace support;
using viewer::Frame;
using viewer::Pick;
using viewer::Ray;

class PickingTest : public ::testing::Test {
 protected:
  model::Model model_ = sampleModel();
  viewer::Scene scene_ = viewer::buildScene(model_);
  viewer::Picker picker_{scene_};
  Frame frame_;

  std::optional<Pick> down(float x, float y, double time) {
    frame_.time = time;
    return picker_.pick({{x, y, 50}, {0, 0, -1}}, frame_);
  }
};

TEST_F(PickingTest, FindsWhatStandsAtTheMoment) {
  EXPECT_EQ(down(0, 0, 5)->element, kRoof);
  EXPECT_NEAR(down(0, 0, 5)->point.z, 2.7, 1e-4);
  EXPECT_EQ(down(0, 0, 3)->element, kConcrete);
  EXPECT_NEAR(down(0, 0, 3)->point.z, -0.5, 1e-4);
  EXPECT_EQ(down(0, 0, 1)->element, kGround);
  EXPECT_NEAR(down(0, 0, 1)->point.z, -1, 1e-4);
  EXPECT_EQ(down(0, 0, 0)->element, kSpoil);
  EXPECT_EQ(down(5.1f, -4.9f, 3)->element, kPole);
  EXPECT_EQ(down(5.1f, -4.9f, 5)->element, kGround);
  EXPECT_FALSE(down(20, 0, 5));
}

TEST_F(PickingTest, MeetsTheGrowingWallAtItsTopOfTheMoment) {
  const auto pick = down(0, -2.85f, 2.5);
  ASSERT_TRUE(pick);
  EXPECT_EQ(pick->element, kSouthWall);
  EXPECT_NEAR(pick->point.z, 1.0, 1e-3);  // half of -0.5 to 2.5
  EXPECT_NEAR(pick->normal.z, 1, 1e-6);
}

TEST_F(PickingTest, MeetsTheDigAtItsBottomOfTheMoment) {
  const auto pick = down(0, 0, 0.5);
  ASSERT_TRUE(pick);
  EXPECT_EQ(pick->element, kSpoil);
  EXPECT_NEAR(pick->point.z, -0.5, 1e-3);
}

TEST_F(PickingTest, SeesPastWhatTheSectionCutsAway) {
  frame_.time = 5;
  const Ray north{{0, -50, 1}, {0, 1, 0}};
  EXPECT_EQ(picker_.pick(north, frame_)->element, kSouthWall);
  frame_.section.on = true;
  frame_.section.plane = {0, -1, 0, 0};
  EXPECT_EQ(picker_.pick(north, frame_)->element, kNorthWall);
  // Into the west wall, at the cut.
  const auto cut = picker_.pick({{-3.85f, -50, 1}, {0, 1, 0}}, frame_);
  ASSERT_TRUE(cut);
  EXPECT_EQ(cut->element, kWestWall);
  EXPECT_NEAR(cut->point.y, 0, 1e-4);
  EXPECT_NEAR(cut->normal.y, -1, 1e-6);
}

TEST_F(PickingTest, AtACutTheThingAheadIsPickedAndNotItsNeighbourBeyondAHiddenFace) {
  frame_.time = 5;
  frame_.section.on = true;
  frame_.section.plane = {0, 0, 1, -2.6f};  // through the roof slab
  const auto pick = picker_.pick({{0, -2.85f, 50}, {0, 0, -1}}, frame_);
  ASSERT_TRUE(pick);
  EXPECT_EQ(pick->element, kRoof);
  EXPECT_NEAR(pick->point.z, 2.6, 1e-4);
}

TEST_F(PickingTest, LooksThroughTransparentGround) {
  frame_.time = 5;
  const Ray east{{-50, 0, -0.75f}, {1, 0, 0}};
  EXPECT_EQ(picker_.pick(east, frame_)->element, kGround);
  frame_.seeThrough = viewer::SeeThrough::Ground;
  EXPECT_EQ(picker_.pick(east, frame_)->element, kConcrete);
}

TEST_F(PickingTest, SnapsToACornerBeforeAnEdgeAndToNothingOutOfReach) {
  Pick pick;
  pick.element = kRoof;
  pick.point = {-3.95f, -2.97f, 2.7f};
  auto snap = picker_.snap(pick, 0.15f);
  EXPECT_EQ(snap.kind, viewer::SnapKind::Corner);
  EXPECT_LT(glm::distance(snap.point, glm::vec3(-4, -3, 2.7f)), 1e-4);
  pick.point = {0.5f, -2.9f, 2.7f};
  snap = picker_.snap(pick, 0.15f);
  EXPECT_EQ(snap.kind, viewer::SnapKind::Edge);
  EXPECT_LT(glm::distance(snap.point, glm::vec3(0.5f, -3, 2.7f)), 1e-4);
  pick.point = {0, 0, 2.7f};
  EXPECT_EQ(picker_.snap(pick, 0.15f).kind, viewer::SnapKind::None);
}

TEST_F(PickingTest, TheTreeAgreesWithTryingEveryTriangle) {
  const viewer::TriangleTree tree(scene_.indices, &scene_.vertices[0].position,
                                  sizeof(viewer::Vertex));
  std::mt19937 random(7);
  std::uniform_real_distribution<float> spread(-8, 8);
  int met = 0;
  for (int i = 0; i < 2000; ++i) {
    const glm::vec3 from(spread(random), spread(random), 9), to(spread(random), spread(random), -1);
    const Ray ray{from, glm::normalize(to - from)};
    float nearest = -1;
    for (size_t t = 0; t < scene_.indices.size(); t += 3) {
      // A tree of one triangle is that triangle.
      const std::vector<std::uint32_t> one(scene_.indices.begin() + static_cast<long>(t),
                                           scene_.indices.begin() + static_cast<long>(t + 3));
      const viewer::TriangleTree alone(one, &scene_.vertices[0].position, sizeof(viewer::Vertex));
      const auto hit = alone.nearest(ray, [](const auto&) { return true; });
      if (hit.along >= 0 && (nearest < 0 || hit.along < nearest)) nearest = hit.along;
    }
    const auto hit = tree.nearest(ray, [](const auto&) { return true; });
    EXPECT_NEAR(hit.along, nearest, 2e-4);
    met += nearest >= 0;
  }
  EXPECT_GT(met, 500);
}

// Between the moments at which things grow, seen and cut in any way: what is met is before a little
// more than its distance, and not before a little less.
TEST_F(PickingTest, WhatIsMetIsMetBeforeItsDistanceAndNotSooner) {
  std::mt19937 random(8);
  std::uniform_real_distribution<float> spread(-8, 8);
  int met = 0, missed = 0;
  for (int i = 0; i < 4000; ++i) {
    const glm::vec3 from(spread(random), spread(random), 9), to(spread(random), spread(random), -1);
    const Ray ray{from, glm::normalize(to - from)};
    frame_.time = i % 6;
    frame_.section = {i % 3 == 0, {0, 0, 1, -spread(random) / 4}};
    frame_.seeThrough = i % 2 == 0 ? viewer::SeeThrough::Nothing : viewer::SeeThrough::Ground;
    const auto pick = picker_.pick(ray, frame_);
    if (!pick) {
      ++missed;
      EXPECT_FALSE(picker_.meetsBefore(ray, 1e6f, frame_));
      continue;
    }
    EXPECT_TRUE(picker_.meetsBefore(ray, pick->along + 1e-3f, frame_));
    ++met;
    EXPECT_FALSE(picker_.meetsBefore(ray, pick->along - 1e-3f, frame_));
  }
  EXPECT_GT(met, 1000);
  EXPECT_GT(missed, 100);
}

TEST(Picking, AnEmptySceneHasNothingToPick) {
  const viewer::Scene scene;
  const viewer::Picker picker(scene);
  EXPECT_FALSE(picker.pick({{0, 0, 1}, {0, 0, -1}}, Frame{}));
  EXPECT_FALSE(picker.meetsBefore({{0, 0, 1}, {0, 0, -1}}, 1e6f, Frame{}));
}

}  // namespace
