#include "viewer/framing.h"

#include <gtest/gtest.h>

#include "tests/support/demo_job.h"
#include "viewer/overlays/overlay_sheet.h"

namespace viewer {
namespace {

constexpr const char* kCorners[] = {"south-west", "south-east", "north-east", "north-west"};

struct Framed {
  model::Model model;
  Scene scene;
  SheetLayout layout;
};

Framed framedDemo(const std::string& name, float width, float height) {
  Framed f{model::buildModel(test_support::demoJob(name)), {}, {}};
  f.scene = buildScene(f.model);
  Overlays all;
  all.levels = all.captions = all.titleBlock = all.tape = all.rod = true;
  f.layout = sheetOf(f.model, all, width, height, 1);
  return f;
}

// Where everything of the building falls that is not under `level`.
Box seen(const Framed& f, const Camera& camera, double level) {
  Box box{1e9f, 1e9f, -1e9f, -1e9f};
  const float width = f.layout.sheet.width(), height = f.layout.sheet.height();
  for (const Vertex& v : f.scene.vertices) {
    const model::Element& e = f.model.works.elements[v.element];
    const bool building = e.kind == model::ElementKind::OuterLeaf ||
                          e.kind == model::ElementKind::RoofCovering ||
                          e.kind == model::ElementKind::CellarWall;
    if (!building || v.position.z < level) continue;
    const auto at = camera.project(v.position, double(width / height));
    if (!at) continue;
    box = {std::min(box.left, at->x * width), std::min(box.top, at->y * height),
           std::max(box.right, at->x * width), std::max(box.bottom, at->y * height)};
  }
  return box;
}

TEST(Framing, ACornerViewFillsItsPlaceWithWhatIsSeenOfTheBuilding) {
  for (const std::string& name : test_support::demoNames()) {
    for (const auto& [width, height] :
         {std::pair{1024.0f, 640.0f}, {1280.0f, 720.0f}, {1920.0f, 1080.0f}}) {
      const Framed f = framedDemo(name, width, height);
      const Box& place = f.layout.drawing;
      for (const char* view : kCorners) {
        const Camera camera = *fittedView(view, f.scene, f.layout);
        const Box box = seen(f, camera, f.model.settingOut.levels.groundLow);
        EXPECT_GT(box.left, place.left - 1) << name << " " << view;
        EXPECT_GT(box.top, place.top - 1) << name << " " << view;
        EXPECT_LT(box.right, place.right + 1) << name << " " << view;
        EXPECT_LT(box.bottom, place.bottom + 1) << name << " " << view;
        // Round it stand boards, scaffold and dimension lines.
        const float share = std::max(box.width() / place.width(), box.height() / place.height());
        EXPECT_GT(share, 0.6f) << name << " " << view << " " << width;
      }
    }
  }
}

TEST(Framing, ShowsTheCellarTooWhereOneSeesUnderTheGround) {
  const Framed f = framedDemo("orchard-house", 1280, 720);
  for (const char* view : kCorners) {
    const Box under = seen(f, *fittedView(view, f.scene, f.layout, true), -100);
    EXPECT_LT(under.bottom, f.layout.drawing.bottom + 1) << view;
    const Box over = seen(f, *fittedView(view, f.scene, f.layout), -100);
    EXPECT_GT(over.width(), under.width() * 1.15f) << view << ": larger without it";
  }
}

}  // namespace
}  // namespace viewer
