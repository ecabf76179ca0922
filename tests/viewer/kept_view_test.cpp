#include "viewer/kept_view.h"

#include <gtest/gtest.h>

#include <cmath>

#include <glm/geometric.hpp>

#include "viewer/section.h"

namespace viewer {
namespace {

model::Model plainHouse() {
  model::Job job;
  job.outline = {{100, 50}, {109, 50}, {109, 57}, {100, 57}};
  return model::buildModel(job);
}

TEST(KeptView, ShowsAgainWhatWasSeen) {
  const model::Model model = plainHouse();
  const Scene scene = buildScene(model);
  for (const double azimuth : {0.0, 0.7, -2.9, 3.1}) {
    for (const double elevation : {0.0, 0.5, 1.2, 1.5707963267948966}) {
      for (const bool parallel : {false, true}) {
        Camera camera;
        camera.target = {4, 3, 1.5f};
        camera.distance = 21;
        camera.azimuth = azimuth;
        camera.elevation = elevation;
        camera.parallel = parallel;
        const SeeThrough through = elevation > 1 ? SeeThrough::Others : SeeThrough::Ground;
        const StageView view = shownView(keptView(camera, {}, through, scene), model, scene);
        EXPECT_LT(glm::distance(view.camera.eye(), camera.eye()), 0.05f);
        EXPECT_LT(glm::distance(view.camera.target, camera.target), 0.001f);
        EXPECT_NEAR(std::remainder(view.camera.azimuth - azimuth, 6.283185307179586), 0, 0.01);
        EXPECT_EQ(view.camera.parallel, parallel);
        EXPECT_EQ(view.seeThrough, through);
        EXPECT_TRUE(view.kept);
        EXPECT_FALSE(view.section.on);
      }
    }
  }
}

TEST(KeptView, CutsAgainWhereItWasCut) {
  const model::Model model = plainHouse();
  const Scene scene = buildScene(model);
  const Section sections[] = {sectionAt(scene, Across::X, 103.25, 1),
                              sectionAt(scene, Across::X, 103.25, -1),
                              sectionAt(scene, Across::Y, 52.5, 1),
                              sectionAt(scene, Across::Y, 52.5, -1), levelSection(1.2)};
  for (const Section& section : sections) {
    const StageView view =
        shownView(keptView(Camera{}, section, SeeThrough::Nothing, scene), model, scene);
    ASSERT_TRUE(view.section.on);
    EXPECT_LT(glm::distance(view.section.plane, section.plane), 1e-3f);
  }
}

TEST(KeptView, CutsWhereItTellsMostWhenNoPlaceIsGiven) {
  const model::Model model = plainHouse();
  const Scene scene = buildScene(model);
  model::KeptView kept;
  kept.eye = {90, 40};
  kept.cutAway = model::CutAway::South;
  EXPECT_LT(glm::distance(shownView(kept, model, scene).section.plane,
                          standardSection(model, scene).plane),
            1e-5f);
}

}  // namespace
}  // namespace viewer
