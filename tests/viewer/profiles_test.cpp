// String lines and their profiles are shown and hidden together, without a buffer changed.
#include <gtest/gtest.h>

#include "tests/support/demo_job.h"
#include "viewer/draw_list.h"
#include "viewer/picking.h"

namespace viewer {
namespace {

TEST(Profiles, AreLeftOutOfTheDrawListAndCannotBeClickedWhenHidden) {
  const model::Model model = model::buildModel(test_support::demoJob("garage"));
  const Scene scene = buildScene(model);
  const auto stage = model.programme.indexOf({model::StageKind::SettingOut});
  ASSERT_TRUE(stage);
  Frame frame;
  frame.time = double(*stage) + 1;
  std::uint64_t boards = 0, pegs = 0, indices = 0;
  for (size_t i = 0; i < scene.elements.size(); ++i) {
    const auto kind = model.works.elements[i].kind;
    if (!scene.elements[i].profile || !standsAt(scene.elements[i], frame.time)) continue;
    (kind == model::ElementKind::Peg ? pegs : boards) += 1;
    indices += scene.elements[i].indexCount;
  }
  EXPECT_EQ(boards, 8u) << "two to a wall";
  EXPECT_GE(pegs, 4u);
  DrawList shown, hidden;
  listFor(scene, frame, shown);
  frame.profiles = false;
  listFor(scene, frame, hidden);
  EXPECT_EQ(shown.still.total() + shown.moving.total(),
            hidden.still.total() + hidden.moving.total() + indices);

  const Picker picker(scene);
  for (size_t i = 0; i < scene.elements.size(); ++i) {
    if (model.works.elements[i].kind != model::ElementKind::ProfileBoard) continue;
    const ElementRange& range = scene.elements[i];
    // The middle of a face that looks up, at its top.
    glm::vec3 middle{0};
    for (std::uint32_t k = range.firstIndex; k < range.firstIndex + range.indexCount; k += 3) {
      glm::vec3 sum{0};
      for (std::uint32_t n = 0; n < 3; ++n)
        sum += scene.vertices[scene.indices[k + n]].position / 3.0f;
      if (scene.vertices[scene.indices[k]].normal.z > 0.99f && sum.z > range.high.z - 0.01f)
        middle = sum;
    }
    const Ray down{{middle.x, middle.y, range.high.z + 2}, {0, 0, -1}};
    frame.profiles = true;
    const auto on = picker.pick(down, frame);
    frame.profiles = false;
    const auto off = picker.pick(down, frame);
    ASSERT_TRUE(on && off);
    EXPECT_TRUE(scene.elements[on->element].profile);
    EXPECT_FALSE(scene.elements[off->element].profile);
  }
}

}  // namespace
}  // namespace viewer
