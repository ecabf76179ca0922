// What stays picked out when the job file is read again.
#include "viewer/carry_over.h"

#include <gtest/gtest.h>

#include <glm/geometric.hpp>

namespace viewer {
namespace {

ReadyJob house(double east = 0, double length = 9, const std::string& name = "House") {
  model::Job job;
  job.name = name;
  job.outline = {{east, 0}, {east + length, 0}, {east + length, 7}, {east, 7}};
  return ReadyJob(model::buildModel(job));
}

std::uint32_t thing(const ReadyJob& job, const std::string& id) {
  const auto& elements = job.model.works.elements;
  for (size_t i = 0; i < elements.size(); ++i)
    if (elements[i].id == id) return std::uint32_t(i);
  return kNothing;
}

// The last of the walls' pieces, far down the list.
std::string someWall(const ReadyJob& job) {
  std::string id;
  for (const auto& element : job.model.works.elements)
    if (element.kind == model::ElementKind::OuterLeaf) id = element.id;
  return id;
}

glm::vec3 pointOn(const ReadyJob& job, std::uint32_t index) {
  return (job.scene.elements[index].low + job.scene.elements[index].high) / 2.0f;
}

TEST(CarryOver, KeepsTheSelectedThingByItsId) {
  const ReadyJob before = house();
  // A longer cellar-less house with a bench mark and a shed has other indices.
  model::Job job = before.model.job;
  job.site.buildings.push_back(
      {"Shed", model::BuildingKind::Demolish, {{12, 0}, {14, 0}, {14, 2}, {12, 2}}});
  const ReadyJob after(model::buildModel(job));
  const std::string id = someWall(before);
  ViewState state;
  state.selected = thing(before, id);
  ASSERT_NE(thing(before, id), thing(after, id)) << "else this would test nothing";
  carryOver(state, before, after);
  EXPECT_EQ(state.selected, thing(after, id));
}

TEST(CarryOver, LetsGoOfAThingThatIsNoLongerThere) {
  const ReadyJob before = house();
  model::Job job = before.model.job;
  job.roof.edges = {{"A-B", model::EavesKind::Gable}};
  const ReadyJob gabled(model::buildModel(job));
  ViewState state;
  for (std::uint32_t i = 0; i < gabled.model.works.elements.size(); ++i)
    if (thing(before, gabled.model.works.elements[i].id) == kNothing) state.selected = i;
  ASSERT_NE(state.selected, kNothing);
  carryOver(state, gabled, before);
  EXPECT_EQ(state.selected, kNothing);
}

TEST(CarryOver, KeepsAMeasurementOnThingsThatStayAndDropsItFromThingsThatMove) {
  const ReadyJob before = house(), renamed = house(0, 9, "Other"), longer = house(0, 19);
  const std::uint32_t wall = thing(before, someWall(before));
  ViewState state;
  state.addMeasured(pointOn(before, wall), wall);
  state.addMeasured(before.scene.elements[wall].high, wall);
  const auto world = before.scene.world(state.measured[1]);
  carryOver(state, before, renamed);
  ASSERT_EQ(state.measured.size(), 2u);
  EXPECT_LT(glm::distance(renamed.scene.world(state.measured[1]), world), 1e-5);
  state.addMeasured(longer.scene.local({-500, 0, 0}), wall);
  carryOver(state, renamed, longer);
  EXPECT_TRUE(state.measured.empty());
  EXPECT_TRUE(state.measuredOn.empty());
}

TEST(CarryOver, LeavesEyeSectionAndLevelPlaneWhereTheyAre) {
  const ReadyJob before = house(), after = house(0, 29);
  ASSERT_NE(before.scene.origin, after.scene.origin);
  ViewState state;
  state.switches.levelPlane = true;
  state.switches.levelPlaneAt = 1.25f;
  state.toggleSection(before.model, before.scene);
  const glm::vec3 on = before.scene.local({3, 2, 0});
  const float side = glm::dot(glm::vec3(state.section.plane), on) + state.section.plane.w;
  const auto eye = before.scene.world(state.camera.eye());
  carryOver(state, before, after);
  EXPECT_LT(glm::distance(after.scene.world(state.camera.eye()), eye), 1e-4);
  const glm::vec3 now = after.scene.local({3, 2, 0});
  EXPECT_NEAR(glm::dot(glm::vec3(state.section.plane), now) + state.section.plane.w, side, 1e-4);
  EXPECT_TRUE(state.switches.levelPlane);
  EXPECT_EQ(state.switches.levelPlaneAt, 1.25f);
}

}  // namespace
}  // namespace viewer
