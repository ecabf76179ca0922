#include "viewer/gl/front_sheets.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

#include "tests/support/sample_model.h"
#include "viewer/gl/offscreen.h"
#include "viewer/gl/renderer.h"

namespace {

using viewer::CutFill;
using viewer::ElementRange;

// A box of 4 by 0.2 by 2 m that rises between 1 and 2 and goes from west to east between 5 and 6.
ElementRange risingWall() {
  ElementRange range;
  range.low = {10, 3, -1};
  range.high = {14, 3.2f, 1};
  range.appears = 1;
  range.placed = {{0, 0, 1}, -1, 1, 1, 2};
  range.removed = {{1, 0, 0}, 10, 14, 5, 6};
  return range;
}

// Where a corner is at a time, and when it appears and goes there.
viewer::Vertex cornerAt(CutFill::Kind kind, double time, unsigned i) {
  viewer::Vertex v = viewer::frontSheet(kind, 7, risingWall(), 0)[i];
  const viewer::SheetShift shift = viewer::sheetShift(kind, risingWall(), time);
  v.position += shift.by;
  v.appears += shift.times.x;
  v.goes += shift.times.y;
  return v;
}

TEST(FrontSheet, LiesWhereTheThingStopsAndReachesPastIt) {
  glm::vec3 low(1e9f), high(-1e9f);
  for (unsigned i = 0; i < 4; ++i) {
    const viewer::Vertex v = cornerAt(CutFill::Kind::Placed, 1.625, i);
    EXPECT_NEAR(v.position.z, 0.25f, 1e-5f);
    EXPECT_EQ(v.element, 7u);
    low = glm::min(low, v.position);
    high = glm::max(high, v.position);
  }
  EXPECT_LT(low.x, 10);
  EXPECT_LT(low.y, 3);
  EXPECT_GT(high.x, 14);
  EXPECT_GT(high.y, 3.2f);
  EXPECT_LT(high.x, 14.1f);
}

TEST(FrontSheet, GoesWhenTheThingGoesThere) {
  for (unsigned i = 0; i < 4; ++i) {
    const viewer::Vertex v = cornerAt(CutFill::Kind::Placed, 1.625, i);
    EXPECT_EQ(v.appears, 1);
    EXPECT_NEAR(v.goes, 5 + (v.position.x - 10) / 4, 1e-5f);
  }
}

TEST(FrontSheet, OfWhatGoesComesWhenTheThingComesThere) {
  for (unsigned i = 0; i < 4; ++i) {
    const viewer::Vertex v = cornerAt(CutFill::Kind::Removed, 5.25, i);
    EXPECT_NEAR(v.position.x, 11, 1e-5f);
    EXPECT_NEAR(v.appears, 1 + (v.position.z + 1) / 2, 1e-5f);
    EXPECT_GT(v.goes, 1e6f);
  }
}

// A slope that grows up while what it hides goes along another way: both clocks move.
TEST(FrontSheet, KeepsItsClockOnASlope) {
  ElementRange range = risingWall();
  range.placed = {{0.6f, 0, 0.8f}, 5.2f, 9.2f, 1, 3};
  range.removed = {{0.6f, 0, 0.8f}, 5.2f, 9.2f, 5, 6};
  const auto sheet = viewer::frontSheet(CutFill::Kind::Placed, 0, range, 0);
  const viewer::SheetShift shift = viewer::sheetShift(CutFill::Kind::Placed, range, 2);
  for (const viewer::Vertex& v : sheet) {
    const glm::vec3 p = v.position + shift.by;
    EXPECT_NEAR(glm::dot(range.placed.direction, p), 7.2f, 1e-5f);
    EXPECT_NEAR(v.goes + shift.times.y, 5.5f, 1e-5f);
  }
}

// The bottom of a strip that goes down is soil, although topsoil that looks up is grass elsewhere.
TEST(FrontSheet, TheBottomOfTheStripIsNoGrass) {
  std::string why;
  const auto offscreen = viewer::Offscreen::create(why);
  ASSERT_TRUE(offscreen) << why;
  model::Model model = support::sampleModel();
  for (model::Element& e : model.works.elements)
    if (e.material == model::Material::Earth) e.material = model::Material::Topsoil;
  const viewer::Scene scene = viewer::buildScene(model);
  viewer::Renderer renderer;
  renderer.setScene(scene);
  viewer::Frame frame;
  frame.time = 0.5;
  frame.samples = 1;
  frame.camera = *viewer::standardView("plan", scene.low, scene.high, 1.6);
  constexpr int kWidth = 320, kHeight = 200;
  offscreen->begin(kWidth, kHeight, 1);
  renderer.draw(frame, kWidth, kHeight);
  const viewer::Image image = offscreen->read();
  const auto at = frame.camera.project({0, 0, -0.5f}, 1.6);
  const size_t i =
      (static_cast<size_t>(at->y * kHeight) * kWidth + static_cast<size_t>(at->x * kWidth)) * 4;
  EXPECT_GT(image.rgba[i], image.rgba[i + 1] + 10) << "brown, not green";
}

}  // namespace
