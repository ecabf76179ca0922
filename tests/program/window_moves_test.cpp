// Moving what is seen, and pulling the section, on the garage's plan: there a movement of the hand
// is one of the picture, pixel by pixel.
#include "tests/program/window_fixture.h"

namespace window_test {
namespace {

constexpr unsigned kPaper = 0xf7f4ec;

class WindowMoves : public WindowTest {
 protected:
  void SetUp() override {
    WindowTest::SetUp();
    if (IsSkipped() || HasFatalFailure()) return;
    openCopyOf("garage.toml");
    waitForTape();
    // Nothing but ground and building.
    screen_->hand("mousemove 600 60 key t key c key 1");
    settle();
  }

  // The garage's plot as it lies on the sheet.
  static Area plot(const Shot& shot) {
    return areaWhere([&](int x, int y) { return shot.at(x, y) != kPaper; });
  }
  static Area roof(const Shot& shot) {
    return areaWhere([&](int x, int y) {
      const unsigned p = shot.at(x, y);
      return int(p >> 16) - int(p >> 8 & 255) > 30;
    });
  }
  static std::string to(int x, int y) {
    return "mousemove " + std::to_string(x) + " " + std::to_string(y);
  }
  void drag(int button, int x, int y, int dx, int dy) {
    const std::string b = std::to_string(button);
    screen_->hand(to(x, y) + " mousedown " + b + " " + to(x + dx / 3, y + dy / 3) + " " +
                  to(x + dx, y + dy) + " mouseup " + b);
  }
  // The whole plot has gone that far, and nothing else has happened to it.
  void expectMoved(const Area& from, int dx, int dy, const char* how) {
    EXPECT_TRUE(eventually([&] {
      const Area now = plot(screen_->shot());
      return std::abs(now.left - from.left - dx) <= 2 && std::abs(now.top - from.top - dy) <= 2 &&
             std::abs(now.right - from.right - dx) <= 2 &&
             std::abs(now.bottom - from.bottom - dy) <= 2;
    })) << how;
    const Area now = plot(settle());
    EXPECT_NEAR(now.left - from.left, dx, 2) << how;
    EXPECT_NEAR(now.top - from.top, dy, 2) << how;
    EXPECT_NEAR(now.width(), from.width(), 2) << how;
    EXPECT_NEAR(now.height(), from.height(), 2) << how;
  }
};

TEST_F(WindowMoves, RightDragAndShiftDragMoveTheDrawingWithTheHand) {
  const Area first = plot(settle());
  ASSERT_GT(first.width(), 100);
  drag(3, 574, 340, 90, -42);
  expectMoved(first, 90, -42, "right drag");
  screen_->hand("keydown shift");
  drag(1, 574, 340, -120, 30);
  screen_->hand("keyup shift");
  expectMoved(first, -30, -12, "Shift drag");
}

TEST_F(WindowMoves, CtrlArrowsMoveTheEye) {
  // A twentieth of the sheet at a time: the eye goes right, what it sees goes left.
  const Area first = plot(settle());
  press("ctrl+Right", 2);
  expectMoved(first, -kWidth / 10, 0, "right");
  press("ctrl+Left");
  expectMoved(first, -kWidth / 20, 0, "left");
  press("ctrl+Down");
  expectMoved(first, -kWidth / 20, -kHeight / 20, "down");
  press("ctrl+Up");
  expectMoved(first, -kWidth / 20, 0, "up");
}

TEST_F(WindowMoves, FBringsTheBuildingBackToTheMiddle) {
  drag(3, 574, 340, 180, 70);
  settle();
  const Area aside = roof(settle());
  EXPECT_GT(aside.middleX(), kDrawing.middleX() + 100);
  press("f");
  EXPECT_TRUE(eventually([&] { return roof(screen_->shot()).height() > aside.height() + 100; }));
  const Area now = roof(settle());
  // The middle of what captions and tape leave.
  EXPECT_NEAR(now.middleX(), 605, 10);
  EXPECT_NEAR(now.middleY(), 382, 18);
  EXPECT_GT(now.height(), kDrawing.height() * 2 / 5) << "it fills what there is";
}

TEST_F(WindowMoves, TheSectionGoesWhereItsHandleIsPulled) {
  const Shot whole = settle();
  const Area all = plot(whole);
  press("s");
  EXPECT_TRUE(eventually([&] { return drawingDiffers(whole, screen_->shot()) > 3000; }));
  // South of the cut all is gone: looked at beside the handle and its words.
  const auto cut = [&](const Shot& shot) {
    return areaWhere([&](int x, int y) { return shot.at(x, y) != whole.at(x, y); },
                     {all.left + 5, all.top + 5, all.left + 60, all.bottom - 5})
        .top;
  };
  const int first = cut(settle());
  ASSERT_GT(first, all.top + 80);
  ASSERT_LT(first, all.bottom - 80);
  // The handle stands on the cut, at the building's middle.
  drag(1, int(roof(whole).middleX()), first, 0, -50);
  EXPECT_TRUE(eventually([&] { return std::abs(cut(screen_->shot()) - first + 50) <= 3; }));
  EXPECT_NEAR(cut(settle()), first - 50, 3) << "north";
  drag(1, int(roof(whole).middleX()), first - 50, 0, 110);
  EXPECT_TRUE(eventually([&] { return std::abs(cut(screen_->shot()) - first - 60) <= 3; }));
  EXPECT_NEAR(cut(settle()), first + 60, 3) << "and south";
  EXPECT_EQ(plot(settle()).top, all.top) << "the eye stays";
}

}  // namespace
}  // namespace window_test
