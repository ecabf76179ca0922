// The gauge rods over the building: which one is named, and what it says.
#include <algorithm>

#include "model/level_text.h"
#include "tests/support/demo_job.h"
#include "tests/viewer/overlays/overlay_fixture.h"
#include "viewer/overlays/gauge_rod_place.h"

namespace viewer {
namespace {

class GaugeRods : public OverlayTest {
 protected:
  GaugeRods() { overlays_.gaugeRods = overlays_.titleBlock = true; }
  static bool says(const std::vector<DrawnText>& all, const std::string& words) {
    return std::any_of(all.begin(), all.end(),
                       [&](const DrawnText& text) { return text.text.rfind(words, 0) == 0; });
  }
  // The corner whose rod is named; empty when none is.
  static std::string named(const std::vector<DrawnText>& all) {
    const std::string begins = "Gauge rod ";
    for (const DrawnText& text : all)
      if (text.text.rfind(begins, 0) == 0) return text.text.substr(begins.size(), 1);
    return {};
  }
};

TEST_F(GaugeRods, NameEveryMarkOfTheNearestOne) {
  open(test_support::demoJob("garage"));
  const auto all = texts("south-west", endOf("damp-course"));
  const auto corner = model_.settingOut.cornerNamed(named(all));
  ASSERT_TRUE(corner);
  for (const model::GaugeMark& mark : facts_.rods[*corner].drawn.marks)
    EXPECT_TRUE(says(all, model::levelText(mark.level))) << mark.name;
}

TEST_F(GaugeRods, SayWhenThereIsNothingToStandOnYet) {
  open(test_support::demoJob("garage"));
  const auto yet = [&](double time) {
    const auto all = texts("south-west", time);
    return says(all, "Gauge rod " + named(all) + ", nothing to stand on yet");
  };
  const double poured = facts_.rods[0].poured;
  EXPECT_TRUE(yet(poured - 0.1));
  EXPECT_FALSE(yet(poured));
}

TEST_F(GaugeRods, NameAnotherCornerFromEverySide) {
  open(test_support::demoJob("garage"));
  std::vector<std::string> corners;
  for (const char* view : {"south-west", "south-east", "north-east", "north-west"})
    corners.push_back(named(texts(view, endOf("damp-course"))));
  std::sort(corners.begin(), corners.end());
  EXPECT_EQ(corners, (std::vector<std::string>{"A", "B", "C", "D"}));
}

TEST_F(GaugeRods, NameACornerOfWhatIsSelected) {
  open(test_support::demoJob("garage"));
  const model::WallLine& wall = model_.settingOut.walls[2];  // at the back from the south-west
  const std::string from = model_.settingOut.corners[wall.from].letter;
  const std::string to = model_.settingOut.corners[wall.to].letter;
  // The nearest of them all is neither, until a thing of that wall is selected.
  const double time = endOf("completion");
  const std::string before = named(texts("south-west", time));
  EXPECT_TRUE(before != from && before != to) << before;
  const auto& elements = model_.works.elements;
  const auto leaf = std::find_if(elements.begin(), elements.end(), [&](const model::Element& e) {
    return e.id.find(wall.name) != std::string::npos && e.id.find("outer") != std::string::npos;
  });
  ASSERT_NE(leaf, elements.end());
  selected_ = std::uint32_t(leaf - elements.begin());
  const std::string after = named(texts("south-west", time));
  EXPECT_TRUE(after == from || after == to) << after;
}

TEST_F(GaugeRods, GoByTheConcreteThatWasReadOnceItIsThere) {
  open(test_support::demoJob("orchard-house"));
  const auto read = std::find_if(facts_.rods.begin(), facts_.rods.end(),
                                 [](const CornerRod& rod) { return rod.asBuilt.has_value(); });
  ASSERT_NE(read, facts_.rods.end());
  ASSERT_GT(read->poured, 0);
  EXPECT_NE(read->asBuilt->foot, read->drawn.foot);
  // As near as that its corner is the nearest.
  const auto& corner = model_.settingOut.corners[read->drawn.corner];
  for (const std::string view : {"south-west", "south-east", "north-east", "north-west"}) {
    const auto before = texts(view, read->poured - 0.01), after = texts(view, read->poured);
    if (named(after) != corner.letter) continue;
    EXPECT_TRUE(says(before, "Gauge rod " + corner.letter));
    EXPECT_FALSE(says(before, "Gauge rod " + corner.letter + ", as built"));
    EXPECT_TRUE(says(after, "Gauge rod " + corner.letter + ", as built"));
    EXPECT_TRUE(says(after, model::levelText(read->asBuilt->foot)));
    EXPECT_FALSE(says(before, model::levelText(read->asBuilt->foot)));
    return;
  }
  ADD_FAILURE() << "no view is nearest to corner " << corner.letter;
}

TEST_F(GaugeRods, StandClearOfTheirCornersFromEverywhere) {
  open(test_support::demoJob("orchard-house"));
  for (int step = 0; step < 24; ++step) {
    Frame frame;
    frame.time = endOf("completion");
    frame.camera = *standardView("south-west", scene_.low, scene_.high, 16.0 / 9);
    frame.camera.orbit(step * 0.2618, -0.3);
    OverlayOptions options;
    options.picker = picker_.get();
    options.facts = &facts_;
    loadLettering(1);
    ImGui::GetIO().DisplaySize = {1280, 720};
    ImGui::NewFrame();
    SheetLayout layout = layOutSheet(1280, 720, 1);
    const OverlaySheet sheet{model_, scene_, frame, options, Pen(ImGui::GetBackgroundDrawList()),
                             layout, false,  false, {},      {},
                             {},     {},     {},    {},      {}};
    const auto rods = standRods(sheet, facts_.rods, 22);
    ImGui::EndFrame();
    EXPECT_EQ(rods.size(), facts_.rods.size());
    for (const StandingRod& rod : rods) {
      const model::Vec2 corner = model_.settingOut.corners[rod.rod->corner].at;
      for (const double level : {rod.rod->foot, rod.rod->dampCourse, rod.rod->top}) {
        const auto arris = sheet.onSheet(scene_.local({corner, level}));
        const auto at = sheet.onSheet(rod.point(level));
        ASSERT_TRUE(arris && at);
        EXPECT_GT(std::abs(at->x - arris->x), rod.half) << "step " << step;
      }
      // Outside the walls.
      const model::Vec3 stands = scene_.world(rod.point(0));
      EXPECT_FALSE(model::contains(model_.settingOut.outline, {stands.x, stands.y}));
    }
  }
}

}  // namespace
}  // namespace viewer
