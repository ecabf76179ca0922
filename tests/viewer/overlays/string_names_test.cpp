#include "tests/viewer/overlays/overlay_fixture.h"

namespace viewer {
namespace {

class StringNames : public OverlayTest {
 protected:
  StringNames() { overlays_ = {false, true, true, true, true, true, true, false}; }
};

TEST_F(StringNames, StandClearOfRoofsNextDoorAndOfDimensions) {
  for (const char* job : {"tests/data/jobs/extension", "tests/data/jobs/skew-in-feet"}) {
    open(job);
    const auto all = texts("plan", endOf("set-out"));
    // Roofs where the same frame has them.
    loadLettering(1);
    PictureOptions how;
    how.view = "plan";
    how.time = endOf("set-out");
    how.overlays = overlays_;
    Frame frame = frameOf(model_, scene_, how);
    OverlayOptions with;
    ImGui::NewFrame();
    OverlaySheet sheet{model_,
                       scene_,
                       frame,
                       with,
                       Pen(ImGui::GetBackgroundDrawList()),
                       sheetOf(model_, overlays_, 1280, 720, 1),
                       false,
                       false,
                       {},
                       {},
                       {},
                       {},
                       {},
                       {},
                       {}};
    const auto roofs = standingBuildings(sheet);
    ImGui::EndFrame();
    int names = 0;
    for (const DrawnText& text : all) {
      if (text.text.find("outer face") == std::string::npos) continue;
      ++names;
      for (const Box& roof : roofs) EXPECT_FALSE(roof.overlaps(text.box)) << text.text;
      for (const DrawnText& other : all) {
        if (&other == &text) continue;
        EXPECT_FALSE(text.box.grown(1.5f).overlaps(other.box))
            << text.text << " touches " << other.text;
      }
    }
    EXPECT_GE(names, 3) << job;
  }
}

}  // namespace
}  // namespace viewer
