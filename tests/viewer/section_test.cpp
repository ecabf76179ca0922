#include "viewer/section.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "tests/support/demo_job.h"
#include "viewer/picture.h"
#include "viewer/scene.h"

namespace viewer {
namespace {

model::Job plainHouse() {
  model::Job job;
  job.outline = {{0, 0}, {12, 0}, {12, 9}, {0, 9}};
  return job;
}

double along(const Section& section, const glm::vec3& p) {
  return double(glm::dot(glm::vec3(section.plane), p) + section.plane.w);
}

// Wherever the cellar lies, north of the middle or south of it, the cut shows its room.
RC_GTEST_PROP(Section, PassesThroughTheCellar, ()) {
  model::Job job = plainHouse();
  const double x = *rc::gen::inRange(0, 9) * 1.0, y = *rc::gen::inRange(0, 6) * 1.0;
  model::Cellar cellar;
  cellar.outline = {{x, y}, {x + 3, y}, {x + 3, y + 3}, {x, y + 3}};
  job.cellar = cellar;
  const model::Model model = model::buildModel(job);
  for (const Across across : {Across::X, Across::Y}) {
    const double at = tellingCut(model, across), from = across == Across::X ? x : y;
    RC_ASSERT(at > from + cellar.wall);
    RC_ASSERT(at < from + 3 - cellar.wall);
  }
}

TEST(Section, OfTheDemoShowsItsCellar) {
  const model::Model model = model::buildModel(test_support::demoJob("orchard-house"));
  const Scene scene = buildScene(model);
  PictureOptions options;
  options.view = "section";
  const Frame frame = frameOf(model, scene, options);
  ASSERT_TRUE(frame.section.on);
  double low = 1e9, high = -1e9;
  for (const model::Vec2& p : model.settingOut.cellarOutline) {
    const double side = along(frame.section, scene.local({p.x, p.y, 0}));
    low = std::min(low, side);
    high = std::max(high, side);
  }
  EXPECT_LT(low, -model.job.cellar->wall);
  EXPECT_GT(high, model.job.cellar->wall);
  EXPECT_GT(along(frame.section, scene.buildingLow), 0) << "the south is taken away";
}

TEST(Section, WithoutACellarPassesThroughAnOpening) {
  model::Job job = plainHouse();
  model::Opening window;
  window.name = "side window";
  window.wall = "B-C";  // the east wall, from y = 0
  window.from = "B";
  window.at = 6.5;
  window.width = 1.2;
  job.openings = {window};
  const double at = tellingCut(model::buildModel(job), Across::Y);
  EXPECT_GT(at, 6.5);
  EXPECT_LT(at, 7.7);
}

TEST(Section, DoesNotSplitAWallAlongItsLength) {
  // The step of the plan stands at y = 4.5, the very middle.
  model::Job job;
  job.outline = {{0, 0}, {12, 0}, {12, 4.5}, {6, 4.5}, {6, 9}, {0, 9}};
  const double at = tellingCut(model::buildModel(job), Across::Y);
  EXPECT_TRUE(at > 4.5 || at < 4.5 - job.walls.total()) << at;
}

TEST(Section, TakesAwayTheSideThatIsNamed) {
  const model::Model model = model::buildModel(plainHouse());
  const Scene scene = buildScene(model);
  const glm::vec3 east = scene.local({11, 4, 0});
  EXPECT_GT(along(sectionAt(scene, Across::X, 6, 1), east), 4.9);
  EXPECT_LT(along(sectionAt(scene, Across::X, 6, -1), east), -4.9);
}

}  // namespace
}  // namespace viewer
