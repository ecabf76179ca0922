#include <algorithm>

#include "tests/viewer/overlays/overlay_fixture.h"

namespace viewer {
namespace {

class CornerLetters : public OverlayTest {
 protected:
  CornerLetters() { overlays_.corners = true; }

  // The letters from left to right.
  std::string read(const std::string& view, double time) {
    auto all = texts(view, time, 1280, 720);
    std::sort(all.begin(), all.end(),
              [](const auto& a, const auto& b) { return a.box.left < b.box.left; });
    std::string letters;
    for (const DrawnText& text : all) letters += text.text;
    return letters;
  }
  std::string atTheEnd(const std::string& view) {
    return read(view, double(model_.programme.stages.size()));
  }
};

TEST_F(CornerLetters, OfAnElevationAreThoseOfTheSideThatIsSeen) {
  open("tests/data/jobs/t-house");
  EXPECT_EQ(atTheEnd("north"), "CEFH");
  EXPECT_EQ(atTheEnd("south").front(), 'A');
  EXPECT_EQ(atTheEnd("south").back(), 'B');
  open("tests/data/jobs/skew-in-feet");
  EXPECT_EQ(atTheEnd("north").back(), 'E');
}

TEST_F(CornerLetters, AreThoseNearestTheEyeWhileNothingStandsBetween) {
  open("tests/data/jobs/t-house");
  EXPECT_EQ(read("north", endOf("set-out")), "CEFH");
}

TEST_F(CornerLetters, AreAllInThePlan) {
  for (const char* job : {"t-house", "extension", "skew-in-feet"}) {
    open(std::string("tests/data/jobs/") + job);
    EXPECT_EQ(read("plan", endOf("set-out")).size(), model_.settingOut.corners.size()) << job;
  }
}

}  // namespace
}  // namespace viewer
